// What was copied and what was left out, in words.
#pragma once

#include <span>
#include <string>

#include "core/edit/copies.h"

namespace sillwright {

// "S4 and B7", "S4, B7 and 3 more".
std::string marksInWords(std::span<const std::string> marks);
// "C4 and L2 stand there already; S3 is in the way; B9 would be past the end of the wall". Empty for nothing.
std::string leftOutWords(std::span<const LeftOut> leftOut);

} // namespace sillwright
