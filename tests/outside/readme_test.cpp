// The list of rules and tests beside this file: it leaves out no rule, and every test it names is there.
#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <regex>
#include <sstream>

#include "core/rules/rule_book.h"

namespace sillwright {
namespace {

const std::string folder = std::string(SILLWRIGHT_SOURCE_DIR) + "/tests/outside/";

std::string textOf(const std::string& file) {
  std::ifstream in(folder + file, std::ios::binary);
  EXPECT_TRUE(in) << file;
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

std::string lineWith(const std::string& start) {
  std::istringstream lines(textOf("README.md"));
  for (std::string line; std::getline(lines, line);)
    if (line.rfind(start, 0) == 0)
      return line;
  return {};
}

TEST(Readme, NamesEveryRule) {
  for (const RuleRow& row : ruleBook())
    EXPECT_FALSE(lineWith("| `" + std::string(row.name) + "` | ").empty()) << row.name;
}

// The row of a rule: its name, at least one test, where the expected value is from.
TEST(Readme, GivesEveryRuleATest) {
  const std::regex row(R"(\| `[a-z.-]+` \| \[[^|]*\]\([^|]*\.cpp\) `[A-Z][^|]*` \| [^|—]+ \|)");
  for (const RuleRow& each : ruleBook()) {
    const std::string line = lineWith("| `" + std::string(each.name) + "` | ");
    EXPECT_TRUE(std::regex_match(line, row)) << line;
  }
}

// "[file](file) `Suite.Name`, `Suite.Name`; [file](file) `Suite.Name`", rows of tables and lists alike.
TEST(Readme, NamesTestsThatAreThere) {
  const std::regex word(R"(\]\(([a-z_./]+\.cpp)\)|`([A-Z][A-Za-z0-9]*)\.([A-Za-z0-9]+)`)");
  const std::string text = textOf("README.md");
  std::map<std::string, std::string> read;
  std::string file;
  int named = 0;
  for (auto at = std::sregex_iterator(text.begin(), text.end(), word); at != std::sregex_iterator(); ++at) {
    const std::smatch& match = *at;
    if (match[1].matched) {
      file = match[1];
      if (read.find(file) == read.end())
        read[file] = textOf(file);
      continue;
    }
    ++named;
    const std::string test = "TEST(" + match[2].str() + ", " + match[3].str() + ")";
    EXPECT_NE(read[file].find(test), std::string::npos) << test << " in " << file;
  }
  EXPECT_GT(named, 120);
}

} // namespace
} // namespace sillwright
