// Words for findings. English now; the words of a level also in Spanish.
#pragma once

#include <string>

#include "core/model/job.h"
#include "core/rules/finding.h"

namespace sillwright {

enum class Language { English, Spanish };

std::string_view word(Level level, Language language = Language::English); // FIX, CORREGIR …

// S1 · EDGE 3/8" < 1/2"
std::string markedLabel(const Job& job, const Finding& finding);
// EDGE 3/8" < 1/2", or the plain fact where there is no number
std::string label(const Job& job, const Finding& finding);
// One sentence that somebody who does not know the rule understands.
std::string message(const Job& job, const Finding& finding);
// Where: "plate to the left end of the concrete, at 0'-1 5/8\""
std::string whereabouts(const Job& job, const Finding& finding);
// The same without the station: "plate to the left end of the concrete"
std::string whatFallsShort(const Job& job, const Finding& finding);
// move it right 1/8" ; empty where there is no correction
std::string correctionWords(const Job& job, const Finding& finding);
// One of the ways of a finding, in the same words: its correction, or one of its other ways.
std::string wayWords(const Job& job, const Finding& finding, const Correction& way);
std::string wayShort(const Job& job, const Finding& finding, const Correction& way);
// What to do where no single change of a field cures it: "hang a strap there"; empty where there is a correction.
std::string adviceWords(const Finding& finding);
// right 1/8" ; for a button
std::string correctionShort(const Job& job, const Finding& finding);
// Document and clause, or "common practice", and whether the job overrides it.
std::string sourceWords(const Job& job, const Finding& finding);

} // namespace sillwright
