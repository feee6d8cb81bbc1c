#include "ui/sheet/question_drawing.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/model/lookup.h"
#include "ui/sheet/elevation_pages.h"
#include "ui/sheet/sheet_text.h"

namespace sillwright::sheet {

namespace {

constexpr double beside = 14;    // in of wall drawn on both sides of what collides
constexpr double wellSeen = 56;  // in: more helps nobody
constexpr double numberRow = 24; // pt above and below the drawing
constexpr double radius = 6.5;   // pt of a number's ring
constexpr double apart = 2 * radius + 2;

// Of what stands in one place; sills, panels and openings run past it.
std::optional<Interval> standsIn(const WallLayout& layout, Id id) {
  for (const ColumnBody& column : layout.columns)
    if (column.id == id)
      return column.box.s;
  for (const StrapBody& strap : layout.straps)
    if (strap.id == id)
      return strap.plate.s;
  for (const AnchorBody& anchor : layout.anchors)
    if (anchor.id == id)
      return around(anchor.station, anchor.diameter);
  for (const BarBody& bar : layout.bars)
    if (bar.id == id && bar.bar->run == BarRun::Upright)
      return bar.box.s;
  return std::nullopt;
}

// The piece of sill that bolts are asked of, or a panel or opening: taken where nothing stands in one place.
std::optional<Interval> runsAlong(const WallLayout& layout, const Requirement& requirement, Id id) {
  for (const SillPiece& piece : layout.sills)
    if (piece.sill == id && piece.index == requirement.sillPiece.value_or(piece.index))
      return piece.box.s;
  if (const Panel* panel = findIn(layout.wall->panels, id))
    return Interval{panel->from, panel->to};
  const Opening* opening = findIn(layout.wall->openings, id);
  return opening ? std::optional(Interval{opening->from, opening->to}) : std::nullopt;
}

// The face of the concrete nearest to a strap.
const ConcreteFace* nearestFace(const WallLayout& layout, Id strap) {
  const auto at = standsIn(layout, strap);
  const ConcreteFace* nearest = nullptr;
  for (const ConcreteFace& face : layout.faces)
    if (at && (!nearest || std::abs(face.station - at->middle()) < std::abs(nearest->station - at->middle())))
      nearest = &face;
  return nearest;
}

std::optional<Pointed> pointedAt(const WallLayout& layout, Id id) {
  for (const BarBody& bar : layout.bars)
    if (bar.id == id && bar.bar->run == BarRun::Upright)
      return Pointed{{bar.box.s.middle(), bar.box.z.from}, false};
  for (const StrapBody& strap : layout.straps)
    if (strap.id == id)
      return Pointed{{strap.plate.s.middle(), strap.plate.z.to}, true};
  for (const ColumnBody& column : layout.columns)
    if (column.id == id)
      return Pointed{{column.box.s.middle(), column.box.z.to}, true};
  for (const AnchorBody& anchor : layout.anchors)
    if (anchor.id == id)
      return Pointed{{anchor.station, anchor.top}, true};
  return std::nullopt;
}

// ---- numbers in a row -------------------------------------------------------------------------------------------

struct Numbered {
  int number = 0;
  Point2 at;    // page
  double x = 0; // of its ring
};

// As near to what they point at as they can stand side by side: those that would overlap share their middle.
void spread(std::vector<Numbered>& row) {
  std::stable_sort(row.begin(), row.end(), [](const Numbered& a, const Numbered& b) { return a.at.x < b.at.x; });
  struct Group {
    std::size_t first, count;
    double sum;
    double left() const { return sum / static_cast<double>(count) - apart * static_cast<double>(count - 1) / 2; }
    double right() const { return left() + apart * static_cast<double>(count - 1); }
  };
  std::vector<Group> groups;
  for (std::size_t i = 0; i < row.size(); ++i) {
    groups.push_back({i, 1, row[i].at.x});
    while (groups.size() > 1 && groups[groups.size() - 2].right() + apart > groups.back().left()) {
      const Group last = groups.back();
      groups.pop_back();
      groups.back().count += last.count;
      groups.back().sum += last.sum;
    }
  }
  for (const Group& group : groups)
    for (std::size_t i = 0; i < group.count; ++i)
      row[group.first + i].x = group.left() + apart * static_cast<double>(i);
}

void drawNumbers(Drawing& page, std::vector<Numbered> row, double y, bool above, const Bounds& area) {
  spread(row);
  if (row.empty() || row.front().x < area.x0 + radius || row.back().x > area.x1 - radius)
    return; // the words carry the numbers, too
  for (const Numbered& each : row) {
    page.line({each.x, above ? y + radius : y - radius}, each.at, Ink::Text, 0.6);
    page.ring({each.x, y}, radius, Ink::Text, 0.9);
    page.text({each.x, y + 3.2}, std::to_string(each.number), Ink::Text, bold(smallSize, Anchor::Middle));
  }
}

} // namespace

std::optional<Pointed> pointedAt(const WallLayout& layout, const Requirement& requirement) {
  if (requirement.rule == RuleId::StrapEdge && requirement.kind == Requirement::Kind::Rule &&
      !requirement.pieces.empty())
    if (const ConcreteFace* face = nearestFace(layout, requirement.pieces.front()))
      return Pointed{{face->station, face->z.from}, false};
  if (requirement.at) // a stud; it runs up past what is drawn
    return Pointed{{requirement.at->middle(), std::numeric_limits<double>::infinity()}, true};
  for (auto id = requirement.pieces.rbegin(); id != requirement.pieces.rend(); ++id)
    if (const auto pointed = pointedAt(layout, *id))
      return pointed;
  return std::nullopt;
}

Interval placeOf(const WallLayout& layout, const NoLayout& conflict, double room) {
  std::optional<Interval> place, along;
  const auto take = [](std::optional<Interval>& all, const std::optional<Interval>& one) {
    if (one)
      all = all ? hull(*all, *one) : *one;
  };
  for (const Requirement& requirement : conflict.requirements)
    for (const Id id : requirement.pieces) {
      take(place, standsIn(layout, id));
      take(along, runsAlong(layout, requirement, id));
    }
  const Interval whole{0, layout.length};
  const Interval drawn = grown(place ? *place : along.value_or(whole), beside);
  const double length = std::min(std::max(drawn.length(), std::min(wellSeen, room)), layout.length);
  const double from = std::clamp(drawn.middle() - length / 2, 0.0, layout.length - length);
  return {from, from + length};
}

Scale drawQuestion(Drawing& page, const Job& job, const CheckedWall& wall, const NoLayout& conflict,
                   const Bounds& area) {
  Bounds between = area;
  between.y0 += numberRow;
  between.y1 -= numberRow;
  const Interval part = placeOf(wall.layout, conflict, longestPart(between));
  const DrawnPart drawn = drawPart(page, job, wall, part, between);
  std::vector<Numbered> above, below;
  for (std::size_t i = 0; i < conflict.requirements.size(); ++i)
    if (const auto pointed = pointedAt(wall.layout, conflict.requirements[i]);
        pointed && part.contains(pointed->at.x)) {
      const Point2 at{drawn.view.x(pointed->at.x), std::clamp(drawn.view.y(pointed->at.y), drawn.top, drawn.bottom)};
      (pointed->above ? above : below).push_back({static_cast<int>(i) + 1, at});
    }
  drawNumbers(page, std::move(above), drawn.top - numberRow / 2, true, area);
  drawNumbers(page, std::move(below), drawn.bottom + numberRow / 2, false, area);
  return drawn.scale;
}

} // namespace sillwright::sheet
