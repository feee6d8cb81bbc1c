// Drawings as text, compared with the stored ones: see golden.h.
#include <gtest/gtest.h>

#include "core/drawing/elevation.h"
#include "core/drawing/hatch.h"
#include "core/drawing/plan.h"
#include "core/drawing/section.h"
#include "core/drawing/writers.h"
#include "demo_wall.h"
#include "golden.h"
#include "rules_wall.h"

namespace sillwright {
namespace {

void drawLevel(Drawing& d, Level level, const std::string& word, double y) {
  drawFlag(d, level, {0, y, 62, y + 40});
  drawFlag(d, level, {80, y, 81.125, y + 36});
  drawFlag(d, level, {100, y + 10, 130, y + 14.5});
  drawSwatch(d, level, 150, y + 10, 12, 8.4, inkOf(level));
  const LabelText text{level, word, "S1 · EDGE 3/8\" < 1/2\"", "move it right 1/8\""};
  drawLabel(d, text, LabelForm::OneLine, 180, y);
  drawLabel(d, text, LabelForm::TwoLines, 180, y + 20);
  drawLabel(d, text, LabelForm::Tall, 340, y);
}

void drawMarks(Drawing& d, double y) {
  const Point2 origin{0, y};
  drawConcrete(d, {{0, y}, {60, y}, {60, y + 30}, {30, y + 30}, {30, y + 40}, {0, y + 40}}, origin);
  drawEarth(d, rectangle(70, y, 115, y + 30), origin);
  drawWoodCut(d, {120, y, 150, y + 20});
  drawSteelCut(d, rectangle(160, y, 180, y + 20));
  drawSteelCut(d, rectangle(190, y, 191.5, y + 20));
  TapeSpec tape;
  tape.stations = {0, 30};
  tape.scale = 7.3;
  tape.xOf = [](double s) { return 220 + 7.3 * s; };
  tape.y = y;
  tape.avoid = {{220 + 7.3 * 24 + 1, 220 + 7.3 * 24 + 9}};
  drawTape(d, tape);
  drawHook(d, 220, y, tape.blade, Ink::BladeInk, Ink::Blade);
  for (const Pointing pointing : {Pointing::Down, Pointing::Up, Pointing::Left, Pointing::Right})
    drawCrowsFoot(d, 460 + 12 * static_cast<int>(pointing), y + 10, pointing, Ink::Dim, 6, 1.2);
}

Drawing specimen() {
  Drawing d;
  drawLevel(d, Level::Fix, "FIX", 0);
  drawLevel(d, Level::Ask, "ASK", 60);
  drawLevel(d, Level::Watch, "WATCH", 120);
  drawMarks(d, 180);
  return d;
}

TEST(GoldenDrawing, SpecimenOfTheDrawingLanguage) { test::expectGolden("drawing_language.txt", toText(specimen())); }

TEST(GoldenDrawing, Elevation) {
  const Job job = test::demoJob();
  const auto wall = test::demoWall(job);
  ElevationInput in;
  in.job = &job;
  in.wall = wall.get();
  in.words = test::demoWords;
  in.window = {0, 0, 700, 420};
  in.view = fitElevation(wall->layout, in.window, false, 30);
  test::expectGolden("elevation_demo.txt", toText(drawElevation(in).drawing));
}

std::string sectionText(const Job& job, Id piece, double station, Medium medium) {
  const auto wall = checkAll(job).front();
  SectionInput in;
  in.job = &job;
  in.wall = wall.get();
  in.piece = piece;
  in.station = station;
  in.medium = medium;
  in.window = {0, 0, 320, 480};
  in.view = fitSection(*wall, piece, in.window);
  return toText(drawSection(in));
}

TEST(GoldenDrawing, SectionThroughAStrapAndABolt) {
  const Job job = test::demoJob();
  const WallLine& wall = job.walls[0];
  const Strap& strap = wall.straps.front();
  const Bolt& bolt = wall.bolts[1];
  test::expectGolden("section_strap.txt", sectionText(job, strap.id, strap.station, Medium::Screen));
  test::expectGolden("section_bolt.txt", sectionText(job, bolt.id, bolt.station, Medium::Paper));
}

TEST(GoldenDrawing, Plan) {
  const auto demo = testing_support::wallWithStrapsAt(1.625, 44.5, 242.875, 285.25);
  for (const Medium medium : {Medium::Screen, Medium::Paper}) {
    PlanStyle style;
    style.medium = medium;
    style.shown = demo.wall;
    style.view = fitPlan(demo.job, {0, 0, 500, 300});
    const auto wall = checkAll(demo.job).front();
    Drawing drawing = drawPlanFrame(demo.job, style);
    drawing.add(drawPlanWall(demo.job, *wall, style));
    test::expectGolden(medium == Medium::Screen ? "plan_screen.txt" : "plan_paper.txt", toText(drawing));
  }
}

} // namespace
} // namespace sillwright
