// What the rules of bolts and of rods share: both are cast in, stand up through a sill and keep clear of bars. Inches.
#pragma once

#include <span>
#include <vector>

#include "core/geometry/clearance.h"
#include "core/model/layout.h"
#include "core/rules/draft.h"
#include "core/rules/limits.h"
#include "core/rules/thread_stack.h"

namespace sillwright {

Box3 shankBox(const AnchorBody& anchor, Interval z);
// Across flats; the diameter where that nut is not tabulated.
Box3 nutBox(const AnchorBody& anchor);
// Shank with hook, head or foot plate.
std::vector<Capsule> partsOf(const AnchorBody& anchor);
double projectionOf(const AnchorBody& anchor);
bool hasHook(const AnchorBody& anchor);
// How far a hook comes out of the concrete, through its faces, ends or bottom; 0 where it is inside.
double outsideConcrete(const WallLayout& layout, const AnchorBody& bolt, const Box3& hook);

// Nothing where it goes through no sill, or its nut is not tabulated.
std::optional<ThreadStack> stackOn(const WallLayout& layout, const AnchorBody& anchor, double standoutThreads);

// Each files what it finds of one anchor, under the rule it is asked for.
struct ThreadLimits {
  double standoutThreads = 0;
  double spare = 0;
};
void checkThread(const WallLayout& layout, RuleId rule, const ThreadLimits& limits, const AnchorBody& anchor,
                 Drafts& drafts);
void checkEmbed(const WallLayout& layout, RuleId rule, double least, const AnchorBody& anchor, Drafts& drafts);
void checkOpening(const WallLayout& layout, RuleId rule, const AnchorBody& anchor, Drafts& drafts);
// ACI 318-19 Table 20.5.1.3.1, as over a bar of the same thickness.
void checkCover(const WallLayout& layout, RuleId rule, const AnchorBody& anchor, Drafts& drafts);
void checkClearOf(const WallLayout& layout, RuleId rule, double target, const AnchorBody& anchor, const BarBody& bar,
                  Drafts& drafts);
void checkClearOf(const WallLayout& layout, RuleId rule, double target, const AnchorBody& anchor, const StrapBody& strap,
                  Drafts& drafts);
void checkClearOf(const WallLayout& layout, RuleId rule, double target, const AnchorBody& anchor,
                  const AnchorBody& other, Drafts& drafts);

} // namespace sillwright
