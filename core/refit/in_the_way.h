// Why a piece may not stand where it does, in words.
#pragma once

#include <string>

#include "core/refit/slots.h"

namespace sillwright {

// What speaks against where a piece stands, two or three words each: "bar V16, opening O1"; empty where it stands in a
// slot.
std::string inTheWay(const WallLayout& layout, const ResolvedLimits& limits, Id piece);

} // namespace sillwright
