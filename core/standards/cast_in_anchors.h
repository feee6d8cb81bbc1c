// Anchors cast into concrete, in diameters of the anchor.
#pragma once

#include "core/standards/source.h"

namespace sillwright {

inline constexpr Source anchorSpacingSource{"ACI 318-19 Table 17.9.2(a)", Status::Published};
inline constexpr NamedNumber anchorSpacing{"between cast-in anchors, at least", 4, "d", anchorSpacingSource};
inline constexpr NamedNumber torquedSpacing{"between anchors whose nuts are torqued, at least", 6, "d",
                                            anchorSpacingSource};
inline constexpr NamedNumber torquedEdge{"anchor whose nut is torqued to the edge, at least", 6, "d",
                                         anchorSpacingSource};

inline constexpr Source hookLegSource{"ACI 318-19 17.6.3.2.2", Status::Published};
inline constexpr NamedNumber hookLegLeast{"leg of a hooked bolt, at least", 3, "d", hookLegSource};
inline constexpr NamedNumber hookLegMost{"leg of a hooked bolt, at most", 4.5, "d", hookLegSource};

} // namespace sillwright
