// Anchor bolts through sills: how many, how far apart, how deep.
#pragma once

#include "core/standards/source.h"

namespace sillwright {

inline constexpr Source sillBoltSource{"IRC 2024 R403.1.6", Status::Published};
inline constexpr NamedNumber boltsInPiece{"bolts in each piece of sill, at least", 2, "", sillBoltSource};
inline constexpr NamedNumber oneBoltWall{"wall joining two others that one bolt holds, up to", 24, "in",
                                         sillBoltSource};
inline constexpr NamedNumber noBoltWall{"wall joining two others that needs none, up to", 12, "in", sillBoltSource};
inline constexpr NamedNumber boltEndFar{"end bolt to the end of its piece, at most", 12, "in", sillBoltSource};
inline constexpr NamedNumber boltEndNear{"bolt to the end of its piece, at least", 7, "d", sillBoltSource};
inline constexpr NamedNumber boltSpacing{"between bolts, at most", 72, "in", sillBoltSource};
inline constexpr NamedNumber boltEmbedment{"in the concrete, at least", 7, "in", sillBoltSource};

inline constexpr Source tallSillBoltSource{"IRC 2024 R403.1.6.1", Status::Published};
inline constexpr NamedNumber boltSpacingTall{"between bolts over two storeys, at most", 48, "in", tallSillBoltSource};

} // namespace sillwright
