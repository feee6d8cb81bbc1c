// Corrections are proved without asking every rule again: those that are not asked would say what they said before.
#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>

#include "core/rules/correction.h"
#include "core/rules/proof.h"
#include "core/rules/rule_book.h"
#include "tests/support/broken_job.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

bool sameDrafts(const Drafts& a, const Drafts& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Draft& x, const Draft& y) {
    return x.finding == y.finding && correctionsOf(x) == correctionsOf(y);
  });
}

Drafts draftsOfRow(const RuleRow& row, const WallLayout& layout, const ResolvedLimits& limits) {
  Drafts drafts;
  row.check(layout, limits, drafts);
  return drafts;
}

class Trial {
public:
  explicit Trial(unsigned seed) : random_(seed) {}

  void tryWall(const Job& job, std::size_t wall) {
    const WallLayout layout = layOut(job, job.walls.pointer(wall));
    const ResolvedLimits limits = resolve(*job.limits);
    for (const Strap& strap : layout.wall->straps)
      tryPiece(layout, limits, PieceKind::Strap, strap.id, {Field::Station, Field::Height});
    for (const Bolt& bolt : layout.wall->bolts)
      tryPiece(layout, limits, PieceKind::Bolt, bolt.id, {Field::Station, Field::Depth, Field::Projection, Field::Hook});
    for (const Rod& rod : layout.wall->rods)
      tryPiece(layout, limits, PieceKind::Rod, rod.id, {Field::Station, Field::Depth, Field::Projection});
    for (const Bar& bar : layout.wall->bars)
      tryPiece(layout, limits, PieceKind::Bar, bar.id, {Field::Station, Field::Depth, Field::Height});
  }

  std::set<RuleId> changed; // rules that did say something else

private:
  using Field = Correction::Field;

  void tryPiece(const WallLayout& layout, const ResolvedLimits& limits, PieceKind kind, Id piece,
                const std::vector<Field>& fields) {
    if (random_() % 4 != 0)
      return;
    const Field field = fields[random_() % fields.size()];
    const Correction way{field, piece, static_cast<double>(random_() % 129) / 8.0 - 8, {}};
    const auto wall = std::make_shared<const WallLine>(corrected(*layout.wall, way));
    const WallLayout after = layOut(wall, layout.types, layout.limits, layout.marks, layout.place);
    for (const RuleRow& row : ruleBook()) {
      if (sameDrafts(draftsOfRow(row, layout, limits), draftsOfRow(row, after, limits)))
        continue;
      changed.insert(row.id);
      EXPECT_TRUE(mayChange(row, kind)) << row.name << " after a " << tradeName(kind) << " moved by " << way.by;
    }
  }

  std::mt19937 random_;
};

TEST(Proof, asksEveryRuleThatMayHaveChanged) {
  Trial trial(4);
  std::mt19937 random(9);
  for (std::uint64_t seed = 1; seed <= 24; ++seed) {
    const Job job = broken(seed % 3 ? generateJob(seed, 150) : support::ridgeHouse(), random);
    for (std::size_t i = 0; i < job.walls.size(); ++i)
      trial.tryWall(job, i);
  }
  EXPECT_GT(trial.changed.size(), 30u); // so that a rule left out by mistake would be seen
}

} // namespace
} // namespace sillwright
