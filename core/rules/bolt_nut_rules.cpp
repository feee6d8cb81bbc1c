// Nuts on their threads: the thread reaches down to them, and the bolts of a wall stand up alike.
#include <algorithm>
#include <cmath>

#include "core/rules/anchor_checks.h"
#include "core/rules/measure.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

using Bolts = std::vector<const AnchorBody*>;

// Bolts on sills of one thickness belong together.
std::vector<Bolts> alike(const WallLayout& layout) {
  std::vector<std::pair<double, Bolts>> groups;
  for (const AnchorBody& bolt : layout.anchors) {
    if (bolt.isRod || !bolt.sillPiece)
      continue;
    const double thick = layout.sills[*bolt.sillPiece].box.z.length();
    auto group = std::find_if(groups.begin(), groups.end(),
                              [&](const auto& g) { return std::abs(g.first - thick) < tolerance::same; });
    if (group == groups.end())
      group = groups.insert(groups.end(), {thick, {}});
    group->second.push_back(&bolt);
  }
  std::vector<Bolts> all;
  for (auto& [thick, bolts] : groups)
    all.push_back(std::move(bolts));
  return all;
}

// What most of them stand up; of values that are as common the lowest.
double commonest(const Bolts& bolts) {
  double best = projectionOf(*bolts.front());
  std::ptrdiff_t most = 0;
  for (const AnchorBody* bolt : bolts) {
    const double value = projectionOf(*bolt);
    const auto same = std::count_if(bolts.begin(), bolts.end(), [&](const AnchorBody* other) {
      return std::abs(projectionOf(*other) - value) < tolerance::same;
    });
    if (same > most || (same == most && value < best)) {
      most = same;
      best = value;
    }
  }
  return best;
}

} // namespace

void checkBoltRunOut(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const AnchorBody& bolt : layout.anchors) {
    if (bolt.isRod || !bolt.sillPiece || bolt.boltType->threadLength <= 0)
      continue;
    const auto stack = stackOn(layout, bolt, limits[LimitKey::BoltStandoutThreads]);
    if (!stack)
      continue;
    const double nut = bolt.pour + stack->sill + stack->plateWasher + stack->cutWasher;
    const double thread = bolt.top - bolt.boltType->threadLength;
    const double below = nut - thread; // how far the thread goes on under the nut
    if (!under(below, 0))
      continue;
    Draft& draft = report(drafts, layout, RuleId::BoltRunOut, Level::Fix, {bolt.id},
                          {below, 0, shankBox(bolt, {nut, thread})});
    draft.corrections.push_back(move(bolt.id, Field::Projection, bolt.bolt->projection, below));
  }
}

void checkBoltMatch(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  const double limit = limits[LimitKey::BoltMatch];
  for (const Bolts& bolts : alike(layout)) {
    const double common = commonest(bolts);
    for (const AnchorBody* bolt : bolts) {
      const double off = projectionOf(*bolt) - common;
      if (!over(std::abs(off), limit))
        continue;
      const Box3 region = shankBox(*bolt, betweenValues(bolt->pour + common, bolt->top));
      Draft& draft = report(drafts, layout, RuleId::BoltMatch, Level::Watch, {bolt->id},
                            {std::abs(off), limit, region, Wanted::AtMost, Unit::Inch,
                             static_cast<std::uint8_t>(off < 0)});
      draft.corrections.push_back({Field::Projection, bolt->id, -off});
    }
  }
}

} // namespace sillwright
