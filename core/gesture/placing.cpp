#include "core/gesture/placing.h"

#include <algorithm>
#include <charconv>
#include <cmath>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/standards/fasteners.h"

namespace sillwright {

namespace {

constexpr double doorWidth = 36, doorHead = 82.5;
constexpr double garageWidth = 192, garageHead = 84;
constexpr double windowWidth = 36, windowSill = 36, windowHead = 80;
constexpr double shortest = 1; // in: no stretch is put down shorter

std::string afterColon(const std::string& key) {
  const auto colon = key.find(':');
  return colon == std::string::npos ? std::string() : key.substr(colon + 1);
}

Id idIn(const std::string& key) {
  const std::string digits = afterColon(key);
  Id id;
  std::from_chars(digits.data(), digits.data() + digits.size(), id.value);
  return id;
}

double roundUp(double value, double step) { return std::ceil(value / step - tolerance::same) * step; }

// Type names on the shelf: the general word where there is one type, else the name without what is said in its note.
std::string titleOf(const std::string& name, const char* general, std::size_t count) {
  if (count == 1)
    return general;
  std::string title = name;
  if (const auto bracket = title.find(" ("); bracket != std::string::npos)
    title.resize(bracket);
  return title;
}

template <class Types> void addTypes(std::vector<ShelfItem>& items, const Types& types, const char* prefix,
                                     const char* general, PieceKind kind) {
  for (const auto& type : types)
    items.push_back({prefix + std::to_string(type.id.value), titleOf(type.name, general, types.size()), kind});
}

// The clear stretch round a station between the walls' ends and the given intervals; nothing where it stands in one.
std::optional<Interval> clearStretch(double length, double station, std::vector<Interval> blocked) {
  Interval stretch{0, length};
  for (const Interval& other : blocked) {
    if (station > other.from && station < other.to)
      return std::nullopt;
    if (other.to <= station)
      stretch.from = std::max(stretch.from, other.to);
    else if (other.from >= station)
      stretch.to = std::min(stretch.to, other.from);
  }
  return stretch.length() >= shortest ? std::optional(stretch) : std::nullopt;
}

std::vector<Interval> doors(const WallLayout& layout) {
  std::vector<Interval> found;
  for (const Opening& opening : layout.wall->openings)
    if (opening.kind != OpeningKind::Window)
      found.push_back({opening.from, opening.to});
  return found;
}

Interval centred(double length, double station, double width) {
  const double wide = std::min(width, length);
  const double from = std::clamp(roundTo(station - wide / 2, tolerance::tapeMark), 0.0, length - wide);
  return {from, from + wide};
}

Result<Piece> newStrap(const Job& job, const WallLayout& layout, Id type, double station, double near) {
  if (!findStrapType(*job.types, type))
    return Problem{"shelf", "there is no such strap"};
  Strap strap;
  strap.type = type;
  strap.station = station;
  strap.column = columnUnder(layout, station, near);
  return Piece{strap};
}

const WasherType* washerFor(const HardwareTypes& types, double diameter) {
  for (const WasherType& washer : types.washers)
    if (!washer.slot && washer.hole >= diameter)
      return &washer;
  return nullptr;
}

// Depth of the bolt across its sill: in the middle, but under a sheathed panel near enough to the edge for the washer,
// and never out of the middle third.
double boltDepth(const WallLayout& layout, const Box3& sill, const WasherType* washer, double station) {
  const double third = sill.d.length() / 3;
  double depth = sill.d.middle();
  for (const Panel& panel : layout.wall->panels) {
    if (!washer || station < panel.from || station > panel.to || panel.sheathing == Sheathing::Both)
      continue;
    constexpr double reach = 0.5; // the washer's edge from the sheathed edge (SDPWS 2021 4.3.6.4.3)
    const double in = third, out = std::max(third, reach + washer->across / 2);
    const double off = std::min(roundTo((in + out) / 2, tolerance::tapeMark), sill.d.length() / 2);
    depth = panel.sheathing == Sheathing::Outside ? sill.d.from + off : sill.d.to - off;
  }
  return depth;
}

double boltProjection(const SillPiece* sill, const WasherType* washer, const BoltType& type) {
  double stack = sill ? sill->box.z.length() : 0;
  stack += washer ? washer->thickness : 0;
  if (const auto hardware = boltHardware(type.diameter))
    stack += hardware->nutThickness + hardware->cutWasherThickness + 2 / hardware->threadsPerInch;
  return roundUp(stack + 0.25, 0.25);
}

Result<Piece> newBolt(const Job& job, const WallLayout& layout, Id id, double station) {
  const BoltType* type = findBoltType(*job.types, id);
  if (!type)
    return Problem{"shelf", "there is no such bolt"};
  const auto piece = sillAt(layout, station);
  const SillPiece* sill = piece ? &layout.sills[*piece] : nullptr;
  const WasherType* washer = washerFor(*job.types, type->diameter);
  Bolt bolt;
  bolt.type = id;
  bolt.station = station;
  bolt.washer = washer ? washer->id : Id{};
  bolt.depth = sill ? boltDepth(layout, sill->box, washer, station) : layout.across.middle();
  bolt.projection = std::min(boltProjection(sill, washer, *type), type->length - 1);
  return Piece{bolt};
}

Result<Piece> newRod(const Job& job, const WallLayout& layout, Id id, double station, double near) {
  const RodType* type = findRodType(*job.types, id);
  if (!type)
    return Problem{"shelf", "there is no such rod"};
  const ColumnBody* nearest = nullptr;
  double away = std::max(near, 6.0);
  for (const ColumnBody& column : layout.columns)
    if (const double off = std::max(0.0, gap(column.box.s, {station, station}));
        off < away && column.role != ColumnRole::Trimmer) {
      away = off;
      nearest = &column;
    }
  if (!nearest)
    return Problem{"rod", "there is no column near: a rod hangs its bracket on one"};
  Rod rod;
  rod.type = id;
  rod.column = nearest->id;
  rod.side = station >= nearest->box.s.middle() ? Side::Right : Side::Left;
  rod.offset = type->bracketOffset;
  rod.depth = nearest->box.d.middle();
  const auto piece = sillAt(layout, station);
  rod.projection = 6 + (piece ? layout.sills[*piece].box.z.length() : 0);
  return Piece{rod};
}

Result<Piece> newColumn(const std::string& key, double station) {
  const auto makeUp = parseMakeUp(afterColon(key));
  if (!makeUp)
    return Problem{"shelf", "there is no such column"};
  Column column;
  column.station = station;
  column.makeUp = *makeUp;
  column.role = key.starts_with("trimmer") ? ColumnRole::Trimmer : makeUp->plies > 1 ? ColumnRole::King : ColumnRole::Post;
  return Piece{column};
}

Result<Piece> newSill(const WallLayout& layout, const std::string& key, double station) {
  std::vector<Interval> blocked = doors(layout);
  for (const Sill& sill : layout.wall->sills)
    blocked.push_back({sill.from, sill.to});
  const auto stretch = clearStretch(layout.length, station, blocked);
  const auto nominal = parseNominal(afterColon(key));
  if (!nominal)
    return Problem{"shelf", "there is no such sill"};
  if (!stretch)
    return Problem{"sill", "there is a sill or an opening already"};
  Sill sill;
  sill.from = stretch->from;
  sill.to = stretch->to;
  sill.nominal = *nominal;
  return Piece{sill};
}

// The marks of its ends as the nearest panel of the wall has them; on a wall without any, the only one of the plan.
void markLikeNearest(Panel& panel, const WallLayout& layout) {
  const auto& others = layout.wall->panels;
  const auto away = [&](const Panel& other) { return gap(Interval{other.from, other.to}, {panel.from, panel.to}); };
  const auto nearest =
      std::min_element(others.begin(), others.end(), [&](const Panel& a, const Panel& b) { return away(a) < away(b); });
  if (nearest != others.end()) {
    panel.leftMark = nearest->leftMark;
    panel.rightMark = nearest->rightMark;
  } else if (layout.marks->size() == 1) {
    panel.leftMark = panel.rightMark = layout.marks->front().mark;
  }
}

Result<Piece> newPanel(const WallLayout& layout, double station) {
  std::vector<Interval> blocked;
  for (const Opening& opening : layout.wall->openings)
    blocked.push_back({opening.from, opening.to});
  for (const Panel& panel : layout.wall->panels)
    blocked.push_back({panel.from, panel.to});
  const auto stretch = clearStretch(layout.length, station, blocked);
  if (!stretch)
    return Problem{"panel", "there is a panel or an opening already"};
  Panel panel;
  panel.from = stretch->from;
  panel.to = stretch->to;
  panel.height = layout.wall->wallHeight;
  markLikeNearest(panel, layout);
  return Piece{panel};
}

Result<Piece> newOpening(const WallLayout& layout, const std::string& key, double station) {
  const std::string kind = afterColon(key);
  Opening opening;
  double width = doorWidth;
  opening.headHeight = doorHead;
  if (kind == "garage door") {
    opening.kind = OpeningKind::GarageDoor;
    width = garageWidth;
    opening.headHeight = garageHead;
  } else if (kind == "window") {
    opening.kind = OpeningKind::Window;
    width = windowWidth;
    opening.sillHeight = windowSill;
    opening.headHeight = windowHead;
  } else if (kind != "door") {
    return Problem{"shelf", "there is no such opening"};
  }
  const Interval s = centred(layout.length, station, width);
  opening.from = s.from;
  opening.to = s.to;
  return Piece{opening};
}

Result<Piece> newBar(const WallLayout& layout, const std::string& key, double station) {
  Bar bar;
  const double middle = layout.across.middle();
  if (afterColon(key) == "along") {
    const double z = pourAt(layout, station) - 4;
    bar.run = BarRun::Along;
    const double end = std::min(2.0, layout.length / 4);
    bar.planned = {{end, middle, z}, {layout.length - end, middle, z}};
  } else {
    bar.planned = {{station, middle, layout.bottom + 3.5}, {station, middle, pourAt(layout, station) - 2}};
  }
  return Piece{bar};
}

Result<Piece> newStep(const WallLayout& layout, double station) {
  const Interval s = centred(layout.length, station, 48);
  PourStep step;
  step.from = s.from;
  step.to = s.to;
  step.height = -8;
  return Piece{step};
}

} // namespace

std::vector<ShelfItem> shelfOf(const Job& job) {
  std::vector<ShelfItem> items;
  addTypes(items, job.types->straps, "strap:", "strap", PieceKind::Strap);
  addTypes(items, job.types->bolts, "bolt:", "bolt", PieceKind::Bolt);
  addTypes(items, job.types->rods, "rod:", "rod", PieceKind::Rod);
  for (const char* makeUp : {"6x6", "4x6", "2-2x6"})
    items.push_back({std::string("column:") + makeUp, makeUp, PieceKind::Column});
  items.push_back({"trimmer:2x6", "trimmer", PieceKind::Column});
  items.push_back({"sill:2x6", "sill 2x", PieceKind::Sill});
  items.push_back({"sill:3x6", "sill 3x", PieceKind::Sill});
  items.push_back({"panel", "panel", PieceKind::Panel});
  items.push_back({"opening:door", "door", PieceKind::Opening});
  items.push_back({"opening:garage door", "garage", PieceKind::Opening});
  items.push_back({"opening:window", "window", PieceKind::Opening});
  items.push_back({"bar:upright", "upright", PieceKind::Bar});
  items.push_back({"bar:along", "along", PieceKind::Bar});
  items.push_back({"step", "step", PieceKind::Step});
  return items;
}

Id columnUnder(const WallLayout& layout, double station, double near) {
  Id best;
  double least = near;
  bool bestIsTrimmer = true;
  for (const ColumnBody& column : layout.columns) {
    const double away = std::max(0.0, gap(column.box.s, {station, station}));
    const bool trimmer = column.role == ColumnRole::Trimmer;
    const bool better = away < least - tolerance::same || (away <= least && bestIsTrimmer && !trimmer);
    if (away <= near && (better || !best)) {
      best = column.id;
      least = away;
      bestIsTrimmer = trimmer;
    }
  }
  return best;
}

Result<Piece> newPiece(const Job& job, const WallLayout& layout, const std::string& key, double station, double near) {
  const double at = std::clamp(station, 0.0, layout.length);
  if (key.starts_with("strap:"))
    return newStrap(job, layout, idIn(key), at, near);
  if (key.starts_with("bolt:"))
    return newBolt(job, layout, idIn(key), at);
  if (key.starts_with("rod:"))
    return newRod(job, layout, idIn(key), at, near);
  if (key.starts_with("column:") || key.starts_with("trimmer:"))
    return newColumn(key, at);
  if (key.starts_with("sill:"))
    return newSill(layout, key, at);
  if (key == "panel")
    return newPanel(layout, at);
  if (key.starts_with("opening:"))
    return newOpening(layout, key, at);
  if (key.starts_with("bar:"))
    return newBar(layout, key, at);
  if (key == "step")
    return newStep(layout, at);
  return Problem{"shelf", "there is no such piece"};
}

} // namespace sillwright
