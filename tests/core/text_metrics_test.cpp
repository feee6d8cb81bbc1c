#include "core/drawing/text_metrics.h"

#include <gtest/gtest.h>

namespace sillwright {
namespace {

std::string joined(const std::vector<TextRun>& runs) {
  std::string all;
  for (const TextRun& run : runs)
    all += run.text;
  return all;
}

TEST(TextWidth, AddsTheAdvancesOfTheFamily) {
  EXPECT_DOUBLE_EQ(textWidth("FIX", 10), (1100 + 600 + 1300) / 2000.0 * 10); // F, I, X
  EXPECT_DOUBLE_EQ(textWidth("", 10), 0);
  EXPECT_DOUBLE_EQ(textWidth("0123456789", 20), 10 * 1300 / 2000.0 * 20); // all figures one width
}

TEST(TextWidth, KnowsSignsBeyondAscii) {
  EXPECT_DOUBLE_EQ(textWidth("ñ·×", 10), (1200 + 500 + 1600) / 2000.0 * 10);
  EXPECT_DOUBLE_EQ(textWidth("′″−…↔", 10), (500 + 800 + 1100 + 1500 + 1800) / 2000.0 * 10);
}

TEST(TextWidth, TakesAnUnknownLetterForAnN) {
  EXPECT_DOUBLE_EQ(textWidth("猫", 10), textWidth("n", 10));
  EXPECT_DOUBLE_EQ(textWidth("🔨", 10), textWidth("n", 10));
}

TEST(TextWidth, SurvivesBrokenText) {
  EXPECT_GT(textWidth("\xC3", 10), 0);
  EXPECT_GT(textWidth("\xE2\x82", 10), 0);
  EXPECT_GT(textWidth("\xFF\x80z", 10), 0);
}

TEST(TextRuns, BuildsAFraction) {
  const auto runs = textRuns("3/8\"", 10);
  ASSERT_EQ(runs.size(), 4u);
  EXPECT_EQ(runs[0].text, "3");
  EXPECT_DOUBLE_EQ(runs[0].size, 7);
  EXPECT_DOUBLE_EQ(runs[0].rise, 2.7);
  EXPECT_EQ(runs[1].text, "/");
  EXPECT_DOUBLE_EQ(runs[1].size, 8.6);
  EXPECT_DOUBLE_EQ(runs[1].rise, 0);
  EXPECT_EQ(runs[2].text, "8");
  EXPECT_DOUBLE_EQ(runs[2].rise, 0);
  EXPECT_EQ(runs[3].text, "\"");
  EXPECT_DOUBLE_EQ(runs[3].size, 10);
  for (std::size_t i = 1; i < runs.size(); ++i)
    EXPECT_GT(runs[i].x, runs[i - 1].x);
}

TEST(TextRuns, JoinedAreTheLineItself) {
  for (const std::string line : {"20'-2 7/8\"", "EDGE 3/8\" < 1/2\"", "V18 · 5/8\"", "V18 5/8\"", "2-2x6", "(3 1/2\")",
                                 "right 1/8\" and 2 1/16\" up", "11/16/2026", "a/b", "1/3", "7/8", " 1/2 ", "/", ""})
    EXPECT_EQ(joined(textRuns(line, 11)), line);
}

TEST(TextRuns, SetsAFractionCloseToItsWholeInches) {
  const double size = 10, blank = textWidth(" ", size);
  const double apart = textWidth("20'-2", size) + textWidth("7/8\"", size);
  EXPECT_NEAR(textWidth("20'-2 7/8\"", size), apart + 0.9, 1e-9);
  for (const std::string whole : {"3", "-3", "−3", "±3", "(3", "at 3", "12'-3", "12'3"})
    EXPECT_NEAR(textWidth(whole + " 5/8", size), textWidth(whole, size) + 0.9 + textWidth("5/8", size), 1e-9) << whole;
  // A mark, a fraction or a word is not the whole part.
  for (const std::string mark : {"V18", "(V18", "S1-2", "1/2", "EDGE", "·"})
    EXPECT_NEAR(textWidth(mark + " 5/8", size), textWidth(mark, size) + blank + textWidth("5/8", size), 1e-9) << mark;
}

TEST(TextRuns, LeavesOtherSlashesAlone) {
  for (const std::string line : {"1/3", "11/16/2026", "1/128", "123/8", "a/2", "3/", "/8", "1/2/4"})
    EXPECT_EQ(textRuns(line, 10).size(), 1u) << line;
}

TEST(Wrapped, BreaksAtBlanksAndKeepsEveryWord) {
  const std::string text = "Set the strap against the form board before the bars are tied";
  const auto lines = wrapped(text, 10, 90);
  ASSERT_GT(lines.size(), 2u);
  std::string again;
  for (const std::string& line : lines) {
    EXPECT_LE(textWidth(line, 10), 90);
    again += (again.empty() ? "" : " ") + line;
  }
  EXPECT_EQ(again, text);
}

TEST(Wrapped, LetsALongWordStandAlone) {
  const auto lines = wrapped("a encofrado b", 10, 20);
  ASSERT_EQ(lines.size(), 3u);
  EXPECT_EQ(lines[1], "encofrado");
  EXPECT_TRUE(wrapped("   ", 10, 20).empty());
}

} // namespace
} // namespace sillwright
