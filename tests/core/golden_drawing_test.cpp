// Compares the text dump of a specimen with the stored one. After a wanted change of the drawing language, run with
// SILLWRIGHT_WRITE_GOLDEN=1 and look at what changed.
#include <cstdlib>
#include <fstream>
#include <sstream>

#include <gtest/gtest.h>

#include "core/drawing/hatch.h"
#include "core/drawing/writers.h"

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

TEST(GoldenDrawing, SpecimenOfTheDrawingLanguage) {
  const std::string file = SILLWRIGHT_SOURCE_DIR "/tests/core/golden/drawing_language.txt";
  const std::string got = toText(specimen());
  if (std::getenv("SILLWRIGHT_WRITE_GOLDEN") != nullptr) {
    std::ofstream(file, std::ios::binary) << got;
    GTEST_SKIP() << "wrote " << file;
  }
  std::ifstream stored(file, std::ios::binary);
  ASSERT_TRUE(stored) << file;
  std::stringstream wanted;
  wanted << stored.rdbuf();
  std::istringstream gotLines(got), wantedLines(wanted.str());
  std::string a, b;
  for (int line = 1; std::getline(wantedLines, b); ++line) {
    ASSERT_TRUE(std::getline(gotLines, a)) << "ends before line " << line;
    ASSERT_EQ(a, b) << "line " << line;
  }
  EXPECT_EQ(got, wanted.str());
}

} // namespace
} // namespace sillwright
