#include "core/model/layout.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/base/tolerance.h"
#include "core/geometry/clearance.h"
#include "core/model/lookup.h"
#include "core/standards/bars.h"
#include "core/standards/fasteners.h"

namespace sillwright {

namespace {

constexpr double platesHeight = 2 * dressedTwo; // two plates on top of the studs

// How far the concrete of the neighbour goes on past an inside corner, along this wall.
double beyond(const std::optional<Neighbour>& neighbour) {
  if (!neighbour || !neighbour->insideCorner)
    return 0;
  const double sine = std::sin(std::abs(neighbour->turn) * std::numbers::pi / 180.0);
  return sine < 0.1 ? 0 : neighbour->thickness / sine;
}

// Stations where the height of the pour line may change, with the height between them; overlapping steps: the lowest.
std::vector<PourRun> pourRuns(const WallLine& wall, double length) {
  std::vector<double> cuts{0, length};
  for (const PourStep& step : wall.steps)
    for (const double s : {step.from, step.to})
      if (s > tolerance::same && s < length - tolerance::same)
        cuts.push_back(s);
  std::sort(cuts.begin(), cuts.end());
  std::vector<PourRun> runs;
  for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
    if (cuts[i + 1] - cuts[i] < tolerance::same)
      continue;
    const double middle = (cuts[i] + cuts[i + 1]) / 2;
    double height = 0;
    bool stepped = false;
    for (const PourStep& step : wall.steps)
      if (middle > step.from && middle < step.to) {
        height = stepped ? std::min(height, step.height) : step.height;
        stepped = true;
      }
    if (!runs.empty() && std::abs(runs.back().height - height) < tolerance::same)
      runs.back().s.to = cuts[i + 1];
    else
      runs.push_back({{cuts[i], cuts[i + 1]}, height});
  }
  if (runs.empty())
    runs.push_back({{0, length}, 0});
  return runs;
}

std::vector<ConcreteFace> stemEnds(const WallLayout& layout, Side end) {
  const double pour = end == Side::Left ? layout.pour.front().height : layout.pour.back().height;
  const double foot = layout.wall->footing.width > 0 ? layout.stemBottom : layout.bottom;
  return endFaces(layout.place, layout.corners, end, {foot, pour}, 0);
}

std::vector<ConcreteFace> facesOf(const WallLayout& layout) {
  std::vector<ConcreteFace> faces = stemEnds(layout, Side::Left);
  for (std::size_t i = 0; i + 1 < layout.pour.size(); ++i) {
    const double left = layout.pour[i].height;
    const double right = layout.pour[i + 1].height;
    const double at = layout.pour[i].s.to;
    Id step;
    for (const PourStep& each : layout.wall->steps)
      if (std::abs(each.from - at) < tolerance::same || std::abs(each.to - at) < tolerance::same)
        step = each.id;
    faces.push_back({ConcreteFace::Kind::Step, at, {std::min(left, right), std::max(left, right)},
                     left > right ? Side::Left : Side::Right, step});
  }
  const std::vector<ConcreteFace> ends = stemEnds(layout, Side::Right);
  faces.insert(faces.end(), ends.begin(), ends.end());
  return faces;
}

// The footing's ends, and how far it reaches along the outside face.
void layOutFooting(WallLayout& layout) {
  const Footing& footing = layout.wall->footing;
  layout.footingAcross =
      footing.width > 0 ? Interval{-footing.projection, footing.width - footing.projection} : Interval{0, -1};
  layout.footingAlong = layout.concrete;
  if (footing.width <= 0)
    return;
  for (const Side end : {Side::Left, Side::Right})
    for (const ConcreteFace& face :
         endFaces(layout.place, layout.corners, end, {layout.bottom, layout.stemBottom}, footing.projection)) {
      layout.footingEnds.push_back(face);
      layout.footingAlong = hull(layout.footingAlong, {face.station, face.station});
    }
}

bool cutsSill(const Opening& opening) { return opening.kind != OpeningKind::Window; }

void addSillPieces(const Sill& sill, const WallLayout& layout, std::vector<SillPiece>& pieces) {
  const WallLine& wall = *layout.wall;
  std::vector<Interval> parts{{sill.from, sill.to}};
  for (const Opening& opening : wall.openings) {
    if (!cutsSill(opening))
      continue;
    std::vector<Interval> left;
    for (const Interval part : parts) {
      if (part.from < opening.from && std::min(part.to, opening.from) > part.from)
        left.push_back({part.from, std::min(part.to, opening.from)});
      if (part.to > opening.to && std::max(part.from, opening.to) < part.to)
        left.push_back({std::max(part.from, opening.to), part.to});
    }
    parts = left;
  }
  std::vector<Interval> spliced;
  for (const Interval part : parts) {
    double from = part.from;
    for (const double splice : sill.splices)
      if (splice > from + tolerance::same && splice < part.to - tolerance::same) {
        spliced.push_back({from, splice});
        from = splice;
      }
    spliced.push_back({from, part.to});
  }
  int index = 0;
  const Interval across{wall.sillInset, wall.sillInset + dressedWidth(sill.nominal)};
  for (const Interval part : spliced) {
    const double pour = pourAt(layout, part.middle());
    pieces.push_back(
        {sill.id, index++, {part, across, {pour, pour + dressedThickness(sill.nominal)}}, sill.nominal});
  }
}

double sillTopAt(const WallLayout& layout, double station) {
  const auto piece = sillAt(layout, station);
  return piece ? layout.sills[*piece].box.z.to : pourAt(layout, station);
}

ColumnBody columnBody(const Column& column, const WallLayout& layout) {
  const WallLine& wall = *layout.wall;
  ColumnBody body;
  body.id = column.id;
  body.role = column.role;
  body.makeUp = column.makeUp;
  body.box.s = around(column.station, alongWall(column.makeUp));
  body.box.d = {wall.sillInset, wall.sillInset + acrossWall(column.makeUp)};
  double top = wall.wallHeight - platesHeight;
  if (column.role == ColumnRole::Trimmer)
    for (const Opening& opening : wall.openings)
      if (std::abs(gap(body.box.s, {opening.from, opening.to})) < 1.0)
        top = std::min(top, opening.headHeight);
  body.box.z = {sillTopAt(layout, column.station), top};
  const double ply = dressedThickness(column.makeUp.nominal);
  for (int i = 1; i < column.makeUp.plies; ++i)
    body.seams.push_back(body.box.s.from + i * ply);
  return body;
}

// Studs at the layout marks, but not in a column's place, nor in an opening (under a window a short one).
std::vector<StudBody> studBodies(const WallLayout& layout) {
  std::vector<StudBody> studs;
  const WallLine& wall = *layout.wall;
  if (!wall.studs || wall.studs->spacing <= 0)
    return studs;
  const StudLayout& marks = *wall.studs;
  const double thickness = dressedThickness(marks.nominal);
  for (double from = marks.first; from <= layout.length; from += marks.spacing) {
    const double station = marks.from == Side::Left ? from : layout.length - from;
    StudBody stud;
    stud.box.s = around(station, thickness);
    stud.box.d = {wall.sillInset, wall.sillInset + dressedWidth(marks.nominal)};
    stud.box.z = {sillTopAt(layout, station), wall.wallHeight - platesHeight};
    const auto meets = [&](Interval other) { return gap(stud.box.s, other) < -tolerance::same; };
    bool stands = sillAt(layout, station).has_value();
    for (const ColumnBody& column : layout.columns)
      stands = stands && !meets(column.box.s);
    for (const Opening& opening : wall.openings) {
      if (!meets({opening.from, opening.to}))
        continue;
      if (opening.kind == OpeningKind::Window)
        stud.box.z.to = std::min(stud.box.z.to, opening.sillHeight - dressedTwo);
      else
        stands = false;
    }
    if (stands)
      studs.push_back(stud);
  }
  std::sort(studs.begin(), studs.end(),
            [](const StudBody& a, const StudBody& b) { return a.box.s.from < b.box.s.from; });
  return studs;
}

double leanOf(const WallLine& wall, Id piece) {
  for (const Reading& reading : wall.readings)
    if (reading.piece == piece && reading.plumb && reading.gauge > 0)
      return *reading.plumb / reading.gauge;
  return 0;
}

StrapBody strapBody(const Strap& strap, const StrapType& type, const WallLayout& layout) {
  StrapBody body;
  body.id = strap.id;
  body.strap = &strap;
  body.type = &type;
  body.joint = pourAt(layout, strap.station) + strap.heightOffset;
  body.lean = leanOf(*layout.wall, strap.id);
  const Interval along = around(strap.station, type.plateWidth);
  const double outside = type.profile.empty() ? 0.0 : type.profile.front().d - type.plateThickness / 2;
  body.plate = {along, {outside, outside + type.plateThickness}, {body.joint, body.joint + type.exposedLength}};
  body.embedded = {strap.station, type.plateWidth, type.plateThickness, type.profile};
  body.depthOfHook = {body.joint, body.joint};
  for (ProfilePoint& p : body.embedded.profile) {
    p.z += body.joint;
    body.depthOfHook.from = std::min(body.depthOfHook.from, p.z);
  }
  body.embeddedBox = bounds(body.embedded);
  for (const NailAt& nail : nailsOf(type.nails))
    body.nails.push_back({strap.station + nail.offset, body.joint + nail.height});
  for (std::size_t i = 0; i < layout.columns.size(); ++i)
    if (layout.columns[i].id == strap.column)
      body.column = i;
  return body;
}

Point3 hookStep(HookDirection direction, double by) {
  switch (direction) {
  case HookDirection::Inward:
    return {0, by, 0};
  case HookDirection::Outward:
    return {0, -by, 0};
  case HookDirection::Left:
    return {-by, 0, 0};
  case HookDirection::Right:
    return {by, 0, 0};
  }
  return {};
}

Box3 steelBox(const AnchorBody& body) {
  Box3 all = bounds(body.shank);
  for (const Capsule& part : body.foot) {
    const Box3 box = bounds(part);
    all = {hull(all.s, box.s), hull(all.d, box.d), hull(all.z, box.z)};
  }
  return all;
}

// Where the anchor bears on wood or concrete: its sill piece, and the washer lying on it.
void addStack(AnchorBody& body, const WallLayout& layout) {
  body.steelBox = steelBox(body);
  body.sillPiece = sillAt(layout, body.station);
  if (!body.washer)
    return;
  const double on = body.sillPiece ? layout.sills[*body.sillPiece].box.z.to : body.pour;
  const double shift = body.bolt ? body.bolt->washerShift : 0;
  const bool alongWall = body.washer->slot && body.washer->slot->direction == SlotDirection::Along;
  body.washerBox = Box3{around(body.station + (alongWall ? shift : 0), body.washer->along),
                        around(body.depth + (alongWall ? 0 : shift), body.washer->across),
                        {on, on + body.washer->thickness}};
}

AnchorBody boltBody(const Bolt& bolt, const BoltType& type, const WallLayout& layout) {
  AnchorBody body;
  body.id = bolt.id;
  body.bolt = &bolt;
  body.boltType = &type;
  body.station = bolt.station;
  body.depth = bolt.depth;
  body.diameter = type.diameter;
  body.pour = pourAt(layout, bolt.station);
  body.top = body.pour + bolt.projection;
  body.bottom = body.top - type.length;
  body.embedment = body.pour - body.bottom;
  const double r = type.diameter / 2;
  // Flat ends are drawn in by the radius, so that the rounded ends of the capsules do not reach past the steel.
  const Point3 foot{bolt.station, bolt.depth, body.bottom + r};
  body.shank = {foot, {bolt.station, bolt.depth, body.top - r}, r};
  if (type.end == BoltEnd::Headed) {
    const double half = std::max(0.0, type.headWidth / 2 - type.headThickness / 2);
    const double z = body.bottom + type.headThickness / 2;
    body.foot.push_back({{bolt.station - half, bolt.depth, z}, {bolt.station + half, bolt.depth, z},
                         type.headThickness / 2});
    body.foot.push_back({{bolt.station, bolt.depth - half, z}, {bolt.station, bolt.depth + half, z},
                         type.headThickness / 2});
  } else {
    const Point3 step = hookStep(bolt.hook, std::max(0.0, type.hookLeg - r));
    const Point3 tip{foot.s + step.s, foot.d + step.d, foot.z + step.z};
    body.foot.push_back({foot, tip, r});
    if (type.end == BoltEnd::J && type.hookReturn > 0)
      body.foot.push_back({tip, {tip.s, tip.d, tip.z + std::max(0.0, type.hookReturn - r)}, r});
  }
  body.washer = findWasherType(*layout.types, bolt.washer);
  addStack(body, layout);
  return body;
}

std::optional<AnchorBody> rodBody(const Rod& rod, const RodType& type, const WallLayout& layout) {
  const auto station = stationOf(*layout.wall, rod.id);
  if (!station)
    return std::nullopt;
  AnchorBody body;
  body.id = rod.id;
  body.isRod = true;
  body.rod = &rod;
  body.rodType = &type;
  body.station = *station;
  body.depth = rod.depth;
  body.diameter = type.diameter;
  body.pour = pourAt(layout, *station);
  body.top = body.pour + rod.projection;
  body.embedment = type.embedment;
  body.lean = leanOf(*layout.wall, rod.id);
  body.bottom = body.pour - type.embedment - type.footThickness;
  const double r = type.diameter / 2;
  body.shank = {{*station, rod.depth, body.bottom + r}, {*station, rod.depth, body.top - r}, r};
  const double half = std::max(0.0, type.footWidth / 2 - type.footThickness / 2);
  const double z = body.bottom + type.footThickness / 2;
  body.foot.push_back({{*station - half, rod.depth, z}, {*station + half, rod.depth, z}, type.footThickness / 2});
  body.foot.push_back({{*station, rod.depth - half, z}, {*station, rod.depth + half, z}, type.footThickness / 2});
  body.washer = findWasherType(*layout.types, type.washer);
  addStack(body, layout);
  return body;
}

BarBody barBody(const Bar& bar) {
  const auto size = barSize(bar.size);
  const double radius = (size ? size->diameter : bar.size / 8.0) / 2;
  const BarPlace& place = placeOf(bar);
  const Capsule body{place.a, place.b, radius};
  return {bar.id, &bar, body, bar.found.has_value(), bounds(body)};
}

} // namespace

WallLayout layOut(const Job& job, const std::shared_ptr<const WallLine>& wall) {
  return layOut(wall, job.types.pointer(), job.limits.pointer(), job.marks.pointer(), placeOf(job, *wall));
}

WallLayout layOut(std::shared_ptr<const WallLine> wall, std::shared_ptr<const HardwareTypes> types,
                  std::shared_ptr<const JobLimits> limits, std::shared_ptr<const std::vector<WallEndMark>> marks,
                  const WallPlace& place) {
  WallLayout layout;
  layout.wall = std::move(wall);
  layout.types = std::move(types);
  layout.limits = std::move(limits);
  layout.marks = std::move(marks);
  layout.place = place;
  const WallLine& line = *layout.wall;
  layout.length = place.length;
  layout.concrete = {-beyond(place.atStart), place.length + beyond(place.atEnd)};
  layout.across = {0, line.thickness};
  layout.stemBottom = -line.stemHeight;
  layout.bottom = layout.stemBottom - line.footing.depth;
  layout.corners = cornerConcrete(place);
  layOutFooting(layout);
  layout.pour = pourRuns(line, layout.length);
  layout.faces = facesOf(layout);
  for (const Sill& sill : line.sills)
    addSillPieces(sill, layout, layout.sills);
  std::sort(layout.sills.begin(), layout.sills.end(),
            [](const SillPiece& a, const SillPiece& b) { return a.box.s.from < b.box.s.from; });
  for (const Column& column : line.columns)
    layout.columns.push_back(columnBody(column, layout));
  layout.studs = studBodies(layout);
  for (const Strap& strap : line.straps)
    if (const StrapType* type = findStrapType(*layout.types, strap.type))
      layout.straps.push_back(strapBody(strap, *type, layout));
  for (const Bolt& bolt : line.bolts)
    if (const BoltType* type = findBoltType(*layout.types, bolt.type))
      layout.anchors.push_back(boltBody(bolt, *type, layout));
  for (const Rod& rod : line.rods)
    if (const RodType* type = findRodType(*layout.types, rod.type))
      if (auto body = rodBody(rod, *type, layout))
        layout.anchors.push_back(std::move(*body));
  for (const Bar& bar : line.bars)
    layout.bars.push_back(barBody(bar));
  return layout;
}

double pourAt(const WallLayout& layout, double station) {
  double height = station < 0 ? layout.pour.front().height : layout.pour.back().height;
  bool found = false;
  for (const PourRun& run : layout.pour)
    if (station >= run.s.from - tolerance::same && station <= run.s.to + tolerance::same) {
      height = found ? std::max(height, run.height) : run.height;
      found = true;
    }
  return height;
}

std::optional<std::size_t> sillAt(const WallLayout& layout, double station) {
  for (std::size_t i = 0; i < layout.sills.size(); ++i) {
    const Interval s = layout.sills[i].box.s;
    if (station >= s.from - tolerance::same && station <= s.to + tolerance::same)
      return i;
  }
  return std::nullopt;
}

} // namespace sillwright
