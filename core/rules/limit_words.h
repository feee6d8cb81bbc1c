// Words for the numbers of the rule book: a limit with its unit, which side of it is right, where it comes from.
#pragma once

#include <string>

#include "core/model/job.h"
#include "core/rules/limits.h"

namespace sillwright {

// 1/2" in the style of the job, 2.5 diameters, 400 plf …
std::string limitWords(const Job& job, const LimitRow& row, double value);
// "at least", "at most"; "from" where the number only says when the rule holds.
std::string_view sideWords(Wanted wanted);
// "IRC 2024 R403.1.6, published"; "common practice"; "hardware type"; "plans".
std::string sourceWithStatus(const Source& source);
// "reason (who, date)", as far as they are said.
std::string groundsWords(const std::string& reason, const std::string& who, const std::string& date);
// "ASK at most", "WATCH at most", "not looked at"
std::string_view countsWords(RuleCounts counts);

} // namespace sillwright
