// Numbers as they are typed and shown in fields.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace sillwright {

// Digits with a point, nothing else. Nothing where it is no number, or not finite.
std::optional<double> readPlainNumber(std::string_view typed);
// Pounds, or pounds a foot, as people write them: 3800, 3,800, 3,800 lb, 520 plf.
std::optional<double> readLoad(std::string_view typed);
std::string plainDigits(double value); // at most four places behind the point

} // namespace sillwright
