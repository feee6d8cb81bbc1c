// What one bolt in single shear carries across the joint of two members: the six yield modes of NDS 2018 12.3.1.
// Lengths in inches, strengths in psi, values in lb.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

#include "core/standards/source.h"
#include "core/standards/species.h"

namespace sillwright {

// m: the main member (here the concrete), s: the side member (here the sill).
enum class YieldMode : std::uint8_t { Im, Is, II, IIIm, IIIs, IV };
inline constexpr std::array<std::string_view, 6> yieldModeNames{"Im", "Is", "II", "IIIm", "IIIs", "IV"};

inline constexpr Source boltValueSource{"NDS 2018 12.3.1", Status::Published};
inline constexpr NamedNumber boltBendingYield{"bolt, bending yield strength", 45000, "psi", boltValueSource};
inline constexpr NamedNumber windOrSeismicDuration{
    "load duration factor for wind and earthquake", 1.6, "", {"NDS 2018 Table 2.3.2", Status::Published}};

struct SingleShear {
  double diameter = 0;
  double mainLength = 0; // of the bolt in the main member
  double sideLength = 0;
  double mainBearing = 0;
  double sideBearing = 0;
  double bendingYield = boltBendingYield.value;
  double angle = 0; // degrees, the largest of load to grain in either member
};

struct BoltValue {
  std::array<double, 6> modes{}; // in the order of YieldMode, divided by their reduction terms
  YieldMode governing = YieldMode::Im;
  double reference() const { return modes[static_cast<std::size_t>(governing)]; } // the least; not rounded
};

// Nothing for bolts outside 1/4 to 1 in, which have other reduction terms, for angles outside 0 to 90° and for anything
// else that is not more than zero.
std::optional<BoltValue> boltValue(const SingleShear& joint);

// A sill of that dressed thickness on concrete, with the bolt that deep in it.
std::optional<BoltValue> sillBoltValue(double diameter, double sillThickness, const Species& sill, double embedment,
                                       double angle = 0);

} // namespace sillwright
