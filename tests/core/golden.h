// Drawings kept as text. SILLWRIGHT_WRITE_GOLDEN=1 writes them anew after a wanted change; then read the difference.
#pragma once

#include <cstdlib>
#include <fstream>
#include <sstream>
#include <string>

#include <gtest/gtest.h>

namespace sillwright::test {

// Compares with tests/core/golden/NAME line by line: the first line that differs is told.
inline void expectGolden(const std::string& name, const std::string& got) {
  const std::string path = std::string(SILLWRIGHT_SOURCE_DIR) + "/tests/core/golden/" + name;
  if (std::getenv("SILLWRIGHT_WRITE_GOLDEN") != nullptr)
    std::ofstream(path, std::ios::binary) << got;
  std::ifstream stored(path, std::ios::binary);
  ASSERT_TRUE(stored) << path;
  std::stringstream wanted;
  wanted << stored.rdbuf();
  std::istringstream gotLines(got), wantedLines(wanted.str());
  std::string a, b;
  for (int line = 1; std::getline(wantedLines, b); ++line) {
    ASSERT_TRUE(std::getline(gotLines, a)) << name << " ends before line " << line;
    ASSERT_EQ(a, b) << name << ", line " << line;
  }
  EXPECT_EQ(got, wanted.str()) << name;
}

} // namespace sillwright::test
