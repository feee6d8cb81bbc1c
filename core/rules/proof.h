// Trying a correction on a copy of the wall before it is offered.
#pragma once

#include <optional>

#include "core/model/layout.h"
#include "core/model/lookup.h"
#include "core/rules/draft.h"
#include "core/rules/limits.h"

namespace sillwright {

struct RuleRow;

// What the rules hand in about a wall, in the order of the rule book, as far as each counts in the job.
Drafts draftsOf(const WallLayout& layout, const ResolvedLimits& limits);

// Whether a rule may say something else after one piece of that kind has moved. Nothing else in a wall stands on a
// strap, a bolt, a rod or a bar, so most rules need not be asked again.
bool mayChange(const RuleRow& row, PieceKind moved);

// Done to a copy of the wall, the correction cures the finding and brings nothing as bad or worse; `before` is all that
// the rules hand in about the wall as it is.
bool proved(const WallLayout& layout, const ResolvedLimits& limits, const Drafts& before, const Finding& finding,
            const Correction& correction);

// Whether on the way to the end of a correction the finding gets worse before it goes.
bool goesPast(const WallLayout& layout, const ResolvedLimits& limits, const Finding& finding,
              const Correction& correction);

// Where a move ends on the next obstacle: on past that, and past the one after it, the same way.
std::optional<Correction> movedOn(const WallLayout& layout, const ResolvedLimits& limits, const Drafts& before,
                                  const Finding& finding, Correction move);

} // namespace sillwright
