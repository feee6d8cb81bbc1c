#include "core/refit/told.h"

#include <algorithm>

namespace sillwright {

namespace {

std::string shortName(PieceKind kind) {
  return kind == PieceKind::Bolt ? "bolt" : std::string(tradeName(kind));
}

std::string markOrNumber(const WallLine& wall, Id id) {
  const auto piece = findPiece(wall, id);
  return piece && !markOf(*piece).empty() ? markOf(*piece) : "#" + std::to_string(id.value);
}

std::string barWords(const Bar& bar, LengthStyle style) {
  const BarPlace& place = placeOf(bar);
  const std::string size = "No. " + std::to_string(bar.size);
  return bar.run == BarRun::Upright
             ? size + (bar.found ? " found at " : " at ") + printLength((place.a.s + place.b.s) / 2, style)
             : size + ", " + printLength(std::min(place.a.s, place.b.s), style) + " to " +
                   printLength(std::max(place.a.s, place.b.s), style);
}

} // namespace

std::string faceName(const ConcreteFace& face) {
  const std::string side = face.concrete == Side::Right ? "left" : "right";
  switch (face.kind) {
  case ConcreteFace::Kind::End:
    return side + " end of the concrete";
  case ConcreteFace::Kind::Corner:
    return "corner on the " + side;
  case ConcreteFace::Kind::Step:
    return "step on the " + side;
  }
  return {};
}

std::string namedPiece(const WallLine& wall, Id id) {
  const auto piece = findPiece(wall, id);
  return (piece ? shortName(kindOf(*piece)) : std::string("piece")) + " " + markOrNumber(wall, id);
}

std::string placeOfPiece(const WallLine& wall, Id id, LengthStyle style) {
  if (const Bar* bar = findIn(wall.bars, id))
    return barWords(*bar, style);
  if (const Opening* opening = findIn(wall.openings, id))
    return printLength(opening->from, style) + " to " + printLength(opening->to, style);
  if (const Panel* panel = findIn(wall.panels, id))
    return printLength(panel->from, style) + " to " + printLength(panel->to, style);
  if (const Sill* sill = findIn(wall.sills, id))
    return printLength(sill->from, style) + " to " + printLength(sill->to, style);
  const auto station = stationOf(wall, id);
  const std::string at = station ? "at " + printLength(*station, style) : std::string();
  const Column* column = findIn(wall.columns, id);
  return column ? print(column->makeUp) + " " + at : at;
}

std::optional<PieceKind> Told::kind(std::size_t i) const {
  const auto piece = findPiece(*layout.wall, id(i));
  return piece ? std::optional(kindOf(*piece)) : std::nullopt;
}

std::string Told::mark(std::size_t i) const {
  return markOrNumber(*layout.wall, id(i));
}

std::string Told::name(std::size_t i) const {
  return namedPiece(*layout.wall, id(i));
}

std::string Told::placed(std::size_t i) const {
  const std::string place = placeOfPiece(*layout.wall, id(i), style);
  return place.empty() ? name(i) : name(i) + " (" + place + ")";
}

const SillPiece* Told::sillPiece() const {
  const auto found = std::find_if(layout.sills.begin(), layout.sills.end(), [&](const SillPiece& piece) {
    return piece.sill == id(0) && piece.index == r.sillPiece.value_or(piece.index);
  });
  return found == layout.sills.end() ? nullptr : &*found;
}

std::string Told::sill() const {
  const SillPiece* piece = sillPiece();
  const auto pieces = std::count_if(layout.sills.begin(), layout.sills.end(),
                                    [&](const SillPiece& each) { return each.sill == id(0); });
  if (kind(0) != PieceKind::Sill || !piece || (pieces > 1 && !r.sillPiece))
    return placed(0);
  const std::string part = pieces > 1 ? "piece " + std::to_string(piece->index + 1) + " of " : std::string();
  return part + name(0) + " (" + stretch(piece->box.s) + ")";
}

Id Told::column() const {
  if (const Strap* strap = findIn(layout.wall->straps, id(0)))
    return strap->column;
  const Rod* rod = findIn(layout.wall->rods, id(0));
  return rod ? rod->column : Id{};
}

const ConcreteFace* Told::face() const {
  const auto own = stationOf(*layout.wall, id(0));
  if (!r.at && !own)
    return nullptr;
  const Interval place = r.at ? *r.at : around(*own, 0);
  const auto away = [&](const ConcreteFace& each) { return gap(place, around(each.station, 0)); };
  const auto nearest =
      std::min_element(layout.faces.begin(), layout.faces.end(),
                       [&](const ConcreteFace& a, const ConcreteFace& b) { return away(a) < away(b); });
  return nearest == layout.faces.end() ? nullptr : &*nearest;
}

std::string Told::obstacle() const {
  if (id(1))
    return placed(1);
  return r.at ? "the stud at " + at(r.at->middle()) : std::string("any stud");
}

} // namespace sillwright
