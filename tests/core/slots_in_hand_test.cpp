// Slots while something is in hand: what is let go of goes to the nearest, unless Alt is held.
#include <gtest/gtest.h>

#include <cmath>
#include <memory>
#include <random>

#include "core/gesture/workbench.h"
#include "core/refit/slot_words.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

PointerAt pointerAt(double s, bool alt = false) {
  PointerAt pointer;
  pointer.at = {s, 0, 6};
  pointer.keys.alt = alt;
  return pointer;
}

PieceRef pieceNamed(const Workbench& bench, const std::string& mark) {
  const WallLine& wall = *bench.job().walls.find(bench.session().wall());
  PieceRef ref;
  forEachList(wall, [&](const auto& list) {
    for (const auto& item : list)
      if (item.mark == mark)
        ref = {wall.id, item.id};
  });
  return ref;
}

double stationOf(const Workbench& bench, PieceRef piece) {
  return *sillwright::stationOf(*bench.job().walls.find(piece.wall), piece.piece);
}

void take(Workbench& bench, PieceRef piece, double toward) {
  PointerAt pointer = pointerAt(stationOf(bench, piece));
  HitArea hit;
  hit.piece = piece;
  pointer.hit = hit;
  bench.press(pointer);
  bench.drag(pointerAt(pointer.at.s + (toward > pointer.at.s ? 1 : -1)));
}

// Lets a piece go at a station; says where it then is.
double drop(Workbench& bench, PieceRef piece, double station, bool alt = false) {
  take(bench, piece, station);
  bench.drag(pointerAt(station, alt));
  bench.release(pointerAt(station, alt));
  return stationOf(bench, piece);
}

// Rules of position that a piece breaks; spaces between.
std::string positionFixesOf(const Workbench& bench, PieceRef piece) {
  std::string fixes;
  const auto wall = bench.checker().wall(piece.wall);
  for (const Finding& finding : wall->findings)
    if (finding.level == Level::Fix && isOfPosition(finding.rule))
      if (std::count(finding.pieces.begin(), finding.pieces.end(), piece.piece) > 0)
        fixes += std::string(rule(finding.rule).name) + " ";
  return fixes;
}

// A plate 2 1/2 wide, 1/2 from the end at least: its centre line at 1 3/4 at least.
TEST(SlotsInHand, aStrapLetGoTooNearTheEndGoesToTheNearestGoodPlace) {
  Workbench bench(support::boatShedFront());
  const PieceRef strap = pieceNamed(bench, "S1");
  take(bench, strap, 0);
  bench.drag(pointerAt(1));
  ASSERT_TRUE(bench.inHand());
  EXPECT_EQ(stationOf(bench, strap), 1) << "while in hand it is where the hand is";
  EXPECT_NE(positionFixesOf(bench, strap), "");
  ASSERT_TRUE(bench.inHand()->landing);
  EXPECT_EQ(*bench.inHand()->landing, 1.75);
  bench.release(pointerAt(1));
  EXPECT_EQ(stationOf(bench, strap), 1.75);
  EXPECT_EQ(positionFixesOf(bench, strap), "");
  EXPECT_EQ(bench.session().history().undoName(), "Move strap S1 1\" left");
  bench.session().undo();
  EXPECT_EQ(stationOf(bench, strap), 2.75);
}

TEST(SlotsInHand, altLetsGoAnywhere) {
  Workbench bench(support::boatShedFront());
  const PieceRef strap = pieceNamed(bench, "S1");
  take(bench, strap, 0);
  bench.drag(pointerAt(1, true));
  EXPECT_FALSE(bench.inHand()->landing);
  EXPECT_FALSE(bench.inHand()->offered.empty()) << "they are shown all the same";
  bench.release(pointerAt(1, true));
  EXPECT_EQ(stationOf(bench, strap), 1);
}

TEST(SlotsInHand, whereItMayStandNothingIsSlid) {
  Workbench bench(support::boatShedFront());
  EXPECT_EQ(drop(bench, pieceNamed(bench, "S1"), 2.25), 2.25);
  EXPECT_EQ(drop(bench, pieceNamed(bench, "B1"), 11), 11);
}

TEST(SlotsInHand, aStrapLetGoBetweenColumnsGoesToTheNearerOneAndHangsOnIt) {
  Job job = support::boatShedFront();
  WallLine bare = job.walls[0];
  for (Panel& panel : bare.panels) // no plan that calls for a strap where it hangs
    panel.leftMark.clear();
  job.walls.replace(bare);
  Workbench bench(job);
  const PieceRef strap = pieceNamed(bench, "S1");
  const PieceRef other = pieceNamed(bench, "S2");
  const WallLine& wall = *bench.job().walls.find(strap.wall);
  const Id near = findIn(wall.straps, other.piece)->column;
  const Column column = *findIn(wall.columns, near);
  const double at = drop(bench, strap, 40); // 3'-4": columns C1 at 2 3/4, C2 at about 3'-9"
  EXPECT_LT(std::abs(at - column.station), alongWall(column.makeUp) / 2);
  EXPECT_EQ(findIn(bench.job().walls.find(strap.wall)->straps, strap.piece)->column, near);
}

TEST(SlotsInHand, farFromEverySlotItStaysWhereItWasLetGo) {
  Workbench bench(support::boatShedFront());
  EXPECT_EQ(drop(bench, pieceNamed(bench, "S2"), 100), 100); // in the garage door, columns 4 ft away
}

TEST(SlotsInHand, saysWhatStopsAtEachEnd) {
  Workbench bench(support::boatShedFront());
  const PieceRef strap = pieceNamed(bench, "S1");
  take(bench, strap, 2.5);
  ASSERT_FALSE(bench.inHand()->offered.empty());
  const BoundedSlot& first = bench.inHand()->offered.front();
  ASSERT_TRUE(first.left && first.right);
  const WallLine& wall = *bench.job().walls.find(strap.wall);
  EXPECT_EQ(stopWords(wall, *first.left), "end of the concrete");
  bench.cancel();
  take(bench, pieceNamed(bench, "B1"), 11);
  const auto slots = bench.inHand()->offered;
  const auto own =
      std::find_if(slots.begin(), slots.end(), [](const BoundedSlot& s) { return s.stations.contains(10); });
  ASSERT_NE(own, slots.end());
  ASSERT_TRUE(own->right);
  EXPECT_EQ(own->stations.to, 12) << "IRC R403.1.6: within 12 in of the end of the piece";
  EXPECT_EQ(stopWords(wall, *own->right), "far from the sill end");
}

TEST(SlotsInHand, aBarIsStoppedByWhatStandsInItsWay) {
  const Job job = support::boatShedFront();
  const WallLine& wall = job.walls[0];
  const Id strap = wall.straps.front().id, bolt = wall.bolts.front().id, bar = wall.bars.front().id;
  EXPECT_EQ(stopWords(wall, {RuleId::StrapSteel, strap}), "strap S1");
  EXPECT_EQ(stopWords(wall, {RuleId::BoltSteel, bolt}), "anchor bolt B1");
  EXPECT_EQ(stopWords(wall, {RuleId::BoltSteel, bar}), "bar H1"); // the first of its list runs along the wall
}

TEST(SlotsInHand, aBoltFromTheShelfLandsBesideTheStud) {
  Workbench bench(support::boatShedFront());
  const auto shelf = bench.shelf();
  const auto bolt =
      std::find_if(shelf.begin(), shelf.end(), [](const ShelfItem& item) { return item.key.rfind("bolt", 0) == 0; });
  ASSERT_NE(bolt, shelf.end());
  ASSERT_TRUE(bench.placeAt(bolt->key, 16.25)); // a stud stands at 16 on centre
  const PieceRef placed = bench.session().selection().front();
  EXPECT_EQ(positionFixesOf(bench, placed), "");
  EXPECT_NE(stationOf(bench, placed), 16.25);
}

TEST(SlotsInHand, nothingOfPositionIsToFixOfWhatWasLetGo) {
  std::mt19937 random(11);
  int slid = 0;
  for (int round = 0; round < 20; ++round) {
    Workbench bench(round == 0   ? support::boatShedFrontSteelMoved()
                    : round == 1 ? support::ridgeHouse()
                    : round == 2 ? support::punchListPractice()
                                 : generateJob(static_cast<std::uint64_t>(round), 60));
    for (std::size_t w = 0; w < bench.job().walls.size(); ++w) {
      const Id wall = bench.job().walls[w].id;
      bench.session().show(wall);
      for (const Id id : piecesOf(*bench.job().walls.find(wall))) {
        const PieceRef piece{wall, id};
        if (!hasSlots(*bench.job().walls.find(wall), id))
          continue;
        const double length = bench.checker().wall(wall)->layout.length;
        const double near = stationOf(bench, piece) + static_cast<double>(random() % 1600) / 100 - 8;
        const double to =
            random() % 4 == 0 ? length * static_cast<double>(random() % 1000) / 1000 : std::clamp(near, 0.0, length);
        take(bench, piece, to);
        bench.drag(pointerAt(to));
        if (!bench.inHand())
          continue;
        const std::vector<BoundedSlot> offered = bench.inHand()->offered;
        const auto landing = bench.inHand()->landing;
        bench.release(pointerAt(to));
        const bool within = std::any_of(offered.begin(), offered.end(), [&](const BoundedSlot& slot) {
          return slot.stations.contains(stationOf(bench, piece));
        });
        if (!landing && !within) { // let go far from every slot
          for (const BoundedSlot& slot : offered)
            EXPECT_GT(std::max(slot.stations.from - to, to - slot.stations.to), 5.9);
          continue;
        }
        EXPECT_EQ(positionFixesOf(bench, piece), "")
            << round << markOf(bench.job(), piece) << " at " << stationOf(bench, piece) << " let go at " << to;
        if (landing) {
          ++slid;
          EXPECT_NEAR(stationOf(bench, piece), *landing, 1e-9) << "it goes where it was said to go";
        }
      }
    }
  }
  EXPECT_GT(slid, 100);
}

} // namespace
} // namespace sillwright
