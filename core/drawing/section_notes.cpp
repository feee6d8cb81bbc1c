#include <algorithm>
#include <cmath>

#include "core/base/length.h"
#include "core/drawing/hatch.h"
#include "core/drawing/section_pen.h"
#include "core/geometry/clearance.h"
#include "core/rules/limits.h"
#include "core/rules/thread_stack.h"

namespace sillwright {

namespace {

std::string measure(const SectionPen& pen, double inches) { return printMeasure(inches, pen.input.job->units); }

void height(SectionPen& pen, double px, double from, double to, const std::string& words, bool toTheLeft) {
  const Interval z = overlap({from, to}, pen.seen);
  if (z.length() <= 0)
    return;
  pen.drawing.line({px, pen.y(z.from)}, {px, pen.y(z.to)}, Ink::Dim, 0.7);
  drawCrowsFoot(pen.drawing, px, pen.y(z.to), Pointing::Up, Ink::Dim);
  drawCrowsFoot(pen.drawing, px, pen.y(z.from), Pointing::Down, Ink::Dim);
  pen.note(px + (toTheLeft ? -6 : 6), pen.y(z.middle()) + 4, words, 10, Ink::Text,
           toTheLeft ? Anchor::End : Anchor::Start);
}

void across(SectionPen& pen, double z, double from, double to, const std::string& words) {
  pen.drawing.line({pen.x(from), pen.y(z)}, {pen.x(to), pen.y(z)}, Ink::Dim, 0.7);
  drawCrowsFoot(pen.drawing, pen.x(from), pen.y(z), Pointing::Left, Ink::Dim);
  drawCrowsFoot(pen.drawing, pen.x(to), pen.y(z), Pointing::Right, Ink::Dim);
  const double beside = std::max(pen.x(to), pen.x(pen.layout.across.to + pen.layout.wall->forms.inside)) + 10;
  pen.drawing.line({pen.x(to), pen.y(z)}, {beside - 3, pen.y(z)}, Ink::Dim, 0.5);
  pen.note(beside, pen.y(z) + 4, words, 10, Ink::Text);
}

double clearOf(const SectionPen& pen, const BarBody& bar) {
  if (pen.strap)
    return clearance(bar.body, pen.strap->embedded).distance;
  double least = clearance(bar.body, pen.anchor->shank).distance;
  for (const Capsule& foot : pen.anchor->foot)
    least = std::min(least, clearance(bar.body, foot).distance);
  return least;
}

void listClearances(SectionPen& pen, double px, double py) {
  constexpr std::size_t listed = 3;
  std::vector<std::pair<double, const BarBody*>> bars;
  for (const BarBody& bar : pen.layout.bars)
    bars.push_back({clearOf(pen, bar), &bar});
  if (bars.empty())
    return;
  std::stable_sort(bars.begin(), bars.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  bars.resize(std::min(bars.size(), listed));
  pen.note(px, py, pen.strap ? "clear of the strap" : pen.anchor->isRod ? "clear of the rod" : "clear of the bolt", 10,
           Ink::Text2, Anchor::Start, Weight::Bold);
  for (const auto& [distance, bar] : bars) {
    py += 13;
    pen.note(px, py, "bar " + bar->bar->mark + " · " + (distance < 0 ? "touches" : measure(pen, distance)), 10,
             Ink::Text);
  }
}

constexpr double stackLead = 12; // pt from line to line of the stack

// What the thread must hold, from the threads past the nut down to the sill, and what is there.
void listStack(SectionPen& pen, double px, double py) {
  const AnchorBody& anchor = *pen.anchor;
  if (anchor.isRod || !anchor.sillPiece)
    return;
  const double standout = resolve(*pen.input.job->limits)[LimitKey::BoltStandoutThreads];
  const auto stack = threadStack(*anchor.boltType, pen.layout.sills[*anchor.sillPiece].box.z.length(), anchor.washer,
                                 anchor.bolt->cutWasher, standout);
  if (!stack)
    return;
  const double needed = neededProjection(*stack), there = anchor.top - anchor.pour;
  std::vector<std::pair<const char*, double>> rows{{"threads past", stack->standout}, {"nut", stack->nut}};
  if (stack->cutWasher > 0)
    rows.push_back({"cut washer", stack->cutWasher});
  if (stack->plateWasher > 0)
    rows.push_back({"plate washer", stack->plateWasher});
  if (stack->sill > 0)
    rows.push_back({"sill", stack->sill});
  rows.push_back({"needed", needed});
  pen.note(px, py, "stack on the thread", 10, Ink::Text2, Anchor::Start, Weight::Bold);
  for (const auto& [name, inches] : rows) {
    py += stackLead;
    pen.note(px, py, std::string(name) + " · " + measure(pen, inches), 10, Ink::Text);
  }
  const double spare = there - needed;
  pen.note(px, py + stackLead,
           "there · " + measure(pen, there) + (spare < 0 ? ", short by " : ", spare ") + measure(pen, std::abs(spare)), 10,
           Ink::Text, Anchor::Start, Weight::Bold);
}

// Above the bolt where there is room, else at `below`.
double stackTop(const SectionPen& pen, double below) {
  const double above = pen.y(pen.anchor->top) - 7 * stackLead - 6; // base line of the first of eight lines
  return above > pen.input.window.y0 + 9 ? above : below;
}

void noteStrap(SectionPen& pen, double px) {
  const StrapBody& s = *pen.strap;
  height(pen, px, s.joint, s.plate.z.to, measure(pen, s.type->exposedLength) + " up", false);
  height(pen, px, s.depthOfHook.from, s.joint, measure(pen, s.joint - s.depthOfHook.from) + " down", false);
  double innermost = 0;
  for (const ProfilePoint& p : s.embedded.profile)
    innermost = std::max(innermost, p.d);
  across(pen, s.depthOfHook.from - 1.6, innermost, pen.layout.across.to,
         measure(pen, pen.layout.across.to - innermost) + " to the inside face");
}

void noteAnchor(SectionPen& pen, double px) {
  const AnchorBody& a = *pen.anchor;
  height(pen, px, a.pour, a.top, measure(pen, a.top - a.pour) + " up", false);
  height(pen, px, a.pour - a.embedment, a.pour, measure(pen, a.embedment) + " in the concrete", false);
  across(pen, a.bottom - 1.2, 0, a.depth, measure(pen, a.depth) + " from the outside face");
}

} // namespace

void SectionPen::note(double px, double py, std::string_view words, double size, Ink ink, Anchor at, Weight weight) {
  TextStyle style;
  style.size = size;
  style.weight = weight;
  style.anchor = at;
  style.halo = Ink::Paper;
  Drawing measured;
  Bounds box = measured.text({px, py}, words, ink, style);
  px += std::max(0.0, input.window.x0 + 2 - box.x0) - std::max(0.0, box.x1 - input.window.x1 + 2);
  for (int i = 0; i < 40; ++i, py += 3) {
    Drawing trial;
    box = trial.text({px, py}, words, ink, style);
    if (std::none_of(texts.begin(), texts.end(), [&](const Bounds& t) { return t.overlaps(box); }))
      break;
  }
  texts.push_back(drawing.text({px, py}, words, ink, style));
  drawing.take(std::string(words), texts.back());
}

// Under the hardware, so that the piece itself stays seen.
void drawSectionFlags(SectionPen& pen) {
  for (const Finding& finding : pen.input.wall->findings) {
    if (std::find(finding.pieces.begin(), finding.pieces.end(), pen.input.piece) == finding.pieces.end())
      continue;
    const Interval z = overlap(finding.region.z, pen.seen);
    if (!z.empty())
      drawFlag(pen.drawing, finding.level, pen.box(finding.region.d, z));
  }
}

void drawSectionNotes(SectionPen& pen) {
  const double px = pen.x(pen.layout.across.to + pen.layout.wall->forms.inside) + 26;
  if (pen.strap)
    noteStrap(pen, px);
  if (pen.anchor)
    noteAnchor(pen, px);
  const double low = pen.strap ? pen.strap->depthOfHook.from : pen.anchor ? pen.anchor->bottom : pen.pour;
  if (pen.strap || pen.anchor)
    listClearances(pen, px + 6, pen.y(low) + 40);
  if (pen.anchor)
    listStack(pen, px + 6, stackTop(pen, pen.y(low) + 100));
  const WallLine& wall = *pen.layout.wall;
  if (wall.formTop > 0)
    pen.note(pen.x(-wall.forms.outside) - 6, pen.y(pen.pour + wall.formTop) - 3,
             "form " + measure(pen, wall.formTop) + " up", 10, Ink::FormLine, Anchor::End);
}

} // namespace sillwright
