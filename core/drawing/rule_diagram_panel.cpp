// Pictures of the rules about shear panels.
#include <array>

#include "core/drawing/rule_sketch_pieces.h"

namespace sillwright::sketch {

namespace {

void ends(Sketch& s) {
  concrete(s, {0, 104, right, foot});
  panel(s, {40, 6, 180, 104}, true, false);
  blade(s, 0, right, 104);
  s.flag(Level::Fix, {166, 13, 180, 97});
  ghost(s, {166, 13, 180, 97});
  s.say({110, 52}, "a column", Anchor::Middle, Ink::Wood2);
  s.say({110, 66}, "at each end", Anchor::Middle, Ink::Wood2);
}

void slender(Sketch& s) {
  concrete(s, {0, 108, right, foot});
  panel(s, {66, 24, 98, 108});
  blade(s, 0, right, 108);
  s.flag(Level::Watch, {66, 4, 98, 24});
  s.witness({100, 4}, {124, 4});
  s.upright(118, 4, 108, "height");
  s.across(120, 66, 98, "length", Side::Right, Ink::Concrete);
  s.say({126, 88}, limitWords("panel.slender full", "most", "not too high"), Anchor::Start);
}

void lever(Sketch& s) {
  concrete(s, {0, 88, right, foot});
  panel(s, {24, 14, 196, 88});
  blade(s, 0, right, 88);
  strapFront(s, {.x = 32, .width = 10, .top = 40, .joint = 88, .bottom = 104, .nails = 4});
  s.flag(Level::Watch, {168, 36, 186, 88});
  strapFront(s, {.x = 160, .width = 10, .top = 40, .joint = 88, .bottom = 104, .nails = 4});
  ghost(s, {183, 40, 193, 104});
  s.across(50, 32, 160, "nearer: more pull", Side::Over, Ink::Wood2);
  s.across(116, 32, 188, limitWords("panel.lever", "more than planned", "as planned"), Side::Over, Ink::Concrete);
}

void tie(Sketch& s) {
  concrete(s, {0, 100, 124, foot});
  panel(s, {32, 30, 104, 100});
  blade(s, 0, 124, 100);
  strapFront(s, {.x = 39, .width = 10, .top = 62, .joint = 100, .bottom = 122, .nails = 4});
  s.arrow({28, 18}, {104, 18});
  s.arrow({16, 96}, {16, 50});
  s.name({4, 44}, "pull", Anchor::Start);
  gauges(s, 142, 12, 104, 0.7, "pull", "mark");
}

constexpr std::array pictures{
    RulePicture{"panel.ends", ends},
    RulePicture{"panel.slender", slender},
    RulePicture{"panel.lever", lever},
    RulePicture{"panel.tie", tie},
};

} // namespace

std::span<const RulePicture> panelPictures() {
  return pictures;
}

} // namespace sillwright::sketch
