#include "core/drawing/theme.h"

#include <set>

#include <gtest/gtest.h>

namespace sillwright {
namespace {

struct Pair {
  Ink ink, ground;
};

// Everything that is read on a ground it may stand on.
std::vector<Pair> textPairs() {
  std::vector<Pair> pairs;
  for (const Ink ground :
       {Ink::Paper, Ink::Panel, Ink::Chrome, Ink::Field, Ink::Select, Ink::Wood, Ink::Wood2, Ink::Concrete})
    for (const Ink ink : {Ink::Text, Ink::Text2, Ink::Dim, Ink::Fix, Ink::Ask, Ink::Watch, Ink::Hand})
      pairs.push_back({ink, ground});
  const Pair others[] = {{Ink::BladeInk, Ink::Blade}, {Ink::BladeFootInk, Ink::BladeFoot},
                         {Ink::FixOn, Ink::Fix},      {Ink::HandOn, Ink::Hand},
                         {Ink::WoodLine, Ink::Wood},  {Ink::WoodLine, Ink::Wood2},
                         {Ink::FormLine, Ink::Paper}, {Ink::Steel, Ink::Wood},
                         {Ink::Steel, Ink::Concrete}};
  pairs.insert(pairs.end(), std::begin(others), std::end(others));
  return pairs;
}

// WCAG 2.1, success criterion 1.4.3: 4.5 for text; 1.4.11: 3.0 for the edges of controls.
TEST(Theme, TextIsReadableInBothThemes) {
  for (const ThemeName theme : {ThemeName::Light, ThemeName::Dark})
    for (const Pair& p : textPairs())
      EXPECT_GE(contrast(colour(theme, p.ink), colour(theme, p.ground)), 4.5)
          << name(p.ink) << " on " << name(p.ground) << (theme == ThemeName::Light ? ", light" : ", dark");
}

TEST(Theme, EdgesOfControlsAreVisibleInBothThemes) {
  for (const ThemeName theme : {ThemeName::Light, ThemeName::Dark})
    for (const Ink ground : {Ink::Panel, Ink::Chrome, Ink::Field})
      EXPECT_GE(contrast(colour(theme, Ink::Edge), colour(theme, ground)), 3.0) << name(ground);
}

TEST(Theme, PrintIsBlackOnWhiteOnly) {
  for (std::size_t i = 0; i < static_cast<std::size_t>(Ink::Count); ++i) {
    const Rgb c = colour(ThemeName::Print, static_cast<Ink>(i));
    EXPECT_TRUE(c == (Rgb{0, 0, 0}) || c == (Rgb{255, 255, 255})) << name(static_cast<Ink>(i));
  }
  const Pair pairs[] = {{Ink::Text, Ink::Paper},
                        {Ink::FixOn, Ink::Fix},
                        {Ink::BladeFootInk, Ink::BladeFoot},
                        {Ink::BladeInk, Ink::Blade}};
  for (const Pair& p : pairs)
    EXPECT_NEAR(contrast(colour(ThemeName::Print, p.ink), colour(ThemeName::Print, p.ground)), 21, 1e-9);
}

TEST(Theme, EveryInkHasItsOwnName) {
  std::set<std::string_view> names;
  for (std::size_t i = 0; i < static_cast<std::size_t>(Ink::Count); ++i)
    names.insert(name(static_cast<Ink>(i)));
  EXPECT_EQ(names.size(), static_cast<std::size_t>(Ink::Count));
  EXPECT_FALSE(names.contains(""));
  EXPECT_EQ(name(Ink::Paper), "Paper");
  EXPECT_EQ(name(Ink::Dim), "Dim");
}

TEST(Theme, ContrastFollowsTheDefinition) {
  EXPECT_NEAR(contrast({0, 0, 0}, {255, 255, 255}), 21, 1e-9);
  EXPECT_NEAR(contrast({255, 255, 255}, {0, 0, 0}), 21, 1e-9);
  EXPECT_NEAR(contrast({119, 119, 119}, {255, 255, 255}), 4.48, 0.005); // #777 on white, the well-known near miss
}

} // namespace
} // namespace sillwright
