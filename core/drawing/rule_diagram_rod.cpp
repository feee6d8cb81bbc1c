// Pictures of the rod rules: a rod stands in the concrete beside its column and is held by a bracket.
#include <array>

#include "core/base/length.h"
#include "core/drawing/rule_sketch_pieces.h"
#include "core/standards/cover.h"

namespace sillwright::sketch {

namespace {

// A bracket on the right face of a column: leg and seat.
void bracket(Sketch& s, double face, double top, double seat, double reach) {
  const Ink ground = s.paper() ? Ink::Paper : Ink::SteelFace;
  s.box({face, top, face + 4, seat}, ground, Ink::Steel, 1);
  s.box({face, seat - 4, face + reach, seat}, ground, Ink::Steel, 1);
}

void rod(Sketch& s, double x, double top, double on, double pour, double bottom) {
  anchorFront(
      s,
      {.x = x, .top = top, .on = on, .pour = pour, .bottom = bottom, .thick = 5, .washer = 0, .end = AnchorEnd::Plate});
}

void wall(Sketch& s, double pour) {
  concrete(s, {0, pour, right, foot});
  wood(s, {0, pour - 10, right, pour}, 1);
  blade(s, 0, right, pour);
}

void offset(Sketch& s) {
  wall(s, 94);
  wood(s, {20, 0, 60, 84});
  bracket(s, 60, 22, 74, 52);
  s.flag(Level::Fix, {86, 30, 104, 66});
  rod(s, 104, 48, 70, 94, 124);
  s.dashed({{86, 10}, {86, 84}}, 8, 3, Ink::Dim, 0.8);
  s.across(18, 60, 86, "bracket", Side::Right);
  s.across(112, 86, 104, limitWords("rod.offset", "most", "on its line"), Side::Left, Ink::Concrete);
}

void edge(Sketch& s) {
  concrete(s, {0, 62, 138, foot}, {.right = true});
  blade(s, 0, 138, 62);
  wood(s, {0, 52, 134, 62}, 1);
  wood(s, {44, 0, 84, 52});
  bracket(s, 84, 14, 46, 34);
  rod(s, 110, 24, 42, 62, 116);
  s.flag(Level::Ask, {113, 72, 138, 110});
  s.witness({110, 22}, {110, 4});
  s.witness({138, 60}, {138, 4});
  s.across(14, 110, 138, limitWords("rod.edge", "", "off the end"), Side::Right);
  s.say({144, 32}, "least", Anchor::Start);
  s.name({144, 100}, "wall end", Anchor::Start);
}

void embed(Sketch& s) {
  wall(s, 46);
  wood(s, {30, 0, 66, 36});
  bracket(s, 66, 4, 32, 34);
  rod(s, 90, 12, 28, 46, 96);
  s.flag(Level::Fix, {80, 98, 100, 122});
  s.witness({100, 96}, {146, 96});
  s.upright(136, 46, 96, limitWords("rod.embed", "least", "deep enough"), Side::Right, Ink::Concrete);
}

void threadLength(Sketch& s) {
  wood(s, {0, 0, 48, foot});
  bracket(s, 48, 4, 112, 92);
  const Ink ground = s.paper() ? Ink::Paper : Ink::SteelSoft;
  s.box({88, 76, 102, foot}, ground, Ink::Steel, 1);
  s.box({48, 106, 140, 112}, s.paper() ? Ink::Paper : Ink::SteelFace, Ink::Steel, 1);
  s.box({80, 86, 110, 106}, Ink::Steel, Ink::Steel, 0.6);
  s.flag(Level::Fix, {86, 62, 104, 85});
  s.witness({106, 62}, {152, 62});
  s.witness({112, 86}, {152, 86});
  s.upright(146, 62, 86, "past the nut");
  s.leader({152, 122}, {132, 110});
  s.name({156, 126}, "bracket", Anchor::Start);
}

void steel(Sketch& s) {
  concrete(s, {0, 34, right, 104}, {.top = true, .bottom = true});
  bar(s, {0, 56}, {right, 56}, 6);
  bar(s, {0, 86}, {right, 86}, 6);
  s.flag(Level::Watch, {88, 59, 104, 66});
  anchorAbove(s, {96, 74}, 8);
  s.leader({118, 26}, {102, 61});
  s.say({110, 22}, limitWords("rod.steel target", "clear of bars is better", "clear of bars"));
  s.name({6, 122}, "wall, from above", Anchor::Start);
}

void coverOver(Sketch& s) {
  concrete(s, {56, 40, 130, foot}, {.right = true, .left = true});
  pourLine(s, 30, 156, 40);
  woodCut(s, {61, 28, 120, 40});
  anchorCut(s, {.x = 108, .top = 8, .on = 28, .bottom = 104, .thick = 6, .washer = 0, .reach = 0});
  s.flag(Level::Ask, {112, 56, 130, 104});
  s.witness({112, 106}, {112, 124});
  s.across(118, 111, 130, "cover", Side::Right);
  s.say({138, 84}, inches(requiredCover(Exposure::ExposedOrGround, 5)) + " least", Anchor::Start);
}

void opening(Sketch& s) {
  concrete(s, {0, 84, right, foot});
  blade(s, 0, right, 84);
  wood(s, {0, 74, 84, 84}, 1);
  wood(s, {44, 20, 84, 74});
  wood(s, {44, 4, right, 20}, 1);
  bracket(s, 84, 34, 72, 34);
  s.flag(Level::Fix, {98, 46, 118, 124});
  rod(s, 108, 50, 68, 84, 120);
  s.name({168, 44}, "door opening");
  s.say({168, 66}, "no rod here");
}

void plumb(Sketch& s) {
  concrete(s, {0, 98, right, foot});
  blade(s, 0, right, 98);
  const Polygon2 leaning{{70, 98}, {77, 98}, {103, 8}, {96, 8}};
  s.box({70, 98, 77, 122}, s.paper() ? Ink::Paper : Ink::SteelSoft, Ink::Steel, 0.9);
  s.fill(leaning, s.paper() ? Ink::Paper : Ink::SteelSoft);
  s.loop(leaning, Ink::Steel, 0.9);
  levelUpright(s, {103, 8, 119, 98});
  s.flag(Level::Watch, {81, 80, 103, 97});
  s.witness({120, 8}, {148, 8});
  s.upright(140, 8, 98, "in 24\"");
  s.across(114, 78, 103, limitWords("rod.plumb", "most", "out of plumb"), Side::Right, Ink::Concrete);
}

constexpr std::array pictures{
    RulePicture{"rod.offset", offset},       RulePicture{"rod.edge", edge},   RulePicture{"rod.embed", embed},
    RulePicture{"rod.thread", threadLength}, RulePicture{"rod.steel", steel}, RulePicture{"rod.cover", coverOver},
    RulePicture{"rod.opening", opening},     RulePicture{"rod.plumb", plumb},
};

} // namespace

std::span<const RulePicture> rodPictures() {
  return pictures;
}

} // namespace sillwright::sketch
