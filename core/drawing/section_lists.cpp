// Lists beside a cut: what the thread must hold, and how clear the bars are.
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>

#include "core/base/length.h"
#include "core/drawing/section_pen.h"
#include "core/drawing/text_metrics.h"
#include "core/geometry/clearance.h"
#include "core/rules/anchor_checks.h"
#include "core/rules/limits.h"
#include "core/rules/thread_stack.h"

namespace sillwright {

namespace {

constexpr double listSize = 10;
constexpr double lead = 12.5; // pt from line to line
constexpr double between = 10; // least between words and measure

std::string measure(const SectionPen& pen, double inches) { return printMeasure(inches, pen.input.job->units); }

double clearOf(const SectionPen& pen, const BarBody& bar) {
  if (pen.strap)
    return clearance(bar.body, pen.strap->embedded).distance;
  double least = clearance(bar.body, pen.anchor->shank).distance;
  for (const Capsule& foot : pen.anchor->foot)
    least = std::min(least, clearance(bar.body, foot).distance);
  return least;
}

std::vector<ListLine> clearances(const SectionPen& pen) {
  constexpr std::size_t listed = 3;
  std::vector<std::pair<double, const BarBody*>> bars;
  for (const BarBody& bar : pen.layout.bars)
    bars.push_back({clearOf(pen, bar), &bar});
  if (bars.empty())
    return {};
  std::stable_sort(bars.begin(), bars.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  bars.resize(std::min(bars.size(), listed));
  const char* const what = pen.strap ? "strap" : pen.anchor->isRod ? "rod" : "bolt";
  std::vector<ListLine> rows{{std::string("clear of the ") + what, {}, Weight::Bold, Ink::Text2}};
  for (const auto& [distance, bar] : bars)
    rows.push_back({"bar " + bar->bar->mark, distance < 0 ? "touches" : measure(pen, distance)});
  return rows;
}

std::string threadsPast(double threads) {
  constexpr std::array words{"no threads", "one thread", "two threads", "three threads", "four threads"};
  const auto whole = static_cast<std::size_t>(std::max(0.0, threads));
  return (threads == static_cast<double>(whole) && whole < words.size() ? std::string(words[whole])
                                                                        : std::string("threads")) + " past";
}

// From the threads past the nut down to the sill, and what is there.
std::vector<ListLine> stackOnTheThread(const SectionPen& pen) {
  const AnchorBody& anchor = *pen.anchor;
  if (anchor.isRod || !anchor.sillPiece)
    return {};
  const double standout = resolve(*pen.input.job->limits)[LimitKey::BoltStandoutThreads];
  const SillPiece& sill = pen.layout.sills[*anchor.sillPiece];
  const auto stack = stackOn(pen.layout, anchor, standout);
  if (!stack)
    return {};
  std::vector<ListLine> rows{{"stack on the thread", {}, Weight::Bold, Ink::Text2},
                             {threadsPast(standout), measure(pen, stack->standout)},
                             {"nut", measure(pen, stack->nut)}};
  if (stack->cutWasher > 0)
    rows.push_back({"cut washer", measure(pen, stack->cutWasher)});
  if (stack->plateWasher > 0)
    rows.push_back({"plate washer", measure(pen, stack->plateWasher)});
  rows.push_back({"sill " + print(sill.nominal), measure(pen, stack->sill)});
  for (std::size_t i = 1; i < rows.size(); ++i)
    rows[i].detail = true;
  const double needed = neededProjection(*stack), there = anchor.top - anchor.pour;
  const double spare = there - needed;
  rows.push_back({"needed", measure(pen, needed)});
  rows.push_back({"there", measure(pen, there), Weight::Bold});
  rows.push_back({spare < 0 ? "short by" : "spare", measure(pen, std::abs(spare)), Weight::Bold});
  return rows;
}

double widthOf(const std::vector<ListLine>& rows) {
  double alone = 0, words = 0, measures = 0;
  for (const ListLine& row : rows) {
    (row.measure.empty() ? alone : words) = std::max(row.measure.empty() ? alone : words, textWidth(row.words, listSize));
    measures = std::max(measures, textWidth(row.measure, listSize));
  }
  return std::max(alone, words + between + measures);
}

bool isFree(const SectionPen& pen, const Bounds& box) {
  const auto inTheWay = [&](const Bounds& other) { return other.overlaps(box); };
  return pen.input.window.contains(box) && std::none_of(pen.texts.begin(), pen.texts.end(), inTheWay) &&
         std::none_of(pen.lines.begin(), pen.lines.end(), inTheWay);
}

// Right of px as near as can be, sideways or up and down; else at the left edge.
std::optional<Bounds> freePlace(const SectionPen& pen, double px, double top, double width, double tall) {
  const Bounds& w = pen.input.window;
  constexpr double step = 3;
  std::optional<Bounds> best;
  double least = std::numeric_limits<double>::infinity();
  const auto consider = [&](double x, double y) {
    const double away = std::abs(x - px) + std::abs(y - top);
    const Bounds place{x, y, x + width, y + tall};
    if (away < least && isFree(pen, {place.x0 - 2, place.y0 - 5, place.x1 + 2, place.y1 + 5})) {
      best = place;
      least = away;
    }
  };
  for (double y = w.y0 + 2; y + tall <= w.y1; y += step) {
    for (double x = px; x + width <= w.x1 - 2; x += 2 * step)
      consider(x, y);
    consider(w.x0 + 4, y);
  }
  return best;
}

} // namespace

void SectionPen::list(double px, double top, std::vector<ListLine> rows) {
  if (rows.empty())
    return;
  const auto find = [&] { return freePlace(*this, px, top, widthOf(rows), lead * static_cast<double>(rows.size())); };
  auto place = find();
  if (!place) { // too small a window for all of it: what matters most
    std::erase_if(rows, [](const ListLine& row) { return row.detail; });
    place = find();
  }
  if (!place) { // line by line, wherever a line is free
    for (const ListLine& row : rows)
      note(px, top, row.measure.empty() ? row.words : row.words + " · " + row.measure, listSize, row.ink);
    return;
  }
  double base = place->y0 + 0.8 * lead;
  for (const ListLine& row : rows) {
    TextStyle style;
    style.size = listSize;
    style.weight = row.weight;
    style.halo = Ink::Paper;
    Bounds box = drawing.text({place->x0, base}, row.words, row.ink, style);
    style.anchor = Anchor::End;
    if (!row.measure.empty())
      box = hull(box, drawing.text({place->x1, base}, row.measure, row.ink, style));
    texts.push_back(box);
    drawing.take(row.measure.empty() ? row.words : row.words + " · " + row.measure, box);
    base += lead;
  }
}

void drawSectionLists(SectionPen& pen) {
  if (!pen.strap && !pen.anchor)
    return;
  const double left = pen.dimensions() - 12;
  if (pen.anchor)
    pen.list(left, pen.y(pen.anchor->top) - 9 * lead, stackOnTheThread(pen));
  const double low = pen.strap ? pen.strap->depthOfHook.from : pen.anchor->bottom;
  pen.list(left, pen.y(low) + 34, clearances(pen));
}

} // namespace sillwright
