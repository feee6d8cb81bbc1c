// What a refit proposes: ghosts where pieces would stand, an arrow with the amount for each that moves, a plus for each
// that is added, a stroke through each that is taken out.
#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "core/base/tolerance.h"
#include "core/drawing/elevation_parts.h"
#include "core/drawing/text_metrics.h"

namespace sillwright::elevation {

namespace {

constexpr double tagSize = 11; // of its letters, pt
constexpr double tagHigh = 16; // pt
constexpr double tagStep = 19; // from one row of tags to the next, pt
constexpr double arrowLong = 13;
constexpr int mostRows = 12;

// One change as it is told on the drawing.
struct Told {
  const Change& change;
  bool current;
  std::optional<Stand> before;
  std::optional<Stand> after;
  double x = 0;   // of the piece where it goes, or of one that is taken out where it is; page
  double top = 0; // its upper edge, page
};

// ---- ghosts ---------------------------------------------------------------------------------------------------------

void outline(Scene& scene, const Bounds& box, bool current) {
  const Bounds b = scene.within(box);
  if (b.empty())
    return;
  if (current)
    scene.drawing.fillRect(b.x0, b.y0, b.x1, b.y1, Ink::HandSoft, 0.6);
  scene.drawing.dashedRect(b.x0, b.y0, b.x1, b.y1, 5, 3, Ink::Hand, current ? 1.6 : 1.1);
}

Bounds wideEnough(const Bounds& box) {
  const double more = std::max(0.0, 5 - (box.x1 - box.x0)) / 2;
  return {box.x0 - more, box.y0, box.x1 + more, box.y1};
}

double ghostOf(Scene& scene, const StrapBody& strap, bool current) {
  const Bounds above = scene.box(strap.plate.s, strap.plate.z);
  outline(scene, above, current);
  outline(scene, scene.box(strap.plate.s, {strap.depthOfHook.from, strap.joint}), current);
  return above.y0;
}

double ghostOf(Scene& scene, const AnchorBody& anchor, bool current) {
  const Bounds shank = wideEnough(scene.box(around(anchor.station, anchor.diameter), {anchor.bottom, anchor.top}));
  outline(scene, shank, current);
  if (anchor.washerBox) {
    const Bounds plate = scene.box(anchor.washerBox->s, anchor.washerBox->z);
    const Point2 line[] = {{plate.x0, plate.y0}, {plate.x1, plate.y0}};
    scene.drawing.dashed(line, 5, 3, Ink::Hand, 1.6);
  }
  return shank.y0;
}

double ghostOf(Scene& scene, const ColumnBody& column, bool current) {
  const Bounds box = scene.box(column.box.s, column.box.z);
  outline(scene, box, current);
  return box.y0;
}

// The body of a piece in a wall: added ones have no id yet and are known by their station.
template <class Bodies, class StationOf>
auto* bodyIn(const Bodies& bodies, Id id, double station, StationOf&& stationOfBody) {
  const auto at = std::find_if(bodies.begin(), bodies.end(), [&](const auto& body) {
    return body.id == id && (id || std::abs(stationOfBody(body) - station) < tolerance::same);
  });
  return at == bodies.end() ? nullptr : &*at;
}

// The upper edge of a piece on the page; draws its ghost where asked. Nothing for what has no body.
std::optional<double> bodyTop(Scene& scene, const WallLayout& wall, const Piece& piece, double station, bool ghost,
                              bool current) {
  const Id id = idOf(piece);
  switch (kindOf(piece)) {
  case PieceKind::Strap:
    if (const auto* strap = bodyIn(wall.straps, id, station, [](const StrapBody& b) { return b.strap->station; }))
      return ghost ? ghostOf(scene, *strap, current) : scene.y(strap->plate.z.to);
    return std::nullopt;
  case PieceKind::Bolt:
  case PieceKind::Rod:
    if (const auto* anchor = bodyIn(wall.anchors, id, station, [](const AnchorBody& b) { return b.station; }))
      return ghost ? ghostOf(scene, *anchor, current) : scene.y(anchor->top);
    return std::nullopt;
  case PieceKind::Column:
    if (const auto* column = bodyIn(wall.columns, id, station, [](const ColumnBody& b) { return b.box.s.middle(); }))
      return ghost ? ghostOf(scene, *column, current) : scene.y(column->box.z.to);
    return std::nullopt;
  default:
    return std::nullopt;
  }
}

// ---- on the drawing itself ------------------------------------------------------------------------------------------

void head(Scene& scene, Point2 tip, double toRight) {
  const Point2 triangle[] = {tip, {tip.x - 6 * toRight, tip.y - 3.4}, {tip.x - 6 * toRight, tip.y + 3.4}};
  scene.drawing.fill(triangle, Ink::Hand);
}

void arrow(Scene& scene, double from, double to, double y) {
  const double toRight = to > from ? 1 : -1;
  scene.drawing.line({from, y}, {to - 5 * toRight, y}, Ink::Hand, 1.6);
  head(scene, {to, y}, toRight);
}

// From middle to middle, where that is long enough to be seen.
void arrowOnWall(Scene& scene, const Told& told) {
  if (!told.before || !told.after)
    return;
  const double from = scene.x(told.before->station), y = std::max(told.top, scene.frame.y0) + 7;
  if (std::abs(told.x - from) > 9 && scene.frame.contains(Point2{told.x, y}) && scene.frame.contains(Point2{from, y}))
    arrow(scene, from, told.x, y);
}

void strike(Scene& scene, Id piece) {
  for (const Seen& seen : scene.pieces)
    if (seen.id == piece) {
      const Bounds box = scene.box(seen.s, seen.z);
      const double half = std::max(8.0, (box.x1 - box.x0) / 2 + 4), x = (box.x0 + box.x1) / 2;
      const Bounds b = scene.within({x - half, box.y0 - 2, x + half, box.y1 + 2});
      scene.drawing.line({b.x0, b.y1}, {b.x1, b.y0}, Ink::Paper, 4.4);
      scene.drawing.line({b.x0, b.y1}, {b.x1, b.y0}, Ink::Hand, 2.2);
    }
}

// ---- tags -----------------------------------------------------------------------------------------------------------

enum class Sign { None, Left, Right, Plus };

struct Tag {
  std::string mark; // before the sign
  Sign sign = Sign::None;
  std::string words; // after it

  double width() const {
    return 12 + textWidth(mark, tagSize) + (mark.empty() || sign == Sign::None ? 0 : 5) +
           (sign == Sign::None ? 0 : arrowLong) + (words.empty() ? 0 : 5 + textWidth(words, tagSize));
  }
};

Tag tagOf(const Scene& scene, const Told& told) {
  const LengthStyle units = scene.input.job->units;
  Tag tag;
  if (!told.before) {
    tag.sign = Sign::Plus;
    const bool bolt = kindOf(told.change) == PieceKind::Bolt;
    tag.words =
        std::string(bolt ? "bolt" : tradeName(kindOf(told.change))) + " at " + printLength(told.after->station, units);
    return tag;
  }
  tag.mark = markOf(*told.change.before);
  if (!told.after) {
    tag.words = "taken out";
    return tag;
  }
  const double along = told.after->station - told.before->station, inward = told.after->depth - told.before->depth;
  if (std::abs(along) > tolerance::same) {
    tag.sign = (along > 0) != scene.view.fromInside ? Sign::Right : Sign::Left;
    tag.words = printMeasure(std::abs(along), units);
  }
  if (std::abs(inward) > tolerance::same)
    tag.words +=
        (tag.words.empty() ? "" : ", ") + printMeasure(std::abs(inward), units) + (inward > 0 ? " inward" : " outward");
  return tag;
}

bool isFree(const Scene& scene, const Bounds& box, bool alsoOfHardware) {
  const auto meets = [&](const Bounds& other) { return other.overlaps(box); };
  if (!scene.frame.contains(box))
    return false;
  if (alsoOfHardware && std::any_of(scene.keepOff.begin(), scene.keepOff.end(), meets))
    return false;
  return std::none_of(scene.drawing.taken().begin(), scene.drawing.taken().end(),
                      [&](const TakenBox& taken) { return meets(taken.box.grown(2)); });
}

// Above the piece, in the first row where it and the line that leads to it lie over nothing written; over its piece,
// or beside that line. It keeps off the lines of others where it can.
std::optional<Bounds> placeFor(const Scene& scene, const Told& told, double width, const std::vector<double>& others) {
  const double x = std::clamp(told.x, scene.frame.x0 + 8, scene.frame.x1 - 8);
  const double foot = std::clamp(told.top - 24, scene.frame.y0 + tagHigh + 6, scene.frame.y1 - 8);
  for (const bool strict : {true, false})
    for (int row = 0; row < mostRows; ++row)
      for (const double left : {x - width / 2, x - 7, x - width + 7}) {
        const double y = foot - row * tagStep;
        const Bounds box{left, y - tagHigh, left + width, y};
        const bool over = std::any_of(others.begin(), others.end(), [&](double other) {
          return other > box.x0 - 3 && other < box.x1 + 3 && std::abs(other - x) > 3;
        });
        if (isFree(scene, box.grown(1), true) && !(strict && over))
          return box;
      }
  return std::nullopt;
}

void drawTag(Scene& scene, const Tag& tag, const Bounds& box, bool current) {
  Drawing& drawing = scene.drawing;
  drawing.fillRect(box.x0, box.y0, box.x1, box.y1, current ? Ink::Hand : Ink::Paper);
  drawing.rect(box.x0, box.y0, box.x1, box.y1, Ink::Hand, 1.1);
  const Ink ink = current ? Ink::HandOn : Ink::Hand;
  const double base = box.y1 - 4.4, middle = (box.y0 + box.y1) / 2;
  double x = box.x0 + 6;
  if (!tag.mark.empty()) {
    drawing.text({x, base}, tag.mark, ink, styled(tagSize, Weight::Bold, Anchor::Start));
    x += textWidth(tag.mark, tagSize) + (tag.sign == Sign::None ? 0 : 5);
  }
  if (tag.sign == Sign::Plus) {
    drawing.line({x + 1, middle}, {x + 11, middle}, ink, 2.2);
    drawing.line({x + 6, middle - 5}, {x + 6, middle + 5}, ink, 2.2);
  } else if (tag.sign != Sign::None) {
    const double toRight = tag.sign == Sign::Right ? 1 : -1, tip = toRight > 0 ? x + arrowLong : x;
    const Point2 triangle[] = {{tip, middle}, {tip - 6 * toRight, middle - 3.8}, {tip - 6 * toRight, middle + 3.8}};
    drawing.line({tip - arrowLong * toRight, middle}, {tip - 5 * toRight, middle}, ink, 1.8);
    drawing.fill(triangle, ink);
  }
  x += tag.sign == Sign::None ? 0 : arrowLong;
  if (!tag.words.empty())
    drawing.text({x + 5, base}, tag.words, ink, styled(tagSize, Weight::Bold, Anchor::Start));
}

// Down to the piece, or to what is written on the way there.
double footOfLine(const Scene& scene, double x, double from, double to) {
  for (const TakenBox& taken : scene.drawing.taken())
    if (taken.box.x0 - 1 < x && taken.box.x1 + 1 > x && taken.box.y1 > from && taken.box.y0 < to)
      to = std::max(from, taken.box.y0 - 1);
  return to;
}

void tagFor(Scene& scene, const Told& told, const std::vector<double>& others) {
  const Tag tag = tagOf(scene, told);
  const auto box = placeFor(scene, told, tag.width(), others);
  if (!box)
    return;
  const double x = std::clamp(told.x, box->x0 + 2, box->x1 - 2);
  const double to = footOfLine(scene, x, box->y1, std::clamp(told.top, scene.frame.y0, scene.frame.y1));
  if (to > box->y1 + 1)
    scene.drawing.line({x, box->y1}, {x, to}, Ink::Hand, 0.9);
  drawTag(scene, tag, *box, told.current);
  const Id piece = pieceOf(told.change);
  scene.drawing.take("proposal " + (piece ? std::to_string(piece.value) : tag.words), *box);
  if (piece)
    scene.named.push_back({piece, *box});
}

// Draws the ghost of a piece that goes somewhere, strikes out one that is taken away.
std::optional<Told> tell(Scene& scene, const ShownProposal& proposal, std::size_t i) {
  const Change& change = proposal.changes[i];
  Told told{change, proposal.current == i, standBefore(*scene.wall.wall, change),
            standAfter(*proposal.after->wall, change)};
  const bool goes = told.after.has_value();
  const double station = goes ? told.after->station : told.before->station;
  const auto top = goes ? bodyTop(scene, *proposal.after, *change.after, station, true, told.current)
                        : bodyTop(scene, scene.wall, *change.before, station, false, false);
  if (!top)
    return std::nullopt;
  if (!goes)
    strike(scene, pieceOf(change));
  told.x = scene.x(station);
  told.top = *top;
  return told;
}

} // namespace

void drawProposal(Scene& scene) {
  const ShownProposal* proposal = scene.input.proposal;
  if (!proposal || scene.paper || proposal->wall != scene.wall.wall->id)
    return;
  std::vector<Told> all;
  std::vector<double> places;
  for (std::size_t i = 0; i < proposal->changes.size(); ++i)
    if (const auto told = tell(scene, *proposal, i);
        told && told->x > scene.frame.x0 - 20 && told->x < scene.frame.x1 + 20) {
      all.push_back(*told);
      places.push_back(told->x);
    }
  for (const Told& told : all)
    arrowOnWall(scene, told);
  for (const Told& told : all)
    tagFor(scene, told, places);
}

} // namespace sillwright::elevation
