// Numbers for text back ends, the same in every locale.
#pragma once

#include <string>

namespace sillwright {

// Fixed to at most `decimals` (0 … 9), without trailing zeros and without a minus before zero: 1.5, 12, -0.25.
std::string plainNumber(double value, int decimals);

} // namespace sillwright
