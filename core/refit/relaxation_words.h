// What one requirement alone would have to give, in words; used by refit_words and question only.
#pragma once

#include <string>

#include "core/base/length.h"
#include "core/refit/refit.h"

namespace sillwright {

// "S1 7/16\" nearer to the left end of the concrete than its type says". Says how much it would take, not that it may
// be done. Empty where no amount is enough.
std::string givingWords(const WallLayout& layout, const Requirement& requirement, LengthStyle style);

} // namespace sillwright
