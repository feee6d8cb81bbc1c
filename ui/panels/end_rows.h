// The rows of the wall-end schedule: every panel end of the job, or those that are let through, wall by wall or sorted.
// Wall by wall they are counted, not stored, and the ends of a wall are worked out when they are asked for: one wall
// changes in the logarithm of the number of walls.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <unordered_map>
#include <vector>

#include "core/gesture/wall_ends.h"
#include "ui/panels/finding_rows.h"

namespace sillwright {

class EndRows {
public:
  using Lets = std::function<bool(const WallEnd&)>;
  using Before = std::function<bool(const WallEnd&, const WallEnd&)>;
  struct Row {
    std::shared_ptr<const CheckedWall> wall;
    const WallEnd* end = nullptr; // as long as the wall does not change
    std::size_t of = 0;           // its number among all ends of the wall
  };
  // What a changed wall does to the rows.
  struct Change {
    bool all = false; // every row may be another one
    int first = 0;    // else these stay, with other words …
    int kept = 0;
    int gone = 0; // … and behind them these went or came
    int come = 0;
    std::vector<int> rows; // where they are sorted: which have other words
  };

  // only: of that wall alone; empty: of all. lets, before: missing, every end in the order of the walls.
  void reset(const Job& job, const Checker& checker, Id only, Lets lets, Before before);
  int size() const { return before_ ? static_cast<int>(order_.size()) : counts_.total(); }
  int all() const { return all_; } // ends of the job, shown or not
  std::optional<Row> row(int at) const;
  // Rows of a wall that hold what is asked for, the first of them; -1 where none does.
  int rowOf(Id wall, const std::function<bool(const WallEnd&)>& holds) const;
  bool knows(const Job& job, Id wall) const;
  // What would change; take() does it.
  Change changeOf(Id wall, const std::shared_ptr<const CheckedWall>& now) const;
  void take(Id wall, std::shared_ptr<const CheckedWall> now);
  // Walls whose ends were worked out so far: tests watch it.
  int looked() const { return looked_; }

private:
  struct Entry {
    std::shared_ptr<const CheckedWall> wall;
    mutable std::optional<std::vector<WallEnd>> ends;
    std::vector<std::size_t> shown; // where not all are: which
    std::vector<int> rows;          // where they are sorted: of those shown
  };
  const std::vector<WallEnd>& endsOf(const Entry& entry) const;
  std::vector<std::size_t> shownOf(const CheckedWall& wall, const std::vector<WallEnd>& ends) const;
  int countOf(const Entry& entry) const;
  void sort();

  std::vector<Entry> walls_;
  std::unordered_map<Id, std::size_t> places_;
  RunningCounts counts_;
  std::vector<std::pair<std::size_t, std::size_t>> order_; // wall, number among its shown
  Id only_;
  Lets lets_;
  Before before_;
  int all_ = 0;
  mutable int looked_ = 0;
};

} // namespace sillwright
