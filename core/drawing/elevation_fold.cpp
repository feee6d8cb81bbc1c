// The fold: what of an opening may be folded away, and the two zigzags that say how much is gone.
#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "core/drawing/elevation_parts.h"
#include "core/drawing/text_metrics.h"

namespace sillwright {

namespace {

constexpr double kept = 12;  // in, of the opening on either side
constexpr double worth = 24; // in, less is not worth a fold
constexpr double zigzagHigh = 9, zigzagWide = 5;

bool crosses(Interval piece, Interval fold) {
  return piece.from <= fold.from && piece.to >= fold.to;
}
bool meets(Interval piece, Interval fold) {
  return gap(piece, fold) < 0;
}

// Something that is set, or an end of something that goes on, stands within it.
bool somethingStandsIn(const WallLayout& wall, const Opening& own, Interval fold) {
  const auto stands = [&](Interval piece) { return meets(piece, fold) && !crosses(piece, fold); };
  const auto anyOf = [](const auto& list, auto&& test) { return std::any_of(list.begin(), list.end(), test); };
  const WallLine& line = *wall.wall;
  return anyOf(wall.straps, [&](const StrapBody& strap) { return meets(strap.plate.s, fold); }) ||
         anyOf(wall.anchors, [&](const AnchorBody& anchor) { return fold.contains(anchor.station); }) ||
         anyOf(wall.columns, [&](const ColumnBody& column) { return meets(column.box.s, fold); }) ||
         anyOf(wall.sills, [&](const SillPiece& sill) { return stands(sill.box.s); }) ||
         anyOf(wall.pour, [&](const PourRun& run) { return stands(run.s); }) ||
         anyOf(line.shots, [&](const GradeShot& shot) { return fold.contains(shot.station); }) ||
         anyOf(line.panels,
               [&](const Panel& panel) {
                 return meets({panel.from, panel.to}, fold);
               }) ||
         anyOf(line.openings, [&](const Opening& opening) {
           return opening.id != own.id && meets({opening.from, opening.to}, fold);
         });
}

} // namespace

std::optional<Interval> foldOf(const CheckedWall& wall, const Opening& opening, const Selection& selection) {
  const Interval fold{opening.from + kept, opening.to - kept};
  if (fold.length() < worth || fold.from < 0 || somethingStandsIn(wall.layout, opening, fold))
    return std::nullopt;
  const auto within = [&](Interval s) { return s.from > fold.from && s.to < fold.to; };
  for (const Finding& finding : wall.findings)
    if (within(finding.region.s))
      return std::nullopt;
  for (const PieceRef& selected : selection)
    if (selected.wall == wall.layout.wall->id)
      for (const BarBody& bar : wall.layout.bars)
        if (bar.id == selected.piece && within(bar.box.s))
          return std::nullopt;
  return fold;
}

Bounds foldBox(const ElevationView& view, const WallLayout& layout, const Bounds& window, Interval fold) {
  const double a = view.x(fold.from), b = view.x(fold.to);
  // From over the plates to under the earth; the dimensions above and below go on across it.
  const Bounds whole{std::min(a, b), view.y(layout.wall->wallHeight) - 8, std::max(a, b), view.y(layout.bottom) + 24};
  const Bounds seen{std::max(whole.x0, window.x0), std::max(whole.y0, window.y0), std::min(whole.x1, window.x1),
                    std::min(whole.y1, window.y1)};
  return seen.empty() ? Bounds{} : Bounds{whole.x0, seen.y0, whole.x1, seen.y1};
}

namespace elevation {

namespace {

std::vector<Point2> zigzagDown(double x, double top, double foot, double out) {
  std::vector<Point2> points;
  const int count = std::max(2, static_cast<int>(std::lround((foot - top) / zigzagHigh)));
  for (int i = 0; i <= count; ++i)
    points.push_back({x + (i % 2 == 0 ? -out : out), top + (foot - top) * i / count});
  return points;
}

// A quarter turn up in the middle, the longest words that fit there.
void sayHowMuch(Scene& scene, const Bounds& box, double gone) {
  const Bounds seen = scene.within(box);
  const std::string amount = lengthOf(scene, gone);
  for (const std::string& words : {amount + " of opening folded away", amount + " folded", amount}) {
    const double wide = textWidth(words, 11);
    if (wide + 16 > seen.y1 - seen.y0)
      continue;
    const double x = (box.x0 + box.x1) / 2 + 4, y = (seen.y0 + seen.y1 + wide) / 2;
    const Bounds letters = textBox({x, y}, words, styled(11, Weight::Regular, Anchor::Start, Ink::None, 90));
    if (scene.frame.contains(letters))
      scene.drawing.text({x, y}, words, Ink::Text2, styled(11, Weight::Regular, Anchor::Start, Ink::None, 90));
    return;
  }
}

} // namespace

void keepOffFolds(Scene& scene) {
  for (const Interval fold : scene.view.folds)
    if (const Bounds box = foldBox(scene.view, scene.wall, scene.frame, fold); !box.empty())
      if (const Bounds seen{std::max(box.x0 - zigzagWide, scene.frame.x0), box.y0,
                            std::min(box.x1 + zigzagWide, scene.frame.x1), box.y1};
          !seen.empty())
        scene.drawing.take("fold", seen);
}

void drawFolds(Scene& scene) {
  for (const Interval fold : scene.view.folds) {
    const Bounds box = foldBox(scene.view, scene.wall, scene.frame, fold);
    if (box.empty())
      continue;
    const std::vector<Point2> left = zigzagDown(box.x0, box.y0, box.y1, zigzagWide);
    const std::vector<Point2> right = zigzagDown(box.x1, box.y0, box.y1, zigzagWide);
    std::vector<Point2> between = left;
    between.insert(between.end(), right.rbegin(), right.rend());
    scene.drawing.fill(between, Ink::Paper);
    scene.drawing.polyline(left, Ink::Text2, 1.1);
    scene.drawing.polyline(right, Ink::Text2, 1.1);
    sayHowMuch(scene, box, fold.length());
  }
}

} // namespace elevation
} // namespace sillwright
