// Which walls lie where in plan: boxes by grid square, so that painting a part looks at that part only. Inches.
#pragma once

#include <cstdint>
#include <functional>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "core/base/ids.h"
#include "core/drawing/drawing.h"

namespace sillwright {

class PlanGrid {
public:
  // Puts a wall where it is now; a wall already there moves.
  void set(Id wall, const Bounds& box);
  void remove(Id wall);
  void clear();
  // Walls whose box touches `window`, by rising id, each once.
  std::vector<Id> inside(const Bounds& window) const;
  bool touches(Id wall, const Bounds& window) const;
  std::size_t size() const { return boxes_.size(); }

private:
  void forSquares(const Bounds& box, const std::function<void(std::uint64_t)>& visit) const;
  static bool isLarge(const Bounds& box);

  std::unordered_map<Id, Bounds> boxes_;
  std::unordered_map<std::uint64_t, std::vector<Id>> squares_;
  std::unordered_set<Id> large_; // over too many squares to list
};

} // namespace sillwright
