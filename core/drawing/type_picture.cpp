#include "core/drawing/type_picture.h"

#include <algorithm>
#include <cmath>

#include "core/drawing/plain_number.h"
#include "core/drawing/text_metrics.h"
#include "core/drawing/type_pen.h"

namespace sillwright {

namespace type_picture {
namespace {

constexpr double leastWidth = 300, leastHeight = 150, leastStrap = 40;

// The largest scale at which wide x high inches leave the room that is asked for.
double fitting(const Bounds& box, double wide, double high, double besides, double above) {
  return std::min((box.x1 - box.x0 - besides) / std::max(wide, 0.01), (box.y1 - box.y0 - above) / std::max(high, 0.01));
}

// ---- strap --------------------------------------------------------------------------------------------------------

struct StrapReach {
  double deepest = 0, nearest = 0, farthest = 0;
};

StrapReach reachOf(const StrapType& type) {
  StrapReach reach{0, type.profile.front().d, type.profile.front().d};
  for (const ProfilePoint& point : type.profile) {
    reach.deepest = std::max(reach.deepest, -point.z);
    reach.nearest = std::min(reach.nearest, point.d);
    reach.farthest = std::max(reach.farthest, point.d);
  }
  return reach;
}

void drawFront(const Pen& pen, const StrapType& type, double middle, double deepest) {
  const double half = type.plateWidth / 2 * pen.scale;
  pen.drawing.fillRect(middle - half, pen.y(0), middle + half, pen.y(-deepest), Ink::SteelFace);
  pen.drawing.rect(middle - half, pen.y(0), middle + half, pen.y(-deepest), Ink::Steel, 1);
  pen.drawing.fillRect(middle - half, pen.y(type.exposedLength), middle + half, pen.y(0), Ink::Steel);
  const double radius = std::clamp(type.nails.nailDiameter / 2 * pen.scale, 1.0, 4.0);
  for (const NailAt& nail : nailsOf(type.nails))
    pen.drawing.disc({middle + nail.offset * pen.scale, pen.y(nail.height)}, radius, Ink::Panel);
  pen.drawing.line({middle - half - 4, pen.y(0)}, {middle + half + 4, pen.y(0)}, Ink::Steel, 2.2);
}

// The cut, its points numbered where the numbers find room.
void drawCut(const Pen& pen, const StrapType& type) {
  Polygon2 path{pen.at(type.profile.front().d, type.exposedLength)};
  for (const ProfilePoint& point : type.profile)
    path.push_back(pen.at(point.d, point.z));
  pen.drawing.polyline(path, Ink::Steel, std::max(2.2, type.plateThickness * pen.scale));
  Point2 last{-1e9, -1e9};
  for (std::size_t i = 0; i < type.profile.size(); ++i) {
    const Point2 at = path[i + 1];
    pen.drawing.disc(at, 2.6, Ink::Steel);
    if (std::hypot(at.x - last.x, at.y - last.y) < wordSize)
      continue;
    pen.drawing.text({at.x + 8, at.y + 4}, std::to_string(i + 1), Ink::Text,
                     {wordSize, Weight::Bold, Anchor::Start, 0, Ink::Concrete, 3});
    last = at;
  }
}

std::vector<std::string> nailLines(const Pen& pen, const NailPattern& nails) {
  std::vector<std::string> lines;
  lines.push_back(std::to_string(nails.count) + (nails.staggered ? " nails, staggered" : " nails a row"));
  if (!nails.nail.empty())
    lines.push_back(nails.nail);
  lines.push_back(pen.measure(nails.nailDiameter) + " x " + pen.measure(nails.nailLength));
  lines.push_back(pen.measure(nails.spacing) + " apart");
  lines.push_back("first " + pen.measure(nails.first) + " up");
  return lines;
}

// What does not fit above the foot of the box ends in a line that says so.
void sayLines(Pen& pen, Point2 from, const std::vector<std::string>& lines, double foot) {
  const auto most = static_cast<std::size_t>(std::max(1.0, std::floor((foot - from.y) / lineHeight) + 1));
  const std::size_t shown = lines.size() <= most ? lines.size() : most - 1;
  for (std::size_t i = 0; i < shown; ++i)
    pen.say({from.x, from.y + double(i) * lineHeight}, lines[i]);
  if (shown < lines.size())
    pen.say({from.x, from.y + double(shown) * lineHeight}, "and " + std::to_string(lines.size() - shown) + " more");
}

// In millimetres without the unit, as points are typed.
std::string bare(const Pen& pen, double inches) {
  return pen.units == LengthStyle::Millimetres ? plainNumber(inches * 25.4, 2) : pen.measure(inches);
}

std::vector<std::string> pointLines(const Pen& pen, const StrapType& type) {
  std::vector<std::string> lines;
  for (std::size_t i = 0; i < type.profile.size(); ++i)
    lines.push_back(std::to_string(i + 1) + "   " + bare(pen, type.profile[i].d) + ", " +
                    bare(pen, 0.0 - type.profile[i].z) + " down");
  return lines;
}

double widest(const std::vector<std::string>& lines) {
  double width = 0;
  for (const std::string& line : lines)
    width = std::max(width, textWidth(line, wordSize));
  return width;
}

void drawStrap(Pen& pen, const StrapType& type) {
  const StrapReach reach = reachOf(type);
  const Bounds& box = pen.box;
  const double span = reach.farthest - reach.nearest;
  const std::vector<std::string> nails = type.nails.count > 0 ? nailLines(pen, type.nails) : std::vector<std::string>{};
  const std::vector<std::string> points = pointLines(pen, type);
  constexpr double between = 34, beforeList = 32, listGap = 22;
  const double high = type.exposedLength + reach.deepest, wide = type.plateWidth + span;
  const double lines = double(std::max(nails.size(), points.size())) * lineHeight + 6;
  // The lists stand beside the strap, or below it where that leaves it larger.
  const double roomBeside = beforeList + std::max(widest(nails), widest(points)) + 4;
  const double beside = fitting(box, wide, high, sideRoom + between + roomBeside, topRoom + footRoom);
  const double under = fitting(box, wide, high, sideRoom + between + beforeList, topRoom + footRoom + lines);
  const bool below = under > beside && widest(nails) + widest(points) + listGap < box.x1 - box.x0 - 8;
  pen.scale = below ? under : beside;
  if (pen.scale * high < leastStrap)
    return;
  const double listRoom = below ? beforeList : roomBeside;
  const double used = sideRoom + between + listRoom + (type.plateWidth + span) * pen.scale;
  const double left = box.x0 + std::max(0.0, (box.x1 - box.x0 - used) / 2) + sideRoom;
  const double middle = left + type.plateWidth / 2 * pen.scale, half = type.plateWidth / 2 * pen.scale;
  pen.origin = {left + type.plateWidth * pen.scale + between - reach.nearest * pen.scale,
                box.y0 + topRoom + type.exposedLength * pen.scale};
  const double joint = pen.y(0), bottom = pen.y(-reach.deepest), top = pen.y(type.exposedLength);
  pen.concrete(joint, left - 14, pen.x(reach.farthest) + 24, bottom + 8);
  drawFront(pen, type, middle, reach.deepest);
  drawCut(pen, type);
  pen.across(top - 9, middle - half, middle + half, pen.measure(type.plateWidth));
  const double px = left - 20;
  pen.witness({px - 4, top}, {middle - half, top});
  pen.witness({px - 4, joint}, {middle - half, joint});
  pen.witness({px - 4, bottom}, {middle - half, bottom});
  pen.upright(px, top, joint, pen.measure(type.exposedLength), true);
  pen.upright(px, joint, bottom, pen.measure(reach.deepest), true);
  if (span > 0) {
    pen.across(bottom + 26, pen.x(reach.nearest), pen.x(reach.farthest), pen.measure(span));
  }
  if (below) {
    const double first = bottom + footRoom + lineHeight;
    sayLines(pen, {box.x0 + 4, first}, nails, box.y1);
    return sayLines(pen, {box.x0 + 4 + widest(nails) + listGap, first}, points, box.y1);
  }
  const double list = pen.x(reach.farthest) + beforeList;
  sayLines(pen, {list, std::max(top + wordSize, box.y0 + wordSize)}, nails, joint - lineHeight);
  sayLines(pen, {list, joint + lineHeight}, points, box.y1 - 4);
}

// ---- bolt and rod -------------------------------------------------------------------------------------------------

void drawFoot(Pen& pen, const BoltType& type) {
  const double r = type.diameter / 2;
  if (type.end == BoltEnd::Headed) {
    const double half = type.headWidth / 2, high = std::max(type.headThickness, 0.05);
    pen.drawing.fillRect(pen.x(-half), pen.y(high), pen.x(half), pen.y(0), Ink::SteelSoft);
    pen.drawing.rect(pen.x(-half), pen.y(high), pen.x(half), pen.y(0), Ink::Steel, 1);
    return;
  }
  const double up = type.end == BoltEnd::J ? std::max(type.hookReturn, type.diameter) : type.diameter;
  const Polygon2 leg{pen.at(-r, 0),           pen.at(type.hookLeg, 0),        pen.at(type.hookLeg, up),
                     pen.at(type.hookLeg - type.diameter, up), pen.at(type.hookLeg - type.diameter, type.diameter),
                     pen.at(-r, type.diameter)};
  const Polygon2 plain{pen.at(-r, 0), pen.at(type.hookLeg, 0), pen.at(type.hookLeg, type.diameter),
                       pen.at(-r, type.diameter)};
  const bool turned = up > type.diameter && type.hookLeg > 1.5 * type.diameter;
  pen.drawing.fill(turned ? leg : plain, Ink::SteelSoft);
  pen.drawing.loop(turned ? leg : plain, Ink::Steel, 1);
}

void drawBolt(Pen& pen, const BoltType& type) {
  const Bounds& box = pen.box;
  const bool headed = type.end == BoltEnd::Headed;
  const double r = type.diameter / 2;
  const double rightOf = headed ? type.headWidth / 2 : type.hookLeg, leftOf = headed ? type.headWidth / 2 : r;
  pen.scale = fitting(box, leftOf + rightOf, type.length, 2 * sideRoom, topRoom + footRoom + 12);
  pen.origin = {(box.x0 + box.x1) / 2 + (leftOf - rightOf) / 2 * pen.scale, box.y0 + topRoom + type.length * pen.scale};
  const double top = pen.y(type.length), foot = pen.y(0);
  drawFoot(pen, type);
  pen.shank(r, headed ? type.headThickness : type.diameter, type.length, type.length - type.threadLength,
            type.threadsPerInch);
  pen.across(top - 9, pen.x(-r), pen.x(r), pen.measure(type.diameter));
  const double px = pen.x(-leftOf) - 18, tx = pen.x(r) + 18;
  pen.witness({px - 4, top}, {pen.x(-r), top});
  pen.witness({px - 4, foot}, {pen.x(-leftOf), foot});
  pen.upright(px, top, foot, pen.measure(type.length), true);
  if (type.threadLength > 0) {
    const double end = pen.y(type.length - type.threadLength);
    pen.witness({pen.x(r), end}, {tx + 4, end});
    pen.upright(tx, top, end, pen.measure(type.threadLength) + " of thread", false);
  }
  pen.across(foot + 30, headed ? pen.x(-leftOf) : pen.x(0), pen.x(rightOf), pen.measure(headed ? type.headWidth : type.hookLeg));
  if (type.end == BoltEnd::J && type.hookReturn > 0)
    pen.upright(pen.x(type.hookLeg) + 14, pen.y(type.hookReturn), foot, pen.measure(type.hookReturn), false);
}

void drawRod(Pen& pen, const RodType& type) {
  const Bounds& box = pen.box;
  const double r = type.diameter / 2, half = std::max(type.footWidth / 2, r);
  const double above = std::max(type.threadLength, type.embedment * 0.35);
  const double leftOf = std::max(half, type.bracketOffset + 1.5);
  pen.scale = fitting(box, leftOf + half, above + type.embedment + type.footThickness, 2 * sideRoom, topRoom + footRoom);
  pen.origin = {(box.x0 + box.x1) / 2 + (leftOf - half) / 2 * pen.scale, box.y0 + topRoom + above * pen.scale};
  const double top = pen.y(above), pour = pen.y(0), bearing = pen.y(-type.embedment);
  const double bottom = pen.y(-type.embedment - type.footThickness);
  const double tx = pen.x(half) + 26;
  const std::string thick = pen.measure(type.diameter) + " rod";
  pen.concrete(pour, pen.x(-leftOf), pen.x(half) + 20 + textWidth(thick, wordSize), bottom + 8);
  if (type.bracketOffset > 0) {
    const double face = pen.x(-type.bracketOffset);
    pen.drawing.fillRect(pen.x(-leftOf), top + 14, face, pour, Ink::Wood);
    pen.drawing.line({face, top + 14}, {face, pour}, Ink::WoodLine, 1.2);
    pen.witness({face, top - 13}, {face, top + 14});
    pen.across(top - 9, face, pen.x(0), pen.measure(type.bracketOffset) + " off the column");
  }
  if (type.footWidth > 0) {
    pen.drawing.fillRect(pen.x(-half), bearing, pen.x(half), std::max(bottom, bearing + 2), Ink::SteelSoft);
    pen.drawing.rect(pen.x(-half), bearing, pen.x(half), std::max(bottom, bearing + 2), Ink::Steel, 1);
    pen.across(bottom + 30, pen.x(-half), pen.x(half), pen.measure(type.footWidth));
  }
  pen.shank(r, -type.embedment, above, above - type.threadLength, type.threadsPerInch);
  const double px = pen.x(-leftOf) - 14;
  pen.witness({px - 4, pour}, {pen.x(-leftOf), pour});
  pen.witness({px - 4, bearing}, {pen.x(-r), bearing});
  pen.upright(px, pour, bearing, pen.measure(type.embedment), true);
  if (type.threadLength > 0)
    pen.upright(tx, top, pen.y(above - type.threadLength), pen.measure(type.threadLength) + " of thread", false);
  pen.say({pen.x(half) + 10, (pour + bearing) / 2}, thick, Anchor::Start, Ink::Text, Ink::Concrete);
}

// ---- washer -------------------------------------------------------------------------------------------------------

void drawWasher(Pen& pen, const WasherType& type) {
  const Bounds& box = pen.box;
  constexpr double edgeView = 56;
  pen.scale = fitting(box, type.along, type.across + type.thickness, 2 * sideRoom + 24, topRoom + edgeView + footRoom);
  pen.origin = {(box.x0 + box.x1) / 2, box.y0 + topRoom + 8 + type.across / 2 * pen.scale};
  const double x0 = pen.x(-type.along / 2), x1 = pen.x(type.along / 2);
  const double y0 = pen.y(type.across / 2), y1 = pen.y(-type.across / 2);
  pen.drawing.fillRect(x0, y0, x1, y1, Ink::SteelSoft);
  pen.drawing.rect(x0, y0, x1, y1, Ink::Steel, 1.1);
  if (type.slot) {
    const bool along = type.slot->direction == SlotDirection::Along;
    const double sx = (along ? type.slot->length : type.slot->width) / 2, sy = (along ? type.slot->width : type.slot->length) / 2;
    pen.drawing.fillRect(pen.x(-sx), pen.y(sy), pen.x(sx), pen.y(-sy), Ink::Panel);
    pen.drawing.rect(pen.x(-sx), pen.y(sy), pen.x(sx), pen.y(-sy), Ink::Steel, 1);
  }
  if (type.hole > 0) {
    pen.drawing.disc(pen.origin, type.hole / 2 * pen.scale, Ink::Panel);
    pen.drawing.ring(pen.origin, type.hole / 2 * pen.scale, Ink::Steel, 1);
  }
  pen.across(y0 - 9, x0, x1, pen.measure(type.along) + " along");
  pen.upright(x0 - 16, y0, y1, pen.measure(type.across) + " across", true);
  if (type.slot)
    pen.say({x1 + 8, pen.origin.y - 4}, "slot " + pen.measure(type.slot->width));
  if (type.slot)
    pen.say({x1 + 8, pen.origin.y - 4 + lineHeight}, "x " + pen.measure(type.slot->length));
  if (type.hole > 0)
    pen.say({x1 + 8, type.slot ? pen.origin.y - 4 + 2 * lineHeight : pen.origin.y + 4}, "hole " + pen.measure(type.hole));
  const double edge = y1 + 30, thick = std::max(1.5, type.thickness * pen.scale);
  pen.drawing.fillRect(x0, edge, x1, edge + thick, Ink::Steel);
  pen.upright(x1 + 14, edge, edge + thick, pen.measure(type.thickness) + " thick", false);
}

} // namespace
} // namespace type_picture

Drawing typePicture(const Job& job, Id type, const Bounds& box) {
  using namespace type_picture;
  Drawing drawing;
  if (box.x1 - box.x0 < leastWidth || box.y1 - box.y0 < leastHeight)
    return drawing;
  Pen pen{drawing, box, job.units, 1, {}};
  if (const StrapType* strap = findStrapType(*job.types, type))
    drawStrap(pen, *strap);
  else if (const BoltType* bolt = findBoltType(*job.types, type))
    drawBolt(pen, *bolt);
  else if (const RodType* rod = findRodType(*job.types, type))
    drawRod(pen, *rod);
  else if (const WasherType* washer = findWasherType(*job.types, type))
    drawWasher(pen, *washer);
  return drawing;
}

} // namespace sillwright
