// Gestures without a window: the hand presses, drags, lets go, and anything may come in between.
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <memory>
#include <random>

#include "core/edit/operations.h"
#include "core/gesture/workbench.h"
#include "tests/support/generate_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

PointerAt pointerAt(double s, double z = 6) {
  PointerAt pointer;
  pointer.at = {s, 0, z};
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

double stationOf(const Workbench& bench, const std::string& mark) {
  const PieceRef ref = pieceNamed(bench, mark);
  return *stationOf(*bench.job().walls.find(ref.wall), ref.piece);
}

PointerAt on(const Workbench& bench, const std::string& mark, HitArea::Part part = HitArea::Part::Body) {
  PointerAt pointer = pointerAt(stationOf(bench, mark));
  HitArea hit;
  hit.piece = pieceNamed(bench, mark);
  hit.part = part;
  pointer.hit = hit;
  return pointer;
}

std::unique_ptr<Workbench> shed() { return std::make_unique<Workbench>(support::boatShedFront()); }

TEST(Workbench, aDragIsOneNamedStepAndFindingsFollowIt) {
  const auto bench = shed();
  EXPECT_EQ(bench->checker().counts().fix, 0);
  bench->press(on(*bench, "S1"));
  bench->drag(pointerAt(1.5));
  EXPECT_GT(bench->checker().counts().fix, 0) << "too near the end while in hand";
  ASSERT_TRUE(bench->inHand());
  EXPECT_EQ(stationOf(*bench, "S1"), 1.5);
  bench->drag(pointerAt(2.25));
  bench->release(pointerAt(2.25));
  EXPECT_FALSE(bench->inHand());
  EXPECT_EQ(bench->session().history().undoName(), "Move strap S1 1/2\" left");
  bench->session().undo();
  EXPECT_EQ(stationOf(*bench, "S1"), 2.75);
  EXPECT_EQ(bench->checker().counts().fix, 0);
  EXPECT_FALSE(bench->session().history().canUndo());
}

TEST(Workbench, snapsToTheColumnUnlessAltIsHeld) {
  const auto bench = shed();
  bench->press(on(*bench, "S1"));
  bench->drag(pointerAt(1.5));
  bench->drag(pointerAt(2.6));
  EXPECT_EQ(stationOf(*bench, "S1"), 2.75);
  EXPECT_EQ(bench->inHand()->snap, SnapReason::ColumnCentre);
  PointerAt free = pointerAt(2.6);
  free.keys.alt = true;
  bench->drag(free);
  EXPECT_NEAR(stationOf(*bench, "S1"), 2.6, 1.0 / 64);
}

TEST(Workbench, nothingLeavesTheWall) {
  const auto bench = shed();
  for (const char* mark : {"S1", "B1", "C1", "P1", "O1"}) {
    bench->press(on(*bench, mark));
    bench->drag(pointerAt(-500));
    bench->release(pointerAt(-500));
    EXPECT_GE(stationOf(*bench, mark), 0) << mark;
    bench->press(on(*bench, mark));
    bench->drag(pointerAt(5000));
    bench->release(pointerAt(5000));
    EXPECT_LE(stationOf(*bench, mark), 288) << mark;
  }
}

TEST(Workbench, aTypedLengthSetsTheStationWhileDraggingAndAtRest) {
  const auto bench = shed();
  bench->press(on(*bench, "B2"));
  bench->drag(pointerAt(25));
  for (const char32_t c : std::u32string(U"1'-10 1/2\"\r"))
    EXPECT_TRUE(bench->typeKey(c));
  EXPECT_FALSE(bench->inHand());
  EXPECT_EQ(stationOf(*bench, "B2"), 22.5);
  bench->release(pointerAt(25));
  EXPECT_EQ(stationOf(*bench, "B2"), 22.5);
  for (const char32_t c : std::u32string(U"21\r"))
    EXPECT_TRUE(bench->typeKey(c));
  EXPECT_EQ(stationOf(*bench, "B2"), 21);
  for (const char32_t c : std::u32string(U"99'\r"))
    EXPECT_TRUE(bench->typeKey(c));
  EXPECT_NE(bench->typedProblem().find("outside the wall"), std::string::npos);
  EXPECT_EQ(stationOf(*bench, "B2"), 21);
}

TEST(Workbench, theEndOfAnOpeningTakesItsStepAlong) {
  const auto bench = shed();
  PointerAt end = on(*bench, "O1", HitArea::Part::FromEnd);
  end.at.s = 48;
  bench->press(end);
  bench->drag(pointerAt(60));
  bench->release(pointerAt(60));
  const WallLine& wall = *bench->job().walls.find(bench->session().wall());
  EXPECT_EQ(wall.openings[0].from, 60);
  EXPECT_EQ(wall.openings[0].to, 240);
  EXPECT_EQ(wall.steps[0].from, 60);
}

TEST(Workbench, everythingOfTheShelfCanBePutDownAndTakenBack) {
  const auto bench = shed();
  const Job before = bench->job();
  for (const ShelfItem& item : bench->shelf()) {
    // Sills and panels are full at the front, a rod needs a column near: those are refused, and nothing stays of them.
    const bool refused = item.kind == PieceKind::Sill || item.kind == PieceKind::Panel || item.kind == PieceKind::Rod;
    EXPECT_EQ(bench->placeAt(item.key, 30), !refused) << item.key;
    if (refused) {
      EXPECT_TRUE(bench->job() == before) << item.key;
      EXPECT_FALSE(bench->session().previewing()) << item.key;
      continue;
    }
    EXPECT_EQ(bench->session().selection().size(), 1u) << item.key;
    EXPECT_TRUE(bench->session().history().canUndo());
    bench->session().undo();
    EXPECT_TRUE(bench->job() == before) << item.key;
    EXPECT_FALSE(bench->session().history().canUndo());
  }
}

namespace {

// The front with nothing at its left pier but columns, sill, studs and bars.
Job leftPierBare() {
  Job job = support::boatShedFront();
  WallLine front = job.walls[0];
  const auto atLeft = [](double station) { return station < 48; };
  std::erase_if(front.panels, [&](const Panel& panel) { return atLeft(panel.from); });
  std::erase_if(front.straps, [&](const Strap& strap) { return atLeft(strap.station); });
  std::erase_if(front.bolts, [&](const Bolt& bolt) { return atLeft(bolt.station); });
  job.walls.replace(front);
  return job;
}

} // namespace

TEST(Workbench, aPanelPutDownBringsItsStrapsAndBoltsInOneStep) {
  const Job bare = leftPierBare();
  Workbench bench(bare);
  ASSERT_TRUE(bench.placeAt("panel", 24));
  const WallLine& front = bench.job().walls[0];
  ASSERT_EQ(front.panels.size(), 2u);
  EXPECT_EQ(front.panels.back().leftMark, "HD1"); // as on the other pier
  const auto ofLeftPier = [](const auto& list) {
    return std::count_if(list.begin(), list.end(), [](const auto& piece) { return piece.station < 48; });
  };
  EXPECT_EQ(ofLeftPier(front.straps), 2);
  EXPECT_GE(ofLeftPier(front.bolts), 2);
  EXPECT_EQ(bench.checker().counts().fix, 0);
  EXPECT_EQ(bench.session().selection(), (Selection{{front.id, front.panels.back().id}}));
  for (const Bolt& bolt : front.bolts) // the other pier is as it was
    if (bolt.station > 48) {
      EXPECT_EQ(*findIn(bare.walls[0].bolts, bolt.id), bolt);
    }
  EXPECT_EQ(bench.session().history().undoName(), "Place panel " + front.panels.back().mark);
  bench.session().undo();
  EXPECT_TRUE(bench.job() == bare);
  EXPECT_FALSE(bench.session().history().canUndo());
}

TEST(Workbench, aPanelBringsNothingWhereNoColumnStands) {
  Job bare = leftPierBare();
  WallLine front = bare.walls[0];
  std::erase_if(front.columns, [](const Column& column) { return column.station < 48; });
  bare.walls.replace(front);
  Workbench bench(bare);
  const std::size_t straps = front.straps.size();
  ASSERT_TRUE(bench.placeAt("panel", 24));
  EXPECT_EQ(bench.job().walls[0].panels.size(), 2u);
  EXPECT_EQ(bench.job().walls[0].straps.size(), straps);
}

TEST(Workbench, aBoltPutUnderAPanelSatisfiesWasherAndMiddleThird) {
  const auto bench = shed();
  const std::size_t before = bench->job().walls[0].bolts.size();
  for (const ShelfItem& item : bench->shelf())
    if (item.kind == PieceKind::Bolt) {
      ASSERT_TRUE(bench->placeAt(item.key, 29));
      break;
    }
  ASSERT_EQ(bench->job().walls[0].bolts.size(), before + 1);
  const Id placed = bench->session().selection().front().piece;
  for (const Finding& finding : bench->wall()->findings)
    if (!finding.pieces.empty() && finding.pieces.front() == placed) {
      EXPECT_TRUE(finding.rule != RuleId::WasherSheathing && finding.rule != RuleId::BoltThird &&
                  finding.rule != RuleId::BoltThread)
          << static_cast<int>(finding.rule);
    }
}

TEST(Workbench, theFixButtonPutsItRightAsOneStep) {
  Workbench bench(support::boatShedFrontSteelMoved());
  ASSERT_EQ(bench.checker().counts().fix, 1);
  bench.applyCorrection(bench.wall()->findings.front());
  EXPECT_EQ(bench.checker().counts().fix, 0);
  EXPECT_TRUE(bench.session().undo());
  EXPECT_EQ(bench.checker().counts().fix, 1);
}

TEST(Workbench, aRubberBandTakesWhatItTouchesAndLongBarsOnlyWhole) {
  const auto bench = shed();
  const WallLine& wall = *bench->job().walls.find(bench->session().wall());
  bench->press(pointerAt(0.5, 20));
  bench->drag(pointerAt(24, -6)); // the left half of the left pier
  ASSERT_TRUE(bench->inHand());
  EXPECT_EQ(bench->inHand()->kind, InHand::Kind::RubberBand);
  const Selection selection = bench->session().selection();
  const auto has = [&](PieceRef ref) { return std::find(selection.begin(), selection.end(), ref) != selection.end(); };
  for (const char* mark : {"S1", "B1", "B2", "C1"})
    EXPECT_TRUE(has(pieceNamed(*bench, mark))) << mark;
  for (const char* mark : {"S2", "B3", "C2"})
    EXPECT_FALSE(has(pieceNamed(*bench, mark))) << mark;
  for (const Bar& bar : wall.bars)
    EXPECT_EQ(has({wall.id, bar.id}), bar.run == BarRun::Upright && placeOf(bar).a.s <= 24) << bar.mark;
  bench->release(pointerAt(24, -6));
  EXPECT_FALSE(bench->inHand());
  EXPECT_EQ(bench->session().selection(), selection);
  EXPECT_FALSE(bench->session().history().canUndo()); // selecting is no step
}

TEST(Workbench, theLetterOfAWallInThePlanChoosesIt) {
  const auto bench = shed();
  PointerAt pointer;
  pointer.canvas = CanvasKind::Plan;
  HitArea hit;
  hit.piece = {bench->job().walls[2].id, {}};
  hit.part = HitArea::Part::Name;
  pointer.hit = hit;
  bench->press(pointer);
  bench->release(pointer);
  EXPECT_EQ(bench->session().wall(), bench->job().walls[2].id);
}

TEST(Workbench, aFrameChecksOneWallHoweverManyThereAre) {
  for (const std::size_t pieces : {100u, 4000u}) {
    Workbench bench(generateJob(3, pieces));
    const WallLine& wall = *bench.job().walls.find(bench.session().wall());
    PointerAt pointer = pointerAt(wall.bolts.front().station);
    HitArea hit;
    hit.piece = {wall.id, wall.bolts.front().id};
    pointer.hit = hit;
    bench.press(pointer);
    pointer.at.s += 3;
    bench.drag(pointer);
    EXPECT_EQ(bench.checker().lastChecked(), 1u);
  }
}

// ---- every gesture against everything that can come in between ---------------------------------------------------------
struct Gesture {
  const char* name;
  std::function<void(Workbench&)> begin; // pressed and dragged: something is in hand
};
struct Between {
  const char* name;
  std::function<void(std::unique_ptr<Workbench>&)> happen;
  bool sameJob = true; // the job must be as it was before the gesture
};

std::vector<Gesture> gestures() {
  const auto held = [](const char* mark, HitArea::Part part) {
    return [mark, part](Workbench& bench) {
      PointerAt pointer = on(bench, mark, part);
      bench.press(pointer);
      bench.drag(pointerAt(pointer.at.s + 7));
      bench.drag(pointerAt(pointer.at.s + 9));
    };
  };
  return {{"move", held("B2", HitArea::Part::Body)},
          {"resize", held("O1", HitArea::Part::ToEnd)},
          {"band",
           [](Workbench& bench) {
             bench.press(pointerAt(10, 40));
             bench.drag(pointerAt(60, -10));
           }},
          {"corner",
           [](Workbench& bench) {
             PointerAt pointer;
             pointer.canvas = CanvasKind::Plan;
             const Corner& corner = bench.job().corners->at(2);
             pointer.plan = corner.at;
             HitArea hit;
             hit.piece = {bench.job().walls[1].id, corner.id};
             hit.part = HitArea::Part::Corner;
             pointer.hit = hit;
             bench.press(pointer);
             pointer.plan.x += 20;
             bench.drag(pointer);
           }},
          {"whole wall",
           [](Workbench& bench) {
             PointerAt pointer;
             pointer.canvas = CanvasKind::Plan;
             HitArea hit;
             hit.piece = {bench.job().walls[0].id, {}};
             hit.part = HitArea::Part::Corner;
             pointer.hit = hit;
             bench.press(pointer);
             pointer.plan.y -= 30;
             bench.drag(pointer);
           }},
          {"pen",
           [](Workbench& bench) {
             bench.takePen();
             PointerAt pointer;
             pointer.canvas = CanvasKind::Plan;
             pointer.plan = {-200, -200};
             bench.press(pointer);
             pointer.plan = {-100, -200};
             bench.hover(pointer);
             bench.penKey(U'9');
           }},
          {"place", [](Workbench& bench) { bench.beginPlace(bench.shelf().front().key, pointerAt(30)); }},
          {"section", [](Workbench& bench) {
             PointerAt pointer = on(bench, "B2");
             pointer.canvas = CanvasKind::Section;
             bench.press(pointer);
             pointer.at.d += 1;
             bench.drag(pointer);
           }}};
}

std::vector<Between> betweens() {
  return {{"undo", [](auto& bench) { bench->session().undo(); }},
          {"redo", [](auto& bench) { bench->session().redo(); }},
          {"escape", [](auto& bench) { bench->cancel(); }},
          {"delete", [](auto& bench) { bench->removeSelected(); }, false},
          {"split", [](auto& bench) { bench->splitWall(bench->job().walls[1].id, 20); }, false},
          {"take up the pen", [](auto& bench) { bench->takePen(); }},
          {"another job", [](auto& bench) { bench->session().open(newJob()); }, false},
          {"another gesture", [](auto& bench) { bench->press(pointerAt(100, 70)); }},
          {"close", [](auto& bench) { bench = nullptr; }, false}};
}

TEST(Workbench, everyGestureSurvivesEverythingThatComesInBetween) {
  for (const Gesture& gesture : gestures())
    for (const Between& between : betweens()) {
      SCOPED_TRACE(std::string(gesture.name) + " and " + between.name);
      auto bench = shed();
      const Job before = bench->job();
      gesture.begin(*bench);
      between.happen(bench);
      if (!bench)
        continue;
      bench->drag(pointerAt(200));
      bench->release(pointerAt(200));
      bench->dropPlace(pointerAt(200));
      EXPECT_FALSE(bench->session().previewing());
      EXPECT_FALSE(bench->inHand());
      if (between.sameJob) {
        EXPECT_TRUE(bench->job() == before);
        EXPECT_FALSE(bench->session().history().canUndo());
      }
    }
}

TEST(Workbench, randomHandsNeverBreakIt) {
  std::mt19937 random(11);
  const auto bench = shed();
  const auto number = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
  for (int i = 0; i < 3000; ++i) {
    PointerAt pointer = pointerAt(number(320) - 16, number(120) - 30);
    pointer.keys = {number(4) == 0, number(4) == 0, number(4) == 0};
    const auto pieces = bench->wall() ? piecesOf(*bench->wall()->layout.wall) : std::vector<Id>{};
    if (number(2) && !pieces.empty()) {
      HitArea hit;
      hit.piece = {bench->session().wall(), pieces[static_cast<std::size_t>(number(static_cast<int>(pieces.size())))]};
      hit.part = static_cast<HitArea::Part>(number(3));
      pointer.hit = hit;
    }
    switch (number(11)) {
    case 9:
      pointer.canvas = CanvasKind::Plan;
      pointer.hit.reset();
      pointer.plan = {number(500) - 100.0, number(500) - 100.0};
      bench->hover(pointer);
      if (number(2))
        bench->press(pointer);
      break;
    case 10:
      if (number(8) == 0)
        bench->takePen();
      else if (number(16) == 0)
        bench->putPen();
      else
        bench->penKey(U"012'\r\bco"[number(8)]);
      break;
    case 0:
      bench->press(pointer);
      break;
    case 1:
    case 2:
      bench->drag(pointer);
      break;
    case 3:
      bench->release(pointer);
      break;
    case 4:
      bench->session().undo();
      break;
    case 5:
      bench->session().redo();
      break;
    case 6:
      bench->nudge(number(3) - 1, 0);
      break;
    case 7:
      bench->typeKey(U"0123456789'\r\b"[number(13)]);
      break;
    default:
      if (number(6) == 0)
        bench->removeSelected();
      else
        bench->selectNext(number(2) == 0);
    }
  }
  bench->cancel();
  // What is left is what a full check of it says.
  Counts full;
  for (const auto& wall : checkAll(bench->job()))
    full += wall->counts;
  EXPECT_EQ(bench->checker().counts(), full);
}

} // namespace
} // namespace sillwright
