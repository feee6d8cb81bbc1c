// Dimensions and short notes of a cut: heights to the right, what hangs on the form to the left.
#include <algorithm>
#include <cmath>

#include "core/base/length.h"
#include "core/drawing/hatch.h"
#include "core/drawing/section_pen.h"
#include "core/rules/limits.h"
#include "core/rules/sheathed_edge.h"

namespace sillwright {

namespace {

constexpr double noteSize = 10;

std::string measure(const SectionPen& pen, double inches) { return printMeasure(inches, pen.input.job->units); }

// From a piece to the dimension line that measures it.
void witness(SectionPen& pen, double d, double z, double px) {
  if (!pen.seen.contains(z) || pen.x(d) + 3 > px)
    return;
  const Point2 line[] = {{pen.x(d) + 3, pen.y(z)}, {px + 3, pen.y(z)}};
  pen.drawing.dashed(line, 3, 2, Ink::Dim, 0.5);
}

// A height, dimensioned at px; where it runs out of the window it is open at that end.
void height(SectionPen& pen, double px, Interval whole, const std::string& words) {
  const Interval z = overlap(whole, pen.seen);
  if (z.length() <= 0)
    return;
  pen.drawing.line({px, pen.y(z.from)}, {px, pen.y(z.to)}, Ink::Dim, 0.7);
  pen.lines.push_back({px - 4, pen.y(z.to), px + 4, pen.y(z.from)});
  if (z.to == whole.to)
    drawCrowsFoot(pen.drawing, px, pen.y(z.to), Pointing::Up, Ink::Dim);
  if (z.from == whole.from)
    drawCrowsFoot(pen.drawing, px, pen.y(z.from), Pointing::Down, Ink::Dim);
  pen.note(px + 6, pen.y(z.middle()) + 4, words, noteSize, Ink::Text);
}

void across(SectionPen& pen, double z, Interval d, const std::string& words) {
  const double y = pen.y(z);
  pen.drawing.line({pen.x(d.from), y}, {pen.x(d.to), y}, Ink::Dim, 0.7);
  drawCrowsFoot(pen.drawing, pen.x(d.from), y, Pointing::Left, Ink::Dim);
  drawCrowsFoot(pen.drawing, pen.x(d.to), y, Pointing::Right, Ink::Dim);
  const double beside = pen.dimensions() - 16;
  pen.drawing.line({pen.x(d.to), y}, {beside - 3, y}, Ink::Dim, 0.5);
  pen.lines.push_back({pen.x(d.from), y - 3, beside, y + 3});
  pen.note(beside, y + 4, words, noteSize, Ink::Text);
}

void noteNails(SectionPen& pen) {
  const StrapBody& s = *pen.strap;
  if (s.nails.empty())
    return;
  double lowest = s.nails.front().z, highest = lowest;
  for (const NailBody& nail : s.nails) {
    lowest = std::min(lowest, nail.z);
    highest = std::max(highest, nail.z);
  }
  const double y = pen.y(std::min((lowest + highest) / 2, pen.seen.to));
  pen.note(pen.leftNotes(), y, std::to_string(s.nails.size()) + " nails", noteSize, Ink::Text, Anchor::End);
  if (!s.type->nails.nail.empty())
    pen.note(pen.leftNotes(), y + 12, s.type->nails.nail, noteSize, Ink::Text, Anchor::End);
}

void noteStrap(SectionPen& pen) {
  const StrapBody& s = *pen.strap;
  const double px = pen.dimensions();
  double innermost = 0;
  for (const ProfilePoint& p : s.embedded.profile)
    innermost = std::max(innermost, p.d);
  witness(pen, s.plate.d.to, s.plate.z.to, px);
  witness(pen, innermost, s.depthOfHook.from, px);
  height(pen, px, {s.joint, s.plate.z.to}, measure(pen, s.type->exposedLength) + " up");
  height(pen, px, {s.depthOfHook.from, s.joint}, measure(pen, s.joint - s.depthOfHook.from) + " down");
  across(pen, s.depthOfHook.from - 1.6, {innermost, pen.layout.across.to},
         measure(pen, pen.layout.across.to - innermost) + " to the inside face");
  noteNails(pen);
  const double off = s.strap->heightOffset;
  pen.note(pen.leftNotes(), pen.y(s.joint) + 12,
           off == 0 ? "joint on it" : "joint " + measure(pen, std::abs(off)) + (off > 0 ? " above" : " below"), noteSize,
           Ink::Text, Anchor::End);
}

// How far the washer lies from the sheathed edge, with the limit where the panel is strong enough for one.
void noteWasher(SectionPen& pen, double y) {
  const ResolvedLimits limits = resolve(*pen.input.job->limits);
  for (const SheathedEdge& edge : sheathedEdges(pen.layout, *pen.anchor, limits[LimitKey::WasherSheathingFrom])) {
    const double left = pen.dimensions() - 12;
    pen.note(left, y, "washer " + measure(pen, std::max(0.0, edge.strip.length())) + " from the", noteSize, Ink::Text);
    pen.note(left, y + 12, edge.outside ? "sheathed outside edge" : "sheathed inside edge", noteSize, Ink::Text);
    if (edge.strong)
      pen.note(left, y + 24, "limit " + measure(pen, limits[LimitKey::WasherSheathing]), noteSize, Ink::Text2);
    y += 40;
  }
}

void noteHook(SectionPen& pen) {
  const AnchorBody& a = *pen.anchor;
  if (a.isRod || a.boltType->end == BoltEnd::Headed)
    return;
  constexpr const char* ways[] = {"hook in, ", "hook out, ", "hook to the left, ", "hook to the right, "};
  pen.note(pen.leftNotes(), pen.y(a.bottom) + 4,
           ways[static_cast<std::size_t>(a.bolt->hook)] + measure(pen, a.boltType->hookLeg), noteSize, Ink::Text,
           Anchor::End);
}

void noteAnchor(SectionPen& pen) {
  const AnchorBody& a = *pen.anchor;
  const double px = pen.dimensions();
  const Interval below{a.pour - a.embedment, a.pour};
  witness(pen, a.depth + a.diameter / 2, a.top, px);
  double inner = a.depth + a.diameter / 2;
  for (const Capsule& foot : a.foot)
    inner = std::max({inner, foot.a.d, foot.b.d});
  witness(pen, inner, below.from, px);
  height(pen, px, {a.pour, a.top}, measure(pen, a.top - a.pour) + " up");
  height(pen, px, below, measure(pen, a.embedment) + " in the concrete");
  across(pen, a.bottom - 1.2, {0, a.depth}, measure(pen, a.depth) + " from the outside face");
  noteWasher(pen, pen.y(a.bottom - 1.2) + 20);
  noteHook(pen);
}

// Widths of wall and footing under the cut, where they are seen.
void noteWidths(SectionPen& pen) {
  const WallLayout& l = pen.layout;
  const double y = pen.y(l.bottom) + 14;
  if (y + 16 > pen.input.window.y1 || pen.seen.from > l.bottom)
    return;
  const Interval wide = l.footingAcross.empty() ? l.across : l.footingAcross;
  pen.drawing.line({pen.x(wide.from), y}, {pen.x(wide.to), y}, Ink::Dim, 0.7);
  drawCrowsFoot(pen.drawing, pen.x(wide.from), y, Pointing::Left, Ink::Dim);
  drawCrowsFoot(pen.drawing, pen.x(wide.to), y, Pointing::Right, Ink::Dim);
  const std::string wall = measure(pen, l.across.length()) + " wall";
  pen.note((pen.x(wide.from) + pen.x(wide.to)) / 2, y + 13,
           l.footingAcross.empty() ? wall : measure(pen, wide.length()) + " footing, " + wall, noteSize, Ink::Text2,
           Anchor::Middle);
}

} // namespace

double SectionPen::dimensions() const { return x(layout.across.to + layout.wall->forms.inside) + 26; }

double SectionPen::leftNotes() const { return x(-layout.wall->forms.outside) - 6; }

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

void drawSectionNotes(SectionPen& pen) {
  const WallLine& wall = *pen.layout.wall;
  if (wall.formTop > 0)
    pen.note(pen.leftNotes(), pen.y(pen.pour + wall.formTop) - 3, "form " + measure(pen, wall.formTop) + " up",
             noteSize, Ink::FormLine, Anchor::End);
  if (pen.strap)
    noteStrap(pen);
  if (pen.anchor)
    noteAnchor(pen);
  noteWidths(pen);
}

} // namespace sillwright
