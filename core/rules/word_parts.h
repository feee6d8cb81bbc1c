// Pieces of words that labels and sentences share; used by rules/wording, labels and sentences only.
#pragma once

#include <string>

#include "core/model/job.h"
#include "core/rules/finding.h"

namespace sillwright {

// The mark of the i-th piece of a finding, its number where it has none, nothing where there is no such piece.
std::string nameOf(const Job& job, const Finding& finding, std::size_t i);
// 0.375, 2: as short as it can be written.
std::string numberWords(double value);
// A ratio to two places, finer where it would read like the limit it misses.
std::string ratioWords(double value, double limit);
// A length to the sixteenth, finer where it would read like the limit it misses.
std::string measureWords(const Job& job, double value, double limit);
// 5,333 lb
std::string poundWords(double pounds);
std::string lengthWords(const Job& job, double value);
// What no tape shows, the thickness of a plate: 0.229" where it is no 64th, 1/4" where it is one.
std::string plateWords(const Job& job, double value);
// strap.edge tells the side and what ends there in one number; see checkStrapEdge.
std::string edgeWords(const Finding& finding);
// bar.cover tells the face in one number; see checkBarCover.
std::string faceWords(const Finding& finding);

} // namespace sillwright
