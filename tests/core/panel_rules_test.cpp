// Shear panels, each rule at its limit and to either side of it. A panel of the bare wall is 96 high.
#include "bare_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;
using R = RuleId;
constexpr double sixteenth = 1.0 / 16;

// A 4x6 is 3 1/2 along the wall; 12 in from the end of the panel is the farthest that still counts.
TEST(PanelRules, AColumnStandsAtEachEnd) {
  const auto panel = [](double first, double second) {
    BareWall bare = bareWall();
    addColumn(bare, first);
    addColumn(bare, second);
    addPanel(bare, 20, 76);
    return bare;
  };
  EXPECT_TRUE(silent(panel(21.75, 74.25), R::PanelEnds));
  // The column's near edge at 20 + 12 = 32 is too far, a sixteenth nearer is not.
  EXPECT_TRUE(silent(panel(33.75 - sixteenth, 74.25), R::PanelEnds));
  const BareWall far = panel(33.75, 74.25);
  const std::vector<Id> pieces{far.wall.panels[0].id};
  EXPECT_TRUE(finds(far, R::PanelEnds,
                    {.pieces = pieces, .measured = 0, .limit = 1, .region = {{20, 21.5}, {0, 8}, {0, 96}}}));
  EXPECT_TRUE(finds(panel(21.75, 62.25), R::PanelEnds,
                    {.pieces = pieces, .measured = 0, .limit = 1, .region = {{74.5, 76}, {0, 8}, {0, 96}}, .variant = 1}));
}

// 96 high: 2 to 1 at 48 long; 3 1/2 to 1 at 27.43. What is hatched is what it is too high: 40 long may be 80 high.
TEST(PanelRules, HighByLong) {
  const auto panel = [](double length) {
    BareWall bare = bareWall();
    addPanel(bare, 10, 10 + length);
    return bare;
  };
  EXPECT_TRUE(silent(panel(48 + sixteenth), R::PanelSlender));
  EXPECT_TRUE(silent(panel(48), R::PanelSlender));
  const BareWall narrow = panel(48 - sixteenth);
  const std::vector<Id> pieces{narrow.wall.panels[0].id};
  EXPECT_TRUE(finds(narrow, R::PanelSlender, {.level = Level::Watch, .pieces = pieces, .measured = 96 / 47.9375, .limit = 2,
                                              .region = {{10, 57.9375}, {0, 8}, {95, 96}}}));
  EXPECT_TRUE(silent(panel(96 / 3.5), R::PanelSlender, Level::Ask));
  EXPECT_TRUE(finds(panel(27.375), R::PanelSlender, {.level = Level::Ask, .pieces = pieces, .measured = 96 / 27.375,
                                                     .limit = 3.5, .region = {{10, 37.375}, {0, 8}, {95, 96}}}));
  EXPECT_TRUE(finds(panel(40), R::PanelSlender, {.level = Level::Watch, .pieces = pieces, .measured = 2.4, .limit = 2,
                                                 .region = {{10, 50}, {0, 8}, {80, 96}}}));
}

} // namespace
} // namespace sillwright
