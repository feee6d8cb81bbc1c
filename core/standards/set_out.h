// How far forms, concrete and what is cast in may be off. In inches.
#pragma once

#include <array>
#include <span>

#include "core/standards/source.h"

namespace sillwright {

inline constexpr Source concreteWorkSource{"US government guide specification (ACI 117 values)", Status::Published};
inline constexpr NamedNumber formThicker{"wall up to 12 in, thicker by at most", 0.375, "in", concreteWorkSource};
inline constexpr NamedNumber formThinner{"wall up to 12 in, thinner by at most", 0.25, "in", concreteWorkSource};
inline constexpr NamedNumber formedElevation{"formed top, up or down by at most", 0.75, "in", concreteWorkSource};

inline constexpr Source workmanshipSource{"US residential workmanship guideline", Status::Published};
inline constexpr NamedNumber foundationLevel{"foundation, highest to lowest point", 0.5, "in", workmanshipSource};
inline constexpr NamedNumber foundationLevelWithin{"foundation level, looked at within", 240, "in", workmanshipSource};
inline constexpr NamedNumber squareDiagonal{"12-16-20 triangle, diagonal off by at most", 0.5, "in", workmanshipSource};
// The triangle itself: 12, 16 and 20 ft.
inline constexpr std::array<double, 3> squareTriangle{144, 192, 240};

inline constexpr Source embeddedSource{"ACI 117-90 2.3", Status::Published};
inline constexpr NamedNumber embeddedItems{"embedded items, off their place by at most", 1, "in", embeddedSource};

inline constexpr Source anchorRodSource{"AISC 303 7.5", Status::Published};
inline constexpr NamedNumber rodsInGroup{"two anchor rods of a group, off by at most", 0.125, "in", anchorRodSource};
inline constexpr NamedNumber rodGroups{"centres of adjacent rod groups, off by at most", 0.25, "in", anchorRodSource};

// All of the above.
std::span<const NamedNumber> setOutTolerances();

} // namespace sillwright
