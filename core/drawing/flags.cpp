#include "core/drawing/flags.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/drawing/parallel_lines.h"

namespace sillwright {
namespace {

struct Stroke {
  double width, edge;
};
constexpr Stroke fixStroke{0.95, 1.0}, askStroke{0.85, 0.7}, watchStroke{0.9, 0.5};

constexpr double fixSpacing = 4.8, fixAngle = 52;
constexpr double askPitch = 6.0, askHeight = 2.7, askRows = 5.0, askDash = 3.6, askDashGap = 1.8;
constexpr double watchTick = 4.2, watchPitch = 3.9, watchRows = 6.6;
const double watchLean = std::tan(16 * std::numbers::pi / 180);

constexpr double knockOut = 0.8;     // ground cleared around the pattern
constexpr double stripBelow = 9.0;   // narrower regions take the strip form,
constexpr double stripAcross = 6.0;  // which is never narrower than this across,
constexpr double stripOver = 1.6;    // runs over both long edges by this,
constexpr double stripLength = 10.0; // is never shorter than this,
constexpr double witnessOut = 4.0;   // and has witness lines this long at both ends
constexpr double witnessWidth = 0.5;
constexpr double crossPitch = 6.0, crossShare = 0.80, crossLength = 5.2, zigzagPitch = 3.6;

Stroke strokeOf(Level level) {
  return level == Level::Fix ? fixStroke : level == Level::Ask ? askStroke : watchStroke;
}

// u along the long side of the region, v across, origin in its middle.
struct Frame {
  Point2 middle;
  bool upright = false; // u runs down the page
  double length = 0, width = 0;

  Point2 at(double u, double v) const {
    return upright ? Point2{middle.x + v, middle.y + u} : Point2{middle.x + u, middle.y + v};
  }
  Bounds box(double u, double v) const {
    const Point2 a = at(-u / 2, -v / 2), b = at(u / 2, v / 2);
    return {a.x, a.y, b.x, b.y};
  }
};

Frame frameOf(const Bounds& r) {
  const double w = r.x1 - r.x0, h = r.y1 - r.y0;
  return {{(r.x0 + r.x1) / 2, (r.y0 + r.y1) / 2}, h >= w, std::max(w, h), std::min(w, h)};
}

std::vector<Segment2> zigzag(const Frame& f, double from, double leg, int legs, double v, double height) {
  std::vector<Segment2> out;
  const auto corner = [&](int i) { return f.at(from + i * leg, v + (i % 2 == 0 ? -height : height) / 2); };
  for (int i = 0; i < legs; ++i)
    out.push_back({corner(i), corner(i + 1)});
  return out;
}

Segment2 tick(const Frame& f, double u, double v, double length) {
  const double lean = watchLean * length / 2;
  return {f.at(u - lean, v - length / 2), f.at(u + lean, v + length / 2)};
}

std::vector<Segment2> rowsOfZigzags(const Frame& f, double k) {
  std::vector<Segment2> out;
  const int rows = static_cast<int>(std::ceil(f.width / 2 / (askRows * k))) + 1;
  const int waves = static_cast<int>(std::ceil(f.length / (askPitch * k))) + 1;
  for (int j = -rows; j <= rows; ++j) {
    const std::vector<Segment2> row =
        zigzag(f, -waves * askPitch * k, askPitch * k / 2, 4 * waves, j * askRows * k, askHeight * k);
    out.insert(out.end(), row.begin(), row.end());
  }
  return out;
}

std::vector<Segment2> rowsOfTicks(const Frame& f, double k) {
  std::vector<Segment2> out;
  const int rows = static_cast<int>(std::ceil(f.width / 2 / (watchRows * k))) + 1;
  const int ticks = static_cast<int>(std::ceil(f.length / (watchPitch * k))) + 1;
  for (int j = -rows; j <= rows; ++j)
    for (int i = -ticks; i <= ticks; ++i)
      out.push_back(tick(f, (i + (j % 2 == 0 ? 0 : 0.5)) * watchPitch * k, j * watchRows * k, watchTick * k));
  return out;
}

std::vector<Segment2> areaPattern(Level level, const Frame& f, const Bounds& region, double k) {
  const Polygon2 outline = rectangle(region.x0, region.y0, region.x1, region.y1);
  std::vector<Segment2> out;
  if (level == Level::Fix) {
    for (const double angle : {fixAngle, -fixAngle}) {
      const auto lines = parallelLines(outline, (f.upright ? 90 : 0) + angle, fixSpacing * k, f.middle);
      out.insert(out.end(), lines.begin(), lines.end());
    }
    return out;
  }
  for (const Segment2& whole : level == Level::Ask ? rowsOfZigzags(f, k) : rowsOfTicks(f, k)) {
    const std::vector<Segment2> parts = clipped(whole, outline);
    out.insert(out.end(), parts.begin(), parts.end());
  }
  return out;
}

// A whole number of signs fills the length, so that the strip never ends in half a sign.
int fitted(double length, double pitch, int least) {
  return std::max(least, static_cast<int>(std::lround(length / pitch)));
}

std::vector<Segment2> stripPattern(Level level, const Frame& f, double length, double across, double k) {
  std::vector<Segment2> out;
  if (level == Level::Ask) {
    const int legs = fitted(length, zigzagPitch * k, 2);
    return zigzag(f, -length / 2, length / legs, legs, 0, across);
  }
  const int signs = level == Level::Fix ? fitted(length, crossPitch * k, 1) : fitted(length, watchPitch * k, 2);
  const double pitch = length / signs, half = std::min(pitch * crossShare, crossLength * k) / 2;
  for (int i = 0; i < signs; ++i) {
    const double u = -length / 2 + (i + 0.5) * pitch;
    if (level == Level::Fix) {
      out.push_back({f.at(u - half, -across / 2), f.at(u + half, across / 2)});
      out.push_back({f.at(u - half, across / 2), f.at(u + half, -across / 2)});
    } else {
      out.push_back(tick(f, u, 0, across));
    }
  }
  return out;
}

void knockOutGround(Drawing& drawing, const Bounds& box, double k) {
  const Bounds cleared = box.grown(knockOut * k);
  drawing.fillRect(cleared.x0, cleared.y0, cleared.x1, cleared.y1, Ink::Paper);
}

Bounds drawStrip(Drawing& drawing, Level level, const Frame& f, double k) {
  const double across = std::max(f.width + 2 * stripOver * k, stripAcross * k);
  const double length = std::max(f.length, stripLength * k), out = length + 2 * witnessOut * k;
  knockOutGround(drawing, f.box(length, across), k);
  std::vector<Segment2> witnesses;
  for (const double v : {-f.width / 2, f.width / 2}) {
    witnesses.push_back({f.at(-out / 2, v), f.at(-length / 2, v)});
    witnesses.push_back({f.at(length / 2, v), f.at(out / 2, v)});
  }
  drawing.segments(witnesses, inkOf(level), witnessWidth * k);
  drawing.segments(stripPattern(level, f, length, across, k), inkOf(level), strokeOf(level).width * k);
  return f.box(out, across);
}

} // namespace

Ink inkOf(Level level) {
  return level == Level::Fix ? Ink::Fix : level == Level::Ask ? Ink::Ask : Ink::Watch;
}

Bounds drawFlag(Drawing& drawing, Level level, const Bounds& region, double k) {
  const Bounds r{std::min(region.x0, region.x1), std::min(region.y0, region.y1), std::max(region.x0, region.x1),
                 std::max(region.y0, region.y1)};
  const Frame f = frameOf(r);
  if (f.width < stripBelow * k)
    return drawStrip(drawing, level, f, k);
  const Stroke stroke = strokeOf(level);
  knockOutGround(drawing, r, k);
  drawing.segments(areaPattern(level, f, r, k), inkOf(level), stroke.width * k);
  if (level == Level::Ask)
    drawing.dashedRect(r.x0, r.y0, r.x1, r.y1, askDash * k, askDashGap * k, inkOf(level), stroke.edge * k);
  else
    drawing.rect(r.x0, r.y0, r.x1, r.y1, inkOf(level), stroke.edge * k);
  return r;
}

void drawSwatch(Drawing& drawing, Level level, double x, double cy, double width, double height, Ink ink, double k) {
  const double top = cy - height / 2, foot = cy + height / 2;
  const double stroke = strokeOf(level).width * k;
  std::vector<Segment2> signs;
  if (level == Level::Fix) {
    for (int i = 0; i < 2; ++i) {
      const double a = x + i * width / 2 + 0.7 * k, b = x + (i + 1) * width / 2 - 0.7 * k;
      signs.push_back({{a, top}, {b, foot}});
      signs.push_back({{a, foot}, {b, top}});
    }
    drawing.segments(signs, ink, stroke * 1.35);
  } else if (level == Level::Ask) {
    Polygon2 corners;
    for (int i = 0; i <= 4; ++i)
      corners.push_back({x + width * i / 4, i % 2 == 0 ? foot : top});
    drawing.polyline(corners, ink, stroke * 1.4);
  } else {
    const double lean = watchLean * height / 2;
    for (int i = 0; i < 4; ++i) {
      const double middle = x + width * (i + 0.5) / 4;
      signs.push_back({{middle + lean, top}, {middle - lean, foot}});
    }
    drawing.segments(signs, ink, stroke * 1.3);
  }
}

} // namespace sillwright
