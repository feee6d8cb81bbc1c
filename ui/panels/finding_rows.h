// The order of the punch list: every finding of the job, worst level first, then by wall in the job's order, then as the
// checker sorted them. Rows are counted, not stored: one wall changes in the logarithm of the number of walls.
#pragma once

#include <array>
#include <memory>
#include <optional>
#include <unordered_map>
#include <vector>

#include "core/rules/checker.h"

namespace sillwright {

// Counts with running sums in logarithmic time.
class RunningCounts {
public:
  explicit RunningCounts(std::size_t size = 0) : tree_(size + 1, 0), counts_(size, 0) {}
  int at(std::size_t i) const { return counts_[i]; }
  void set(std::size_t i, int count);
  int before(std::size_t i) const; // sum of all before i
  int total() const { return before(counts_.size()); }
  // The place a running number falls into. Precondition: 0 <= number < total().
  std::size_t placeOf(int number) const;

private:
  std::vector<int> tree_;
  std::vector<int> counts_;
};

using LevelSet = std::array<bool, 3>; // by Level

// Which findings are let through.
struct FindingFilter {
  LevelSet levels{true, true, true};
  Id wall;                    // empty: of all walls
  std::optional<RuleId> rule; // missing: of all rules
  bool lets(const Finding& finding) const { return !rule || finding.rule == *rule; }
};

class FindingRows {
public:
  struct Row {
    std::shared_ptr<const CheckedWall> wall;
    std::size_t index = 0; // into its findings
    const Finding& finding() const { return wall->findings[index]; }
  };
  struct Change {
    enum class Kind { Removed, Inserted, Changed } kind;
    int first = 0;
    int count = 0;
  };

  void reset(const Job& job, const Checker& checker, const FindingFilter& shown);
  // How many findings of the job each rule has, shown or not; by RuleId.
  const std::vector<int>& byRule() const { return byRule_; }
  int size() const;
  std::optional<Row> row(int at) const;
  // The row of a finding of a wall; -1 where it is not shown.
  int rowOf(Id wall, std::size_t index) const;
  // Whether the wall is known at its place; if not, reset is called for.
  bool knows(const Job& job, Id wall) const;
  // Takes over one wall in steps: the step is announced, then made, then ended, so that rows are right in between.
  template <class Announce, class End>
  void update(Id wall, std::shared_ptr<const CheckedWall> now, Announce&& announce, End&& end) {
    const std::size_t at = places_.at(wall);
    const std::array<int, 3> after = countsBy(wall, now.get());
    countRules(walls_[at].get(), -1);
    countRules(now.get(), 1);
    for (std::size_t level = 0; level < 3; ++level)
      if (const int gone = counts_[level].at(at) - shownOf(level, after); gone > 0)
        step({Change::Kind::Removed, firstRow(level, at) + shownOf(level, after), gone}, level, at,
             shownOf(level, after), announce, end);
    walls_[at] = std::move(now);
    for (std::size_t level = 0; level < 3; ++level) {
      const int kept = counts_[level].at(at);
      if (const int more = shownOf(level, after) - kept; more > 0)
        step({Change::Kind::Inserted, firstRow(level, at) + kept, more}, level, at, kept + more, announce, end);
      if (kept > 0)
        end(Change{Change::Kind::Changed, firstRow(level, at), kept});
    }
  }

private:
  // What the filter lets through of a wall, its levels aside.
  std::array<int, 3> countsBy(Id id, const CheckedWall* wall) const;
  void countRules(const CheckedWall* wall, int times);
  int shownOf(std::size_t level, const std::array<int, 3>& counts) const {
    return shown_.levels[level] ? counts[level] : 0;
  }
  int firstRow(std::size_t level, std::size_t wall) const;
  template <class Announce, class End>
  void step(Change change, std::size_t level, std::size_t at, int count, Announce&& announce, End&& end) {
    announce(change);
    counts_[level].set(at, count);
    end(change);
  }

  std::vector<std::shared_ptr<const CheckedWall>> walls_;
  std::unordered_map<Id, std::size_t> places_;
  std::array<RunningCounts, 3> counts_;
  FindingFilter shown_;
  std::vector<int> byRule_;
};

} // namespace sillwright
