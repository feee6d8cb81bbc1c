// Pictures of the strap rules that are seen in the cut, outside on the left.
#include <array>

#include "core/drawing/rule_sketch_pieces.h"

namespace sillwright::sketch {

namespace {

// A wall cut across, from pour line to y1, between x0 and x1, with sill and sheathing on it.
void cutWall(Sketch& s, double x0, double x1, double pour, double y1, bool bottom = false) {
  concrete(s, {x0, pour, x1, y1}, {.right = true, .bottom = bottom, .left = true});
  pourLine(s, x0 - 26, x1 + 26, pour);
  s.box({x0, 0, x0 + 5, pour}, Ink::Wood2, Ink::WoodLine, 0.8);
  woodCut(s, {x0 + 5, pour - 13, x1 - 12, pour});
}

void nailDepth(Sketch& s) {
  wood(s, {36, 0, 206, foot});
  s.box({17, 0, 36, foot}, Ink::Wood2, Ink::WoodLine, 0.9);
  s.fill(Bounds{12, 0, 17, foot}, Ink::Steel);
  s.flag(Level::Fix, {138, 35, 178, 47});
  s.box({6, 34, 12, 48}, Ink::Steel, Ink::Steel, 0.5);
  s.fill(Polygon2{{12, 38}, {128, 38}, {138, 41}, {128, 44}, {12, 44}}, Ink::Steel);
  s.witness({138, 48}, {138, 76});
  s.across(70, 36, 138, limitWords("strap.nail-depth", "least", "deep enough"), Side::Under, Ink::Wood);
  s.say({122, 114}, limitWords("strap.nail-depth full", "for full value", "into the column"), Anchor::Middle,
        Ink::Wood);
  s.name({122, 18}, "column", Anchor::Middle, Ink::Wood);
}

void steel(Sketch& s) {
  cutWall(s, 60, 124, 48, foot);
  strapCut(s, 60, 2, 48, {84, 112}, {94, 98});
  bar(s, {104, 60}, {104, foot});
  barCut(s, {87, 84}, 5);
  s.flag(Level::Fix, {75, 76, 82, 92});
  s.leader({138, 84}, {82, 84});
  s.say({142, 82}, "clear of bars", Anchor::Start);
  s.say({142, 97}, limitWords("strap.steel target", "better", ""), Anchor::Start);
}

void depth(Sketch& s) {
  earth(s, {0, 112, right, foot});
  cutWall(s, 60, 124, 38, 112, true);
  strapCut(s, 60, 2, 38, {82, 92}, {92, 78});
  s.flag(Level::Watch, {74, 94, 96, 112});
  s.witness({86, 93}, {146, 93});
  s.witness({124, 112}, {146, 112});
  s.upright(140, 93, 112, limitWords("strap.depth target", "better", "inside"));
  s.name({32, 126}, "earth", Anchor::Middle, Ink::Earth);
}

void back(Sketch& s) {
  cutWall(s, 40, 104, 38, foot);
  strapCut(s, 40, 2, 38, {70, 96}, {90, 76});
  s.flag(Level::Watch, {92, 66, 104, 86});
  s.witness({92, 86}, {92, 112});
  s.across(106, 92, 104, limitWords("strap.back target", "better", "inside"), Side::Right);
  s.leader({126, 70}, {104, 60});
  s.name({130, 74}, "inside face", Anchor::Start);
}

void hang(Sketch& s) {
  concrete(s, {106, 86, 176, foot}, {.right = true, .left = true});
  pourLine(s, 64, right, 86);
  formBoard(s, {86, 24, 106, foot - 2});
  strapCut(s, 108, 6, 86, {128, 122}, {138, 112});
  s.path({{109, 80}, {109, 50}, {82, 50}, {82, 60}}, Ink::Steel, 2.4);
  s.flag(Level::Fix, {86, 24, 106, 50});
  s.witness({84, 24}, {62, 24});
  s.upright(70, 24, 86, "form top", Side::Left);
  s.leader({136, 50}, {109, 50});
  s.say({140, 48}, "within reach", Anchor::Start);
  s.say({140, 62}, "of the hanger", Anchor::Start);
}

constexpr std::array pictures{
    RulePicture{"strap.nail-depth", nailDepth},
    RulePicture{"strap.steel", steel},
    RulePicture{"strap.depth", depth},
    RulePicture{"strap.back", back},
    RulePicture{"strap.hang", hang},
};

} // namespace

std::span<const RulePicture> strapCutPictures() {
  return pictures;
}

} // namespace sillwright::sketch
