// Pictures of the strap rules that are seen from outside.
#include <array>

#include "core/drawing/rule_sketch_pieces.h"

namespace sillwright::sketch {

namespace {

// A wall with its tape and a sill on it, pour line at y, the concrete ending at x on the right.
void wallWithEnd(Sketch& s, double x, double y) {
  concrete(s, {0, y, x, foot}, {.right = true});
  blade(s, 0, x, y);
}

void edge(Sketch& s) {
  wallWithEnd(s, 150, 62);
  wood(s, {102, 6, 148, 52});
  wood(s, {0, 52, 148, 62}, 1);
  strapFront(s, {.x = 122, .width = 20, .top = 8, .joint = 62, .bottom = 116});
  s.flag(Level::Fix, {132, 71, 150, 116});
  s.witness({150, 60}, {150, 18});
  s.across(24, 132, 150, "type's least", Side::Right);
  s.say({154, 42}, limitWords("strap.edge target", "better", "more is better"), Anchor::Start);
  s.name({156, 100}, "wall end", Anchor::Start);
}

void joint(Sketch& s) {
  concrete(s, {0, 62, right, foot});
  wood(s, {60, 0, 124, 62});
  blade(s, 0, right, 62);
  strapFront(s, {.x = 92, .width = 44, .top = 0, .joint = 90, .bottom = foot});
  s.flag(Level::Fix, {70, 62, 114, 90});
  s.witness({122, 90}, {146, 90});
  s.upright(140, 62, 90, limitWords("strap.joint", "most", "on the line"), Side::Right, Ink::Concrete);
  s.name({4, 57}, "pour line", Anchor::Start);
  s.name({60, 104}, "joint line", Anchor::End, Ink::Concrete);
}

void pair(Sketch& s) {
  concrete(s, {0, 74, right, foot});
  for (const double x : {36.0, 184.0})
    wood(s, {x - 17, 0, x + 17, 74});
  blade(s, 0, right, 74);
  strapFront(s, {.x = 36, .top = 4, .joint = 74, .bottom = 118});
  strapFront(s, {.x = 184, .top = 32, .joint = 102, .bottom = foot - 2});
  s.flag(Level::Fix, {176, 74, 192, 102});
  for (const double x : {46.0, 130.0})
    s.dashed({{x, 42}, {x + 44, 42}}, 2, 3, Ink::Text2, 0.9);
  s.witness({154, 102}, {170, 102});
  s.upright(160, 74, 102, limitWords("strap.pair", "apart", "level"), Side::Left, Ink::Concrete);
  vial(s, {110, 42}, -11);
  s.say({110, 26}, "joints level");
}

void lean(Sketch& s) {
  concrete(s, {0, 92, right, foot});
  wood(s, {72, 18, 126, 92});
  blade(s, 0, right, 92);
  strapFront(s, {.x = 98, .width = 20, .top = 24, .joint = 92, .bottom = 124, .lean = 32});
  s.flag(Level::Fix, {126, 24, 140, 50});
  s.dashed({{98, 92}, {98, 8}}, 8, 3, Ink::Dim, 0.8);
  s.across(14, 98, 130, "lean", Side::Left);
  s.say({148, 62}, "every nail on", Anchor::Start);
  s.say({148, 76}, "the column", Anchor::Start);
}

// A wall whose pour line steps down at a door.
void stepAt(Sketch& s, double x, double high, double low) {
  concrete(s, Polygon2{{0, high}, {x, high}, {x, low}, {right, low}, {right, foot}, {0, foot}},
           {Polygon2{{0, high}, {x, high}, {x, low}, {right, low}}});
  blade(s, 0, x, high);
  blade(s, x, right, low);
}

void leanOpening(Sketch& s) {
  stepAt(s, 106, 76, 96);
  wood(s, {58, 6, 106, 66});
  wood(s, {0, 66, 106, 76}, 1);
  strapFront(s, {.x = 92, .width = 20, .top = 10, .joint = 76, .bottom = 122, .lean = 22});
  s.flag(Level::Fix, {106, 10, 124, 56});
  s.line({106, 0}, {106, 76}, Ink::WoodLine, 0.9);
  s.name({168, 84}, "door opening");
  s.say({132, 38}, "nothing in it", Anchor::Start);
}

void plumb(Sketch& s) {
  concrete(s, {0, 96, right, foot});
  blade(s, 0, right, 96);
  wood(s, {46, 4, 110, 96});
  strapFront(s, {.x = 74, .width = 20, .top = 10, .joint = 96, .bottom = 126, .lean = 20});
  levelUpright(s, {104, 10, 120, 96});
  s.flag(Level::Watch, {86, 80, 104, 95});
  s.witness({120, 10}, {150, 10});
  s.upright(140, 10, 96, "in 24\"");
  s.across(114, 84, 104, limitWords("strap.plumb", "most", "out of plumb"), Side::Right, Ink::Concrete);
}

void columnNails(Sketch& s) {
  concrete(s, {0, 92, right, foot});
  wood(s, {0, 82, right, 92}, 1);
  wood(s, {70, 0, 118, 82});
  blade(s, 0, right, 92);
  strapFront(s, {.x = 114, .width = 26, .top = 8, .joint = 92, .bottom = 124, .nails = 6});
  s.flag(Level::Fix, {118, 10, 127, 72});
  s.name({66, 26}, "column", Anchor::End);
  s.say({138, 40}, "every nail", Anchor::Start);
  s.say({138, 54}, "on it", Anchor::Start);
}

// Close: a plate on a column of two plies, nails in two rows.
void plateOnPlies(Sketch& s, double x0, double seam, double x1, Bounds plate, double row) {
  wood(s, {x0, 0, seam, foot});
  wood(s, {seam, 0, x1, foot});
  s.fill(plate, Ink::Steel);
  const double middle = (plate.x0 + plate.x1) / 2;
  for (double y = plate.y0 + 14; y < plate.y1; y += 26)
    for (const double side : {-row, row})
      s.disc({middle + side, y}, 4, Ink::Paper);
}

void nailEdge(Sketch& s) {
  plateOnPlies(s, 4, 62, 126, {64, 0, 112, 86}, 15);
  s.flag(Level::Watch, {108, 34, 126, 46});
  s.witness({103, 72}, {103, 110});
  s.across(104, 103, 126, limitWords("strap.nail-edge", "", "nail to edge"), Side::Right);
  s.say({130, 122}, "least", Anchor::Start);
  s.name({132, 22}, "edge of the ply", Anchor::Start);
}

void seam(Sketch& s) {
  plateOnPlies(s, 28, 92, 156, {80, 22, 128, foot}, 12);
  s.line({92, 0}, {92, 22}, Ink::WoodLine, 1.4);
  s.flag(Level::Ask, {88, 28, 96, 124});
  s.leader({166, 12}, {92, 12});
  s.name({170, 16}, "seam", Anchor::Start);
  s.say({164, 70}, "no nail", Anchor::Start);
  s.say({164, 84}, "on it", Anchor::Start);
}

void missing(Sketch& s) {
  concrete(s, {0, 84, right, foot});
  panel(s, {24, 6, 196, 84});
  blade(s, 0, right, 84);
  strapFront(s, {.x = 31, .width = 10, .top = 24, .joint = 84, .bottom = 116, .nails = 5});
  s.flag(Level::Fix, {184, 24, 194, 116});
  ghost(s, {184, 24, 194, 116});
  s.leader({158, 50}, {184, 50});
  s.say({154, 48}, "strap in the plans", Anchor::End, Ink::Wood2);
  s.say({154, 62}, "and none here", Anchor::End, Ink::Wood2);
}

void type(Sketch& s) {
  concrete(s, {0, 86, right, foot});
  wood(s, {0, 76, right, 86}, 1);
  wood(s, {84, 0, 136, 76});
  blade(s, 0, right, 86);
  strapFront(s, {.x = 110, .width = 14, .top = 40, .joint = 86, .bottom = 112, .nails = 4});
  s.flag(Level::Fix, {96, 8, 124, 40});
  ghost(s, {96, 8, 124, 124});
  s.leader({146, 24}, {124, 24});
  s.say({150, 28}, "as marked", Anchor::Start);
  s.leader({76, 58}, {103, 58});
  s.say({72, 62}, "as set", Anchor::End);
}

void capacity(Sketch& s) {
  concrete(s, {0, 96, 108, foot});
  wood(s, {32, 34, 72, 96});
  blade(s, 0, 108, 96);
  strapFront(s, {.x = 52, .width = 16, .top = 46, .joint = 96, .bottom = 124});
  s.arrow({52, 40}, {52, 4});
  s.say({62, 18}, "pull", Anchor::Start);
  gauges(s, 136, 12, 104, 0.66, "marked", "strap");
}

constexpr std::array pictures{
    RulePicture{"strap.edge", edge},
    RulePicture{"strap.joint", joint},
    RulePicture{"strap.pair", pair},
    RulePicture{"strap.lean", lean},
    RulePicture{"strap.lean-opening", leanOpening},
    RulePicture{"strap.plumb", plumb},
    RulePicture{"strap.column", columnNails},
    RulePicture{"strap.nail-edge", nailEdge},
    RulePicture{"strap.seam", seam},
    RulePicture{"strap.missing", missing},
    RulePicture{"strap.type", type},
    RulePicture{"strap.capacity", capacity},
};

} // namespace

std::span<const RulePicture> strapPictures() {
  return pictures;
}

} // namespace sillwright::sketch
