// Shear panels: how slender they may be.
#pragma once

#include "core/standards/source.h"

namespace sillwright {

inline constexpr Source slenderPanelSource{"SDPWS 2021 4.3.3", Status::Published};
inline constexpr NamedNumber slenderFull{"height by length, full strength up to", 2, "", slenderPanelSource};
inline constexpr NamedNumber slenderMost{"height by length, at most", 3.5, "", slenderPanelSource};

} // namespace sillwright
