#include "core/edit/operations.h"

#include <random>
#include <set>

#include <gtest/gtest.h>

#include "edit_jobs.h"

using namespace sillwright;
using namespace sillwright::testing_jobs;

namespace {

PieceRef in(const Shed& s, Id piece) { return {s.wall, piece}; }

Job move(const Shed& s, std::vector<Id> pieces, double along, double across = 0, double up = 0) {
  std::vector<PieceRef> refs;
  for (const Id piece : pieces)
    refs.push_back(in(s, piece));
  return movePieces(s.job, refs, along, across, up);
}

} // namespace

TEST(Operations, aNewPieceGetsItsOwnIdAndTheLowestFreeMark) {
  Shed s = shed();
  EXPECT_EQ(markOf(s.job, in(s, s.strapLeft)), "S1");
  EXPECT_EQ(markOf(s.job, in(s, s.strapRight)), "S2");
  EXPECT_EQ(markOf(s.job, in(s, s.upright)), "V1");
  Strap strap = strapAt(s.job, 100, {});
  strap.id = s.strapLeft;
  strap.mark = "S2";
  const auto [next, id] = addPiece(s.job, s.wall, strap);
  EXPECT_NE(id, s.strapLeft);
  EXPECT_EQ(id.value, s.job.nextId);
  EXPECT_EQ(next.nextId, s.job.nextId + 1);
  EXPECT_EQ(markOf(next, in(s, id)), "S3");
  const PieceRef first[] = {in(s, s.strapLeft)};
  EXPECT_EQ(freshMark(removePieces(next, first), PieceKind::Strap), "S1");
}

TEST(Operations, marksAreFreeJobWideNotOnlyOnTheWall) {
  Shed s = shed();
  const Id other = s.job.walls[1].id;
  const Id strap = put(s.job, other, strapAt(s.job, 30, {}));
  EXPECT_EQ(markOf(s.job, {other, strap}), "S3");
}

TEST(Operations, aReferenceToNothingLeavesTheJobAsItIs) {
  const Shed s = shed();
  const PieceRef nowhere[] = {{Id{9999}, Id{9998}}};
  const PieceRef gone[] = {{s.wall, Id{9998}}};
  EXPECT_EQ(movePieces(s.job, nowhere, 3), s.job);
  EXPECT_EQ(movePieces(s.job, gone, 3), s.job);
  EXPECT_EQ(removePieces(s.job, nowhere), s.job);
  EXPECT_EQ(removePieces(s.job, gone), s.job);
  EXPECT_EQ(moveEnd(s.job, gone[0], Side::Left, 3), s.job);
  EXPECT_EQ(setStation(s.job, gone[0], 3), s.job);
  EXPECT_EQ(moveCorner(s.job, Id{9999}, {1, 1}), s.job);
  EXPECT_EQ(addPiece(s.job, Id{9999}, Strap{}).first, s.job);
  EXPECT_FALSE(addPiece(s.job, Id{9999}, Strap{}).second);
}

TEST(Operations, movingThereAndBackRestoresEveryKind) {
  const Shed s = shed();
  std::mt19937 random(7);
  std::uniform_int_distribution<int> sixteenths(-64, 64);
  const std::vector<Id> all = piecesOf(*s.job.walls.find(s.wall));
  for (int round = 0; round < 200; ++round) {
    std::vector<PieceRef> refs;
    for (const Id piece : all)
      if (random() % 3 == 0)
        refs.push_back(in(s, piece));
    const double along = sixteenths(random) / 16.0;
    const double across = sixteenths(random) / 16.0;
    const double up = sixteenths(random) / 16.0;
    const Job there = movePieces(s.job, refs, along, across, up);
    EXPECT_EQ(movePieces(there, refs, -along, -across, -up), s.job);
    if (!refs.empty() && along != 0) {
      EXPECT_NE(there, s.job);
    }
  }
}

TEST(Operations, aColumnTakesItsRodsAlongButNotItsStraps) {
  const Shed s = shed();
  const double rodBefore = *stationOf(*s.job.walls.find(s.wall), s.rod);
  const Job moved = move(s, {s.post}, 2);
  EXPECT_EQ(*stationOf(*moved.walls.find(s.wall), s.rod), rodBefore + 2);
  EXPECT_EQ(*stationOf(*moved.walls.find(s.wall), s.strapLeft), 2.75);
  const Job both = move(s, {s.post, s.rod}, 2);
  EXPECT_EQ(*stationOf(*both.walls.find(s.wall), s.rod), rodBefore + 2);
  const Job alone = move(s, {s.rod}, 0.5);
  EXPECT_EQ(pieceOf<Rod>(alone, s.wall, s.rod).offset, 1.75);
}

TEST(Operations, anOpeningTakesTheStepWithItsVeryEnds) {
  const Shed s = shed();
  const Job moved = move(s, {s.opening}, 3);
  EXPECT_EQ(pieceOf<PourStep>(moved, s.wall, s.step).from, 51);
  EXPECT_EQ(pieceOf<PourStep>(moved, s.wall, s.step).to, 243);
  EXPECT_EQ(pieceOf<PourStep>(move(s, {s.opening, s.step}, 3), s.wall, s.step).from, 51);
  const Job resized = moveEnd(s.job, in(s, s.opening), Side::Right, 230);
  EXPECT_EQ(pieceOf<PourStep>(resized, s.wall, s.step).to, 230);
  EXPECT_EQ(pieceOf<PourStep>(resized, s.wall, s.step).from, 48);
  Shed other = s;
  other.job = resized;
  const Job apart = move(other, {s.step}, 1);
  const PieceRef opening[] = {in(s, s.opening)};
  EXPECT_EQ(pieceOf<PourStep>(movePieces(apart, opening, 5), s.wall, s.step).from, 49);
}

TEST(Operations, anEndNeverTurnsAPieceInsideOut) {
  const Shed s = shed();
  for (const Id id : {s.opening, s.panel, s.sill, s.step}) {
    const Job left = moveEnd(s.job, in(s, id), Side::Left, 1000);
    const Interval over = *stationsOf(left, *left.walls.find(s.wall), id);
    EXPECT_EQ(over.length(), 1.0 / 16);
    const Job right = moveEnd(s.job, in(s, id), Side::Right, -1000);
    EXPECT_EQ(stationsOf(right, *right.walls.find(s.wall), id)->length(), 1.0 / 16);
  }
  EXPECT_EQ(pieceOf<Bar>(moveEnd(s.job, in(s, s.along), Side::Left, 10), s.wall, s.along).planned.a.s, 10);
  EXPECT_EQ(moveEnd(s.job, in(s, s.strapLeft), Side::Left, 10), s.job);
  EXPECT_EQ(moveEnd(s.job, in(s, s.upright), Side::Left, 10), s.job);
}

TEST(Operations, whatAMoveUpChanges) {
  const Shed s = shed();
  const Job up = move(s, {s.strapLeft, s.bolt, s.rod, s.upright, s.opening}, 0, 0, 0.25);
  EXPECT_EQ(pieceOf<Strap>(up, s.wall, s.strapLeft).heightOffset, 0.25);
  EXPECT_EQ(pieceOf<Bolt>(up, s.wall, s.bolt).projection, 4.25);
  EXPECT_EQ(pieceOf<Rod>(up, s.wall, s.rod).projection, 6.25);
  EXPECT_EQ(pieceOf<Bar>(up, s.wall, s.upright).planned.a.z, -20.75);
  EXPECT_EQ(pieceOf<Opening>(up, s.wall, s.opening).headHeight, 83.75); // not a window
}

TEST(Operations, aFoundBarMovesWhereItWasFound) {
  Shed s = shed();
  Bar bar = pieceOf<Bar>(s.job, s.wall, s.upright);
  bar.found = BarPlace{{9, 4, -21}, {9, 4, -2}};
  s.job = replacePiece(s.job, s.wall, bar);
  const Bar moved = pieceOf<Bar>(move(s, {s.upright}, 1), s.wall, s.upright);
  EXPECT_EQ(moved.found->a.s, 10);
  EXPECT_EQ(moved.planned.a.s, 8);
}

TEST(Operations, removingTakesAlongWhatCannotStandWithout) {
  Shed s = shed();
  Reading reading;
  reading.piece = s.rod;
  WallLine measured = *s.job.walls.find(s.wall);
  measured.readings.push_back(reading);
  s.job.walls.replace(measured);
  const PieceRef post[] = {in(s, s.post)};
  const Job without = removePieces(s.job, post);
  EXPECT_FALSE(findPiece(without, in(s, s.rod)));
  EXPECT_TRUE(without.walls.find(s.wall)->readings.empty());
  EXPECT_FALSE(pieceOf<Strap>(without, s.wall, s.strapLeft).column);
  EXPECT_EQ(pieceOf<Strap>(without, s.wall, s.strapRight).column, s.kingLeft);
}

TEST(Operations, changesOfAllKindsInOneGo) {
  Shed s = shed();
  WallLine measured = *s.job.walls.find(s.wall);
  Reading ofBolt, ofStrap;
  ofBolt.piece = s.bolt;
  ofStrap.piece = s.strapLeft;
  measured.readings = {ofBolt, ofStrap};
  s.job.walls.replace(measured);
  Strap moved = pieceOf<Strap>(s.job, s.wall, s.strapLeft);
  moved.station += 0.75;
  const Bolt gone = pieceOf<Bolt>(s.job, s.wall, s.bolt);
  const PieceChange changes[] = {{pieceOf<Strap>(s.job, s.wall, s.strapLeft), moved},
                                 {gone, {}},
                                 {{}, boltAt(s.job, 12)},
                                 {{}, boltAt(s.job, 36)}};
  const Job next = changePieces(s.job, s.wall, changes);
  const WallLine& wall = *next.walls.find(s.wall);
  EXPECT_EQ(pieceOf<Strap>(next, s.wall, s.strapLeft), moved);
  ASSERT_EQ(wall.bolts.size(), 2u);
  EXPECT_EQ(wall.bolts[0].station, 12);
  EXPECT_EQ(wall.bolts[1].station, 36);
  EXPECT_EQ(wall.bolts[0].id.value, s.job.nextId);
  EXPECT_EQ(wall.bolts[1].id.value, s.job.nextId + 1);
  ASSERT_EQ(gone.mark, "B1");
  EXPECT_EQ(wall.bolts[0].mark, "B2"); // not B1: that is written on the form where the old one was
  EXPECT_EQ(wall.bolts[1].mark, "B3");
  ASSERT_EQ(wall.readings.size(), 1u);
  EXPECT_EQ(wall.readings[0].piece, s.strapLeft);
  EXPECT_EQ(next.walls.pointer(1), s.job.walls.pointer(1)); // the other walls are the very ones
}

TEST(Operations, changesOfWhatIsNoMoreThereLeaveTheJobAsItIs) {
  const Shed s = shed();
  Strap other = pieceOf<Strap>(s.job, s.wall, s.strapLeft);
  other.id = Id{9998};
  Strap moved = other;
  moved.station += 1;
  const PieceChange changes[] = {{other, moved}, {other, {}}, {{}, {}}};
  EXPECT_EQ(changePieces(s.job, s.wall, changes), s.job);
  EXPECT_EQ(changePieces(s.job, s.wall, {}), s.job);
  const PieceChange added[] = {{{}, boltAt(s.job, 12)}};
  EXPECT_EQ(changePieces(s.job, Id{9999}, added), s.job);
}

TEST(Operations, takingOutAColumnInAChangeTakesItsRods) {
  const Shed s = shed();
  const PieceChange changes[] = {{pieceOf<Column>(s.job, s.wall, s.post), {}}};
  const PieceRef post[] = {in(s, s.post)};
  EXPECT_EQ(changePieces(s.job, s.wall, changes), removePieces(s.job, post));
}

TEST(Operations, removingWallsTakesTheirLonelyCorners) {
  Shed s = shed();
  const PieceRef first[] = {{s.wall, {}}};
  Job job = removePieces(s.job, first);
  EXPECT_EQ(job.walls.size(), 3u);
  EXPECT_EQ(job.corners->size(), 4u); // each is still an end of a neighbour
  while (!job.walls.empty()) {
    const PieceRef next[] = {{job.walls[0].id, {}}};
    job = removePieces(job, next);
  }
  EXPECT_TRUE(job.corners->empty());
}

TEST(Operations, anOutlineRunsCounterclockwiseAndMarksGoOn) {
  const Point2 clockwise[] = {{0, 0}, {0, 100}, {100, 100}, {100, 0}};
  Job job = addOutline(newJob(), clockwise, plainWall()).value();
  ASSERT_EQ(job.walls.size(), 4u);
  double area = 0;
  for (std::size_t i = 0; i < 4; ++i) {
    const Point2 a = findCorner(job, job.walls[i].startCorner)->at;
    const Point2 b = findCorner(job, job.walls[i].endCorner)->at;
    area += a.x * b.y - b.x * a.y;
    EXPECT_EQ(job.walls[i].endCorner, job.walls[(i + 1) % 4].startCorner);
  }
  EXPECT_GT(area, 0);
  EXPECT_EQ(job.walls[3].mark, "D");
  for (int k = 0; k < 6; ++k)
    job = addOutline(job, clockwise, plainWall()).value();
  EXPECT_EQ(job.walls[26].mark, "AA");
  EXPECT_EQ(job.walls[27].mark, "AB");
}

TEST(Operations, anOutlineThatCannotBeSaysWhy) {
  const Point2 two[] = {{0, 0}, {1, 0}};
  const Point2 twice[] = {{0, 0}, {10, 0}, {10, 0}, {0, 10}};
  const Point2 crossed[] = {{0, 0}, {10, 10}, {10, 0}, {0, 10}};
  EXPECT_FALSE(addOutline(newJob(), two, {}));
  EXPECT_EQ(addOutline(newJob(), twice, {}).problem().message, "corner 2 and the next one are the same point");
  EXPECT_EQ(addOutline(newJob(), crossed, {}).problem().message, "crosses itself");
}

TEST(Operations, aCornerMovesBothItsWallsAndNeverClosesOne) {
  const Shed s = shed();
  const WallLine& wall = *s.job.walls.find(s.wall);
  const Job moved = moveCorner(s.job, wall.endCorner, {300, 0});
  EXPECT_EQ(wallLength(moved, *moved.walls.find(s.wall)), 300);
  EXPECT_EQ(moveCorner(s.job, wall.endCorner, {0, 0}), s.job);
}

TEST(Operations, aNewJobHasSampleHardwareThatSaysSo) {
  const Job job = newJob();
  EXPECT_TRUE(job.walls.empty());
  std::set<Id> ids;
  const auto look = [&](const auto& list) {
    EXPECT_FALSE(list.empty());
    for (const auto& type : list) {
      EXPECT_NE(type.note.find("invented"), std::string::npos) << type.name;
      EXPECT_NE(type.name.find("sample"), std::string::npos) << type.name;
      EXPECT_TRUE(ids.insert(type.id).second);
      EXPECT_LT(type.id.value, job.nextId);
    }
  };
  look(job.types->straps);
  look(job.types->bolts);
  look(job.types->rods);
  look(job.types->washers);
  ASSERT_NE(findMark(job, "HD1"), nullptr);
  EXPECT_NE(findStrapType(*job.types, findMark(job, "HD1")->strapType), nullptr);
}

TEST(Operations, aDiagonalIsTapedTapedAgainAndTakenAway) {
  Job job;
  const Id a = takeId(job), b = takeId(job);
  job.corners.edit([&](std::vector<Corner>& corners) { corners = {{a, {0, 0}, ""}, {b, {30, 40}, ""}}; });
  const Job taped = tapeDiagonal(job, a, b, 50.5);
  ASSERT_EQ(taped.diagonals->size(), 1u);
  EXPECT_DOUBLE_EQ(taped.diagonals->front().measured, 50.5);
  const Job again = tapeDiagonal(taped, b, a, 50.25); // from the other end it is the same
  ASSERT_EQ(again.diagonals->size(), 1u);
  EXPECT_DOUBLE_EQ(again.diagonals->front().measured, 50.25);
  EXPECT_EQ(again.diagonals->front().id, taped.diagonals->front().id);
  EXPECT_TRUE(tapeDiagonal(again, a, b, std::nullopt).diagonals->empty());
  EXPECT_EQ(tapeDiagonal(job, a, b, std::nullopt), job);
  EXPECT_EQ(tapeDiagonal(job, a, a, 5.0), job);
  EXPECT_EQ(tapeDiagonal(job, a, Id{99}, 5.0), job);
}
