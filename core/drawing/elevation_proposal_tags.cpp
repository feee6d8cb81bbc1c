// The boxes that say what a refit would do with a piece: its mark, an arrow the way it goes, the amount.
#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "core/base/tolerance.h"
#include "core/drawing/elevation_proposal.h"
#include "core/drawing/text_metrics.h"

namespace sillwright::elevation {

namespace {

constexpr double tagSize = 11; // of its letters, pt
constexpr double tagHigh = 16; // pt
constexpr double tagStep = 19; // from one row of tags to the next, pt
constexpr double arrowLong = 13;

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

bool isFree(const Scene& scene, const Bounds& box) {
  const auto meets = [&](const Bounds& other) { return other.overlaps(box); };
  if (!scene.frame.contains(box))
    return false;
  if (std::any_of(scene.keepOff.begin(), scene.keepOff.end(), meets))
    return false;
  return std::none_of(scene.drawing.taken().begin(), scene.drawing.taken().end(),
                      [&](const TakenBox& taken) { return meets(taken.box.grown(2)); });
}

bool isOverOthers(const Bounds& box, double own, const std::vector<double>& others) {
  return std::any_of(others.begin(), others.end(), [&](double other) {
    return other > box.x0 - 3 && other < box.x1 + 3 && std::abs(other - own) > 3;
  });
}

// Above the piece, in the first row where it lies over nothing written and over no hardware: with its middle over the
// piece, or to one side. It keeps off the lines of others where it can.
std::optional<Bounds> placeAbove(const Scene& scene, const Told& told, double width,
                                 const std::vector<double>& others) {
  const double x = std::clamp(told.x, scene.frame.x0 + 8, scene.frame.x1 - 8);
  const double foot = std::clamp(told.top - 24, scene.frame.y0 + tagHigh + 6, scene.frame.y1 - 8);
  for (const bool strict : {true, false})
    for (double y = foot; y - tagHigh > scene.frame.y0; y -= tagStep / 2)
      for (const double past : {width / 2, 7.0, width - 7, 1.0, width - 1}) {
        const Bounds box{x - past, y - tagHigh, x - past + width, y};
        if (isFree(scene, box.grown(1)) && !(strict && isOverOthers(box, x, others)))
          return box;
      }
  return std::nullopt;
}

// Beside the piece, where it goes on past the upper edge of the window.
std::optional<Bounds> placeBeside(const Scene& scene, const Told& told, double width) {
  constexpr double off = 12;
  for (double y = std::max(told.top, scene.frame.y0) + 14; y + tagHigh < scene.frame.y1; y += tagStep / 2)
    for (const double left : {told.covered.to + off, told.covered.from - off - width}) {
      const Bounds box{left, y, left + width, y + tagHigh};
      if (isFree(scene, box.grown(1)))
        return box;
    }
  return std::nullopt;
}

std::optional<Bounds> placeFor(const Scene& scene, const Told& told, double width, const std::vector<double>& others) {
  const auto above = placeAbove(scene, told, width, others);
  return above ? above : placeBeside(scene, told, width);
}

void write(Scene& scene, const Tag& tag, const Bounds& box, bool current) {
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

// From the tag down to its piece, or across to it.
void leader(Scene& scene, const Told& told, const Bounds& box) {
  if (box.x0 > told.covered.to || box.x1 < told.covered.from) {
    const bool right = box.x0 > told.covered.to;
    const double y = (box.y0 + box.y1) / 2;
    return scene.drawing.line({right ? box.x0 : box.x1, y}, {right ? told.covered.to : told.covered.from, y}, Ink::Hand,
                              0.9);
  }
  const double x = std::clamp(told.x, box.x0 + 2, box.x1 - 2);
  const double to = footOfLine(scene, x, box.y1, std::clamp(told.top, scene.frame.y0, scene.frame.y1));
  if (to > box.y1 + 1)
    scene.drawing.line({x, box.y1}, {x, to}, Ink::Hand, 0.9);
}

void drawTag(Scene& scene, const Told& told, const std::vector<double>& places) {
  Tag tag = tagOf(scene, told);
  auto box = placeFor(scene, told, tag.width(), places);
  const std::string name = tag.words;
  if (!box && tag.sign != Sign::None) { // the list beside the drawing says the rest
    tag.mark.clear();
    tag.words.clear();
    box = placeFor(scene, told, tag.width(), places);
  }
  if (!box)
    return;
  leader(scene, told, *box);
  write(scene, tag, *box, told.current);
  const Id piece = pieceOf(told.change);
  scene.drawing.take("proposal " + (piece ? std::to_string(piece.value) : name), *box);
  if (piece)
    scene.named.push_back({piece, *box});
}

} // namespace

void drawTags(Scene& scene, const std::vector<Told>& all) {
  std::vector<double> places;
  for (const Told& told : all)
    places.push_back(told.x);
  for (const bool current : {true, false}) // the one looked at finds its place first
    for (const Told& told : all)
      if (told.current == current)
        drawTag(scene, told, places);
}

} // namespace sillwright::elevation
