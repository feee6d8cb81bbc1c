#include "core/gesture/wall_pen.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/base/tolerance.h"
#include "core/geometry/wall_frame.h"
#include "core/gesture/typing.h"
#include "core/model/lookup.h"

namespace sillwright {

namespace {

constexpr double freeStep = 1.0 / 64; // what is drawn without snapping is rounded to
constexpr double beside = 120;        // in: a first corner by key stands that far beside what there is
constexpr double stub = 96;           // in: how long a wall is shown whose length has to be typed
constexpr double longest = 12000;     // in
constexpr double stillThere = 3;      // times the reach: a hand that rests moves less
constexpr double thin = 0.25;         // in: see problemOf
constexpr double closeReach = 1.6;    // the first and the last corner are easier to hit than a line

Point2 plus(Point2 p, Point2 direction, double by) {
  return {p.x + direction.x * by, p.y + direction.y * by};
}
double dot(Point2 a, Point2 b) {
  return a.x * b.x + a.y * b.y;
}
Point2 between(Point2 from, Point2 to) {
  return {to.x - from.x, to.y - from.y};
}
Point2 quarter(Point2 d) {
  return {-d.y, d.x};
}

Point2 unit(Point2 d) {
  const double length = std::hypot(d.x, d.y);
  return {d.x / length, d.y / length};
}

// The step of a tape that the hand can still tell apart at this zoom.
double roundStep(double reach) {
  for (const double step : {1.0 / 16, 1.0 / 8, 1.0 / 4, 1.0 / 2, 1.0, 3.0, 6.0})
    if (step >= reach / 4)
      return step;
  return 12;
}

std::optional<Point2> directionBefore(const WallPen& pen) {
  const std::size_t n = pen.corners.size();
  if (n < 2)
    return pen.alongFace;
  return unit(between(pen.corners[n - 2], pen.corners[n - 1]));
}

// ---- the first corner -------------------------------------------------------------------------------------------

struct OnFace {
  Point2 at;
  Point2 along;
};

std::optional<OnFace> nearestFace(const WallPen& pen, Point2 p, double reach) {
  std::optional<OnFace> found;
  double least = reach;
  for (const StandingWall& wall : pen.standing) {
    if (p.x < wall.low.x - reach || p.x > wall.high.x + reach || p.y < wall.low.y - reach || p.y > wall.high.y + reach)
      continue;
    for (std::size_t i = 0; i < wall.concrete.size(); ++i) {
      const Segment2 edge{wall.concrete[i], wall.concrete[(i + 1) % wall.concrete.size()]};
      if (distance(p, edge) >= least || distance(edge.a, edge.b) < tolerance::same)
        continue;
      least = distance(p, edge);
      const Point2 along = unit(between(edge.a, edge.b));
      const double t =
          std::clamp(roundTo(dot(between(edge.a, p), along), roundStep(reach)), 0.0, distance(edge.a, edge.b));
      found = OnFace{plus(edge.a, along, t), along};
    }
  }
  return found;
}

void aimFirst(WallPen& pen, const PointerAt& pointer) {
  pen.alongFace.reset();
  if (pointer.keys.alt) {
    pen.at = Point2{roundTo(pointer.plan.x, freeStep), roundTo(pointer.plan.y, freeStep)};
    return;
  }
  if (const auto face = nearestFace(pen, pointer.plan, pointer.reach)) {
    pen.at = face->at;
    pen.alongFace = face->along;
    pen.snap = SnapReason::WallFace;
    return;
  }
  const double step = roundStep(pointer.reach);
  Point2 to{roundTo(pointer.plan.x, step), roundTo(pointer.plan.y, step)};
  double leastX = pointer.reach, leastY = pointer.reach;
  std::optional<Point2> ofX, ofY;
  for (const Point2& corner : pen.cornersThere) {
    if (std::abs(corner.x - pointer.plan.x) < leastX) {
      leastX = std::abs(corner.x - pointer.plan.x);
      ofX = corner;
    }
    if (std::abs(corner.y - pointer.plan.y) < leastY) {
      leastY = std::abs(corner.y - pointer.plan.y);
      ofY = corner;
    }
  }
  to = {ofX ? ofX->x : to.x, ofY ? ofY->y : to.y};
  for (const auto& corner : {ofX, ofY})
    if (corner) {
      pen.inLineWith.push_back({*corner, to});
      pen.snap = SnapReason::CornerLine;
    }
  pen.at = to;
}

// ---- the next corner --------------------------------------------------------------------------------------------

// Square to the wall before and along the axes of the plan, whichever is nearest to where the pointer leads; never back
// over the wall before.
Point2 squareDirection(const WallPen& pen, Point2 wanted) {
  std::vector<Point2> allowed{{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
  const auto before = directionBefore(pen);
  if (before)
    for (const Point2 d : {*before, quarter(*before), quarter(quarter(quarter(*before)))})
      allowed.push_back(d);
  if (before && pen.corners.size() > 1)
    std::erase_if(allowed, [&](Point2 d) { return dot(d, *before) < -1 + tolerance::same; });
  return *std::max_element(allowed.begin(), allowed.end(),
                           [&](Point2 a, Point2 b) { return dot(a, wanted) < dot(b, wanted) - tolerance::same; });
}

struct Stop {
  double length = 0;
  SnapReason reason = SnapReason::None;
  std::optional<Point2> corner;
};

// Where the ray from the last corner meets the sides of the walls that stand near its wanted end.
void offerFaces(const WallPen& pen, Point2 from, double wanted, double reach, Stop& best, double& least) {
  const Point2 end = plus(from, pen.direction, wanted);
  for (const StandingWall& wall : pen.standing) {
    if (end.x < wall.low.x - reach || end.x > wall.high.x + reach || end.y < wall.low.y - reach ||
        end.y > wall.high.y + reach)
      continue;
    for (std::size_t i = 0; i < wall.concrete.size(); ++i) {
      const Point2 a = wall.concrete[i], b = wall.concrete[(i + 1) % wall.concrete.size()];
      const Point2 normal = quarter(between(a, b));
      const double across = dot(pen.direction, normal);
      if (std::abs(across) < 1e-6 * std::hypot(normal.x, normal.y))
        continue;
      const double t = dot(between(from, a), normal) / across;
      if (std::abs(t - wanted) < least && distance(plus(from, pen.direction, t), Segment2{a, b}) < tolerance::same) {
        least = std::abs(t - wanted);
        best = {t, SnapReason::WallFace, {}};
      }
    }
  }
}

Stop stopNear(const WallPen& pen, Point2 from, double wanted, double reach) {
  Stop best{roundTo(wanted, roundStep(reach)), SnapReason::None, {}};
  double least = reach;
  double off = std::numeric_limits<double>::infinity(); // of that corner from the ray: of several in line the nearest
  const auto offer = [&](Point2 corner) {
    const double along = dot(between(from, corner), pen.direction);
    const double away = std::abs(dot(between(from, corner), quarter(pen.direction)));
    const double miss = std::abs(along - wanted);
    if (along > tolerance::tapeMark &&
        (miss < least - tolerance::same || (miss < least + tolerance::same && away < off))) {
      least = std::min(least, miss);
      off = away;
      best = {along, SnapReason::CornerLine, corner};
    }
  };
  for (std::size_t i = 0; i + 1 < pen.corners.size(); ++i)
    offer(pen.corners[i]);
  for (const Point2& corner : pen.cornersThere)
    offer(corner);
  offerFaces(pen, from, wanted, reach, best, least);
  return best;
}

std::optional<double> typedLength(const WallPen& pen) {
  const auto length = pen.typed.empty() ? Result<double>(Problem{}) : parseLength(pen.typed, pen.blank.units);
  return length && *length >= tolerance::tapeMark && *length <= longest ? std::optional(*length) : std::nullopt;
}

void aimNext(WallPen& pen, const PointerAt& pointer) {
  const Point2 last = pen.corners.back();
  const Point2 wanted = between(last, pointer.plan);
  const double away = std::hypot(wanted.x, wanted.y);
  const bool typing = !pen.typed.empty();
  if (!typing && pen.corners.size() >= 3 && distance(pointer.plan, pen.corners.front()) < pointer.reach * closeReach) {
    pen.closes = true;
    pen.snap = SnapReason::FirstCorner;
    pen.at = pen.corners.front();
    return;
  }
  if (!typing && away < pointer.reach) {
    pen.ends = pen.corners.size() >= 2;
    pen.snap = pen.ends ? SnapReason::LastCorner : SnapReason::None;
    pen.at = last;
    return;
  }
  if (away >= tolerance::tapeMark)
    pen.direction = pointer.keys.alt ? unit(wanted) : squareDirection(pen, wanted);
  if (typing) {
    pen.at = plus(last, pen.direction, typedLength(pen).value_or(stub));
  } else if (pointer.keys.alt) {
    pen.at = plus(last, pen.direction, std::max(roundTo(away, freeStep), tolerance::tapeMark));
  } else {
    const Stop stop = stopNear(pen, last, std::max(dot(wanted, pen.direction), tolerance::tapeMark), pointer.reach);
    pen.at = plus(last, pen.direction, std::max(stop.length, tolerance::tapeMark));
    pen.snap = stop.reason;
    if (stop.corner && distance(*stop.corner, *pen.at) > tolerance::same)
      pen.inLineWith.push_back({*stop.corner, *pen.at});
  }
}

// ---- what is drawn, as walls ------------------------------------------------------------------------------------

std::vector<StandingWall> drawn(const WallPen& pen, std::span<const Point2> corners, bool closed) {
  const auto made = addWalls(pen.blank, corners, closed, pen.like);
  std::vector<StandingWall> walls;
  if (made)
    for (const Id id : made->walls)
      walls.push_back(standing(made->job, *made->job.walls.find(id)));
  return walls;
}

std::vector<Point2> withHand(const WallPen& pen) {
  std::vector<Point2> chain = pen.corners;
  if (pen.at && !pen.closes && (chain.empty() || distance(chain.back(), *pen.at) > tolerance::same))
    chain.push_back(*pen.at);
  return chain;
}

std::string clashWords(const WallPen& pen, const PlanClash& clash) {
  std::string other;
  for (const StandingWall& wall : pen.standing)
    if (wall.id == clash.other)
      other = wall.mark;
  switch (clash.kind) {
  case PlanClash::Kind::Crosses:
    return other.empty() ? "the outline would cross itself" : "it would cross wall " + other;
  case PlanClash::Kind::LiesOver:
    return other.empty() ? "two of its walls would lie over each other" : "it would lie over wall " + other;
  case PlanClash::Kind::FoldsBack:
    return "it would fold back onto the wall before";
  case PlanClash::Kind::InsideOut:
    break;
  }
  return "it encloses nothing";
}

// While walls are still to come, nobody knows on which side of its line the concrete will be: then only the line itself
// must stand clear.
std::string problemOf(const WallPen& pen, std::span<const Point2> corners, bool closed, bool whole) {
  WallLine like = pen.like;
  like.thickness = whole ? like.thickness : thin;
  const auto made = addWalls(pen.blank, corners, closed, like);
  if (!made)
    return corners.size() < 3 && closed ? "an outline needs three corners" : made.problem().message;
  const auto clash = clashIn(made->job, made->walls, pen.standing);
  return clash ? clashWords(pen, *clash) : std::string();
}

// The direction is chosen, but not yet how long the wall is.
bool lengthOpen(const WallPen& pen) {
  return !pen.corners.empty() && !typedLength(pen) && (!pen.typed.empty() || !pen.pointer);
}

// A typed length that ends at the first corner closes the outline.
void closeWhereTyped(WallPen& pen) {
  if (pen.corners.size() < 3 || !pen.at || !typedLength(pen) ||
      distance(*pen.at, pen.corners.front()) >= tolerance::tapeMark)
    return;
  pen.closes = true;
  pen.snap = SnapReason::FirstCorner;
  pen.at = pen.corners.front();
}

// After the place in hand changed.
void judge(WallPen& pen) {
  const std::vector<Point2> chain = withHand(pen);
  pen.problem = chain.size() < 2 || lengthOpen(pen) ? std::string() : problemOf(pen, chain, pen.closes, pen.closes);
}

void clearHand(WallPen& pen) {
  pen.at.reset();
  pen.closes = pen.ends = false;
  pen.snap = SnapReason::None;
  pen.inLineWith.clear();
  pen.problem.clear();
}

// The place in hand, after what was drawn or typed so far changed.
void aimAgain(WallPen& pen) {
  clearHand(pen);
  if (pen.pointer && pen.corners.empty())
    aimFirst(pen, *pen.pointer);
  else if (pen.pointer)
    aimNext(pen, *pen.pointer);
  else if (!pen.corners.empty())
    pen.at = plus(pen.corners.back(), pen.direction, typedLength(pen).value_or(stub));
  closeWhereTyped(pen);
  judge(pen);
}

} // namespace

WallPen penFor(const Job& job, Id like) {
  WallPen pen;
  follow(pen, job, like);
  return pen;
}

void follow(WallPen& pen, const Job& job, Id like) {
  pen.blank = Job{};
  pen.blank.units = job.units;
  pen.blank.nextId = job.nextId;
  pen.like = wallToDraw(job, like);
  pen.standing = standingBut(job, {});
  pen.cornersThere.clear();
  for (const Corner& corner : *job.corners)
    pen.cornersThere.push_back(corner.at);
  const auto box = bounds(pen.cornersThere);
  pen.start = box ? Point2{box->second.x + beside, box->first.y} : Point2{};
}

void refuse(WallPen& pen, std::string why) {
  pen.refused = std::move(why);
  pen.refusedAt = pen.pointer ? pen.pointer->plan : Point2{};
}

void aim(WallPen& pen, const PointerAt& pointer) {
  if (distance(pointer.plan, pen.refusedAt) > stillThere * pointer.reach)
    pen.refused.clear();
  pen.pointer = pointer;
  aimAgain(pen);
}

void aim(WallPen& pen, Point2 arrow, double step) {
  const Point2 at = pen.at.value_or(pen.start);
  pen.refused.clear();
  pen.pointer.reset();
  if (!pen.corners.empty()) {
    pen.direction = unit(arrow);
    return aimAgain(pen);
  }
  clearHand(pen);
  pen.alongFace.reset();
  pen.at = Point2{at.x + arrow.x * step, at.y + arrow.y * step};
}

bool typeAt(WallPen& pen, char32_t key) {
  pen.refused.clear();
  if (key == U'\b' && pen.typed.empty())
    return takeCornerBack(pen);
  if (key == U'\b')
    dropLast(pen.typed);
  else if (!pen.corners.empty() && isOfLength(pen.typed, key))
    pen.typed += utf8(key);
  else
    return false;
  aimAgain(pen);
  return true;
}

bool setCorner(WallPen& pen) {
  if (!pen.typed.empty() && !typedLength(pen)) {
    const auto length = parseLength(pen.typed, pen.blank.units);
    refuse(pen, !length             ? length.problem().text()
                : *length > longest ? "a wall is not longer than 1,000 feet"
                                    : "a wall is longer than nothing");
    return false;
  }
  if (!pen.at && pen.corners.empty())
    pen.at = pen.start;
  if (!pen.at || !pen.problem.empty() || pen.closes || pen.ends || lengthOpen(pen))
    return false;
  if (!pen.corners.empty() && distance(pen.corners.back(), *pen.at) < tolerance::tapeMark)
    return false;
  pen.corners.push_back(*pen.at);
  pen.typed.clear();
  pen.refused.clear();
  aimAgain(pen);
  return true;
}

bool takeCornerBack(WallPen& pen) {
  if (pen.corners.empty())
    return false;
  pen.corners.pop_back();
  pen.typed.clear();
  if (pen.corners.empty())
    pen.alongFace.reset();
  aimAgain(pen);
  return true;
}

Result<AddedWalls> finished(const WallPen& pen, const Job& job, bool closed) {
  const std::string problem = problemOf(pen, pen.corners, closed, true);
  if (!problem.empty())
    return Problem{"outline", problem};
  return addWalls(job, pen.corners, closed, pen.like);
}

ShownPen shownOf(const WallPen& pen) {
  ShownPen shown;
  shown.units = pen.blank.units;
  shown.corners = pen.corners;
  shown.at = pen.at;
  const std::vector<Point2> chain = withHand(pen);
  if (chain.size() >= 2)
    for (const StandingWall& wall : drawn(pen, chain, pen.closes))
      shown.concrete.push_back(wall.concrete);
  shown.inLineWith = pen.inLineWith;
  shown.closes = pen.closes;
  shown.ends = pen.ends;
  shown.lengthOpen = lengthOpen(pen);
  const auto before = directionBefore(pen);
  shown.squareBefore = before && !pen.corners.empty() && pen.at && !pen.closes && !pen.ends &&
                       std::abs(dot(*before, pen.direction)) < tolerance::same;
  shown.words = pen.closes ? "click to close the outline"
                : pen.ends ? "click to leave it open here"
                           : std::string(words(pen.snap));
  shown.typed = pen.typed;
  shown.problem = pen.refused.empty() ? pen.problem : pen.refused;
  return shown;
}

} // namespace sillwright
