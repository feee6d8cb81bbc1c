// Pictures of the rules about columns and sills.
#include <array>

#include "core/drawing/rule_sketch_pieces.h"

namespace sillwright::sketch {

namespace {

void columnSill(Sketch& s) {
  concrete(s, {0, 94, right, foot});
  blade(s, 0, right, 94);
  wood(s, {0, 78, 118, 94}, 1);
  wood(s, {88, 0, 140, 78});
  s.flag(Level::Fix, {118, 78, 140, 94});
  s.name({6, 70}, "sill", Anchor::Start);
  s.say({150, 34}, "wholly on", Anchor::Start);
  s.say({150, 48}, "the sill", Anchor::Start);
}

void columnOpening(Sketch& s) {
  concrete(s, {0, 104, right, foot});
  blade(s, 0, right, 104);
  wood(s, {0, 94, 60, 104}, 1);
  wood(s, {36, 18, 60, 94});
  wood(s, {36, 2, right, 18}, 1);
  s.line({60, 18}, {60, 104}, Ink::WoodLine, 0.9);
  wood(s, {88, 18, 122, 104});
  s.flag(Level::Fix, {88, 18, 122, 104});
  s.name({172, 52}, "door opening");
  s.say({172, 76}, "no column");
}

void columnOverlap(Sketch& s) {
  wood(s, {0, 26, right, 106}, 1);
  woodCut(s, {46, 32, 112, 100});
  woodCut(s, {96, 32, 150, 100});
  s.flag(Level::Fix, {96, 32, 112, 100});
  s.name({6, 18}, "sill, from above", Anchor::Start);
  s.say({104, 122}, "columns side by side");
}

void columnPlan(Sketch& s) {
  wood(s, {0, 34, right, 100}, 1);
  for (const double x : {60.0, 86.0})
    woodCut(s, {x, 38, x + 26, 96});
  s.flag(Level::Fix, {112, 38, 138, 96});
  ghost(s, {112, 38, 138, 96});
  s.across(24, 60, 138, "as marked");
  s.across(112, 60, 112, "made up", Side::Right);
}

// The corner of a foundation from above, outside at the left and the bottom.
void corner(Sketch& s, double from) {
  const Polygon2 outline{{50, 0}, {104, 0}, {104, 62}, {right, 62}, {right, 116}, {50, 116}};
  concrete(s, outline, {Polygon2{{50, 0}, {50, 116}, {right, 116}}, Polygon2{{104, 0}, {104, 62}, {right, 62}}});
  wood(s, {56, 0, 96, 110}, 1);
  wood(s, {from, 70, right, 110}, 1);
}

void sillCorner(Sketch& s) {
  corner(s, 112);
  s.flag(Level::Fix, {96, 70, 112, 110});
  s.witness({96, 68}, {96, 34});
  s.witness({112, 68}, {112, 34});
  s.across(42, 96, 112, limitWords("sill.corner", "most", "no gap"), Side::Right);
  s.name({214, 22}, "corner, from above", Anchor::End);
}

void sillConcrete(Sketch& s) {
  concrete(s, {70, 68, 140, foot}, {.right = true, .left = true});
  pourLine(s, 44, 140, 68);
  woodCut(s, {94, 44, 162, 68});
  s.flag(Level::Fix, {140, 68, 162, 84});
  s.say({110, 22}, "wholly on concrete");
  s.name({90, 60}, "sill", Anchor::End);
}

void sillMark(Sketch& s) {
  concrete(s, {50, 76, 170, foot}, {.right = true, .left = true});
  pourLine(s, 30, 190, 76);
  s.flag(Level::Fix, {116, 42, 152, 76});
  woodCut(s, {68, 42, 116, 76});
  ghost(s, {68, 42, 152, 76});
  s.across(28, 68, 152, "as marked");
  s.across(94, 68, 116, "set", Side::Right, Ink::Concrete);
}

void sillPiece(Sketch& s) {
  concrete(s, {0, 82, right, foot});
  blade(s, 0, right, 82);
  for (double x = 16; x < 210; x += 28)
    wood(s, {x, 50, x + 6, 68}, 0.6);
  wood(s, {16, 68, 206, 82}, 1);
  s.flag(Level::Watch, {172, 68, 206, 82});
  s.witness({16, 66}, {16, 20});
  s.witness({206, 66}, {206, 20});
  s.across(28, 16, 206, limitWords("sill.piece", "in one piece", "one piece"));
  s.name({110, 112}, "longest lumber", Anchor::Middle, Ink::Concrete);
}

constexpr std::array pictures{
    RulePicture{"column.sill", columnSill},       RulePicture{"column.opening", columnOpening},
    RulePicture{"column.overlap", columnOverlap}, RulePicture{"column.plan", columnPlan},
    RulePicture{"sill.corner", sillCorner},       RulePicture{"sill.concrete", sillConcrete},
    RulePicture{"sill.mark", sillMark},           RulePicture{"sill.piece", sillPiece},
};

} // namespace

std::span<const RulePicture> framingPictures() {
  return pictures;
}

} // namespace sillwright::sketch
