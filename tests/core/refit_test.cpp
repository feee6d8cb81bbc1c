// A refit against the rule checker: on walls of every sort what it proposes breaks nothing, costs what the checker
// counts, is the best there is nearby, and stays as it is when done again.
#include <gtest/gtest.h>

#include <random>

#include "core/base/tolerance.h"
#include "core/refit/marks.h"
#include "core/refit/refit.h"
#include "core/refit/slots.h"
#include "core/rules/concrete_cover.h"
#include "core/rules/proof.h"
#include "core/rules/rule_book.h"
#include "tests/support/broken_job.h"
#include "tests/support/disturbed_job.h"
#include "tests/support/generate_job.h"
#include "tests/support/mirror_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

// What a proposal counts beside FIX: rules of where straps, bolts and rods stand.
bool isCounted(const Finding& finding) {
  switch (finding.rule) {
  case RuleId::BoltCover: // over and under it says nothing of where it stands
    return fieldOf(static_cast<CoverFace>(finding.variant)) != Correction::Field::Height;
  case RuleId::StrapEdge:
  case RuleId::StrapSteel:
  case RuleId::StrapDepth:
  case RuleId::StrapBack:
  case RuleId::StrapSeam:
  case RuleId::StrapNailEdge:
  case RuleId::BoltSteel:
  case RuleId::BoltStrap:
  case RuleId::BoltGap:
  case RuleId::WasherColumn:
  case RuleId::RodSteel:
  case RuleId::RodEdge:
  case RuleId::RodCover:
  case RuleId::PanelLever:
    return true;
  default:
    return false;
  }
}

struct Counted {
  int fix = 0; // about what a refit may move
  int ask = 0;
  int watch = 0;
};

Counted countedOn(const WallLayout& layout, const ResolvedLimits& limits) {
  Counted counted;
  for (const Draft& draft : draftsOf(layout, limits)) {
    const Finding& finding = draft.finding;
    const bool movable = std::any_of(finding.pieces.begin(), finding.pieces.end(), [&](Id piece) {
      return findIn(layout.wall->straps, piece) || findIn(layout.wall->bolts, piece) ||
             findIn(layout.wall->rods, piece);
    });
    counted.fix += finding.level == Level::Fix && isOfPosition(finding.rule) &&
                   (movable || finding.rule == RuleId::BoltCount || finding.rule == RuleId::StrapMissing);
    counted.ask += finding.level == Level::Ask && isCounted(finding);
    counted.watch += finding.level == Level::Watch && isCounted(finding);
  }
  return counted;
}

WallLine applied(const WallLine& wall, const std::vector<Change>& changes) {
  WallLine changed = wall;
  std::uint32_t next = 900000;
  for (Change change : changes) {
    if (!change.before)
      std::visit([&](auto& piece) { piece.id = Id{next++}; }, *change.after);
    changed = withChange(changed, change);
  }
  return changed;
}

WallLayout with(const WallLayout& layout, const WallLine& wall) {
  return layOut(std::make_shared<const WallLine>(wall), layout.types, layout.limits, layout.marks, layout.place);
}

std::string countedRules(const WallLayout& layout, const ResolvedLimits& limits, Level level) {
  std::string rules = "\n counted:";
  for (const Draft& draft : draftsOf(layout, limits))
    if (draft.finding.level == level && isCounted(draft.finding)) {
      rules += " " + std::string(rule(draft.finding.rule).name);
      for (const Id piece : draft.finding.pieces)
        rules += " " + std::to_string(piece.value);
    }
  return rules;
}

struct Seen {
  int walls = 0, laidOut = 0, moved = 0, added = 0, removed = 0, none = 0, problems = 0, acrossWall = 0;
};

std::string wordsOf(const WallLayout& layout, const Proposal& proposal) {
  std::string words = "wall " + layout.wall->mark + ":";
  for (const Change& change : proposal.changes) {
    const auto before = standBefore(*layout.wall, change), after = standAfter(*layout.wall, change);
    words += " " + std::string(tradeName(kindOf(change))) + " " + std::to_string(pieceOf(change).value) + " " +
             (before ? std::to_string(before->station) : "new") + ">" +
             (after ? std::to_string(after->station) : "gone");
  }
  return words;
}

void expectSound(const WallLayout& layout, const ResolvedLimits& limits, Seen& seen) {
  ++seen.walls;
  const auto answer = refit(layout, limits);
  if (!answer) {
    ++seen.problems;
    EXPECT_EQ(answer.problem().message.find("by hand"), std::string::npos) << answer.problem().text();
    return;
  }
  if (const auto* none = std::get_if<NoLayout>(&*answer)) {
    ++seen.none;
    EXPECT_FALSE(none->requirements.empty());
    return;
  }
  const Proposal& proposal = std::get<Proposal>(*answer);
  ++seen.laidOut;
  for (const Change& change : proposal.changes) {
    seen.added += !change.before;
    seen.removed += !change.after;
    seen.moved += change.before && change.after;
    seen.acrossWall += change.before && change.after &&
                       standBefore(*layout.wall, change)->depth != standAfter(*layout.wall, change)->depth;
  }
  const WallLayout after = with(layout, applied(*layout.wall, proposal.changes));
  const Counted counted = countedOn(after, limits);
  EXPECT_EQ(counted.fix, 0) << wordsOf(layout, proposal);
  const auto again = refit(after, limits);
  ASSERT_TRUE(again) << again.problem().text();
  ASSERT_TRUE(std::holds_alternative<Proposal>(*again));
  EXPECT_TRUE(std::get<Proposal>(*again).changes.empty())
      << wordsOf(layout, proposal) << " then " << wordsOf(after, std::get<Proposal>(*again));

  const bool crossesStep = std::any_of(layout.sills.begin(), layout.sills.end(), [&](const SillPiece& piece) {
    return std::any_of(layout.wall->steps.begin(), layout.wall->steps.end(), [&](const PourStep& step) {
      return piece.box.s.contains(step.from) || piece.box.s.contains(step.to);
    });
  });
  if (crossesStep) // a sill lies level: over a step its bolts count as at its middle
    return;
  EXPECT_EQ(counted.ask, proposal.cost.ask) << wordsOf(layout, proposal) << countedRules(after, limits, Level::Ask);
  EXPECT_EQ(counted.watch, proposal.cost.watch)
      << wordsOf(layout, proposal) << countedRules(after, limits, Level::Watch);
}

void expectSound(const Job& job, Seen& seen) {
  const ResolvedLimits limits = resolve(*job.limits);
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    expectSound(layOut(job, job.walls.pointer(i)), limits, seen);
}

TEST(Refit, ofWallsWithSteelElsewhereBreaksNothingAndCostsWhatTheCheckerCounts) {
  std::mt19937 random(12);
  Seen seen;
  for (std::uint64_t seed = 1; seed <= 40; ++seed)
    expectSound(disturbed(soundJob(seed), random), seen);
  std::cout << seen.walls << " walls, laid out " << seen.laidOut << ", no layout " << seen.none << ", problems "
            << seen.problems << "; moved " << seen.moved << ", across " << seen.acrossWall << ", added " << seen.added
            << ", removed " << seen.removed << "\n";
  EXPECT_GT(seen.laidOut, 150);
  EXPECT_GT(seen.moved, 200);
  EXPECT_GT(seen.added, 20);
}

TEST(Refit, ofSoundAndOfBrokenWallsBreaksNothingAndCostsWhatTheCheckerCounts) {
  std::mt19937 random(11);
  Seen seen;
  for (const Job& job : {support::boatShedFront(), support::boatShedFrontSteelMoved(), support::ridgeHouse(),
                         support::punchListPractice()})
    expectSound(job, seen);
  for (std::uint64_t seed = 1; seed <= 36; ++seed) {
    const Job sound = seed % 4 == 0   ? support::ridgeHouse()
                      : seed % 4 == 1 ? support::boatShedFront()
                      : seed % 4 == 2 ? support::punchListPractice()
                                      : generateJob(seed, 80);
    expectSound(broken(sound, random), seen);
  }
  std::cout << seen.walls << " walls, laid out " << seen.laidOut << ", no layout " << seen.none << ", problems "
            << seen.problems << "; moved " << seen.moved << ", across " << seen.acrossWall << ", added " << seen.added
            << ", removed " << seen.removed << "\n";
  EXPECT_GT(seen.laidOut, 70);
}

// Seen in a mirror it costs the same and has the same room; where it stands may differ only where both are as good.
TEST(Refit, ofAWallSeenInAMirrorCostsTheSame) {
  std::mt19937 random(13);
  int compared = 0, none = 0;
  for (std::uint64_t seed = 1; seed <= 24; ++seed) {
    const Job job = disturbed(soundJob(seed), random), mirror = mirrored(job);
    const ResolvedLimits limits = resolve(*job.limits);
    for (std::size_t i = 0; i < job.walls.size(); ++i) {
      const auto one = refit(layOut(job, job.walls.pointer(i)), limits);
      const auto other = refit(layOut(mirror, mirror.walls.pointer(i)), limits);
      ASSERT_EQ(one.ok(), other.ok());
      if (!one)
        continue;
      ASSERT_EQ(one->index(), other->index()) << "seed " << seed << " wall " << job.walls[i].mark;
      if (const auto* proposal = std::get_if<Proposal>(&*one)) {
        EXPECT_EQ(proposal->cost, std::get<Proposal>(*other).cost) << "seed " << seed << " wall " << job.walls[i].mark;
        EXPECT_EQ(proposal->room, std::get<Proposal>(*other).room) << "seed " << seed << " wall " << job.walls[i].mark;
        ++compared;
      } else {
        ++none;
      }
    }
  }
  EXPECT_GT(compared, 90);
  EXPECT_GT(none, 1);
}

} // namespace
} // namespace sillwright
