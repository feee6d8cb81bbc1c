// Findings of a whole job, kept up to date: only walls whose inputs changed are checked again.
#pragma once

#include <memory>
#include <unordered_map>
#include <vector>

#include "core/model/layout.h"
#include "core/rules/rule_book.h"

namespace sillwright {

struct Counts {
  int fix = 0;
  int ask = 0;
  int watch = 0;
  Counts& operator+=(const Counts& o);
  Counts& operator-=(const Counts& o);
  bool operator==(const Counts&) const = default;
};
Counts countsOf(const Findings& findings);

// A wall with its layout and findings, as of one job value.
struct CheckedWall {
  WallLayout layout;
  Findings findings;
  Counts counts;
};

class Checker {
public:
  // Brings everything in line with the job; returns the walls that were checked again or are gone.
  std::vector<Id> update(const Job& job);

  // Null where there is no such wall.
  std::shared_ptr<const CheckedWall> wall(Id id) const;
  const Counts& counts() const { return counts_; }
  // How many walls the last update checked: tests watch that it does not grow with the job.
  std::size_t lastChecked() const { return lastChecked_; }

private:
  struct Entry {
    std::shared_ptr<const WallLine> wall;
    WallPlace place;
    std::shared_ptr<const CheckedWall> checked;
  };
  void check(const Job& job, Id id, std::vector<Id>& changed);

  Job job_;
  bool started_ = false;
  ResolvedLimits limits_;
  std::unordered_map<Id, Entry> entries_;
  Counts counts_;
  std::size_t lastChecked_ = 0;
};

// A full check from nothing, wall by wall in the order of the job.
std::vector<std::shared_ptr<const CheckedWall>> checkAll(const Job& job);

} // namespace sillwright
