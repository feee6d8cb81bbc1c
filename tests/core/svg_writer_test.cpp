#include <algorithm>

#include <gtest/gtest.h>

#include "core/drawing/hatch.h"
#include "core/drawing/plain_number.h"
#include "core/drawing/writers.h"

namespace sillwright {
namespace {

Drawing sampleDrawing() {
  Drawing d;
  drawConcrete(d, rectangle(0, 0, 120, 60), {0, 0});
  drawFlag(d, Level::Ask, {10, 10, 60, 40});
  drawLabel(d, {Level::Fix, "FIX", "S1 · EDGE 3/8\" < 1/2\"", "move it & look > again"}, LabelForm::TwoLines, 10, 80);
  d.text({10, 130}, "20'-2 7/8\"", Ink::Text, {12, Weight::Bold, Anchor::Start, 90, Ink::Paper});
  d.disc({5, 5}, 2, Ink::Hand, 0.5);
  d.ring({50, 50}, 4, Ink::Steel, 1);
  d.line({0, 0}, {10, 10}, Ink::Dim, 0.7, Cap::Round);
  return d;
}

// Follows tags, attributes and entities of an XML text without comments. Returns what is wrong with it.
std::string xmlFault(const std::string& xml) {
  std::vector<std::string> open;
  std::size_t at = xml.find("?>") + 2;
  while (at < xml.size()) {
    const char c = xml[at];
    if (c == '&') {
      const std::size_t end = xml.find(';', at);
      const std::string entity = xml.substr(at, end - at + 1);
      if (entity != "&amp;" && entity != "&lt;" && entity != "&gt;")
        return "entity " + entity;
    }
    if (c != '<') {
      if (static_cast<unsigned char>(c) < 0x20 && c != '\n')
        return "control character";
      ++at;
      continue;
    }
    const std::size_t end = xml.find('>', at);
    if (end == std::string::npos)
      return "open tag at the end";
    const std::string tag = xml.substr(at + 1, end - at - 1);
    at = end + 1;
    if (std::count(tag.begin(), tag.end(), '"') % 2 != 0 || tag.find('<') != std::string::npos)
      return "broken attributes in " + tag;
    const std::string name = tag.substr(0, tag.find_first_of(" /", 1));
    if (tag.front() == '/') {
      if (open.empty() || tag.substr(1) != open.back())
        return "closing " + tag;
      open.pop_back();
    } else if (tag.back() != '/') {
      open.push_back(name);
    }
  }
  return open.empty() ? "" : "unclosed " + open.back();
}

std::string withoutTags(const std::string& xml) {
  std::string text;
  bool inside = false;
  for (const char c : xml) {
    if (c == '<')
      inside = true;
    if (!inside)
      text += c;
    if (c == '>')
      inside = false;
  }
  return text;
}

TEST(Svg, IsWellFormed) {
  for (const ThemeName theme : {ThemeName::Light, ThemeName::Dark, ThemeName::Print})
    EXPECT_EQ(xmlFault(toSvg(sampleDrawing(), 200, 150, theme, "Wall <A> & \"B\"\x01")), "");
}

TEST(Svg, TheCheckItselfFindsFaults) {
  EXPECT_NE(xmlFault("<?xml?><a><b></a>"), "");
  EXPECT_NE(xmlFault("<?xml?><a>x & y;</a>"), "");
  EXPECT_NE(xmlFault("<?xml?><a b=\"1></a>"), "");
}

TEST(Svg, HasItsPhysicalSizeAndPoints) {
  const std::string svg = toSvg(sampleDrawing(), 792, 612, ThemeName::Print, "Sheet");
  EXPECT_NE(svg.find("width=\"11in\" height=\"8.5in\" viewBox=\"0 0 792 612\""), std::string::npos);
  EXPECT_NE(svg.find("<title>Sheet</title>"), std::string::npos);
}

TEST(Svg, NeedsNothingThatRenderersDifferOver) {
  const std::string svg = toSvg(sampleDrawing(), 200, 150, ThemeName::Light, "Sheet");
  for (const char* word : {"<image", "<pattern", "<mask", "clip", "dasharray", "<filter", "href", "<use"})
    EXPECT_EQ(svg.find(word), std::string::npos) << word;
}

TEST(Svg, KeepsTextInReadingOrder) {
  const std::string svg = toSvg(sampleDrawing(), 200, 150, ThemeName::Light, "Sheet");
  const std::string text = withoutTags(svg);
  EXPECT_NE(text.find("20'-2 7/8\"\n"), std::string::npos);
  EXPECT_NE(text.find("S1 · EDGE 3/8\" &lt; 1/2\"\n"), std::string::npos);
  EXPECT_NE(text.find("move it &amp; look &gt; again\n"), std::string::npos);
}

TEST(Svg, TurnsTextCounterclockwise) {
  const std::string svg = toSvg(sampleDrawing(), 200, 150, ThemeName::Light, "Sheet");
  EXPECT_NE(svg.find("transform=\"rotate(-90 10 130)\""), std::string::npos);
}

TEST(Svg, PaintsTheHaloUnderTheLettersAndHidesItFromReaders) {
  Drawing d;
  d.text({0, 0}, "S1", Ink::Text, {12, Weight::Bold, Anchor::Start, 0, Ink::Paper, 3});
  const std::string svg = toSvg(d, 10, 10, ThemeName::Light, "");
  const std::size_t halo = svg.find("aria-hidden"), letters = svg.find("<text font-size");
  ASSERT_NE(halo, std::string::npos);
  ASSERT_NE(letters, std::string::npos);
  EXPECT_LT(halo, letters);
  EXPECT_NE(svg.find("stroke=\"#fbfaf5\" stroke-width=\"3\""), std::string::npos);
}

TEST(Svg, PrintIsNeverFaint) {
  EXPECT_NE(toSvg(sampleDrawing(), 200, 150, ThemeName::Light, "").find("opacity=\"0.5\""), std::string::npos);
  const std::string print = toSvg(sampleDrawing(), 200, 150, ThemeName::Print, "");
  EXPECT_EQ(print.find("opacity"), std::string::npos);
  for (std::size_t at = print.find('#'); at != std::string::npos; at = print.find('#', at + 1)) {
    const std::string colourText = print.substr(at, 7);
    EXPECT_TRUE(colourText == "#000000" || colourText == "#ffffff") << colourText;
  }
}

TEST(PlainNumber, HasNoNeedlessFigures) {
  EXPECT_EQ(plainNumber(1.5, 3), "1.5");
  EXPECT_EQ(plainNumber(12, 3), "12");
  EXPECT_EQ(plainNumber(-0.0004, 3), "0");
  EXPECT_EQ(plainNumber(-0.25, 3), "-0.25");
  EXPECT_EQ(plainNumber(1000000.0625, 3), "1000000.062");
  EXPECT_EQ(plainNumber(100, 0), "100");
  EXPECT_EQ(plainNumber(1.0 / 0.0, 3), "0");
}

} // namespace
} // namespace sillwright
