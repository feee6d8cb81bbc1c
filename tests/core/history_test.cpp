#include "core/edit/history.h"

#include <random>
#include <set>

#include <gtest/gtest.h>

#include "edit_jobs.h"

using namespace sillwright;
using namespace sillwright::testing_jobs;

TEST(History, walksOfDoUndoAndRedoReturnEqualJobs) {
  const Shed s = shed();
  for (unsigned seed = 0; seed < 20; ++seed) {
    std::mt19937 random(seed);
    History history(s.job);
    std::vector<Version> line{history.now()}; // what a plain list of versions says
    std::size_t at = 0;
    for (int step = 0; step < 200; ++step) {
      switch (random() % 4) {
      case 0:
        history.undo();
        at -= at > 0 ? 1 : 0;
        break;
      case 1:
        history.redo();
        at += at + 1 < line.size() ? 1 : 0;
        break;
      default: {
        const auto pieces = piecesOf(*history.now().job.walls.find(s.wall));
        Job next = addPiece(history.now().job, s.wall, boltAt(s.job, static_cast<double>(random() % 288))).first;
        const PieceRef ref[] = {{s.wall, pieces[random() % pieces.size()]}};
        next = movePieces(next, ref, static_cast<double>(random() % 32) / 16.0);
        const std::string name = "Edit " + std::to_string(step);
        history.push(next, {ref[0]}, name);
        line.resize(at + 1);
        line.push_back({next, {ref[0]}, name, 0});
        ++at;
      }
      }
      ASSERT_EQ(history.now().job, line[at].job);
      ASSERT_EQ(history.now().selection, line[at].selection);
      ASSERT_EQ(history.canUndo(), at > 0);
      ASSERT_EQ(history.canRedo(), at + 1 < line.size());
      if (history.canUndo()) {
        ASSERT_EQ(history.undoName(), line[at].name);
      }
      if (history.canRedo()) {
        ASSERT_EQ(history.redoName(), line[at + 1].name);
      }
    }
  }
}

TEST(History, noTwoVersionsShareASerial) {
  History history(newJob());
  std::set<std::size_t> serials{history.now().serial};
  for (int i = 0; i < 10; ++i) {
    history.push(newJob(), {}, "Edit");
    EXPECT_TRUE(serials.insert(history.now().serial).second);
    if (i % 2)
      history.undo();
  }
}
