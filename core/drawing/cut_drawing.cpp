#include "core/drawing/cut_drawing.h"

#include <algorithm>
#include <optional>

namespace sillwright {
namespace {

// A cut of a polygon by one side of a box: keeps what is on the inner side of a line along an axis.
template <class Inner, class Cross> Polygon2 cutBy(const Polygon2& polygon, Inner inner, Cross cross) {
  Polygon2 kept;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Point2 a = polygon[i];
    const Point2 b = polygon[(i + 1) % polygon.size()];
    if (inner(a))
      kept.push_back(a);
    if (inner(a) != inner(b))
      kept.push_back(cross(a, b));
  }
  return kept;
}

// The part of a segment between two values of one coordinate, as shares of its length.
bool narrow(double a, double b, double low, double high, Interval& shares) {
  if (a == b)
    return a >= low && a <= high;
  const double first = (low - a) / (b - a), second = (high - a) / (b - a);
  shares = overlap(shares, {std::min(first, second), std::max(first, second)});
  return shares.to > shares.from;
}

std::optional<Segment2> within(const Segment2& s, const Bounds& box) {
  Interval shares{0, 1};
  if (!narrow(s.a.x, s.b.x, box.x0, box.x1, shares) || !narrow(s.a.y, s.b.y, box.y0, box.y1, shares))
    return std::nullopt;
  const auto at = [&](double share) {
    return Point2{s.a.x + (s.b.x - s.a.x) * share, s.a.y + (s.b.y - s.a.y) * share};
  };
  return Segment2{shares.from == 0 ? s.a : at(shares.from), shares.to == 1 ? s.b : at(shares.to)};
}

void addLines(Drawing& cut, const Prim& prim, std::span<const Point2> points, const Bounds& box) {
  std::vector<Segment2> kept;
  const auto keep = [&](Point2 a, Point2 b) {
    if (const auto part = within({a, b}, box))
      kept.push_back(*part);
  };
  if (prim.kind == Prim::Kind::Segments) {
    for (std::size_t i = 0; i + 1 < points.size(); i += 2)
      keep(points[i], points[i + 1]);
  } else {
    for (std::size_t i = 0; i + 1 < points.size(); ++i)
      keep(points[i], points[i + 1]);
    if (prim.kind == Prim::Kind::Loop)
      keep(points.back(), points.front());
  }
  cut.segments(kept, prim.ink, prim.width, prim.opacity);
}

void addWhole(Drawing& cut, const Drawing& drawing, const Prim& prim) {
  const std::span<const Point2> points = drawing.pointsOf(prim);
  switch (prim.kind) {
  case Prim::Kind::Line:
    if (points.size() == 2)
      return cut.line(points[0], points[1], prim.ink, prim.width, prim.cap);
    return cut.polyline(points, prim.ink, prim.width);
  case Prim::Kind::Loop:
    return cut.loop(points, prim.ink, prim.width);
  case Prim::Kind::Ring:
    return cut.ring(points[0], points[1].x, prim.ink, prim.width);
  case Prim::Kind::Text:
    cut.text(points[0], drawing.textOf(prim).text, prim.ink, drawing.textOf(prim).style);
    return;
  default:
    return;
  }
}

void addFill(Drawing& cut, const Drawing& drawing, const Prim& prim, const Bounds& box) {
  std::vector<Polygon2> rings;
  for (const auto ring : drawing.ringsOf(prim))
    if (Polygon2 part = cutTo(Polygon2(ring.begin(), ring.end()), box); part.size() > 2)
      rings.push_back(std::move(part));
  if (rings.size() == 1)
    cut.fill(std::span<const Point2>(rings.front()), prim.ink, prim.opacity);
  else if (!rings.empty())
    cut.fill(std::span<const Polygon2>(rings), prim.ink, prim.opacity);
}

void addDiscs(Drawing& cut, const Drawing& drawing, const Prim& prim, const Bounds& box) {
  const Bounds room = box.grown(-static_cast<double>(prim.width));
  for (const Point2 centre : drawing.pointsOf(prim))
    if (room.contains(centre))
      cut.disc(centre, prim.width, prim.ink, prim.opacity);
}

} // namespace

Polygon2 cutTo(Polygon2 polygon, const Bounds& box) {
  const auto atX = [](double x) {
    return [x](Point2 a, Point2 b) { return Point2{x, a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x)}; };
  };
  const auto atY = [](double y) {
    return [y](Point2 a, Point2 b) { return Point2{a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y), y}; };
  };
  polygon = cutBy(
      polygon, [&](Point2 p) { return p.x >= box.x0; }, atX(box.x0));
  polygon = cutBy(
      polygon, [&](Point2 p) { return p.x <= box.x1; }, atX(box.x1));
  polygon = cutBy(
      polygon, [&](Point2 p) { return p.y >= box.y0; }, atY(box.y0));
  return cutBy(
      polygon, [&](Point2 p) { return p.y <= box.y1; }, atY(box.y1));
}

Drawing cutTo(const Drawing& drawing, const Bounds& box) {
  Drawing cut;
  for (const Prim& prim : drawing.prims()) {
    if (!prim.box.overlaps(box.grown(1e-9)))
      continue;
    switch (prim.kind) {
    case Prim::Kind::Fill:
      addFill(cut, drawing, prim, box);
      break;
    case Prim::Kind::Disc:
      addDiscs(cut, drawing, prim, box);
      break;
    case Prim::Kind::Line:
    case Prim::Kind::Loop:
    case Prim::Kind::Segments:
      if (prim.kind != Prim::Kind::Segments && box.contains(prim.box))
        addWhole(cut, drawing, prim);
      else
        addLines(cut, prim, drawing.pointsOf(prim), box);
      break;
    case Prim::Kind::Ring:
    case Prim::Kind::Text:
      if (box.contains(prim.box))
        addWhole(cut, drawing, prim);
      break;
    }
  }
  return cut;
}

} // namespace sillwright
