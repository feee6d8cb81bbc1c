// Moves, requirements and the question to the engineer, in words.
#pragma once

#include <string>
#include <vector>

#include "core/base/length.h"
#include "core/refit/refit.h"

namespace sillwright {

// "strap S2: 3/4\" left", "bolt B3: 1 1/2\" right, 1/2\" inward", "bolt B5: taken out", "bolt added at 4'-2\"".
std::string changeWords(const WallLine& wall, const Change& change, LengthStyle style);
// "3 pieces move 1 3/8\" in all, 1 bolt added; smallest slide room 1/4\"", "nothing to do".
std::string proposalWords(const WallLine& wall, const Proposal& proposal, LengthStyle style);

// The first part of it: "3 pieces move 1 3/8\" in all, 1 bolt added"; empty where nothing changes.
std::string movesWords(const Proposal& proposal, LengthStyle style);
// The rest: "every target met; smallest slide room 1/4\"".
std::string targetsWords(const Proposal& proposal, LengthStyle style);

// One requirement with its numbers: "strap S1 stays clear of bar V3 (No. 5 at 1'-2 3/8\")".
std::string requirementWords(const WallLayout& layout, const ResolvedLimits& limits, const Requirement& requirement,
                             LengthStyle style);
// "would do alone: S1 7/16\" nearer to the corner"; empty where no amount is enough.
std::string relaxationWords(const WallLayout& layout, const Requirement& requirement, LengthStyle style);

// The question to the engineer, line by line: what collides, by how much, and what would help. Empty lines part
// paragraphs.
std::vector<std::string> questionLines(const Job& job, const WallLayout& layout, const ResolvedLimits& limits,
                                       const NoLayout& conflict);

} // namespace sillwright
