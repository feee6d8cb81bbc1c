#include "core/edit/session.h"

#include <map>
#include <random>

#include <gtest/gtest.h>

#include "core/model/lookup.h"
#include "edit_jobs.h"

using namespace sillwright;
using namespace sillwright::testing_jobs;

namespace {

Job moved(const Session& session, PieceRef ref, double along) {
  return movePieces(session.base(), std::span(&ref, 1), along);
}

} // namespace

TEST(Session, anEditIsOneNamedStepAndAnEqualJobIsNone) {
  const Shed s = shed();
  Session session(s.job);
  EXPECT_EQ(session.wall(), s.wall);
  const PieceRef strap{s.wall, s.strapLeft};
  session.apply(moved(session, strap, 1), "Move strap S1 1\" right", {strap});
  EXPECT_EQ(session.history().undoName(), "Move strap S1 1\" right");
  EXPECT_EQ(session.selection(), Selection{strap});
  session.apply(session.base(), "Nothing");
  EXPECT_EQ(session.history().undoName(), "Move strap S1 1\" right");
  EXPECT_TRUE(session.undo());
  EXPECT_EQ(session.job(), s.job);
  EXPECT_FALSE(session.undo());
  EXPECT_TRUE(session.redo());
  EXPECT_FALSE(session.redo());
}

TEST(Session, anIdIsNeverGivenTwiceAlsoAfterUndo) {
  const Shed s = shed();
  for (unsigned seed = 0; seed < 10; ++seed) {
    std::mt19937 random(seed);
    Session session(s.job);
    std::map<Id, double> given; // each id with the station it was made for
    for (int step = 0; step < 300; ++step) {
      const auto what = random() % 5;
      if (what == 0) {
        session.undo();
      } else if (what == 1) {
        session.redo();
      } else if (what == 2) {
        session.beginPreview();
        auto [job, id] = addPiece(session.base(), s.wall, boltAt(s.job, step));
        session.preview(job);
        ASSERT_TRUE(given.emplace(id, step).second);
        if (random() % 2)
          session.commitPreview("Place");
        else
          session.dropPreview();
      } else {
        auto [job, id] = addPiece(session.base(), s.wall, boltAt(s.job, step));
        ASSERT_TRUE(given.emplace(id, step).second);
        session.apply(job, "Place");
      }
    }
  }
}

TEST(Session, aPreviewIsShownAndLeavesTheHistoryAlone) {
  const Shed s = shed();
  Session session(s.job);
  const PieceRef strap{s.wall, s.strapLeft};
  const std::size_t token = session.beginPreview();
  session.preview(moved(session, strap, 1));
  session.preview(moved(session, strap, 2));
  EXPECT_EQ(session.token(), token);
  EXPECT_EQ(*stationOf(*session.job().walls.find(s.wall), s.strapLeft), 4.75);
  EXPECT_EQ(session.settled(), s.job);
  EXPECT_FALSE(session.history().canUndo());
  EXPECT_TRUE(session.undo()); // only ends the preview
  EXPECT_NE(session.token(), token);
  EXPECT_FALSE(session.previewing());
  EXPECT_EQ(session.job(), s.job);
  session.preview(moved(session, strap, 1)); // too late
  EXPECT_EQ(session.job(), s.job);
  session.commitPreview("Too late");
  EXPECT_FALSE(session.history().canUndo());

  session.beginPreview();
  session.preview(moved(session, strap, 1));
  session.commitPreview("Move");
  EXPECT_EQ(*stationOf(*session.settled().walls.find(s.wall), s.strapLeft), 3.75);
  session.undo();
  EXPECT_EQ(session.job(), s.job);
}

TEST(Session, anEditInMidPreviewEndsThePreviewWithoutIt) {
  const Shed s = shed();
  Session session(s.job);
  const PieceRef strap{s.wall, s.strapLeft};
  const std::size_t token = session.beginPreview();
  session.preview(moved(session, strap, 1));
  const PieceRef bolt{s.wall, s.bolt};
  session.apply(moved(session, bolt, 1), "Move bolt");
  EXPECT_NE(session.token(), token);
  EXPECT_EQ(*stationOf(*session.job().walls.find(s.wall), s.strapLeft), 2.75);
  EXPECT_EQ(*stationOf(*session.job().walls.find(s.wall), s.bolt), 21);
}

TEST(Session, theSelectionForgetsWhatIsGoneAndComesBackWithUndo) {
  const Shed s = shed();
  Session session(s.job);
  const PieceRef strap{s.wall, s.strapLeft};
  const PieceRef bolt{s.wall, s.bolt};
  session.select({strap, bolt, {s.wall, Id{9999}}});
  EXPECT_EQ(session.selection(), (Selection{strap, bolt}));
  session.apply(removePieces(session.base(), std::span(&strap, 1)), "Delete strap S1");
  EXPECT_EQ(session.selection(), Selection{bolt});
  session.undo();
  EXPECT_EQ(session.selection(), (Selection{strap, bolt}));
}

TEST(Session, theWallInViewFollowsTheSelectionAndSurvivesRemoval) {
  Shed s = shed();
  const Id second = s.job.walls[1].id;
  const Id bolt = put(s.job, second, boltAt(s.job, 50));
  Session session(s.job);
  session.select({{second, bolt}});
  EXPECT_EQ(session.wall(), second);
  session.select({});
  EXPECT_EQ(session.wall(), second);
  const PieceRef gone[] = {{second, {}}};
  session.apply(removePieces(session.base(), gone), "Delete wall B");
  EXPECT_EQ(session.wall(), s.wall);
  session.show(second);
  EXPECT_EQ(session.wall(), s.wall);
}

TEST(Session, savedMeansTheVersionThatWasSaved) {
  const Shed s = shed();
  Session session(s.job);
  EXPECT_FALSE(session.changedSinceSaved());
  const PieceRef strap{s.wall, s.strapLeft};
  session.apply(moved(session, strap, 1), "Move");
  EXPECT_TRUE(session.changedSinceSaved());
  session.markSaved();
  EXPECT_FALSE(session.changedSinceSaved());
  session.undo();
  EXPECT_TRUE(session.changedSinceSaved());
  session.apply(moved(session, strap, 2), "Move");
  EXPECT_TRUE(session.changedSinceSaved());
  session.open(newJob());
  EXPECT_FALSE(session.changedSinceSaved());
  EXPECT_FALSE(session.wall());
}

TEST(Session, ShowingAnotherWallLetsGoOfWhatWasChosenOnTheOne) {
  const Job job = *addOutline(newJob(), std::vector<Point2>{{0, 0}, {240, 0}, {240, 200}, {0, 200}}, WallLine{});
  Session session(job);
  const Id first = job.walls[0].id, second = job.walls[1].id;
  session.show(first);
  session.select({{first, {}}});
  session.show(second);
  EXPECT_EQ(session.wall(), second);
  EXPECT_TRUE(session.selection().empty());
}

TEST(Session, listenersHearWhatChanged) {
  const Shed s = shed();
  Session session(s.job);
  std::vector<Notice> heard;
  session.listen([&](const Notice& notice) { heard.push_back(notice); });
  const PieceRef strap{s.wall, s.strapLeft};
  session.select({strap});
  ASSERT_EQ(heard.size(), 1u);
  EXPECT_TRUE(heard[0].selection);
  EXPECT_FALSE(heard[0].job);
  session.select({strap});
  EXPECT_EQ(heard.size(), 1u);
  session.beginPreview();
  session.preview(moved(session, strap, 1));
  EXPECT_TRUE(heard.back().job);
  EXPECT_FALSE(heard.back().history);
  session.commitPreview("Move");
  EXPECT_TRUE(heard.back().job);
  EXPECT_TRUE(heard.back().history);
  session.open(newJob());
  EXPECT_TRUE(heard.back().file);
}
