// The real program, called as a user calls it.
#pragma once

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace sillwright::testing_support {

namespace fs = std::filesystem;

struct Outcome {
  int status = -1;
  std::string out;
  std::string err;
};

inline std::string readAll(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

class CommandLine : public ::testing::Test {
protected:
  void SetUp() override {
    folder_ = fs::temp_directory_path() / ("sillwright-cli-" + std::to_string(::getpid()) + "-" +
                                           ::testing::UnitTest::GetInstance()->current_test_info()->name());
    fs::remove_all(folder_);
    fs::create_directories(folder_);
  }
  void TearDown() override { fs::remove_all(folder_); }

  // Without a display, as on a server.
  Outcome run(const std::string& arguments) const {
    const fs::path err = folder_ / "stderr";
    const std::string command = "env -u DISPLAY -u WAYLAND_DISPLAY -u QT_QPA_PLATFORM " SILLWRIGHT_BINARY " " +
                                arguments + " 2>" + err.string();
    Outcome outcome;
    FILE* pipe = ::popen(command.c_str(), "r");
    std::array<char, 4096> buffer{};
    while (const std::size_t n = std::fread(buffer.data(), 1, buffer.size(), pipe))
      outcome.out.append(buffer.data(), n);
    outcome.status = WEXITSTATUS(::pclose(pipe));
    outcome.err = readAll(err);
    return outcome;
  }
  static std::string sample(const std::string& name) {
    return std::string(SILLWRIGHT_SOURCE_DIR) + "/samples/" + name + ".sillwright";
  }
  fs::path folder_;
};

inline QJsonDocument parsed(const std::string& text) {
  QJsonParseError error;
  const auto document = QJsonDocument::fromJson(QByteArray::fromStdString(text), &error);
  EXPECT_EQ(error.error, QJsonParseError::NoError) << error.errorString().toStdString() << "\n" << text;
  return document;
}

inline void expectOneLine(const std::string& err) {
  EXPECT_FALSE(err.empty());
  EXPECT_EQ(err.find('\n'), err.size() - 1) << err;
}

} // namespace sillwright::testing_support
