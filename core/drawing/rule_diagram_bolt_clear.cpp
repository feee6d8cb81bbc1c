// Pictures of the bolt rules that look across the wall or into the concrete.
#include <array>

#include "core/base/length.h"
#include "core/drawing/rule_sketch_pieces.h"
#include "core/standards/cover.h"

namespace sillwright::sketch {

namespace {

// A wall cut across with a sill on it, pour line at y.
void cutWall(Sketch& s, double x0, double x1, double pour) {
  concrete(s, {x0, pour, x1, foot}, {.right = true, .left = true});
  pourLine(s, x0 - 22, x1 + 22, pour);
  woodCut(s, {x0 + 5, pour - 12, x1 - 10, pour});
}

void third(Sketch& s) {
  wood(s, {0, 30, right, 102}, 1);
  for (const double y : {54.0, 78.0})
    s.dashed({{0, y}, {right, y}}, 8, 3, Ink::Dim, 0.8);
  anchorAbove(s, {40, 66}, 6.5);
  s.flag(Level::Fix, {118, 44, 134, 54});
  anchorAbove(s, {126, 40}, 6.5);
  s.upright(182, 54, 78, "middle third", Side::Left, Ink::Wood);
  s.name({6, 24}, "sill, from above", Anchor::Start);
  s.name({6, 118}, "outside", Anchor::Start);
}

void embed(Sketch& s) {
  cutWall(s, 56, 124, 40);
  anchorCut(s, {.x = 86, .top = 12, .on = 28, .bottom = 92});
  s.flag(Level::Fix, {80, 94, 106, 118});
  s.witness({106, 91}, {152, 91});
  s.upright(146, 40, 91, limitWords("bolt.embed", "least", "deep enough"));
}

void gap(Sketch& s) {
  concrete(s, {0, 48, right, 112}, {.top = true, .bottom = true});
  s.flag(Level::Fix, {104, 70, 116, 90});
  anchorAbove(s, {96, 80}, 8);
  anchorAbove(s, {124, 80}, 8);
  s.witness({96, 72}, {96, 28});
  s.witness({124, 72}, {124, 28});
  s.across(34, 96, 124, limitWords("bolt.gap", "least", "apart"));
  s.name({6, 124}, "wall, from above", Anchor::Start);
}

void coverOver(Sketch& s) {
  cutWall(s, 92, 176, 40);
  anchorCut(s, {.x = 114, .top = 12, .on = 28, .bottom = 104, .reach = 26});
  s.flag(Level::Ask, {92, 54, 111, 104});
  s.witness({112, 104}, {112, 122});
  s.across(117, 92, 112, "cover", Side::Left);
  s.say({80, 74}, inches(requiredCover(Exposure::ExposedOrGround, 5)) + " least", Anchor::End);
}

void hook(Sketch& s) {
  cutWall(s, 50, 122, 40);
  s.flag(Level::Fix, {34, 90, 50, 104});
  anchorCut(s, {.x = 70, .top = 12, .on = 28, .bottom = 100, .reach = -34});
  s.dashed({{72, 95}, {98, 95}, {98, 100}, {72, 100}}, 4, 2, Ink::Steel, 1);
  s.leader({132, 78}, {96, 97});
  s.say({136, 76}, "leg inward", Anchor::Start);
  s.across(114, 72, 98, "");
  s.say({136, 102}, limitWords("bolt.hook least", "", "long enough"), Anchor::Start);
  s.say({136, 116}, "least", Anchor::Start);
}

void steel(Sketch& s) {
  concrete(s, {0, 44, right, foot});
  wood(s, {0, 32, right, 44}, 1);
  bar(s, {0, 116}, {right, 116});
  bar(s, {98, 56}, {98, foot});
  blade(s, 0, right, 44);
  anchorFront(s, {.x = 84, .top = 14, .on = 32, .pour = 44, .bottom = 104, .thick = 6});
  s.flag(Level::Watch, {87, 62, 96, 96});
  s.leader({126, 78}, {96, 78});
  s.say({130, 76}, "clear of bars", Anchor::Start, Ink::Concrete);
  s.say({130, 92}, limitWords("bolt.steel target", "better", ""), Anchor::Start, Ink::Concrete);
}

void strap(Sketch& s) {
  concrete(s, {0, 62, right, foot});
  wood(s, {0, 52, right, 62}, 1);
  wood(s, {56, 0, 92, 52});
  blade(s, 0, right, 62);
  strapFront(s, {.x = 76, .width = 20, .top = 4, .joint = 62, .bottom = 118});
  anchorFront(s, {.x = 104, .top = 36, .on = 52, .pour = 62, .bottom = 112, .washer = 22});
  s.flag(Level::Watch, {86, 74, 102, 110});
  s.witness({102, 112}, {102, 126});
  s.leader({130, 92}, {102, 92});
  s.say({134, 90}, "clear of straps", Anchor::Start, Ink::Concrete);
  s.say({134, 106}, limitWords("bolt.strap target", "better", ""), Anchor::Start, Ink::Concrete);
}

constexpr std::array pictures{
    RulePicture{"bolt.third", third},     RulePicture{"bolt.embed", embed}, RulePicture{"bolt.gap", gap},
    RulePicture{"bolt.cover", coverOver}, RulePicture{"bolt.hook", hook},   RulePicture{"bolt.steel", steel},
    RulePicture{"bolt.strap", strap},
};

} // namespace

std::span<const RulePicture> boltClearPictures() {
  return pictures;
}

} // namespace sillwright::sketch
