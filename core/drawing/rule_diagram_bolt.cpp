// Pictures of the bolt rules that look at bolts along the sill, seen from outside.
#include <array>

#include "core/drawing/rule_sketch_pieces.h"

namespace sillwright::sketch {

namespace {

constexpr double pour = 82, onSill = 68, boltTop = 52, boltFoot = 116;

void wall(Sketch& s) {
  concrete(s, {0, pour, right, foot});
  blade(s, 0, right, pour);
}

void sill(Sketch& s, double x0, double x1) {
  wood(s, {x0, onSill, x1, pour}, 1);
}

void bolt(Sketch& s, double x, double washer = 26, double top = boltTop) {
  anchorFront(s, {.x = x, .top = top, .on = onSill, .pour = pour, .bottom = boltFoot, .washer = washer});
}

void count(Sketch& s) {
  wall(s);
  sill(s, 34, 186);
  bolt(s, 62);
  s.flag(Level::Fix, {154, boltTop, 162, boltFoot});
  ghost(s, {154, boltTop, 162, boltFoot});
  s.across(26, 34, 186, "one piece of sill");
  s.witness({34, 66}, {34, 20});
  s.witness({186, 66}, {186, 20});
  s.say({110, 50}, limitWords("bolt.count", "least", "enough bolts"));
}

void endFar(Sketch& s) {
  wall(s);
  sill(s, 0, 186);
  bolt(s, 66);
  s.flag(Level::Fix, {69, onSill, 112, pour});
  s.witness({66, 50}, {66, 24});
  s.witness({186, 66}, {186, 24});
  s.across(30, 66, 186, limitWords("bolt.end-far", "most", "near the end"));
  s.name({190, 62}, "end", Anchor::Start);
}

void endNear(Sketch& s) {
  wall(s);
  sill(s, 0, 134);
  bolt(s, 110);
  s.flag(Level::Fix, {113, onSill, 134, pour});
  s.witness({110, 50}, {110, 26});
  s.witness({134, 66}, {134, 26});
  s.across(32, 110, 134, limitWords("bolt.end-near", "least", "off the end"));
  s.name({140, 62}, "end of the sill", Anchor::Start);
}

void spacing(Sketch& s) {
  wall(s);
  sill(s, 0, right);
  bolt(s, 28);
  bolt(s, 192);
  s.flag(Level::Fix, {82, onSill, 138, pour});
  s.witness({28, 50}, {28, 24});
  s.witness({192, 50}, {192, 24});
  s.across(30, 28, 192, limitWords("bolt.spacing", "most", "not too far apart"));
}

void splice(Sketch& s) {
  wall(s);
  sill(s, 0, 122);
  sill(s, 122, right);
  s.flag(Level::Fix, {114, 56, 130, pour});
  bolt(s, 108, 44);
  s.line({122, onSill}, {122, pour}, Ink::WoodLine, 1.4);
  s.leader({140, 36}, {122, 74});
  s.name({142, 32}, "splice", Anchor::Start);
  s.say({70, 32}, "no washer over it");
}

void stud(Sketch& s) {
  wall(s);
  sill(s, 0, right);
  wood(s, {30, 0, 46, onSill}, 0.6);
  wood(s, {108, 0, 128, onSill}, 0.6);
  anchorFront(s, {.x = 99, .top = 40, .on = onSill, .pour = pour, .bottom = boltFoot, .thick = 7, .washer = 42});
  s.flag(Level::Fix, {108, 57, 121, onSill});
  s.name({134, 16}, "stud", Anchor::Start);
  s.say({134, 40}, "nothing", Anchor::Start);
  s.say({134, 54}, "under it", Anchor::Start);
}

void opening(Sketch& s) {
  concrete(s, Polygon2{{0, 62}, {84, 62}, {84, 84}, {right, 84}, {right, foot}, {0, foot}},
           {Polygon2{{0, 62}, {84, 62}, {84, 84}, {right, 84}}});
  blade(s, 0, 84, 62);
  blade(s, 84, right, 84);
  wood(s, {0, 50, 84, 62}, 1);
  wood(s, {66, 0, 84, 50});
  s.flag(Level::Fix, {134, 58, 154, 124});
  anchorFront(s, {.x = 144, .top = 62, .on = 84, .pour = 84, .bottom = 116, .washer = 0, .nutAt = 80});
  s.name({152, 18}, "door opening");
  s.say({152, 42}, "no bolt here");
}

void match(Sketch& s) {
  wall(s);
  sill(s, 0, right);
  bolt(s, 24);
  bolt(s, 80);
  s.flag(Level::Watch, {128, 32, 144, 52});
  bolt(s, 136, 26, 32);
  s.dashed({{14, 52}, {178, 52}}, 8, 3, Ink::Dim, 0.7);
  s.witness({146, 32}, {162, 32});
  s.upright(156, 32, 52, limitWords("bolt.match", "most", "alike"));
  s.say({52, 36}, "up alike");
}

void shear(Sketch& s) {
  concrete(s, {0, 100, 124, foot});
  panel(s, {26, 30, 104, 100});
  blade(s, 0, 124, 100);
  for (const double x : {44.0, 86.0})
    anchorFront(s, {.x = x, .top = 82, .on = 93, .pour = 100, .bottom = 122, .thick = 3.6, .washer = 16});
  s.arrow({20, 18}, {104, 18});
  s.name({4, 12}, "push", Anchor::Start);
  gauges(s, 142, 12, 104, 0.6, "panel", "bolts");
}

// Close: a bolt through sill and washer.
void closeBolt(Sketch& s, double top, double nutAt) {
  concrete(s, {0, 106, 116, foot});
  pourLine(s, 0, 130, 106);
  woodCut(s, {6, 74, 106, 106});
  anchorFront(s, {.x = 56,
                  .top = top,
                  .on = 74,
                  .pour = 106,
                  .bottom = foot,
                  .thick = 14,
                  .washer = 62,
                  .end = AnchorEnd::CutOff,
                  .nutAt = nutAt});
}

void threadLength(Sketch& s) {
  closeBolt(s, 60, 0);
  s.flag(Level::Fix, {46, 38, 66, 53});
  s.witness({66, 38}, {132, 38});
  s.upright(124, 38, 106, "+ nut");
  s.say({130, 60}, "sill + washer", Anchor::Start);
  s.say({130, 92}, "+ " + limitWords("bolt.thread standout", "", "thread"), Anchor::Start);
}

void runOut(Sketch& s) {
  closeBolt(s, 16, 52);
  s.flag(Level::Fix, {42, 53, 70, 66});
  s.leader({100, 52}, {64, 52});
  s.name({104, 56}, "thread ends", Anchor::Start);
  s.say({116, 82}, "nut tightens", Anchor::Start);
  s.say({116, 96}, "on the washer", Anchor::Start);
}

constexpr std::array pictures{
    RulePicture{"bolt.count", count},         RulePicture{"bolt.end-far", endFar},
    RulePicture{"bolt.end-near", endNear},    RulePicture{"bolt.spacing", spacing},
    RulePicture{"bolt.thread", threadLength}, RulePicture{"bolt.run-out", runOut},
    RulePicture{"bolt.opening", opening},     RulePicture{"bolt.stud", stud},
    RulePicture{"bolt.splice", splice},       RulePicture{"bolt.match", match},
    RulePicture{"bolt.shear", shear},
};

} // namespace

std::span<const RulePicture> boltPictures() {
  return pictures;
}

} // namespace sillwright::sketch
