// The words of a job file for everything that is one of a few.
#pragma once

#include <array>
#include <string_view>

#include "core/base/length.h"
#include "core/model/hardware.h"
#include "core/model/job.h"
#include "core/model/wall.h"

namespace sillwright {

// In the order of the enumeration.
template <class Enum> inline constexpr std::array<std::string_view, 0> fileWords{};
template <> inline constexpr std::array<std::string_view, 2> fileWords<LengthStyle>{"feet and inches", "millimetres"};
template <> inline constexpr std::array<std::string_view, 3> fileWords<BoltEnd>{"L", "J", "headed"};
template <> inline constexpr std::array<std::string_view, 2> fileWords<SlotDirection>{"along", "across"};
template <> inline constexpr std::array<std::string_view, 2> fileWords<EdgeKind>{"stem wall", "thickened edge"};
template <> inline constexpr std::array<std::string_view, 2> fileWords<EndFraming>{"runs by", "butts"};
template <> inline constexpr std::array<std::string_view, 2> fileWords<Side>{"left", "right"};
template <> inline constexpr std::array<std::string_view, 3> fileWords<OpeningKind>{"door", "garage door", "window"};
template <> inline constexpr std::array<std::string_view, 3> fileWords<ColumnRole>{"king", "trimmer", "post"};
template <> inline constexpr std::array<std::string_view, 3> fileWords<Sheathing>{"outside", "inside", "both"};
template <> inline constexpr std::array<std::string_view, 4> fileWords<HookDirection>{"inward", "outward", "left", "right"};
template <> inline constexpr std::array<std::string_view, 3> fileWords<RuleCounts>{"ask", "watch", "none"};
template <> inline constexpr std::array<std::string_view, 2> fileWords<BarRun>{"upright", "along"};

} // namespace sillwright
