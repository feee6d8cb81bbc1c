// How wide text is, without asking a toolkit, and how fractions are built. The family is B612: regular and bold have
// the same advance for every letter. Sizes and widths in the same unit (pt).
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sillwright {

// One stretch of a line of text that is set at one size on one level.
struct TextRun {
  std::string text;
  double x = 0;    // from the start of the line
  double rise = 0; // up from the base line
  double size = 0;
};

// Of the size.
inline constexpr double capHeight = 0.75;
inline constexpr double letterRise = 0.81; // l, d, and raised numerators; accented capitals reach 0.96

// How far the letters of a line reach below its base line, of the size.
double letterDrop(std::string_view line);

// Splits a line into runs: fractions n/2, /4, /8, /16, /32, /64 become a raised numerator, a slash and a denominator
// (0.70, 0.86, 0.70 of the size, raised 0.27, 0.09 after whole inches). Joined, the runs' texts are the line itself, so
// that search and screen readers see it whole. A mark before a number (V18 5/8") is never its whole part.
std::vector<TextRun> textRuns(std::string_view line, double size);

double textWidth(std::string_view line, double size);

// Lines of at most width, broken at blanks; a longer word stands alone.
std::vector<std::string> wrapped(std::string_view text, double size, double width);

} // namespace sillwright
