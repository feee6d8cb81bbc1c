#include "core/drawing/rule_diagram.h"

#include <set>
#include <string>

#include <gtest/gtest.h>

#include "core/drawing/flags.h"
#include "core/drawing/writers.h"
#include "core/rules/rule_book.h"

namespace sillwright {
namespace {

// All rules the rule book is to hold.
constexpr std::string_view names[] = {
    "strap.edge",       "strap.joint",     "strap.pair",     "strap.lean",       "strap.lean-opening", "strap.plumb",
    "strap.column",     "strap.nail-edge", "strap.seam",     "strap.nail-depth", "strap.steel",        "strap.depth",
    "strap.back",       "strap.hang",      "strap.missing",  "strap.type",       "strap.capacity",     "bolt.count",
    "bolt.end-far",     "bolt.end-near",   "bolt.spacing",   "bolt.third",       "bolt.embed",         "bolt.thread",
    "bolt.run-out",     "bolt.gap",        "bolt.cover",     "bolt.hook",        "bolt.steel",         "bolt.strap",
    "bolt.opening",     "bolt.stud",       "bolt.splice",    "bolt.match",       "bolt.shear",         "washer.size",
    "washer.sheathing", "washer.slot",     "washer.sill",    "washer.column",    "washer.washer",      "rod.offset",
    "rod.edge",         "rod.embed",       "rod.thread",     "rod.steel",        "rod.cover",          "rod.opening",
    "rod.plumb",        "column.sill",     "column.opening", "column.overlap",   "column.plan",        "panel.ends",
    "panel.slender",    "panel.lever",     "panel.tie",      "sill.corner",      "sill.concrete",      "sill.mark",
    "sill.piece",       "bar.cover",       "bar.clear",      "bar.top",          "bar.opening",        "pour.shot",
    "pour.level",       "pour.form",       "form.square",    "form.thickness"};

constexpr Bounds small{0, 0, 220, 130}, large{30, 20, 470, 280};

std::vector<std::pair<std::string, Bounds>> textsOf(const Drawing& drawing) {
  std::vector<std::pair<std::string, Bounds>> texts;
  for (const Prim& prim : drawing.prims())
    if (prim.kind == Prim::Kind::Text) {
      const TextPrim& t = drawing.textOf(prim);
      // The box of the letters, without the ground around them and the room for accents.
      const double halo = t.style.halo == Ink::None ? 0 : t.style.haloWidth / 2;
      texts.emplace_back(t.text, prim.box.grown(-0.16 * t.style.size - halo));
    }
  return texts;
}

TEST(RuleDiagram, ThereIsOneForEachRule) {
  for (const std::string_view name : names)
    EXPECT_FALSE(ruleDiagram(name, small).empty()) << name;
  for (const RuleRow& row : ruleBook())
    EXPECT_FALSE(ruleDiagram(row.name, small).empty()) << row.name;
}

TEST(RuleDiagram, NothingForWhatIsNoRule) {
  for (const std::string_view name : {"", "strap", "strap.", "strap.edges", "STRAP.EDGE"})
    EXPECT_TRUE(ruleDiagram(name, small).empty()) << name;
  EXPECT_TRUE(ruleDiagram("strap.edge", {}).empty());
}

TEST(RuleDiagram, StaysInItsBox) {
  for (const std::string_view name : names)
    for (const Bounds& box : {small, large, Bounds{-50, 5, 250, 120}})
      for (const Medium medium : {Medium::Screen, Medium::Paper}) {
        const Drawing drawing = ruleDiagram(name, box, medium);
        for (const Prim& prim : drawing.prims())
          EXPECT_TRUE(box.grown(1e-6).contains(prim.box))
              << name << ": " << (prim.kind == Prim::Kind::Text ? drawing.textOf(prim).text : "a stroke");
      }
}

TEST(RuleDiagram, SaysLittleAndNoTwoTextsMeet) {
  for (const std::string_view name : names)
    for (const Bounds& box : {small, large}) {
      const auto texts = textsOf(ruleDiagram(name, box));
      EXPECT_GE(texts.size(), 1u) << name;
      EXPECT_LE(texts.size(), 3u) << name;
      for (std::size_t i = 0; i < texts.size(); ++i)
        for (std::size_t j = i + 1; j < texts.size(); ++j)
          EXPECT_FALSE(texts[i].second.overlaps(texts[j].second))
              << name << ": " << texts[i].first << ", " << texts[j].first;
    }
}

TEST(RuleDiagram, LettersAreReadableAtTheSmallSize) {
  for (const std::string_view name : names) {
    const Drawing drawing = ruleDiagram(name, small);
    for (const Prim& prim : drawing.prims()) {
      if (prim.kind == Prim::Kind::Text) {
        EXPECT_GE(drawing.textOf(prim).style.size, 10.5) << name;
      }
    }
  }
}

// Something is hatched in the ink of a level, on the screen and on paper.
TEST(RuleDiagram, ShowsWhereAWallFallsShort) {
  for (const std::string_view name : names) {
    bool hatched = false;
    const Drawing drawing = ruleDiagram(name, small);
    for (const Prim& prim : drawing.prims())
      hatched |=
          prim.kind == Prim::Kind::Segments && (prim.ink == Ink::Fix || prim.ink == Ink::Ask || prim.ink == Ink::Watch);
    EXPECT_TRUE(hatched) << name;
  }
}

TEST(RuleDiagram, NoTwoRulesHaveTheSame) {
  for (const Medium medium : {Medium::Screen, Medium::Paper}) {
    std::set<std::string> seen;
    for (const std::string_view name : names)
      EXPECT_TRUE(seen.insert(toText(ruleDiagram(name, small, medium))).second) << name;
    EXPECT_EQ(seen.size(), std::size(names));
  }
}

// The level of the hatch is one the rule book gives the rule.
TEST(RuleDiagram, HatchesInALevelOfItsRule) {
  for (const RuleRow& row : ruleBook()) {
    std::set<Ink> allowed;
    for (const Level level : row.levels)
      allowed.insert(inkOf(level));
    const Drawing drawing = ruleDiagram(row.name, small);
    for (const Prim& prim : drawing.prims()) {
      if (prim.ink == Ink::Fix || prim.ink == Ink::Ask || prim.ink == Ink::Watch) {
        EXPECT_TRUE(allowed.count(prim.ink)) << row.name;
      }
    }
  }
}

TEST(RuleDiagram, NumbersAreThoseOfTheLimits) {
  const auto says = [](std::string_view rule, std::string_view words) {
    for (const auto& [text, box] : textsOf(ruleDiagram(rule, small)))
      if (text.find(words) != std::string::npos)
        return true;
    return false;
  };
  EXPECT_TRUE(says("bolt.spacing", "72\""));
  EXPECT_TRUE(says("bolt.end-near", "7 diameters"));
  EXPECT_TRUE(says("strap.joint", "1/8\""));
  EXPECT_TRUE(says("panel.slender", "2 to 1"));
}

} // namespace
} // namespace sillwright
