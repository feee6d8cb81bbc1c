#include "core/rules/measure.h"

#include <algorithm>
#include <cmath>

namespace sillwright {

namespace {

constexpr double farthestMove = 6;

bool shorter(double a, double b) {
  return std::abs(a) < std::abs(b);
}

} // namespace

Draft& report(Drafts& drafts, const WallLayout& layout, RuleId rule, Level level, std::initializer_list<Id> pieces,
              const Shortfall& shortfall) {
  Finding finding;
  finding.rule = rule;
  finding.level = level;
  finding.ruleLevel = level;
  finding.wall = layout.wall->id;
  finding.pieces = pieces;
  finding.measured = shortfall.measured;
  finding.limit = shortfall.limit;
  finding.unit = shortfall.unit;
  finding.wanted = shortfall.wanted;
  finding.region = shortfall.region;
  finding.variant = shortfall.variant;
  return drafts.emplace_back(Draft{std::move(finding), {}});
}

double byToMark(double value, double by) {
  const double marks = (value + by) / tolerance::tapeMark;
  const double slack = tolerance::same / tolerance::tapeMark;
  const double mark = by > 0 ? std::ceil(marks - slack) : std::floor(marks + slack);
  return mark * tolerance::tapeMark - value;
}

Correction move(Id piece, Correction::Field field, double value, double by) {
  return {field, piece, byToMark(value, by)};
}

double ownOr(const ResolvedLimits& limits, LimitKey key, double ofType) {
  return limits.overridden[static_cast<std::size_t>(key)] ? limits[key] : ofType;
}

Interval betweenValues(double a, double b) {
  return {std::min(a, b), std::max(a, b)};
}

Box3 overlapOf(const Box3& a, const Box3& b) {
  return {overlap(a.s, b.s), overlap(a.d, b.d), overlap(a.z, b.z)};
}

Box3 between(const Box3& a, const Box3& b) {
  const Box3 common = overlapOf(a, b);
  return {betweenValues(common.s.from, common.s.to), betweenValues(common.d.from, common.d.to),
          betweenValues(common.z.from, common.z.to)};
}

double planGap(const Box3& a, const Box3& b) {
  const double along = gap(a.s, b.s);
  const double across = gap(a.d, b.d);
  if (along > 0 && across > 0)
    return std::hypot(along, across);
  return std::max(along, across);
}

bool apart(const Box3& a, const Box3& b, double by) {
  return over(std::max({gap(a.s, b.s), gap(a.d, b.d), gap(a.z, b.z)}), std::max(by, tolerance::same));
}

bool belowFoot(const WallLayout& layout, const AnchorBody& bolt, const Box3& wood) {
  const double bearing = bolt.sillPiece ? layout.sills[*bolt.sillPiece].box.z.to : bolt.pour;
  const double washer = bolt.washerBox ? bolt.washerBox->z.to : bearing;
  return under(std::max({bolt.top, bearing, washer}), wood.z.from);
}

std::vector<double> movesUntilClear(double value, const std::function<bool(double)>& isClear) {
  std::vector<double> moves;
  for (const double side : {-1.0, 1.0}) {
    int near = 0; // sixteenths: not clear there
    int far = static_cast<int>(farthestMove / tolerance::tapeMark);
    const auto at = [&](int marks) { return byToMark(value, side * marks * tolerance::tapeMark); };
    if (!isClear(at(far)))
      continue;
    while (far - near > 1) {
      const int middle = (near + far) / 2;
      (isClear(at(middle)) ? far : near) = middle;
    }
    moves.push_back(at(far));
  }
  std::stable_sort(moves.begin(), moves.end(), shorter);
  return moves;
}

std::vector<Correction> movesApart(Id piece, double station, Interval piecesOwn, Interval obstacle, double apart) {
  std::vector<double> moves{byToMark(station, obstacle.from - apart - piecesOwn.to),
                            byToMark(station, obstacle.to + apart - piecesOwn.from)};
  std::stable_sort(moves.begin(), moves.end(), shorter);
  std::vector<Correction> corrections;
  for (const double by : moves)
    corrections.push_back({Correction::Field::Station, piece, by});
  return corrections;
}

} // namespace sillwright
