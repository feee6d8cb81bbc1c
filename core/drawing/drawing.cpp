#include "core/drawing/drawing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/drawing/text_metrics.h"

namespace sillwright {
namespace {

Bounds hullOf(std::span<const Point2> points) {
  const auto corners = bounds(points);
  return corners ? Bounds{corners->first.x, corners->first.y, corners->second.x, corners->second.y} : Bounds{};
}

void widen(Bounds& box, Point2 p) {
  box = {std::min(box.x0, p.x), std::min(box.y0, p.y), std::max(box.x1, p.x), std::max(box.y1, p.y)};
}

// Outer tip of a mitred corner; the corner itself where it is too sharp for a mitre or straight.
Point2 mitreTip(Point2 before, Point2 corner, Point2 after, double width) {
  const double inX = corner.x - before.x, inY = corner.y - before.y, inLength = std::hypot(inX, inY);
  const double outX = after.x - corner.x, outY = after.y - corner.y, outLength = std::hypot(outX, outY);
  if (inLength == 0 || outLength == 0)
    return corner;
  const double x = inX / inLength - outX / outLength, y = inY / inLength - outY / outLength;
  const double across = std::hypot(x, y); // twice the sine of half the turn
  const double cosine = std::sqrt(std::max(0.0, 1 - across * across / 4));
  if (across == 0 || cosine < 1 / mitreLimit)
    return corner;
  const double reach = width / 2 / cosine / across;
  return {corner.x + x * reach, corner.y + y * reach};
}

Bounds strokedBox(std::span<const Point2> points, double width, bool closed) {
  Bounds box = hullOf(points);
  const std::size_t count = points.size();
  const bool square = closed && count == 4 && box == hullOf(points.first(3)) && points[0].x == points[3].x;
  box = box.grown(width / 2);
  if (square || count < 3)
    return box;
  for (std::size_t i = closed ? 0 : 1; i < (closed ? count : count - 1); ++i)
    widen(box, mitreTip(points[(i + count - 1) % count], points[i], points[(i + 1) % count], width));
  return box;
}

Bounds boxOf(Prim::Kind kind, double width, std::span<const Point2> points) {
  switch (kind) {
  case Prim::Kind::Fill:
    return hullOf(points);
  case Prim::Kind::Disc:
    return hullOf(points).grown(width);
  case Prim::Kind::Ring:
    return hullOf(points.first(1)).grown(points[1].x + width / 2);
  case Prim::Kind::Line:
    return strokedBox(points, width, false);
  case Prim::Kind::Loop:
    return strokedBox(points, width, true);
  case Prim::Kind::Segments:
    return hullOf(points).grown(width / 2);
  case Prim::Kind::Text:
    return hullOf(points);
  }
  return {};
}

// Box about the anchor (0, 0), turned.
Bounds letterBox(std::string_view words, const TextStyle& style) {
  const double width = textWidth(words, style.size);
  const double x0 = style.anchor == Anchor::Start ? 0 : style.anchor == Anchor::Middle ? -width / 2 : -width;
  const double up = letterRise * style.size, down = letterDrop(words) * style.size;
  const double angle = style.turn * std::numbers::pi / 180, c = std::cos(angle), s = std::sin(angle);
  std::vector<Point2> corners;
  for (const Point2 p : rectangle(x0, -up, x0 + width, down))
    corners.push_back({p.x * c + p.y * s, -p.x * s + p.y * c});
  return hullOf(corners);
}

} // namespace

Bounds hull(const Bounds& a, const Bounds& b) {
  if (a.empty())
    return b;
  if (b.empty())
    return a;
  return {std::min(a.x0, b.x0), std::min(a.y0, b.y0), std::max(a.x1, b.x1), std::max(a.y1, b.y1)};
}

Prim* Drawing::push(Prim::Kind kind, Ink ink, double width, std::span<const Point2> points) {
  if (ink == Ink::None || points.empty())
    return nullptr;
  Prim prim;
  prim.kind = kind;
  prim.ink = ink;
  prim.width = static_cast<float>(width);
  prim.first = static_cast<std::uint32_t>(points_.size());
  prim.count = static_cast<std::uint32_t>(points.size());
  prim.box = boxOf(kind, width, points);
  points_.insert(points_.end(), points.begin(), points.end());
  prims_.push_back(prim);
  return &prims_.back();
}

void Drawing::fill(std::span<const Point2> polygon, Ink ink, double opacity) {
  if (Prim* prim = push(Prim::Kind::Fill, ink, 0, polygon))
    prim->opacity = static_cast<float>(opacity);
}

void Drawing::fill(std::span<const Polygon2> rings, Ink ink, double opacity) {
  std::vector<Point2> all;
  std::vector<std::uint32_t> counts;
  for (const Polygon2& ring : rings) {
    all.insert(all.end(), ring.begin(), ring.end());
    counts.push_back(static_cast<std::uint32_t>(ring.size()));
  }
  if (Prim* prim = push(Prim::Kind::Fill, ink, 0, all)) {
    prim->opacity = static_cast<float>(opacity);
    rings_.push_back(std::move(counts));
    prim->text = static_cast<std::uint32_t>(rings_.size());
  }
}

void Drawing::fillRect(double x0, double y0, double x1, double y1, Ink ink, double opacity) {
  fill(std::span<const Point2>(rectangle(x0, y0, x1, y1)), ink, opacity);
}

void Drawing::line(Point2 a, Point2 b, Ink ink, double width, Cap cap) {
  const Point2 ends[] = {a, b};
  if (Prim* prim = push(Prim::Kind::Line, ink, width, ends))
    prim->cap = cap;
}

void Drawing::polyline(std::span<const Point2> points, Ink ink, double width) {
  push(Prim::Kind::Line, ink, width, points);
}

void Drawing::loop(std::span<const Point2> points, Ink ink, double width) {
  push(Prim::Kind::Loop, ink, width, points);
}

void Drawing::rect(double x0, double y0, double x1, double y1, Ink ink, double width) {
  loop(rectangle(x0, y0, x1, y1), ink, width);
}

void Drawing::segments(std::span<const Segment2> list, Ink ink, double width, double opacity) {
  std::vector<Point2> ends;
  ends.reserve(2 * list.size());
  for (const Segment2& segment : list) {
    ends.push_back(segment.a);
    ends.push_back(segment.b);
  }
  if (Prim* prim = push(Prim::Kind::Segments, ink, width, ends))
    prim->opacity = static_cast<float>(opacity);
}

void Drawing::dashed(std::span<const Point2> points, double on, double off, Ink ink, double width, bool closed) {
  std::vector<Segment2> dashes;
  const std::size_t sides = points.empty() ? 0 : closed ? points.size() : points.size() - 1;
  for (std::size_t i = 0; i < sides; ++i) {
    const Point2 a = points[i], b = points[(i + 1) % points.size()];
    const double length = std::hypot(b.x - a.x, b.y - a.y);
    const auto at = [&](double along) {
      return Point2{a.x + (b.x - a.x) * along / length, a.y + (b.y - a.y) * along / length};
    };
    // Counted, not added up, so that a long line keeps its rhythm; a step too small to draw is a solid line.
    const double step = on + off, count = step > 0 ? std::ceil(length / step) : 0;
    if (count < 1 || count > 1e5) {
      dashes.push_back({a, b});
      continue;
    }
    for (double k = 0; k < count; ++k)
      dashes.push_back({at(k * step), at(std::min(k * step + on, length))});
  }
  segments(dashes, ink, width);
}

void Drawing::dashedRect(double x0, double y0, double x1, double y1, double on, double off, Ink ink, double width) {
  dashed(rectangle(x0, y0, x1, y1), on, off, ink, width, true);
}

void Drawing::disc(Point2 centre, double radius, Ink ink, double opacity) {
  if (Prim* prim = push(Prim::Kind::Disc, ink, radius, std::span(&centre, 1)))
    prim->opacity = static_cast<float>(opacity);
}

void Drawing::discs(std::span<const Point2> centres, double radius, Ink ink) {
  push(Prim::Kind::Disc, ink, radius, centres);
}

void Drawing::ring(Point2 centre, double radius, Ink ink, double width) {
  const Point2 points[] = {centre, {radius, 0}};
  push(Prim::Kind::Ring, ink, width, points);
}

Bounds Drawing::text(Point2 at, std::string_view words, Ink ink, const TextStyle& style) {
  const Bounds letters = letterBox(words, style).moved(at.x, at.y);
  if (words.empty())
    return letters;
  if (Prim* prim = push(Prim::Kind::Text, ink, 0, std::span(&at, 1))) {
    prim->text = static_cast<std::uint32_t>(texts_.size());
    // Accents on capitals stand higher than the letters' box.
    prim->box = letters.grown(0.16 * style.size + (style.halo == Ink::None ? 0 : style.haloWidth / 2));
    texts_.push_back({std::string(words), style});
  }
  return letters;
}

void Drawing::add(const Drawing& other, double dx, double dy) {
  const auto firstPoint = static_cast<std::uint32_t>(points_.size());
  const auto firstText = static_cast<std::uint32_t>(texts_.size());
  const auto firstRings = static_cast<std::uint32_t>(rings_.size());
  for (const Point2 p : other.points_)
    points_.push_back({p.x + dx, p.y + dy});
  for (Prim prim : other.prims_) {
    prim.first += firstPoint;
    prim.box = prim.box.moved(dx, dy);
    if (prim.kind == Prim::Kind::Text)
      prim.text += firstText;
    else if (prim.text > 0)
      prim.text += firstRings;
    if (prim.kind == Prim::Kind::Ring) // the radius is not a place
      points_[prim.first + 1] = other.points_[prim.first + 1 - firstPoint];
    prims_.push_back(prim);
  }
  texts_.insert(texts_.end(), other.texts_.begin(), other.texts_.end());
  rings_.insert(rings_.end(), other.rings_.begin(), other.rings_.end());
  for (HitArea area : other.hits_) {
    area.box = area.box.moved(dx, dy);
    hits_.push_back(area);
  }
  for (const TakenBox& box : other.taken_)
    taken_.push_back({box.name, box.box.moved(dx, dy)});
}

void Drawing::hit(PieceRef piece, const Bounds& box, HitArea::Part part) {
  hits_.push_back({piece, part, box});
}

void Drawing::take(std::string name, const Bounds& box) {
  taken_.push_back({std::move(name), box});
}

std::vector<std::span<const Point2>> Drawing::ringsOf(const Prim& p) const {
  const std::span<const Point2> all = pointsOf(p);
  if (p.text == 0)
    return {all};
  std::vector<std::span<const Point2>> rings;
  std::size_t first = 0;
  for (const std::uint32_t count : rings_[p.text - 1]) {
    rings.push_back(all.subspan(first, count));
    first += count;
  }
  return rings;
}

Bounds Drawing::bounds() const {
  Bounds all;
  for (const Prim& prim : prims_)
    all = hull(all, prim.box);
  return all;
}

} // namespace sillwright
