#include "core/base/length.h"

#include <cmath>
#include <limits>
#include <random>
#include <string>
#include <utility>
#include <vector>

#include <gtest/gtest.h>

namespace sillwright {
namespace {

double read(std::string_view text, LengthStyle style = LengthStyle::FeetInches) {
  const Result<double> length = parseLength(text, style);
  EXPECT_TRUE(length.ok()) << text << " — " << (length.ok() ? "" : length.problem().text());
  return length.ok() ? *length : std::numeric_limits<double>::quiet_NaN();
}

using Cases = std::vector<std::pair<std::string, double>>;

void expectInches(const Cases& cases) {
  for (const auto& [text, inches] : cases)
    EXPECT_DOUBLE_EQ(read(text), inches) << text;
}

void expectRefused(std::string_view text, const std::string& place, const std::string& said,
                   LengthStyle style = LengthStyle::FeetInches) {
  const Result<double> length = parseLength(text, style);
  ASSERT_FALSE(length.ok()) << text << " was read as " << *length;
  EXPECT_EQ(length.problem().place, place) << text << " — " << length.problem().message;
  EXPECT_NE(length.problem().message.find(said), std::string::npos) << text << " — " << length.problem().message;
  EXPECT_EQ(length.problem().message.rfind("expected ", 0), 0u) << length.problem().message;
}

TEST(Length, ReadsFeetAndInchesAsPeopleWriteThem) {
  expectInches({{"12'-3 5/8\"", 147.625},
                {"12-3-5/8", 147.625},
                {"12 3 5/8", 147.625},
                {"147.625", 147.625},
                {"12' 3 5/8\"", 147.625},
                {"12'3 5/8", 147.625},
                {"12'3-5/8\"", 147.625},
                {"12' - 3 - 5/8\"", 147.625},
                {"12'-3.625\"", 147.625},
                {"12-3.625", 147.625},
                {"12 ft 3 5/8 in", 147.625},
                {"12ft3-5/8in", 147.625},
                {"12 Feet 3 5/8 INCHES", 147.625},
                {"12 ft. 3 5/8 in.", 147.625},
                {"147 5/8", 147.625},
                {"147-5/8\"", 147.625},
                {"147.625\"", 147.625},
                {"12-3", 147},
                {"12 3", 147},
                {"12 3\"", 147},
                {"12'-3", 147},
                {"24'", 288},
                {"24ft", 288},
                {"1 foot", 12},
                {"12.5'", 150},
                {"5 1/2'", 66},
                {"6in", 6},
                {"1 inch", 1},
                {"12'5/8\"", 144.625},
                {"12'-5/8", 144.625},
                {"0'-14\"", 14},
                {"0'-0\"", 0},
                {"12''", 12}});
}

TEST(Length, ReadsShortMeasures) {
  expectInches({{"3 5/8", 3.625},
                {"3-5/8\"", 3.625},
                {"3 - 5/8", 3.625},
                {".5", 0.5},
                {"5/8", 0.625},
                {"5/8\"", 0.625},
                {"5 / 8", 0.625},
                {"1/64", 1.0 / 64},
                {"0/8", 0},
                {"0", 0},
                {"5.", 5},
                {"007", 7}});
}

TEST(Length, ReadsMetricInEitherStyle) {
  for (const LengthStyle style : {LengthStyle::FeetInches, LengthStyle::Millimetres}) {
    EXPECT_DOUBLE_EQ(read("310mm", style), 310 / 25.4);
    EXPECT_DOUBLE_EQ(read("3.10m", style), 3100 / 25.4);
    EXPECT_DOUBLE_EQ(read("31 cm", style), 310 / 25.4);
    EXPECT_DOUBLE_EQ(read("317.5 MM", style), 12.5);
    EXPECT_DOUBLE_EQ(read("-25.4mm", style), -1);
  }
}

TEST(Length, ReadsBareNumbersInTheStyleOfTheJob) {
  EXPECT_DOUBLE_EQ(read("25.4", LengthStyle::Millimetres), 1);
  EXPECT_DOUBLE_EQ(read("-254", LengthStyle::Millimetres), -10);
  EXPECT_DOUBLE_EQ(read("12'-3 5/8\"", LengthStyle::Millimetres), 147.625);
  EXPECT_DOUBLE_EQ(read("12 3 5/8", LengthStyle::Millimetres), 147.625);
  EXPECT_DOUBLE_EQ(read("5/8", LengthStyle::Millimetres), 0.625);
  EXPECT_DOUBLE_EQ(read("6\"", LengthStyle::Millimetres), 6);
  EXPECT_DOUBLE_EQ(read("12-3\"", LengthStyle::Millimetres), 147);
  expectRefused("12 300", "character 4", "one number of millimetres", LengthStyle::Millimetres);
}

TEST(Length, ReadsTypographicSigns) {
  expectInches({{"12’-3 5/8”", 147.625},
                {"12′–3 5⁄8″", 147.625},
                {"12‘ 3⅝“", 147.625},
                {"12′-3⅝″", 147.625},
                {"3½", 3.5},
                {"½", 0.5},
                {"3 ¾\"", 3.75},
                {"3-⅞", 3.875},
                {"12—3—5∕8", 147.625},
                {"12'½\"", 144.5},
                {"12′3′′", 147},
                {"12\u00A03\u202F5/8", 147.625},
                {"¼", 0.25},
                {"⅛", 0.125},
                {"⅜", 0.375},
                {"12 3⅝", 147.625}});
}

TEST(Length, ReadsNegativeLengthsAsAWhole) {
  expectInches({{"-12'-3 5/8\"", -147.625},
                {"−12′-3 5/8″", -147.625},
                {"- 3 5/8", -3.625},
                {"-5/8", -0.625},
                {"–½", -0.5},
                {"-12 3", -147},
                {"-.5", -0.5}});
  EXPECT_FALSE(std::signbit(read("-0")));
  EXPECT_FALSE(std::signbit(read("-0'-0\"")));
}

TEST(Length, IgnoresBlanksAround) {
  expectInches({{"  12'-3 5/8\"  ", 147.625}, {"\t5/8\r\n", 0.625}, {"\u00A012\u2009\u3000", 12}});
}

TEST(Length, SaysWhereAndWhatWasExpected) {
  expectRefused("", "character 1", "a length");
  expectRefused("   ", "character 4", "a length");
  expectRefused("-", "character 2", "a length");
  expectRefused("--5", "character 2", "a length");
  expectRefused("abc", "character 1", "a length");
  expectRefused(".", "character 1", "a length");
  expectRefused("'", "character 1", "a length");
  expectRefused("/8", "character 1", "a length");
  expectRefused("12'-", "character 5", "inches after the feet");
  expectRefused("12'--3", "character 5", "inches after the feet");
  expectRefused("12' x", "character 5", "the end");
  expectRefused("12'-x", "character 5", "inches after the feet");
  expectRefused("3-", "character 3", "inches after the dash");
  expectRefused("12'' 3", "character 6", "the end");
  expectRefused("12\" 3", "character 5", "the end");
  expectRefused("3\" 5/8", "character 4", "the end");
  expectRefused("12' 3' 5", "character 6", "the end");
  expectRefused("12 3 5 8", "character 6", "the end");
  expectRefused("12 3 mm", "character 6", "the end");
  expectRefused("12 mm 3", "character 7", "the end");
  expectRefused("3 5/8 5/8", "character 7", "the end");
  expectRefused("12,5", "character 3", "the end");
  expectRefused("1e5", "character 2", "the end");
  expectRefused("0x10", "character 2", "the end");
  expectRefused("5 km", "character 3", "the end");
  expectRefused("1.2.3", "character 4", "at most one decimal point");
  expectRefused("12.5' 3\"", "character 1", "whole feet");
  expectRefused("12 1/2' 3\"", "character 1", "whole feet");
  expectRefused("12.5-3", "character 1", "whole feet");
  expectRefused("1/2 mm", "character 5", "after a fraction");
  expectRefused("nan", "character 1", "a length");
  expectRefused("inf", "character 1", "a length");
  expectRefused("+5", "character 1", "a length");
}

TEST(Length, RefusesFractionsThatAreOnNoTape) {
  expectRefused("5/0", "character 3", "halves");
  expectRefused("0/0", "character 3", "halves");
  expectRefused("5/", "character 3", "below the fraction's slash");
  expectRefused("5/x", "character 3", "below the fraction's slash");
  expectRefused("5/8.5", "character 3", "below the fraction's slash");
  expectRefused("1/3", "character 3", "halves");
  expectRefused("3 1/10", "character 5", "halves");
  expectRefused("1/128", "character 3", "halves");
  expectRefused("3⅓", "character 2", "halves");
  expectRefused("8/8", "character 1", "less than one");
  expectRefused("3 9/8", "character 3", "less than one");
  expectRefused("1.5/8", "character 1", "above the fraction's slash");
  expectRefused("3.5 5/8", "character 1", "whole number before a fraction");
  expectRefused("12' 3.5 5/8", "character 5", "whole number before a fraction");
  expectRefused("5/8/2", "character 4", "the end");
}

TEST(Length, CountsCharactersNotBytes) {
  expectRefused("12′-3⅝″ x", "character 9", "the end");
  expectRefused("½½", "character 2", "the end");
  expectRefused("5\xFF\xFE", "character 2", "the end");
  expectRefused("\xE2\x80", "character 1", "a length");
}

TEST(Length, RefusesWhatIsLongerThanAnyWall) {
  EXPECT_DOUBLE_EQ(read("1000000"), 1e6);
  EXPECT_DOUBLE_EQ(read("-1000000"), -1e6);
  expectRefused("1000000.1", "character 1", "at most 1,000,000 inches");
  expectRefused("-83334'", "character 2", "at most 1,000,000 inches");
  expectRefused(" " + std::string(5000, '9'), "character 2", "at most 1,000,000 inches");
  expectRefused(std::string(500, '9') + "'-" + std::string(500, '9'), "character 1", "at most 1,000,000 inches");
  expectRefused(std::string(500, '9') + "m", "character 1", "at most 1,000,000 inches");
  for (std::size_t count = 7; count < 700; ++count)
    expectRefused(std::string(count, '9'), "character 1", "at most 1,000,000 inches");
  EXPECT_DOUBLE_EQ(read(std::string(5000, '0') + "7"), 7);
  EXPECT_DOUBLE_EQ(read("." + std::string(5000, '0') + "7"), 0);
}

TEST(Length, PrintsFeetAndInches) {
  EXPECT_EQ(feetInches(147.625), "12'-3 5/8\"");
  EXPECT_EQ(feetInches(3.625), "0'-3 5/8\"");
  EXPECT_EQ(feetInches(288), "24'-0\"");
  EXPECT_EQ(feetInches(0), "0'-0\"");
  EXPECT_EQ(feetInches(0.5), "0'-0 1/2\"");
  EXPECT_EQ(feetInches(-147.625), "-12'-3 5/8\"");
  EXPECT_EQ(feetInches(11.99), "1'-0\"");
  EXPECT_EQ(feetInches(11.99, 64), "0'-11 63/64\"");
  EXPECT_EQ(feetInches(147.625, 1), "12'-4\"");
  EXPECT_EQ(feetInches(147.625, 2), "12'-3 1/2\"");
  EXPECT_EQ(feetInches(1.0 / 32), "0'-0 1/16\"");
  EXPECT_EQ(feetInches(-1.0 / 32), "-0'-0 1/16\"");
  EXPECT_EQ(feetInches(-0.001), "0'-0\"");
  EXPECT_EQ(feetInches(-0.0), "0'-0\"");
}

TEST(Length, PrintsInchesWithoutFeet) {
  EXPECT_EQ(inches(147.625), "147 5/8\"");
  EXPECT_EQ(inches(0), "0\"");
  EXPECT_EQ(inches(0.375), "3/8\"");
  EXPECT_EQ(inches(-0.375), "-3/8\"");
  EXPECT_EQ(inches(-0.001), "0\"");
  EXPECT_EQ(inches(0.99), "1\"");
  EXPECT_EQ(inches(2.4375), "2 7/16\"");
}

TEST(Length, PrintsMillimetres) {
  EXPECT_EQ(millimetres(12.5), "317.5 mm");
  EXPECT_EQ(millimetres(10), "254 mm");
  EXPECT_EQ(millimetres(0), "0 mm");
  EXPECT_EQ(millimetres(-1), "-25.4 mm");
  EXPECT_EQ(millimetres(-0.0001), "0 mm");
  EXPECT_EQ(millimetres(0.99 / 25.4), "1 mm");
}

TEST(Length, PrintsInTheStyleOfTheJob) {
  EXPECT_EQ(printLength(147.625, LengthStyle::FeetInches), "12'-3 5/8\"");
  EXPECT_EQ(printLength(12.5, LengthStyle::Millimetres), "317.5 mm");
  EXPECT_EQ(printMeasure(14.03125, LengthStyle::FeetInches, 32), "14 1/32\"");
  EXPECT_EQ(printMeasure(12.5, LengthStyle::Millimetres), "317.5 mm");
}

TEST(Length, PrintsAnyNumberWithoutHarm) {
  for (const double strange : {std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity(),
                               std::numeric_limits<double>::quiet_NaN()}) {
    EXPECT_EQ(feetInches(strange), "?");
    EXPECT_EQ(inches(strange), "?");
    EXPECT_EQ(millimetres(strange), "?");
  }
  EXPECT_EQ(feetInches(1.2e15), "100000000000000'-0\"");
  EXPECT_EQ(inches(std::numeric_limits<double>::max()).size(), 310u);
  EXPECT_EQ(inches(std::numeric_limits<double>::denorm_min()), "0\"");
  EXPECT_EQ(inches(0.5, 0), "1\"");
  EXPECT_EQ(inches(0.51, 1000), "33/64\"");
}

TEST(Length, EverySixteenthSurvivesPrintAndRead) {
  for (int sixteenths = -100 * 12 * 16; sixteenths <= 100 * 12 * 16; ++sixteenths) {
    const double length = sixteenths / 16.0;
    ASSERT_EQ(read(feetInches(length)), length) << feetInches(length);
    ASSERT_EQ(read(inches(length)), length) << inches(length);
    ASSERT_NEAR(read(millimetres(length)), length, 0.0501 / 25.4) << millimetres(length);
  }
}

TEST(Length, AnyLengthSurvivesPrintAndReadToTheRounding) {
  std::mt19937 random(1);
  std::uniform_real_distribution<double> exponent(-3, 6);
  for (int i = 0; i < 20000; ++i) {
    const double length = (i % 2 ? 1 : -1) * (std::pow(10, exponent(random)) - 0.001);
    for (const int denominator : {1, 2, 4, 8, 16, 32, 64}) {
      const double rounded = roundTo(length, 1.0 / denominator);
      ASSERT_LE(std::abs(rounded - length), 0.5 / denominator);
      ASSERT_EQ(read(feetInches(length, denominator)), rounded) << length;
      ASSERT_EQ(read(inches(length, denominator)), rounded) << length;
    }
    for (const LengthStyle style : {LengthStyle::FeetInches, LengthStyle::Millimetres})
      ASSERT_NEAR(read(printLength(length, LengthStyle::Millimetres), style), length, 0.0501 / 25.4);
  }
}

TEST(Length, GarbageNeverGivesAnythingButAFiniteLengthOrAPlace) {
  const std::vector<std::string> pieces = {
      "1", "2",  "8",  "16",   "0",   "9999999", ".", "'",     "\"",       "’",
      "″", "/",  "-",  "−",    " ",   "½",       "⅓", "ft",    "in",       "mm",
      "m", "cm", "e5", "\xFF", "inf", "12",      ",", "3 5/8", "\xE2\x80", std::string(1, '\0')};
  std::mt19937 random(2);
  std::uniform_int_distribution<std::size_t> pick(0, pieces.size() - 1);
  std::uniform_int_distribution<int> howMany(0, 12);
  std::uniform_int_distribution<int> anyByte(0, 255);
  int readable = 0;
  for (int i = 0; i < 200000; ++i) {
    std::string text;
    for (int n = howMany(random); n > 0; --n)
      text += i % 4 == 0 ? std::string(1, static_cast<char>(anyByte(random))) : pieces[pick(random)];
    const Result<double> length = parseLength(text, i % 3 ? LengthStyle::FeetInches : LengthStyle::Millimetres);
    if (length) {
      ++readable;
      ASSERT_LE(std::abs(*length), 1e6) << text;
    } else {
      ASSERT_EQ(length.problem().place.rfind("character ", 0), 0u);
      const int character = std::stoi(length.problem().place.substr(10));
      ASSERT_GE(character, 1);
      ASSERT_LE(character, static_cast<int>(text.size()) + 1) << text;
      ASSERT_FALSE(length.problem().message.empty());
    }
  }
  EXPECT_GT(readable, 1000); // the mixture must reach past the refusals
}

TEST(Length, RoundsToTheNearestMark) {
  EXPECT_EQ(roundTo(3.03, 1.0 / 16), 3.0);
  EXPECT_EQ(roundTo(3.04, 1.0 / 16), 3.0625);
  EXPECT_EQ(roundTo(3.03125, 1.0 / 16), 3.0625);
  EXPECT_EQ(roundTo(-3.03125, 1.0 / 16), -3.0625);
  EXPECT_EQ(roundTo(17, 16), 16);
  EXPECT_EQ(roundTo(3.3, 0), 3.3);
}

} // namespace
} // namespace sillwright
