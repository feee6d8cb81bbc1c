// Where every target is met, against the rule checker: there nothing is asked or watched about where the piece stands.
#include <gtest/gtest.h>

#include <random>
#include <set>

#include "core/base/tolerance.h"
#include "core/refit/marks.h"
#include "core/refit/slots.h"
#include "core/rules/correction.h"
#include "core/rules/proof.h"
#include "core/rules/rule_book.h"
#include "tests/support/disturbed_job.h"

namespace sillwright {
namespace {

const std::set<RuleId> ofPlace{RuleId::StrapEdge, RuleId::StrapSteel, RuleId::StrapDepth,    RuleId::StrapBack,
                               RuleId::StrapSeam, RuleId::BoltSteel,  RuleId::StrapNailEdge, RuleId::BoltStrap,
                               RuleId::BoltGap,   RuleId::BoltCover,  RuleId::WasherColumn,  RuleId::RodSteel,
                               RuleId::RodEdge,   RuleId::RodCover};

std::set<std::string> missedAt(const WallLayout& layout, const ResolvedLimits& limits, Id piece, double by) {
  const WallLine moved = corrected(*layout.wall, {Correction::Field::Station, piece, by});
  const WallLayout there =
      layOut(std::make_shared<const WallLine>(moved), layout.types, layout.limits, layout.marks, layout.place);
  std::set<std::string> missed;
  for (const Draft& draft : draftsOf(there, limits)) {
    const Finding& finding = draft.finding;
    if (finding.level != Level::Fix && ofPlace.contains(finding.rule) &&
        std::find(finding.pieces.begin(), finding.pieces.end(), piece) != finding.pieces.end())
      missed.insert(std::string(rule(finding.rule).name));
  }
  return missed;
}

TEST(TargetsMet, areWhereTheCheckerAsksAndWatchesNothing) {
  std::mt19937 random(31);
  int met = 0, notMet = 0;
  for (std::uint64_t seed = 1; seed <= 14; ++seed) {
    const Job job = disturbed(soundJob(seed), random);
    const ResolvedLimits limits = resolve(*job.limits);
    for (std::size_t i = 0; i < job.walls.size(); ++i) {
      const WallLayout layout = layOut(job, job.walls.pointer(i));
      std::vector<Id> pieces;
      for (const Strap& strap : layout.wall->straps)
        pieces.push_back(strap.id);
      for (const AnchorBody& anchor : layout.anchors)
        pieces.push_back(anchor.id);
      for (const Id piece : pieces)
        for (const BoundedSlot& slot : slotsInHand(layout, limits, piece, false)) {
          const double now = *stationOf(*layout.wall, piece);
          const Strap* strap = findIn(layout.wall->straps, piece);
          const Column* column = strap ? findIn(layout.wall->columns, strap->column) : nullptr;
          for (int k = 0; k < 3; ++k) {
            const sequence::Stretch marks = marksIn(slot.stations);
            if (marks.from > marks.to)
              continue;
            const double at = inchesOf(marks.from + static_cast<int>(random() % (marks.to - marks.from + 1)));
            const bool otherColumn =
                column && !grown(around(column->station, 0), alongWall(column->makeUp) / 2).contains(at);
            if (otherColumn || std::abs(pourAt(layout, at) - pourAt(layout, now)) > tolerance::same)
              continue;
            const bool says = std::any_of(slot.met.begin(), slot.met.end(),
                                          [&](Interval part) { return grown(part, tolerance::rounding).contains(at); });
            const auto missed = missedAt(layout, limits, piece, at - now);
            EXPECT_EQ(says, missed.empty())
                << "seed " << seed << " wall " << layout.wall->mark << " piece " << piece.value << " at " << at << " "
                << (missed.empty() ? "nothing" : *missed.begin());
            ++(missed.empty() ? met : notMet);
          }
        }
    }
  }
  EXPECT_GT(met, 300);
  EXPECT_GT(notMet, 100);
}

} // namespace
} // namespace sillwright
