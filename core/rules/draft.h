// What a rule hands in: a finding, and the corrections that may cure it. The rule book tries them before it offers one.
#pragma once

#include <functional>
#include <vector>

#include "core/rules/finding.h"

namespace sillwright {

struct Draft {
  Finding finding;
  std::vector<Correction> corrections; // best first; none of them proved yet
  // Further ones that take some searching; asked for only where a correction is wanted. Holds nothing of the layout.
  std::function<std::vector<Correction>()> search{};
};

inline std::vector<Correction> correctionsOf(const Draft& draft) {
  std::vector<Correction> all = draft.corrections;
  if (draft.search)
    for (const Correction& found : draft.search())
      all.push_back(found);
  return all;
}
using Drafts = std::vector<Draft>;

} // namespace sillwright
