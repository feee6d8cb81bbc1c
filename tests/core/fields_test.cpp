#include "core/edit/fields.h"

#include <gtest/gtest.h>

#include "edit_jobs.h"

using namespace sillwright;
using namespace sillwright::testing_jobs;

TEST(Fields, typingWhatAFieldShowsChangesNothing) {
  const Shed s = shed();
  std::vector<Id> all = piecesOf(*s.job.walls.find(s.wall));
  all.push_back({});
  for (const Id piece : all)
    for (const Field& field : fieldsOf(s.job, {s.wall, piece})) {
      const auto set = setField(s.job, {s.wall, piece}, field.key, field.text);
      ASSERT_TRUE(set.ok()) << field.key << ": " << set.problem().text();
      EXPECT_EQ(*set, s.job) << field.key;
    }
}

TEST(Fields, errorsNameTheField) {
  const Shed s = shed();
  const PieceRef strap{s.wall, s.strapLeft};
  EXPECT_EQ(setField(s.job, strap, "station", "30'").problem().text(), "at: is outside the wall");
  EXPECT_EQ(setField(s.job, strap, "station", "abc").problem().place, "at");
  EXPECT_EQ(setField(s.job, strap, "mark", "S2").problem().place, "mark");
  EXPECT_EQ(setField(s.job, {s.wall, s.panel}, "from", "5'").problem().place, "from");
  EXPECT_FALSE(setField(s.job, strap, "nothing", "1").ok());
}

TEST(Fields, aTypedWidthOfAnOpeningTakesItsStepAlong) {
  const Shed s = shed();
  const Job job = setField(s.job, {s.wall, s.opening}, "to", "19'-6\"").value();
  EXPECT_EQ(pieceOf<Opening>(job, s.wall, s.opening).to, 234);
  EXPECT_EQ(pieceOf<PourStep>(job, s.wall, s.step).to, 234);
}
