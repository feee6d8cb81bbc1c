// What a rule hands in: a finding, and the corrections that may cure it. The rule book tries them before it offers one.
#pragma once

#include <vector>

#include "core/rules/finding.h"

namespace sillwright {

struct Draft {
  Finding finding;
  std::vector<Correction> corrections; // best first; none of them proved yet
};
using Drafts = std::vector<Draft>;

} // namespace sillwright
