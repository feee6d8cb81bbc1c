#include "core/drawing/materials.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/drawing/parallel_lines.h"

namespace sillwright {
namespace {

constexpr double radians = std::numbers::pi / 180;

// The two-dimensional golden ratio sequence: spreads any number of marks evenly without a grid to see.
constexpr double spreadX = 0.7548776662466927, spreadY = 0.5698402909980532;
constexpr double concreteTile = 54, dotRadius = 0.5, stoneRadius = 1.5, stoneWidth = 0.4, stoneTurn = 37;
constexpr int concreteMarks = 34, stoneEvery = 6;

constexpr double earthCell = 9, earthStroke = 6.6, earthGap = 2.2, earthWidth = 0.45;
constexpr double ringStep = 3, ringWidth = 0.35, ringBeside = 0.15, ringPast = 0.35;
constexpr double steelPair = 1.2, steelSpacing = 4.4, steelWidth = 0.4, steelEdge = 0.7, solidBelow = 2.2;

void append(std::vector<Segment2>& to, const std::vector<Segment2>& parts) {
  to.insert(to.end(), parts.begin(), parts.end());
}

struct Box {
  Point2 low, high;
};
Box boxOf(const Polygon2& outline) {
  const auto corners = bounds(outline);
  return corners ? Box{corners->first, corners->second} : Box{};
}

double fraction(double v) {
  return v - std::floor(v);
}

// An open triangle, cut off at the outline.
void addStone(std::vector<Segment2>& stones, Point2 centre, double degrees, const Polygon2& outline) {
  const auto corner = [&](int i) {
    const double a = (degrees + 120 * i) * radians;
    return Point2{centre.x + stoneRadius * std::cos(a), centre.y + stoneRadius * std::sin(a)};
  };
  for (int i = 0; i < 3; ++i)
    append(stones, clipped(Segment2{corner(i), corner(i + 1)}, outline));
}

void addEarthBlock(std::vector<Segment2>& strokes, Point2 centre, double degrees, const Polygon2& outline) {
  const Point2 along{std::cos(degrees * radians), -std::sin(degrees * radians)};
  for (int i = -1; i <= 1; ++i) {
    const Point2 c{centre.x - along.y * i * earthGap, centre.y + along.x * i * earthGap};
    const Point2 half{along.x * earthStroke / 2, along.y * earthStroke / 2};
    append(strokes, clipped(Segment2{{c.x - half.x, c.y - half.y}, {c.x + half.x, c.y + half.y}}, outline));
  }
}

} // namespace

void drawConcrete(Drawing& drawing, const Polygon2& outline, Point2 origin, double density) {
  const Box box = boxOf(outline);
  const int count = std::max(4, static_cast<int>(std::lround(concreteMarks * density)));
  const auto tile = [](double v) { return std::floor(v / concreteTile); };
  std::vector<Point2> dots;
  std::vector<Segment2> stones;
  for (double ty = tile(box.low.y - origin.y); ty <= tile(box.high.y - origin.y); ++ty)
    for (double tx = tile(box.low.x - origin.x); tx <= tile(box.high.x - origin.x); ++tx)
      for (int i = 0; i < count; ++i) {
        const Point2 p{origin.x + (tx + fraction(0.5 + i * spreadX)) * concreteTile,
                       origin.y + (ty + fraction(0.5 + i * spreadY)) * concreteTile};
        if (!inside(p, outline))
          continue;
        if (i % stoneEvery == 0)
          addStone(stones, p, stoneTurn * i, outline);
        else
          dots.push_back(p);
      }
  drawing.discs(dots, dotRadius, Ink::ConcreteMark);
  drawing.segments(stones, Ink::ConcreteMark, stoneWidth);
}

void drawEarth(Drawing& drawing, const Polygon2& outline, Point2 origin) {
  const Box box = boxOf(outline);
  const auto cell = [](double v) { return static_cast<int>(std::floor(v / earthCell)); };
  std::vector<Segment2> strokes;
  for (int j = cell(box.low.y - origin.y) - 1; j <= cell(box.high.y - origin.y) + 1; ++j)
    for (int i = cell(box.low.x - origin.x) - 1; i <= cell(box.high.x - origin.x) + 1; ++i)
      if ((i + j) % 2 == 0)
        addEarthBlock(strokes, {origin.x + (i + 0.5) * earthCell, origin.y + (j + 0.5) * earthCell},
                      i % 2 == 0 ? 45 : 135, outline);
  drawing.segments(strokes, Ink::EarthLine, earthWidth);
}

void drawWoodCut(Drawing& drawing, const Bounds& box) {
  const double width = box.x1 - box.x0, height = box.y1 - box.y0;
  const Point2 pith{box.x0 - ringBeside * width, box.y1 + ringPast * height};
  const Polygon2 outline = rectangle(box.x0, box.y0, box.x1, box.y1);
  const double farthest = std::hypot(box.x1 - pith.x, box.y0 - pith.y);
  std::vector<Segment2> rings;
  for (int ring = 1; ring * ringStep < farthest; ++ring) {
    const auto at = [&](int degrees) {
      return Point2{pith.x + ring * ringStep * std::cos(degrees * radians),
                    pith.y - ring * ringStep * std::sin(degrees * radians)};
    };
    for (int degrees = 0; degrees < 90; degrees += 10) // the box lies up and right of the pith
      append(rings, clipped(Segment2{at(degrees), at(degrees + 10)}, outline));
  }
  drawing.segments(rings, Ink::WoodMark, ringWidth);
}

void drawSteelCut(Drawing& drawing, const Polygon2& outline) {
  const Box box = boxOf(outline);
  if (std::min(box.high.x - box.low.x, box.high.y - box.low.y) < solidBelow) {
    drawing.fill(std::span<const Point2>(outline), Ink::Steel);
    return;
  }
  drawing.fill(std::span<const Point2>(outline), Ink::SteelFace);
  const Point2 second{box.low.x + steelPair * std::numbers::sqrt2, box.low.y};
  std::vector<Segment2> lines = parallelLines(outline, 45, steelSpacing, box.low);
  append(lines, parallelLines(outline, 45, steelSpacing, second));
  drawing.segments(lines, Ink::Steel, steelWidth);
  drawing.loop(outline, Ink::Steel, steelEdge);
}

} // namespace sillwright
