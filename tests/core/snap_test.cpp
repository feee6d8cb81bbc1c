#include "core/gesture/snap.h"

#include <gtest/gtest.h>

#include "edit_jobs.h"

using namespace sillwright;
using namespace sillwright::testing_jobs;

namespace {

WallLayout layoutOf(const Shed& s) { return layOut(s.job, s.job.walls.findPointer(s.wall)); }

} // namespace

TEST(Snap, aStrapGoesToAColumnCentreWithinReachElseToTheTape) {
  const Shed s = shed();
  const WallLayout layout = layoutOf(s);
  const Piece strap = *findPiece(s.job, PieceRef{s.wall, s.strapRight});
  const Snapped near = snapStation(layout, strap, 44.7, 0.5);
  EXPECT_EQ(near.value, 45);
  EXPECT_EQ(near.reason, SnapReason::ColumnCentre);
  EXPECT_EQ(near.to, s.kingLeft);
  const Snapped far = snapStation(layout, strap, 43.7, 0.5);
  EXPECT_EQ(far.value, 43.6875);
  EXPECT_EQ(far.reason, SnapReason::TapeMark);
}

TEST(Snap, aBoltGoesToTheMiddleBetweenBarsAndBetweenStuds) {
  Shed s = shed();
  put(s.job, s.wall, uprightAt(30));
  const WallLayout layout = layoutOf(s);
  const Piece bolt = *findPiece(s.job, PieceRef{s.wall, s.bolt});
  EXPECT_EQ(snapStation(layout, bolt, 19.2, 0.5).value, 19);
  EXPECT_EQ(snapStation(layout, bolt, 19.2, 0.5).reason, SnapReason::BarMiddle);
  EXPECT_EQ(snapStation(layout, bolt, 24.2, 0.5).value, 24);
  EXPECT_EQ(snapStation(layout, bolt, 24.2, 0.5).reason, SnapReason::StudMiddle);
}

TEST(Snap, aColumnStandsAgainstAnEdgeByItsFace) {
  const Shed s = shed();
  const WallLayout layout = layoutOf(s);
  const Piece king = *findPiece(s.job, PieceRef{s.wall, s.kingLeft});
  const Snapped edge = snapStation(layout, king, 46.3, 0.5); // 3 in wide, opening at 48
  EXPECT_EQ(edge.value, 46.5);
  EXPECT_EQ(edge.reason, SnapReason::OpeningEdge);
  EXPECT_EQ(snapStation(layout, king, 1.4, 0.5).value, 1.5);
}

TEST(Snap, anEndGoesToWallEndsAndToOtherEdgesNotItsOwn) {
  const Shed s = shed();
  const WallLayout layout = layoutOf(s);
  const Piece panel = *findPiece(s.job, PieceRef{s.wall, s.panel});
  EXPECT_EQ(snapEnd(layout, panel, 47.7, 0.5).to, s.opening);
  EXPECT_EQ(snapEnd(layout, panel, 0.2, 0.5).reason, SnapReason::WallEnd);
  const Piece opening = *findPiece(s.job, PieceRef{s.wall, s.opening});
  EXPECT_EQ(snapEnd(layout, opening, 240.2, 0.5).reason, SnapReason::TapeMark);
}

TEST(Snap, aJointGoesToThePourLineAndToItsPair) {
  Shed s = shed();
  Strap pair = pieceOf<Strap>(s.job, s.wall, s.strapRight);
  pair.heightOffset = 0.75;
  s.job = replacePiece(s.job, s.wall, pair);
  const WallLayout layout = layoutOf(s);
  const Strap strap = pieceOf<Strap>(s.job, s.wall, s.strapLeft);
  EXPECT_EQ(snapHeight(layout, strap, 0.1, 0.25).reason, SnapReason::PourLine);
  const Snapped height = snapHeight(layout, strap, 0.7, 0.25);
  EXPECT_EQ(height.value, 0.75);
  EXPECT_EQ(height.to, s.strapRight);
  EXPECT_EQ(snapHeight(layout, strap, 0.42, 0.1).value, 0.4375);
}
