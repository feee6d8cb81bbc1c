#include "core/gesture/starters.h"

#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"
#include "core/drawing/plan.h"
#include "core/edit/operations.h"
#include "core/edit/plan_edits.h"
#include "core/gesture/placing.h"
#include "core/gesture/starter_framing.h"
#include "core/model/layout.h"
#include "core/refit/refit_job.h"
#include "core/refit/refit_words.h"
#include "core/rules/checker.h"
#include "core/rules/wording.h"
#include "core/standards/lumber.h"

namespace sillwright {

namespace {

constexpr double garageHead = 83.75, doorHead = 82.5, windowSill = 36, windowHead = 80; // in; common practice
constexpr double leastOpening = 12, leastPier = 6;
constexpr double besideOthers = 120; // in between new walls and those that stand

using Lengths = std::span<const std::optional<double>>;

std::vector<Starter> makeStarters() {
  const StarterLength side{"side", "Side, outside to outside", 288};
  const auto front = [](double usual) { return StarterLength{"front", "Front, outside to outside", usual}; };
  return {
      {"two-piers",
       "Opening with two piers",
       "A wide door between two narrow piers, as at a garage.",
       {front(288),
        side,
        {"opening", "Width of the opening", 192},
        {"left", "Pier at its left", {}, "in the middle"},
        {"head", "Height of the opening", garageHead}}},
      {"narrow-panel",
       "Panel between windows",
       "Two windows of one width with a panel between them.",
       {front(288), side, {"window", "Width of each window", 60}, {"panel", "Panel between them", 48}}},
      {"door",
       "Wall with a door",
       "A door with a panel on each side of it.",
       {front(240),
        side,
        {"opening", "Width of the opening", 38},
        {"left", "From the left end", {}, "in the middle"},
        {"head", "Height of the opening", doorHead}}},
      {"rectangle", "Closed rectangle", "Four walls with sills and bolts.", {front(288), side}},
  };
}

Problem tooNarrow(const std::string& key, double room, LengthStyle units) {
  return {key, "there is room for " + printLength(std::max(room, 0.0), units) + " only"};
}

Opening openingOf(OpeningKind kind, Interval s, double sill, double head) {
  Opening opening;
  opening.kind = kind;
  opening.from = s.from;
  opening.to = s.to;
  opening.sillHeight = sill;
  opening.headHeight = head;
  return opening;
}

// The wall that a starter is put on. The middle is that of the concrete, as it is taped; the framing of a wall that
// butts is shorter at one end.
struct Ground {
  double length = 0; // of the concrete
  double height = 0; // of the wall
  Interval framing;

  double centred(double width) const { return roundTo((length - width) / 2, tolerance::tapeMark); }
  // How wide what is centred may be so that on both sides so much framing is left.
  double roomInTheMiddle(double left) const {
    return 2 * (std::min(length / 2 - framing.from, framing.to - length / 2) - left);
  }
};

// One opening with a panel at each side.
Result<FramedAs> oneOpening(OpeningKind kind, const Ground& ground, Lengths lengths, LengthStyle units) {
  const Interval& framing = ground.framing;
  const double width = *lengths[2], head = *lengths[4];
  const double room = lengths[3] ? framing.length() - 2 * leastPier : ground.roomInTheMiddle(leastPier);
  if (width > room)
    return tooNarrow("opening", room, units);
  if (const double under = ground.height - Opening{}.headerDepth - 2 * dressedTwo; head > under) // the double plate
    return tooNarrow("head", under, units);
  const double from = lengths[3].value_or(ground.centred(width));
  if (from < framing.from + leastPier || from + width > framing.to - leastPier)
    return tooNarrow("left", framing.to - leastPier - width, units);
  const Interval s{from, from + width};
  return FramedAs{{openingOf(kind, s, 0, head)}, {{framing.from, s.from}, {s.to, framing.to}}};
}

Result<FramedAs> twoWindows(const Ground& ground, Lengths lengths, LengthStyle units) {
  const double width = *lengths[2], panel = *lengths[3], from = ground.centred(panel);
  const double room = ground.roomInTheMiddle(leastPier);
  if (panel + 2 * leastOpening > room)
    return tooNarrow("panel", room - 2 * leastOpening, units);
  if (2 * width + panel > room)
    return tooNarrow("window", (room - panel) / 2, units);
  const Interval between{from, from + panel};
  return FramedAs{{openingOf(OpeningKind::Window, {between.from - width, between.from}, windowSill, windowHead),
                   openingOf(OpeningKind::Window, {between.to, between.to + width}, windowSill, windowHead)},
                  {between}};
}

Result<FramedAs> framedAs(const Starter& starter, const Ground& ground, Lengths lengths, LengthStyle units) {
  if (starter.key == "two-piers")
    return oneOpening(OpeningKind::GarageDoor, ground, lengths, units);
  if (starter.key == "door")
    return oneOpening(OpeningKind::Door, ground, lengths, units);
  if (starter.key == "narrow-panel")
    return twoWindows(ground, lengths, units);
  return FramedAs{};
}

std::optional<Problem> lengthProblem(const Starter& starter, Lengths lengths, bool outline) {
  for (std::size_t i = outline ? 0 : kOutlineLengths; i < starter.lengths.size(); ++i) {
    const StarterLength& asked = starter.lengths[i];
    if (!lengths[i] && asked.usual)
      return Problem{asked.key, "is not given"};
    if (lengths[i] && !(*lengths[i] > 0))
      return Problem{asked.key, "is longer than nothing"};
  }
  return std::nullopt;
}

Result<Job> withOutline(const Job& job, double front, double side) {
  const auto bounds = planBounds(job);
  const double x = bounds ? bounds->second.x + besideOthers : 0, y = bounds ? bounds->first.y : 0;
  const Point2 corners[] = {{x, y}, {x + front, y}, {x + front, y + side}, {x, y + side}};
  return addOutline(job, corners, wallToDraw(job));
}

// Straps where the marks call for them, bolts in the sills.
Result<Job> withHardware(const Job& job, Id wall) {
  const WallLayout layout = layOut(job, job.walls.findPointer(wall));
  const ResolvedLimits limits = resolve(*job.limits);
  RefitWishes wishes;
  wishes.boltToAdd = boltToAdd(job, layout);
  const auto answer = refit(layout, limits, wishes);
  if (!answer)
    return answer.problem();
  if (const NoLayout* none = std::get_if<NoLayout>(&*answer))
    return Problem{"wall " + layout.wall->mark,
                   "cannot be laid out: " + requirementWords(layout, limits, none->requirements.front(), job.units)};
  std::vector<PieceChange> changes;
  for (const Change& change : std::get<Proposal>(*answer).changes)
    changes.push_back({change.before, change.after});
  return changePieces(job, wall, changes);
}

std::optional<Problem> firstFix(const Job& job, std::span<const Id> walls) {
  const ResolvedLimits limits = resolve(*job.limits);
  for (const Id wall : walls) {
    const WallLayout layout = layOut(job, job.walls.findPointer(wall));
    for (const Finding& finding : checkWall(layout, limits))
      if (finding.level == Level::Fix)
        return Problem{"wall " + layout.wall->mark, message(job, finding)};
  }
  return std::nullopt;
}

} // namespace

std::span<const Starter> starters() {
  static const std::vector<Starter> all = makeStarters();
  return all;
}

bool isBlank(const WallLine& wall) {
  return wall.sills.empty() && wall.openings.empty() && wall.columns.empty() && wall.panels.empty() &&
         wall.straps.empty() && wall.bolts.empty() && wall.rods.empty();
}

Result<Started> start(const Job& job, const Starter& starter, Lengths lengths, Id onto) {
  if (auto problem = lengthProblem(starter, lengths, !onto))
    return *problem;
  const Result<Job> drawn = onto ? Result<Job>(job) : withOutline(job, *lengths[0], *lengths[1]);
  if (!drawn)
    return drawn.problem();
  Job next = *drawn;
  std::vector<Id> walls;
  for (std::size_t i = onto ? 0 : job.walls.size(); i < next.walls.size(); ++i)
    if (!onto || next.walls[i].id == onto)
      walls.push_back(next.walls[i].id);
  for (const Id wall : walls) {
    const WallLine& line = *next.walls.find(wall);
    const Ground ground{wallLength(next, line), line.wallHeight, framingOf(next, line)};
    const Result<FramedAs> as = wall == walls.front() ? framedAs(starter, ground, lengths, job.units) : FramedAs{};
    if (!as)
      return as.problem();
    next = framed(next, wall, *as);
  }
  for (const Id wall : walls) {
    Result<Job> laid = withHardware(next, wall);
    if (!laid)
      return laid.problem();
    next = *std::move(laid);
  }
  if (auto problem = firstFix(next, walls))
    return *problem;
  return Started{std::move(next), walls.front()};
}

} // namespace sillwright
