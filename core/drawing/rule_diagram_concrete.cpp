// Pictures of the rules about bars, the pour line and forms.
#include <array>

#include "core/base/length.h"
#include "core/drawing/rule_sketch_pieces.h"
#include "core/standards/cover.h"

namespace sillwright::sketch {

namespace {

void barCover(Sketch& s) {
  concrete(s, {92, 24, 176, 112}, {.right = true, .bottom = true, .left = true});
  earth(s, {0, 112, right, foot});
  pourLine(s, 66, 200, 24);
  bar(s, {140, 32}, {140, 112}, 5);
  s.flag(Level::Fix, {92, 58, 106, 78});
  barCut(s, {112, 68}, 6);
  barCut(s, {112, 98}, 6);
  s.witness({106, 78}, {106, 96});
  s.across(88, 92, 106, "cover", Side::Left);
  s.say({80, 56}, inches(requiredCover(Exposure::ExposedOrGround, 5)) + " least", Anchor::End);
  s.name({80, 42}, "bar to face", Anchor::End);
}

void barClear(Sketch& s) {
  concrete(s, {0, 20, right, foot});
  blade(s, 0, right, 20);
  bar(s, {0, 56}, {right, 56}, 7);
  bar(s, {0, 82}, {right, 82}, 7);
  for (const double x : {40.0, 180.0})
    bar(s, {x, 34}, {x, foot}, 7);
  s.flag(Level::Watch, {60, 59.5, 108, 78.5});
  s.upright(124, 59.5, 78.5, "clear", Side::Right, Ink::Concrete);
  s.say({110, 110}, limitWords("bar.clear", "least, or one bar", "one bar apart"), Anchor::Middle, Ink::Concrete);
}

void barTop(Sketch& s) {
  concrete(s, {0, 24, right, foot});
  for (const double x : {36.0, 188.0})
    bar(s, {x, 36}, {x, foot}, 5);
  blade(s, 0, right, 24);
  s.flag(Level::Fix, {110, 76, 172, 105});
  bar(s, {0, 108}, {right, 108}, 6);
  s.upright(96, 24, 105, limitWords("bar.top", "most", "near the top"), Side::Left, Ink::Concrete);
  s.name({128, 124}, "top bar", Anchor::Middle, Ink::Concrete);
}

void barOpening(Sketch& s) {
  concrete(s, Polygon2{{0, 24}, {132, 24}, {132, 92}, {right, 92}, {right, foot}, {0, foot}},
           {Polygon2{{0, 24}, {132, 24}, {132, 92}, {right, 92}}});
  blade(s, 0, 132, 24);
  blade(s, 132, right, 92);
  bar(s, {0, 114}, {right, 114}, 6);
  s.flag(Level::Watch, {53, 72, 80, 110});
  bar(s, {50, 36}, {50, foot}, 6);
  s.across(62, 53, 132, limitWords("bar.opening", "most", "near it"), Side::Over, Ink::Concrete);
  s.name({176, 64}, "opening");
}

void pourShot(Sketch& s) {
  formBoard(s, {2, 52, 218, 122});
  s.dashed({{0, 84}, {right, 84}}, 8, 3, Ink::Text, 1);
  for (const double x : {26.0, 76.0})
    s.disc({x, 84}, 3, Ink::Steel);
  s.flag(Level::Fix, {112, 84, 144, 100});
  s.disc({128, 100}, 3, Ink::Steel);
  s.dashed({{4, 22}, {right - 4, 22}}, 2, 3, Ink::Text2, 1);
  s.box({124, 8, 132, 97}, Ink::Field, Ink::Text, 0.9);
  for (double y = 14; y < 94; y += 6)
    s.line({124, y}, {128, y}, Ink::Text, 0.7);
  s.witness({136, 84}, {160, 84});
  s.witness({132, 100}, {160, 100});
  s.upright(152, 84, 100, limitWords("pour.shot", "most", "on the line"), Side::Right, Ink::Form);
  s.name({6, 76}, "planned pour line", Anchor::Start, Ink::Form);
  s.name({140, 16}, "grade shot", Anchor::Start);
}

void pourLevel(Sketch& s) {
  const Polygon2 top{{0, 46}, {40, 50}, {92, 46}, {140, 62}, {186, 74}, {right, 70}};
  Polygon2 outline = top;
  outline.push_back({right, foot});
  outline.push_back({0, foot});
  s.flag(Level::Watch, {152, 46, 216, 74});
  concrete(s, outline, {top});
  s.dashed({{0, 46}, {right, 46}}, 8, 3, Ink::Dim, 0.8);
  s.upright(186, 46, 74, "", Side::Right);
  s.say({200, 34}, limitWords("pour.level", "most", "level"), Anchor::End);
  s.across(104, 92, 186, "within " + limitWords("pour.level within", "", "reach"), Side::Over, Ink::Concrete);
  s.name({4, 34}, "highest", Anchor::Start);
}

void pourForm(Sketch& s) {
  formBoard(s, {2, 40, 108, 124});
  formBoard(s, {108, 76, 218, 124});
  s.flag(Level::Fix, {108, 56, 218, 76});
  s.line({0, 56}, {right, 56}, s.paper() ? Ink::Text : Ink::BladeEdge, 2.2);
  s.name({6, 70}, "pour line", Anchor::Start, Ink::Form);
  s.say({110, 26}, "form top never below it");
  s.name({162, 104}, "form", Anchor::Middle, Ink::Form);
}

void formSquare(Sketch& s) {
  const Polygon2 set{{14, 24}, {116, 24}, {134, 106}, {32, 106}};
  s.dashed({{14, 24}, {116, 24}, {116, 106}, {14, 106}}, 4, 2, Ink::FormLine, 0.8, true);
  s.flag(Level::Watch, {116, 88, 133, 106});
  s.loop(set, Ink::FormLine, 2.2);
  s.dashed({{14, 24}, {134, 106}}, 8, 3, Ink::Dim, 0.9);
  s.dashed({{116, 24}, {32, 106}}, 8, 3, Ink::Dim, 0.9);
  s.say({74, 86}, "both alike");
  s.say({144, 60}, limitWords("form.square", "most", "square"), Anchor::Start);
  s.name({144, 76}, "in 12-16-20", Anchor::Start);
}

void formThickness(Sketch& s) {
  concrete(s, {54, 36, 126, foot});
  formBoard(s, {40, 24, 54, foot - 2});
  formBoard(s, {126, 24, 140, foot - 2});
  s.flag(Level::Watch, {54, 50, 68, foot - 3});
  s.dashed({{68, 20}, {68, foot - 2}}, 8, 3, Ink::Dim, 0.8);
  s.across(14, 54, 126, "width", Side::Left);
  s.say({148, 66}, limitWords("form.thickness thicker", "wider", "not wider"), Anchor::Start);
  s.say({148, 82}, limitWords("form.thickness thinner", "thinner", "not thinner"), Anchor::Start);
}

constexpr std::array pictures{
    RulePicture{"bar.cover", barCover},
    RulePicture{"bar.clear", barClear},
    RulePicture{"bar.top", barTop},
    RulePicture{"bar.opening", barOpening},
    RulePicture{"pour.shot", pourShot},
    RulePicture{"pour.level", pourLevel},
    RulePicture{"pour.form", pourForm},
    RulePicture{"form.square", formSquare},
    RulePicture{"form.thickness", formThickness},
};

} // namespace

std::span<const RulePicture> concretePictures() {
  return pictures;
}

} // namespace sillwright::sketch
