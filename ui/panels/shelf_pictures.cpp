#include "ui/panels/shelf_pictures.h"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace sillwright {

namespace {

constexpr double castScale = 2.7;    // px an inch
constexpr double framingScale = 3.6;
constexpr double castUp = 22;        // in above and below the pour line
constexpr double castDown = 16;

std::string afterColon(const std::string& key) { return key.substr(std::min(key.find(':') + 1, key.size())); }

Id typeOf(const ShelfItem& item) {
  return Id{static_cast<std::uint32_t>(std::strtoul(afterColon(item.key).c_str(), nullptr, 10))};
}

// ---- what is cast in --------------------------------------------------------------------------------------------

void drawPour(Drawing& drawing, double width, double pour) {
  drawing.fillRect(0, pour, width, pour + castDown * castScale, Ink::Concrete);
  drawing.fillRect(0, pour, width, pour + 6, Ink::Blade);
  drawing.line({0, pour}, {width, pour}, Ink::BladeEdge, 1.4);
  for (int i = 0; i * 10.25 < width; ++i)
    drawing.line({i * 10.25, pour}, {i * 10.25, pour + (i % 2 == 0 ? 6 : 3.6)}, Ink::BladeInk, 0.9);
}

void drawStrap(Drawing& drawing, const StrapType& type, double x, double pour) {
  const double k = castScale, half = type.plateWidth * k / 2;
  const double top = pour - std::min(type.exposedLength, castUp) * k;
  std::vector<Point2> bent;
  for (const ProfilePoint& p : type.profile) // seen from the side below, from the front above
    bent.push_back({x + p.d * k, pour - std::max(p.z, -castDown + 1) * k});
  if (bent.size() > 1)
    drawing.polyline(bent, Ink::Steel, 2);
  drawing.fillRect(x - half, top, x + half, pour, Ink::Steel);
  std::vector<Point2> nails;
  for (const NailAt& nail : nailsOf(type.nails))
    if (pour - nail.height * k > top + 2)
      nails.push_back({x + nail.offset * k, pour - nail.height * k});
  drawing.discs(nails, 0.7, Ink::Panel);
}

void drawBolt(Drawing& drawing, const BoltType& type, double x, double pour) {
  const double k = castScale, up = 4;
  const double down = std::clamp(type.length - up, 3.0, castDown - 1);
  const std::array<Point2, 3> bent{Point2{x, pour - up * k}, Point2{x, pour + down * k},
                                   Point2{x + std::max(type.hookLeg, 0.0) * k, pour + down * k}};
  drawing.polyline(std::span(bent).first(type.end == BoltEnd::Headed ? 2u : 3u), Ink::Steel, 2);
  if (type.end == BoltEnd::Headed)
    drawing.fillRect(x - type.headWidth / 2 * k, pour + down * k, x + type.headWidth / 2 * k,
                     pour + (down + type.headThickness) * k, Ink::Steel);
}

void drawRod(Drawing& drawing, const RodType& type, double x, double pour) {
  const double k = castScale, up = 9, down = std::clamp(type.embedment, 4.0, castDown - 2);
  drawing.line({x, pour - up * k}, {x, pour + down * k}, Ink::Steel, 2);
  for (int i = 0; i < 6; ++i)
    drawing.line({x - 2, pour - up * k + i * 2.2}, {x + 2, pour - up * k + i * 2.2 - 1}, Ink::Steel, 0.8);
  const double half = std::max(type.footWidth, 1.5) / 2 * k;
  drawing.fillRect(x - half, pour + (down - 0.6) * k, x + half, pour + (down + 0.6) * k, Ink::Steel);
}

// ---- framing ----------------------------------------------------------------------------------------------------

void box(Drawing& drawing, double x0, double y0, double x1, double y1, Ink ground, double weight = 1) {
  drawing.fillRect(x0, y0, x1, y1, ground);
  drawing.rect(x0, y0, x1, y1, Ink::WoodLine, weight);
}

void drawColumn(Drawing& drawing, const ShelfItem& item, double width) {
  const double sill = 66, k = framingScale, x = width / 2;
  const MakeUp makeUp = parseMakeUp(item.title).value_or(parseMakeUp(afterColon(item.key)).value_or(MakeUp{1, {2, 6}}));
  const double half = alongWall(makeUp) * k / 2;
  box(drawing, x - half, 1, x + half, sill, Ink::Wood);
  for (int ply = 1; ply < makeUp.plies; ++ply) {
    const double seam = x - half + 2 * half * ply / makeUp.plies;
    drawing.line({seam, 1}, {seam, sill}, Ink::WoodLine, 0.9);
  }
  drawing.fillRect(0, sill, width, sill + 2.5 * k, Ink::Wood);
  drawing.line({0, sill}, {width, sill}, Ink::WoodLine, 1);
  drawing.line({0, sill + 2.5 * k}, {width, sill + 2.5 * k}, Ink::WoodLine, 1);
}

void drawSill(Drawing& drawing, const ShelfItem& item, double x, double foot) {
  const bool thick = item.key.find("3x") != std::string::npos || item.title.find("3x") != std::string::npos;
  const double height = (thick ? 2.5 : 1.5) * framingScale;
  box(drawing, x - 22, foot - 14 - height, x + 22, foot - 14, Ink::Wood);
}

void drawPanel(Drawing& drawing, double x, double foot) {
  box(drawing, x - 13, foot - 44, x + 13, foot, Ink::Wood2);
  for (int i = 0; i < 6; ++i)
    for (const double side : {-9.5, 9.5})
      drawing.disc({x + side, foot - 40 + i * 7.2}, 0.9, Ink::WoodLine);
}

void drawOpening(Drawing& drawing, const ShelfItem& item, double x, double foot) {
  if (item.key.find("window") != std::string::npos) {
    drawing.rect(x - 15, foot - 38, x + 15, foot - 20, Ink::WoodLine, 1.2);
    box(drawing, x - 17, foot - 44, x + 17, foot - 38, Ink::Wood);
    box(drawing, x - 17, foot - 20, x + 17, foot - 16.5, Ink::Wood);
    return;
  }
  const double half = item.key.find("garage") != std::string::npos ? 22 : 13;
  const std::array<Point2, 4> jambs{Point2{x - half, foot}, Point2{x - half, foot - 42}, Point2{x + half, foot - 42},
                                    Point2{x + half, foot}};
  drawing.polyline(jambs, Ink::WoodLine, 1.2);
  box(drawing, x - half - 2, foot - 44, x + half + 2, foot - 38, Ink::Wood);
}

void drawBar(Drawing& drawing, const ShelfItem& item, double x, double foot) {
  if (item.key.find("along") != std::string::npos) {
    drawing.fillRect(x - 22, foot - 24, x + 22, foot - 20.8, Ink::BarFill);
    drawing.rect(x - 22, foot - 24, x + 22, foot - 20.8, Ink::Bar, 0.8);
  } else {
    drawing.fillRect(x - 1.6, foot - 46, x + 1.6, foot, Ink::BarFill);
    drawing.rect(x - 1.6, foot - 46, x + 1.6, foot, Ink::Bar, 0.8);
  }
}

// The pour line steps down between two boards.
void drawStep(Drawing& drawing, double x, double foot) {
  const std::array<Point2, 8> edge{Point2{x - 24, foot - 26}, Point2{x - 10, foot - 26}, Point2{x - 10, foot - 14},
                                   Point2{x + 10, foot - 14}, Point2{x + 10, foot - 26}, Point2{x + 24, foot - 26},
                                   Point2{x + 24, foot},      Point2{x - 24, foot}};
  drawing.fill(edge, Ink::Concrete);
  drawing.polyline(std::span(edge).first(6), Ink::ConcreteLine, 1.4);
}

void drawShot(Drawing& drawing, double x, double foot) {
  drawing.line({x - 16, foot - 16}, {x + 16, foot - 16}, Ink::Text, 1.2);
  const std::array<Point2, 3> mark{Point2{x - 6, foot - 28}, Point2{x + 6, foot - 28}, Point2{x, foot - 16}};
  drawing.loop(mark, Ink::Text, 1.2);
}

// A wall on its concrete with what the starter puts into it; the rectangle as seen in plan.
void drawStarter(Drawing& drawing, const std::string& key, double x, double foot) {
  constexpr double half = 36, pier = 9, plate = 34, concrete = 10;
  if (key == "rectangle") {
    drawing.rect(x - 28, foot - 42, x + 28, foot - 2, Ink::ConcreteLine, 1.4);
    drawing.rect(x - 24, foot - 38, x + 24, foot - 6, Ink::ConcreteLine, 1);
    return;
  }
  const double pour = foot - concrete;
  drawing.fillRect(x - half, pour, x + half, foot, Ink::Concrete);
  drawing.line({x - half, pour}, {x + half, pour}, Ink::ConcreteLine, 1.4);
  drawing.fillRect(x - half, pour - plate, x + half, pour, Ink::Wood2);
  const auto opening = [&](double from, double to, double top, double bottom) {
    drawing.fillRect(from, pour - top, to, pour - bottom, Ink::Field);
    drawing.rect(from, pour - top, to, pour - bottom, Ink::WoodLine, 1);
  };
  if (key == "two-piers") {
    opening(x - half + pier, x + half - pier, plate - 7, 0);
  } else if (key == "door") {
    opening(x - 9, x + 9, plate - 7, 0);
  } else {
    opening(x - 26, x - 8, plate - 7, 13);
    opening(x + 8, x + 26, plate - 7, 13);
  }
  drawing.rect(x - half, pour - plate, x + half, pour, Ink::WoodLine, 1.2);
}

} // namespace

ShelfRow shelfRowOf(const ShelfItem& item) {
  if (!item.kind)
    return ShelfRow::Starters;
  switch (*item.kind) {
  case PieceKind::Strap:
  case PieceKind::Bolt:
  case PieceKind::Rod: return ShelfRow::CastIn;
  case PieceKind::Column: return ShelfRow::Columns;
  case PieceKind::Bar: return ShelfRow::Steel;
  default: return ShelfRow::Framing;
  }
}

double pictureHeight(ShelfRow row) {
  switch (row) {
  case ShelfRow::CastIn: return (castUp + castDown) * castScale;
  case ShelfRow::Columns: return 66 + 2.5 * framingScale + 1;
  case ShelfRow::Framing:
  case ShelfRow::Steel:
  case ShelfRow::Starters:
    return 48;
  }
  return 48;
}

Drawing shelfPicture(const ShelfItem& item, const HardwareTypes& types, double width) {
  Drawing drawing;
  const double x = width / 2, pour = castUp * castScale, foot = pictureHeight(ShelfRow::Framing) - 2;
  if (!item.kind) {
    drawStarter(drawing, afterColon(item.key), x, foot);
    return drawing;
  }
  if (shelfRowOf(item) == ShelfRow::CastIn)
    drawPour(drawing, width, pour);
  switch (*item.kind) {
  case PieceKind::Strap:
    if (const StrapType* type = findStrapType(types, typeOf(item)))
      drawStrap(drawing, *type, x - 6, pour);
    break;
  case PieceKind::Bolt:
    if (const BoltType* type = findBoltType(types, typeOf(item)))
      drawBolt(drawing, *type, x, pour);
    break;
  case PieceKind::Rod:
    if (const RodType* type = findRodType(types, typeOf(item)))
      drawRod(drawing, *type, x, pour);
    break;
  case PieceKind::Column: drawColumn(drawing, item, width); break;
  case PieceKind::Sill: drawSill(drawing, item, x, foot); break;
  case PieceKind::Panel: drawPanel(drawing, x, foot); break;
  case PieceKind::Opening: drawOpening(drawing, item, x, foot); break;
  case PieceKind::Bar: drawBar(drawing, item, x, foot); break;
  case PieceKind::Step: drawStep(drawing, x, foot); break;
  case PieceKind::Shot: drawShot(drawing, x, foot); break;
  }
  return drawing;
}

} // namespace sillwright
