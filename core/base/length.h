// Lengths as people write and read them. Inside the program a length is inches in a double.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.h"

namespace sillwright {

enum class LengthStyle { FeetInches, Millimetres };

// Reads a typed length: 12'-3 5/8"  12-3-5/8  12 3 5/8  147.625  3 5/8  3-5/8"  .5  310mm  3.10m  31 cm  24'  24ft 6in,
// with ASCII or typographic primes (' ’ ′, " ” ″), vulgar fractions (½ ⅝ …), the fraction slash and any dash; blanks
// around it are ignored. A leading minus (or −) makes the whole length negative. A bare number is inches, or
// millimetres when style says so; with two or three bare numbers the first is feet ("12 3", "12-3-5/8"), but a whole
// number before a fraction alone is inches ("3 5/8", "3-5/8"). Where bare numbers are millimetres, two of them need a
// fraction or a mark to be feet and inches, for "12 300" may be meant as 12,300 mm. Fractions are less than one, in
// halves to 64ths; inches after feet may be 12 or more (0'-14"). Errors: place is "character N" (1-based, counted in
// characters, not bytes), message says what was expected there. The result is always finite and within ±1,000,000 in.
Result<double> parseLength(std::string_view text, LengthStyle style = LengthStyle::FeetInches);

// 147.625 -> 12'-3 5/8"; 3.625 -> 0'-3 5/8"; always with feet, rounded to 1/denominator in (a power of two, 1 … 64),
// halves away from zero. All printers give "?" for what is not finite.
std::string feetInches(double inches, int denominator = 16);

// 147.625 -> 147 5/8"; never feet. 0 -> 0"; 0.375 -> 3/8".
std::string inches(double inches, int denominator = 16);

// 12.5 -> 317.5 mm (at most one decimal, none when whole).
std::string millimetres(double inches);

// A station or long length in the style of the job: feetInches or millimetres.
std::string printLength(double inches, LengthStyle style, int denominator = 16);

// A short measure in the style of the job: inches or millimetres.
std::string printMeasure(double inches, LengthStyle style, int denominator = 16);

// Nearest multiple of step (halves away from zero).
double roundTo(double inches, double step);

} // namespace sillwright
