// Brute force beside the rules: sampling, and the findings of one rule taken one by one by what brute force says.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>

#include "core/model/lookup.h"
#include "core/rules/rule_book.h"

namespace sillwright::brute_force {

inline constexpr double tiny = 1e-5;
inline constexpr double every = 0.125; // in between samples of an axis: the least distance is at most half of that less

struct Bracket { // the true measure lies between
  double least = 1e9;
  double most = 1e9;
};

inline double squared(double x) { return x * x; }
inline double beyond(double x, double half) { return std::max(0.0, std::abs(x) - half); }

inline double toSegment(const Point3& p, const Point3& a, const Point3& b) {
  const double s = b.s - a.s, d = b.d - a.d, z = b.z - a.z, length = s * s + d * d + z * z;
  const double along = (p.s - a.s) * s + (p.d - a.d) * d + (p.z - a.z) * z;
  const double t = length > 0 ? std::clamp(along / length, 0.0, 1.0) : 0;
  return std::sqrt(squared(p.s - a.s - t * s) + squared(p.d - a.d - t * d) + squared(p.z - a.z - t * z));
}

// Least of f over the points of an axis, sampled; f falls and rises no faster than the point moves.
template <class F> Bracket sampled(const Point3& a, const Point3& b, const F& f) {
  const double length = std::sqrt(squared(b.s - a.s) + squared(b.d - a.d) + squared(b.z - a.z));
  const int steps = std::max(1, static_cast<int>(std::ceil(length / every)));
  double least = 1e9;
  for (int i = 0; i <= steps; ++i) {
    const double t = static_cast<double>(i) / steps;
    least = std::min(least, f(Point3{a.s + t * (b.s - a.s), a.d + t * (b.d - a.d), a.z + t * (b.z - a.z)}));
  }
  return {least - every / 2, least};
}

inline Bracket nearer(Bracket a, Bracket b) { return {std::min(a.least, b.least), std::min(a.most, b.most)}; }
inline Bracket less(Bracket a, double by) { return {a.least - by, a.most - by}; }

inline bool meet(Interval a, Interval b) { return a.from <= b.to + tiny && b.from <= a.to + tiny; }
inline bool meet(const Box3& a, const Box3& b) { return meet(a.s, b.s) && meet(a.d, b.d) && meet(a.z, b.z); }
inline bool within(Interval a, Interval b) { return a.from >= b.from - tiny && a.to <= b.to + tiny; }

inline Bracket exactly(double value) {
  return {value, value};
}

struct Rectangle {
  double left, right, outer, inner;
};
inline Rectangle inPlan(const Box3& box) {
  return {box.s.from, box.s.to, box.d.from, box.d.to};
}
inline bool overlaps(const Rectangle& a, const Rectangle& b) {
  return a.left < b.right - tiny && b.left < a.right - tiny && a.outer < b.inner - tiny && b.outer < a.inner - tiny;
}

// Overlapping: the shorter side of what they have in common, seen on a grid; else how far apart the nearest points of
// their sampled outlines are.
inline Bracket clearInPlan(const Rectangle& a, const Rectangle& b) {
  constexpr double step = 1.0 / 64;
  if (overlaps(a, b)) {
    const auto common = [](double from, double to, double otherFrom, double otherTo) {
      int inside = 0;
      for (double at = from + step / 2; at < to; at += step)
        inside += at > otherFrom && at < otherTo;
      return inside * step;
    };
    const double side = std::min(common(a.left, a.right, b.left, b.right), common(a.outer, a.inner, b.outer, b.inner));
    return {-side - 2 * step, -side + 2 * step};
  }
  double least = 1e9;
  const auto look = [&](double s, double d) {
    const double offS = std::max({0.0, b.left - s, s - b.right}), offD = std::max({0.0, b.outer - d, d - b.inner});
    least = std::min(least, std::hypot(offS, offD));
  };
  constexpr int samples = 256;
  for (int i = 0; i <= samples; ++i) {
    const double t = static_cast<double>(i) / samples;
    look(a.left + t * (a.right - a.left), a.outer);
    look(a.left + t * (a.right - a.left), a.inner);
    look(a.left, a.outer + t * (a.inner - a.outer));
    look(a.right, a.outer + t * (a.inner - a.outer));
  }
  return {least - std::max(a.right - a.left, a.inner - a.outer) / samples, least};
}

// The findings of one rule on one wall, taken one by one by what brute force says of each pair or piece.
class Found {
public:
  Found(RuleId id, const WallLayout& wall, const ResolvedLimits& limits) : id_(id) {
    rule(id).check(wall, limits, found_);
  }

  // The finding that names these pieces, in any order; of several the one that measures most like it.
  const Finding* take(std::initializer_list<Id> pieces, Bracket measure) {
    const auto off = [&](const Finding& f) {
      return std::max({0.0, measure.least - f.measured, f.measured - measure.most});
    };
    std::optional<std::size_t> best;
    for (std::size_t i = 0; i < found_.size(); ++i)
      if (!taken_.count(i) && found_[i].finding.pieces.size() == pieces.size() &&
          std::is_permutation(pieces.begin(), pieces.end(), found_[i].finding.pieces.begin()) &&
          (!best || off(found_[i].finding) < off(found_[*best].finding)))
        best = i;
    if (!best)
      return nullptr;
    taken_.insert(*best);
    return &found_[*best].finding;
  }

  // The finding that names these pieces and measures this; one that measures anything else stays.
  const Finding* takeExactly(std::initializer_list<Id> pieces, double measure) {
    const auto before = taken_;
    const Finding* finding = take(pieces, {measure, measure});
    if (finding && std::abs(finding->measured - measure) <= tiny)
      return finding;
    taken_ = before;
    return nullptr;
  }

  // Wanted: at least so much. Returns the finding where there is one.
  const Finding* expectUnder(std::initializer_list<Id> pieces, Bracket measure, double limit) {
    const Finding* finding = take(pieces, measure);
    const auto about = [&] { return std::string(rule(id_).name) + " of " + std::to_string(pieces.begin()->value); };
    if (measure.most < limit - tiny) { // braces: expectations are statements with an else of their own
      EXPECT_NE(finding, nullptr) << about() << ": " << measure.most << " under " << limit << " is not told";
    }
    if (measure.least > limit + tiny) {
      EXPECT_EQ(finding, nullptr) << about() << ": " << measure.least << " is enough of " << limit;
    }
    if (finding) {
      EXPECT_GE(finding->measured, measure.least - tiny) << about();
      EXPECT_LE(finding->measured, measure.most + tiny) << about();
      ++told[id_];
    }
    return finding;
  }

  // Wanted: at most so much.
  const Finding* expectOver(std::initializer_list<Id> pieces, Bracket measure, double limit) {
    const auto about = [&] { return std::string(rule(id_).name) + " of " + std::to_string(pieces.begin()->value); };
    if (measure.most <= limit + tiny)
      return nullptr; // a finding all the same is left over at the end
    const Finding* finding = take(pieces, measure);
    if (measure.least > limit + tiny) {
      EXPECT_NE(finding, nullptr) << about() << ": " << measure.least << " over " << limit << " is not told";
    }
    if (finding) {
      EXPECT_GE(finding->measured, measure.least - tiny) << about();
      EXPECT_LE(finding->measured, measure.most + tiny) << about();
      ++told[id_];
    }
    return finding;
  }

  void expectNoMore() const { EXPECT_EQ(taken_.size(), found_.size()) << rule(id_).name; }

  static inline std::map<RuleId, int> told;

private:
  RuleId id_;
  Drafts found_;
  std::set<std::size_t> taken_;
};

inline void expectBetween(const Finding* finding, const Box3& a, const Box3& b) {
  if (!finding)
    return;
  EXPECT_TRUE(meet(finding->region, a) && meet(finding->region, b)) << rule(finding->rule).name;
  EXPECT_TRUE(within(finding->region.s, hull(a.s, b.s)) && within(finding->region.d, hull(a.d, b.d)) &&
              within(finding->region.z, hull(a.z, b.z)))
      << rule(finding->rule).name;
}

} // namespace sillwright::brute_force
