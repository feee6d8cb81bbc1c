// Dressed sizes of softwood lumber (PS 20): a nominal 3x6 is 2 1/2 x 5 1/2 in.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/standards/source.h"

namespace sillwright {

// Nominal inches, thickness first: {3, 6} is a 3x6.
struct Nominal {
  int thickness = 2;
  int width = 6;
  bool operator==(const Nominal&) const = default;
};

inline constexpr Source lumberSource{"PS 20", Status::Published};

inline constexpr double dressedTwo = 1.5; // thickness of studs, plates and plies of 2x

// Dressed inches of one nominal inch count (2, 3, 4, 6, 8, 10, 12); nothing for any other.
std::optional<double> dressed(int nominal);
std::span<const int> nominalSizes();

// Precondition: both numbers are nominal sizes.
double dressedThickness(Nominal size);
double dressedWidth(Nominal size);

std::string print(Nominal size);                       // "3x6"
std::optional<Nominal> parseNominal(std::string_view); // "3x6", "3 x 6", "3X6", "3×6"

} // namespace sillwright
