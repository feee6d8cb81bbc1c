// Bringing texts of earlier format numbers up to the current one.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "core/base/result.h"

namespace sillwright {

// Turns the JSON text of one format number into that of the next.
using Migration = Result<std::string> (*)(std::string_view);

// migrations()[i] turns format i + 1 into format i + 2; as many as there are earlier formats.
std::span<const Migration> migrations();

// Applies steps to text of format number `from` until it is of number steps.size() + 1. text is given back as it is
// where nothing is to do. Errors: place "format" where the number is not one this program reads, or those of a step.
Result<std::string> migrated(std::string text, int from, std::span<const Migration> steps);

} // namespace sillwright
