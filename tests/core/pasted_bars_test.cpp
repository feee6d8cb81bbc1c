// Bars as found from a pasted column of stations.
#include <gtest/gtest.h>

#include "core/edit/operations.h"
#include "core/gesture/pasted_bars.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

std::string errorOf(const Job& job, const std::string& text) {
  const auto pasted = pasteBars(job, job.walls[0].id, text);
  return pasted ? "taken" : pasted.problem().text();
}

const Bar& barOf(const Job& job, const std::string& mark) {
  const auto& bars = job.walls[0].bars;
  return *std::find_if(bars.begin(), bars.end(), [&](const Bar& bar) { return bar.mark == mark; });
}

TEST(PastedBars, AColumnOfStationsIsAsManyNewBars) {
  const Job job = support::boatShedFront();
  const auto pasted = pasteBars(job, job.walls[0].id, "1'-1 1/4\"\n\n2'-7\"\r\n4-2\n");
  ASSERT_TRUE(pasted) << pasted.problem().text();
  EXPECT_EQ(pasted->added, 3);
  EXPECT_EQ(pasted->found, 0);
  EXPECT_EQ(pasted->name, "Paste 3 bars as found");
  ASSERT_EQ(pasted->bars.size(), 3u);
  const double stations[] = {13.25, 31, 50};
  for (std::size_t i = 0; i < 3; ++i) {
    const auto piece = findPiece(pasted->job, pasted->bars[i]);
    ASSERT_TRUE(piece);
    const Bar& bar = std::get<Bar>(*piece);
    EXPECT_EQ(bar.run, BarRun::Upright);
    ASSERT_TRUE(bar.found);
    EXPECT_EQ(bar.found->a.s, stations[i]);
    EXPECT_EQ(bar.found->b.s, stations[i]);
    EXPECT_EQ(bar.found->a.d, barOf(job, "V1").planned.a.d);
    EXPECT_EQ(bar.size, barOf(job, "V1").size);
    EXPECT_LT(bar.found->a.z, bar.found->b.z);
  }
  EXPECT_EQ(pasted->job.walls[0].bars.size(), job.walls[0].bars.size() + 3);
}

TEST(PastedBars, AMarkSetsWhereThatBarWasFound) {
  const Job job = support::boatShedFront();
  const auto pasted = pasteBars(job, job.walls[0].id, "V1\t0'-9 1/2\"\nV2 2'-1\"\n3'\n");
  ASSERT_TRUE(pasted) << pasted.problem().text();
  EXPECT_EQ(pasted->added, 1);
  EXPECT_EQ(pasted->found, 2);
  EXPECT_EQ(pasted->name, "Paste where 3 bars were found");
  EXPECT_EQ(barOf(pasted->job, "V1").planned, barOf(job, "V1").planned);
  EXPECT_EQ(barOf(pasted->job, "V1").found->a.s, 9.5);
  EXPECT_EQ(barOf(pasted->job, "V2").found->b.s, 25);
  EXPECT_EQ(barOf(pasted->job, "V2").found->a.d, barOf(job, "V2").planned.a.d);
}

TEST(PastedBars, MillimetresAreReadInAJobOfMillimetres) {
  const Job job = setUnits(support::boatShedFront(), LengthStyle::Millimetres);
  const auto pasted = pasteBars(job, job.walls[0].id, "254\n");
  ASSERT_TRUE(pasted);
  EXPECT_NEAR(std::get<Bar>(*findPiece(pasted->job, pasted->bars[0])).found->a.s, 10, 1e-9);
}

TEST(PastedBars, ALineThatCannotBeReadIsNamedAndNothingIsTaken) {
  const Job job = support::boatShedFront();
  EXPECT_EQ(errorOf(job, ""), "there is no text to paste");
  EXPECT_EQ(errorOf(job, "1'\nabc\n").substr(0, 7), "line 2:");
  EXPECT_EQ(errorOf(job, "1'\n\n99'\n"), "line 3: 99'-0\" is outside the wall, which is 24'-0\" long");
  EXPECT_EQ(errorOf(job, "-3\"\n"), "line 1: -0'-3\" is outside the wall, which is 24'-0\" long");
  EXPECT_EQ(errorOf(job, "V99\t3'\n"), "line 1: there is no bar V99 on wall A");
  EXPECT_EQ(errorOf(job, "V1\t3'\t4'\n"), "line 1: expected a station, or a mark and a station");
  EXPECT_EQ(errorOf(job, "V1\t1'\n2'\nV1\t1'-1\"\n"), "line 3: V1 is in line 1 already");
  const auto& bars = job.walls[0].bars;
  const auto along = std::find_if(bars.begin(), bars.end(), [](const Bar& bar) { return bar.run == BarRun::Along; });
  ASSERT_NE(along, bars.end());
  EXPECT_EQ(errorOf(job, along->mark + "\t3'\n"), "line 1: " + along->mark + " does not stand upright");
  EXPECT_EQ(pasteBars(job, Id{}, "1'").problem().message, "there is no wall to put bars on");
}

} // namespace
} // namespace sillwright
