// What one rule says of the wall in question, compared with values typed from a document or worked by hand.
#pragma once

#include <cmath>
#include <sstream>

#include "sill_wall.h"

namespace sillwright::published {

inline constexpr double sixteenth = 1.0 / 16;

struct Said {
  Level level = Level::Fix;
  double measured = 0;
  double limit = 0;
  Box3 region{};
};

// The wall in question changed.
template <class Change> Job with(Job job, Change&& change) {
  WallLine wall = job.walls[0];
  change(job, wall);
  job.walls.replace(wall);
  return job;
}

inline std::string text(const Said& said) {
  std::ostringstream out;
  out.precision(10);
  out << "level " << static_cast<int>(said.level) << ", " << said.measured << " against " << said.limit << " at";
  for (const Interval side : {said.region.s, said.region.d, said.region.z})
    out << " [" << side.from << ", " << side.to << "]";
  return out.str();
}

inline Said saidOf(const Finding& f) {
  return {f.level, f.measured, f.limit, f.region};
}

inline bool alike(const Said& a, const Said& b, double within) {
  const auto near = [](double x, double y, double by) { return std::abs(x - y) <= by; };
  const auto same = [&](Interval x, Interval y) { return near(x.from, y.from, 1e-9) && near(x.to, y.to, 1e-9); };
  return a.level == b.level && near(a.measured, b.measured, within) && near(a.limit, b.limit, 1e-9) &&
         same(a.region.s, b.region.s) && same(a.region.d, b.region.d) && same(a.region.z, b.region.z);
}

inline testing::AssertionResult silent(const Job& job, RuleId id) {
  for (const Finding& finding : findingsOf(job, id))
    return testing::AssertionFailure() << rule(id).name << " says " << text(saidOf(finding));
  return testing::AssertionSuccess();
}

// The rule says this and nothing else; the measured value may be off by `within`.
inline testing::AssertionResult says(const Job& job, RuleId id, const Said& expected, double within = 1e-9) {
  const Findings found = findingsOf(job, id);
  if (found.size() == 1 && alike(saidOf(found[0]), expected, within))
    return testing::AssertionSuccess();
  auto failure = testing::AssertionFailure() << rule(id).name << " says " << found.size() << " things:";
  for (const Finding& finding : found)
    failure << "\n  " << text(saidOf(finding));
  return failure << "\nexpected\n  " << text(expected);
}

} // namespace sillwright::published
