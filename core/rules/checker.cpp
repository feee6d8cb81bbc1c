#include "core/rules/checker.h"

#include <algorithm>
#include <set>

#include "core/model/lookup.h"

namespace sillwright {

namespace {

std::shared_ptr<const CheckedWall> checkedWall(WallLayout layout, const ResolvedLimits& limits) {
  auto checked = std::make_shared<CheckedWall>();
  checked->layout = std::move(layout);
  checked->findings = checkWall(checked->layout, limits);
  checked->counts = countsOf(checked->findings);
  return checked;
}

void addAtCorners(const WallList& walls, const WallLine& wall, std::set<Id>& ids) {
  for (const Id corner : {wall.startCorner, wall.endCorner})
    for (const Id id : walls.atCorner(corner))
      ids.insert(id);
}

std::vector<Id> movedCorners(const std::vector<Corner>& before, const std::vector<Corner>& after) {
  std::vector<Id> moved;
  auto a = before.begin();
  auto b = after.begin();
  while (a != before.end() || b != after.end()) {
    if (b == after.end() || (a != before.end() && a->id < b->id))
      moved.push_back((a++)->id);
    else if (a == before.end() || b->id < a->id)
      moved.push_back((b++)->id);
    else {
      if (!(a->at == b->at))
        moved.push_back(a->id);
      ++a;
      ++b;
    }
  }
  return moved;
}

// Walls whose own values, or whose place among their neighbours, may differ between two jobs.
std::set<Id> perhapsChanged(const Job& before, const Job& after) {
  std::set<Id> ids;
  after.walls.difference(before.walls, [&](Id id) {
    ids.insert(id);
    if (const WallLine* wall = before.walls.find(id))
      addAtCorners(after.walls, *wall, ids);
    if (const WallLine* wall = after.walls.find(id))
      addAtCorners(after.walls, *wall, ids);
  });
  if (!before.diagonals.same(after.diagonals))
    for (const Job* job : {&before, &after})
      for (const Diagonal& diagonal : *job->diagonals)
        for (const Id id : after.walls.atCorner(diagonal.from))
          ids.insert(id);
  if (before.corners.same(after.corners))
    return ids;
  for (const Diagonal& diagonal : *after.diagonals)
    for (const Id id : after.walls.atCorner(diagonal.from))
      ids.insert(id);
  for (const Id corner : movedCorners(*before.corners, *after.corners))
    for (const Id id : after.walls.atCorner(corner))
      addAtCorners(after.walls, *after.walls.find(id), ids);
  return ids;
}

bool sameTables(const Job& a, const Job& b) {
  return a.types == b.types && a.limits == b.limits && a.marks == b.marks;
}

} // namespace

Counts& Counts::operator+=(const Counts& o) {
  fix += o.fix;
  ask += o.ask;
  watch += o.watch;
  return *this;
}

Counts& Counts::operator-=(const Counts& o) {
  fix -= o.fix;
  ask -= o.ask;
  watch -= o.watch;
  return *this;
}

Counts countsOf(const Findings& findings) {
  Counts counts;
  for (const Finding& finding : findings)
    ++(finding.level == Level::Fix ? counts.fix : finding.level == Level::Ask ? counts.ask : counts.watch);
  return counts;
}

void Checker::check(const Job& job, Id id, std::vector<Id>& changed) {
  const auto known = entries_.find(id);
  const WallList::Pointer wall = job.walls.findPointer(id);
  if (!wall) {
    if (known != entries_.end()) {
      counts_ -= known->second.checked->counts;
      entries_.erase(known);
      changed.push_back(id);
    }
    return;
  }
  WallPlace place = placeOf(job, *wall);
  if (known != entries_.end()) {
    if (known->second.wall == wall && known->second.place == place)
      return;
    counts_ -= known->second.checked->counts;
  }
  auto checked =
      checkedWall(layOut(wall, job.types.pointer(), job.limits.pointer(), job.marks.pointer(), place), limits_);
  counts_ += checked->counts;
  entries_[id] = {wall, std::move(place), std::move(checked)};
  changed.push_back(id);
  ++lastChecked_;
}

std::vector<Id> Checker::update(const Job& job) {
  std::vector<Id> changed;
  lastChecked_ = 0;
  std::set<Id> ids;
  if (!started_ || !sameTables(job_, job)) {
    limits_ = resolve(*job.limits);
    for (std::size_t i = 0; i < job.walls.size(); ++i)
      ids.insert(job.walls[i].id);
    for (auto& [id, entry] : entries_) {
      ids.insert(id);
      entry.wall = nullptr; // its tables are out of date: check it again
    }
  } else {
    ids = perhapsChanged(job_, job);
  }
  for (const Id id : ids)
    check(job, id, changed);
  job_ = job;
  started_ = true;
  return changed;
}

std::shared_ptr<const CheckedWall> Checker::wall(Id id) const {
  const auto found = entries_.find(id);
  return found == entries_.end() ? nullptr : found->second.checked;
}

std::vector<std::shared_ptr<const CheckedWall>> checkAll(const Job& job) {
  const ResolvedLimits limits = resolve(*job.limits);
  std::vector<std::shared_ptr<const CheckedWall>> walls;
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    walls.push_back(checkedWall(layOut(job, job.walls.pointer(i)), limits));
  return walls;
}

} // namespace sillwright
