// What a rule waits for: a number of the plans, the hardware's instructions or a reading that the job does not have
// yet. Without it the rule is silent about the piece that lacks it. Looks at what is entered, not at where things lie.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/ids.h"
#include "core/model/job.h"
#include "core/rules/finding.h"

namespace sillwright {

// A piece, wall, hardware type or mark that lacks it.
struct Lacking {
  std::string name; // "SP1, wall A"; "HD1"
  PieceRef at;      // empty for types and marks
  bool operator==(const Lacking&) const = default;
};

struct Waiting {
  std::string_view input;     // "shear to carry"; all of the sentence where nothing of a kind lacks it
  std::string_view kind;      // "panel"; empty where it is the job as a whole
  std::size_t count = 0;      // of those that lack it
  std::vector<Lacking> first; // not all where there are many
  bool operator==(const Waiting&) const = default;
};

// In the order in which they are worth entering; empty where nothing is lacking.
std::vector<Waiting> waitsFor(const Job& job, RuleId rule);

// "Waits for the shear to carry of 2 panels: SP1, wall A; SP2, wall B."
std::string waitingWords(const Waiting& waiting);

} // namespace sillwright
