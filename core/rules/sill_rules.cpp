// Sills: at their corners, on their concrete, against the plan.
#include <algorithm>
#include <cmath>

#include "core/rules/measure.h"
#include "core/rules/panel_ends.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

bool squareCorner(const Neighbour& neighbour) { return std::abs(std::abs(neighbour.turn) - 90) < 1; }

// The piece of sill that comes nearest to an end of the wall.
const SillPiece* endPiece(const WallLayout& layout, Side end) {
  if (layout.sills.empty())
    return nullptr;
  if (end == Side::Left)
    return &layout.sills.front();
  return &*std::max_element(layout.sills.begin(), layout.sills.end(),
                            [](const SillPiece& a, const SillPiece& b) { return a.box.s.to < b.box.s.to; });
}

// Seen from the end of a wall: how far its sill starts from the corner, and where the neighbour's sill lies.
struct Meeting {
  double along = 0;  // free from the neighbour's sill to this wall's, along this wall; less than zero: past its edge
  double across = 0; // from this wall's sill to the end of the neighbour's, along the neighbour
};

Meeting meetingAt(const SillPiece& piece, const Neighbour& other, double fromCorner) {
  if (other.insideCorner)
    return {fromCorner + other.sillInset, piece.box.d.from + other.sillStart};
  return {fromCorner - (other.sillInset + other.sillWidth), other.sillStart - piece.box.d.to};
}

// What is amiss at a corner: how far apart the two are (less than zero: they overlap), or what neither of them covers of
// the corner itself; and whether that lies along this wall or along the neighbour.
struct Amiss {
  double apart = 0;
  bool uncovered = false;
  double along = 0; // of apart, what lies this way
  double across = 0;
};

std::optional<Amiss> amissAt(const Meeting& meeting, const SillPiece& piece, const Neighbour& other, double limit) {
  const double apart = std::max(meeting.along, meeting.across);
  if (over(std::abs(apart), limit))
    return Amiss{apart, false, meeting.along, meeting.across};
  const Meeting bare{meeting.along + other.sillWidth, meeting.across + piece.box.d.length()};
  const double uncovered = std::min(bare.along, bare.across);
  if (over(uncovered, limit))
    return Amiss{uncovered, true, -bare.along, -bare.across};
  return std::nullopt;
}

// Told once, by the wall whose own sill is to be cut or moved; where either would do, by the one that butts there, and
// where both do, or none, by the older.
bool tells(const WallLayout& layout, const Amiss& amiss, const Neighbour& other, EndFraming own) {
  if (std::abs(amiss.along - amiss.across) > tolerance::same)
    return amiss.along > amiss.across;
  return own == other.framing ? layout.wall->id < other.wall : own == EndFraming::Butts;
}

void checkCorner(const WallLayout& layout, double limit, Side end, Drafts& drafts) {
  const auto& other = end == Side::Left ? layout.place.atStart : layout.place.atEnd;
  const SillPiece* piece = endPiece(layout, end);
  if (!other || !piece || other->sillWidth <= 0 || !squareCorner(*other))
    return;
  const EndFraming own = end == Side::Left ? layout.wall->startFraming : layout.wall->endFraming;
  const double start = end == Side::Left ? piece->box.s.from : layout.length - piece->box.s.to;
  const auto amiss = amissAt(meetingAt(*piece, *other, start), *piece, *other, limit);
  if (!amiss || !tells(layout, *amiss, *other, own))
    return;
  Interval s = betweenValues(start - amiss->apart, start);
  if (end == Side::Right)
    s = {layout.length - s.to, layout.length - s.from};
  Draft& draft = report(drafts, layout, RuleId::SillCorner, Level::Fix, {piece->sill},
                        {std::abs(amiss->apart), limit, {s, piece->box.d, piece->box.z}, Wanted::AtMost, Unit::Inch,
                         static_cast<std::uint8_t>((end == Side::Right ? 1 : 0) + (amiss->apart > 0 ? 2 : 0))});
  const Correction way = end == Side::Left ? move(piece->sill, Field::LeftEnd, piece->box.s.from, -amiss->apart)
                                           : move(piece->sill, Field::RightEnd, piece->box.s.to, amiss->apart);
  // Where the neighbour's sill is amiss too, this one alone does not cure the corner.
  const double moved = end == Side::Left ? start + way.by : start - way.by;
  if (!amissAt(meetingAt(*piece, *other, moved), *piece, *other, limit))
    draft.corrections.push_back(way);
}

// Where a piece lies on nothing: along it, the part over a lower pour line.
void checkSteps(const WallLayout& layout, const SillPiece& piece, Drafts& drafts) {
  for (const PourRun& run : layout.pour) {
    const Interval part = overlap(run.s, piece.box.s);
    const double under = piece.box.z.from - run.height;
    if (part.length() <= tolerance::same || !over(std::abs(under), 0))
      continue;
    report(drafts, layout, RuleId::SillConcrete, Level::Fix, {piece.sill},
           {std::abs(under), 0, {part, piece.box.d, betweenValues(run.height, piece.box.z.from)}, Wanted::AtMost,
            Unit::Inch, static_cast<std::uint8_t>(under > 0 ? 4 : 5)});
  }
}

} // namespace

// Variants: bit 0 the right end, bit 1 a gap (else an overlap).
void checkSillCorner(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const Side end : {Side::Left, Side::Right})
    checkCorner(layout, limits[LimitKey::SillCorner], end, drafts);
}

// Variants: past 0 the outside face, 1 the inside face, 2 the left end, 3 the right end; 4 over a lower pour line, 5 under
// a higher one.
void checkSillConcrete(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  const double allowed = layout.limits->sillOverhang;
  for (const SillPiece& piece : layout.sills) {
    const Box3& box = piece.box;
    const auto off = [&](double by, const Box3& region, std::uint8_t variant) {
      if (over(by, allowed))
        report(drafts, layout, RuleId::SillConcrete, Level::Fix, {piece.sill},
               {by, allowed, region, Wanted::AtMost, Unit::Inch, variant});
    };
    const Interval d = layout.across, s = layout.concrete;
    off(d.from - box.d.from, {box.s, {box.d.from, d.from}, box.z}, 0);
    off(box.d.to - d.to, {box.s, {d.to, box.d.to}, box.z}, 1);
    off(s.from - box.s.from, {{box.s.from, s.from}, box.d, box.z}, 2);
    off(box.s.to - s.to, {{s.to, box.s.to}, box.d, box.z}, 3);
    checkSteps(layout, piece, drafts);
  }
}

void checkSillMark(const WallLayout& layout, const ResolvedLimits&, Drafts& drafts) {
  std::vector<std::size_t> wrong;
  for (const PanelEnd& end : panelEnds(layout)) {
    const auto under = sillAt(layout, end.side == Side::Left ? end.panel->from : end.panel->to);
    if (end.mark && end.mark->sill && under && layout.sills[*under].nominal != *end.mark->sill)
      wrong.push_back(*under);
  }
  std::sort(wrong.begin(), wrong.end());
  wrong.erase(std::unique(wrong.begin(), wrong.end()), wrong.end());
  for (const std::size_t i : wrong)
    report(drafts, layout, RuleId::SillMark, Level::Fix, {layout.sills[i].sill},
           {1, 0, layout.sills[i].box, Wanted::AtMost, Unit::Count});
}

void checkSillPiece(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  const double longest = limits[LimitKey::SillPiece];
  for (const SillPiece& piece : layout.sills)
    if (over(piece.box.s.length(), longest))
      report(drafts, layout, RuleId::SillPiece, Level::Watch, {piece.sill},
             {piece.box.s.length(), longest, piece.box, Wanted::AtMost});
}

} // namespace sillwright
