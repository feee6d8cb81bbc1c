// Pictures of the washer rules: the sill from above, outside at the bottom.
#include <array>

#include "core/drawing/rule_sketch_pieces.h"

namespace sillwright::sketch {

namespace {

void sillAbove(Sketch& s, double y0, double y1) {
  wood(s, {0, y0, right, y1}, 1);
}

void size(Sketch& s) {
  sillAbove(s, 40, 126);
  s.flag(Level::Fix, {56, 54, 122, 120});
  ghost(s, {56, 54, 122, 120});
  washerAbove(s, {84, 92}, 46, 8);
  s.witness({56, 52}, {56, 24});
  s.witness({122, 52}, {122, 24});
  s.across(30, 56, 122, limitWords("washer.size", "least", "large enough"));
  s.say({134, 92}, limitWords("washer.size thickness", "thick", "thick enough"), Anchor::Start, Ink::Wood);
}

void sheathing(Sketch& s) {
  sillAbove(s, 16, 96);
  s.box({0, 96, right, 106}, Ink::Wood2, Ink::WoodLine, 0.9);
  washerAbove(s, {90, 50}, 46, 8);
  s.flag(Level::Fix, {67, 73, 113, 96});
  s.witness({115, 73}, {140, 73});
  s.upright(132, 73, 96, limitWords("washer.sheathing", "most", "near the edge"), Side::Right, Ink::Wood);
  s.name({6, 122}, "sheathing", Anchor::Start);
  s.say({214, 122}, "over " + limitWords("washer.sheathing over", "", "its plf"), Anchor::End);
}

void slot(Sketch& s) {
  const Bounds plate{8, 28, 108, 124};
  s.box(plate, s.paper() ? Ink::Paper : Ink::SteelFace, Ink::Steel, 1.1);
  const Polygon2 hole{{28, 70}, {34, 64}, {90, 64}, {96, 70}, {96, 82}, {90, 88}, {34, 88}, {28, 82}};
  s.fill(hole, Ink::Paper);
  s.loop(hole, Ink::Steel, 1.1);
  s.flag(Level::Fix, {80, 64, 96, 88});
  s.disc({48, 76}, 9, Ink::Steel);
  s.ring({48, 76}, 22, Ink::Steel, 0.9);
  s.witness({28, 62}, {28, 12});
  s.witness({96, 62}, {96, 12});
  s.across(18, 28, 96, limitWords("washer.slot length", "most", "not too long"), Side::Right);
  s.upright(120, 64, 88, "bolt + " + limitWords("washer.slot wider than the bolt by", "", "a little"));
  s.witness({98, 64}, {124, 64});
  s.witness({98, 88}, {124, 88});
  s.name({116, 118}, "cut washer on top", Anchor::Start);
}

void sill(Sketch& s) {
  sillAbove(s, 14, 82);
  washerAbove(s, {110, 68}, 54, 8);
  s.flag(Level::Fix, {83, 82, 137, 95});
  s.name({6, 76}, "sill", Anchor::Start, Ink::Wood);
  s.say({110, 118}, "wholly on the sill");
}

void column(Sketch& s) {
  sillAbove(s, 24, 106);
  woodCut(s, {104, 28, 172, 102});
  washerAbove(s, {92, 65}, 48, 8);
  s.flag(Level::Fix, {104, 41, 116, 89});
  s.name({176, 70}, "column", Anchor::Start, Ink::Wood);
  s.say({110, 16}, limitWords("washer.column target", "clear is better", "clear of columns"));
}

void washer(Sketch& s) {
  sillAbove(s, 24, 106);
  washerAbove(s, {84, 65}, 56, 8);
  washerAbove(s, {130, 65}, 56, 8);
  s.flag(Level::Fix, {102, 37, 112, 93});
  s.say({107, 16}, "no overlap");
}

constexpr std::array pictures{
    RulePicture{"washer.size", size}, RulePicture{"washer.sheathing", sheathing}, RulePicture{"washer.slot", slot},
    RulePicture{"washer.sill", sill}, RulePicture{"washer.column", column},       RulePicture{"washer.washer", washer},
};

} // namespace

std::span<const RulePicture> washerPictures() {
  return pictures;
}

} // namespace sillwright::sketch
