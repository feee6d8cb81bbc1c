#include "ui/panels/finding_rows.h"

#include <bit>

namespace sillwright {

void RunningCounts::set(std::size_t i, int count) {
  const int by = count - counts_[i];
  counts_[i] = count;
  for (std::size_t node = i + 1; node < tree_.size(); node += node & (~node + 1))
    tree_[node] += by;
}

int RunningCounts::before(std::size_t i) const {
  int sum = 0;
  for (std::size_t node = i; node > 0; node -= node & (~node + 1))
    sum += tree_[node];
  return sum;
}

std::size_t RunningCounts::placeOf(int number) const {
  std::size_t node = 0;
  for (std::size_t stride = std::bit_floor(tree_.size()); stride > 0; stride /= 2)
    if (node + stride < tree_.size() && tree_[node + stride] <= number) {
      node += stride;
      number -= tree_[node];
    }
  return node;
}

std::array<int, 3> FindingRows::countsBy(Id id, const CheckedWall* wall) const {
  if (!wall || (shown_.wall && id != shown_.wall))
    return {0, 0, 0};
  if (!shown_.rule)
    return {wall->counts.fix, wall->counts.ask, wall->counts.watch};
  std::array<int, 3> counts{};
  for (const Finding& finding : wall->findings)
    counts[static_cast<std::size_t>(finding.level)] += shown_.lets(finding);
  return counts;
}

void FindingRows::countRules(const CheckedWall* wall, int times) {
  if (wall)
    for (const Finding& finding : wall->findings)
      byRule_[static_cast<std::size_t>(finding.rule)] += times;
}

void FindingRows::reset(const Job& job, const Checker& checker, const FindingFilter& shown) {
  shown_ = shown;
  byRule_.assign(static_cast<std::size_t>(RuleId::Count), 0);
  walls_.assign(job.walls.size(), nullptr);
  places_.clear();
  counts_.fill(RunningCounts(job.walls.size()));
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const Id id = job.walls[i].id;
    places_[id] = i;
    walls_[i] = checker.wall(id);
    countRules(walls_[i].get(), 1);
    const std::array<int, 3> counts = countsBy(id, walls_[i].get());
    for (std::size_t level = 0; level < 3; ++level)
      counts_[level].set(i, shownOf(level, counts));
  }
}

int FindingRows::size() const { return counts_[0].total() + counts_[1].total() + counts_[2].total(); }

int FindingRows::firstRow(std::size_t level, std::size_t wall) const {
  int row = counts_[level].before(wall);
  for (std::size_t worse = 0; worse < level; ++worse)
    row += counts_[worse].total();
  return row;
}

std::optional<FindingRows::Row> FindingRows::row(int at) const {
  if (at < 0)
    return std::nullopt;
  for (std::size_t level = 0; level < 3; ++level) {
    if (at >= counts_[level].total()) {
      at -= counts_[level].total();
      continue;
    }
    const std::size_t wall = counts_[level].placeOf(at);
    int number = at - counts_[level].before(wall);
    const Findings* findings = walls_[wall] ? &walls_[wall]->findings : nullptr;
    for (std::size_t i = 0; findings && i < findings->size(); ++i) // a wall's own findings come worst first
      if (const Finding& each = (*findings)[i]; static_cast<std::size_t>(each.level) == level && shown_.lets(each))
        if (number-- == 0)
          return Row{walls_[wall], i};
    return std::nullopt;
  }
  return std::nullopt;
}

int FindingRows::rowOf(Id wall, std::size_t index) const {
  const auto place = places_.find(wall);
  if (place == places_.end() || !walls_[place->second] || index >= walls_[place->second]->findings.size())
    return -1;
  const Findings& findings = walls_[place->second]->findings;
  const Finding& finding = findings[index];
  if (!shown_.lets(finding))
    return -1;
  const auto level = static_cast<std::size_t>(finding.level);
  int within = 0;
  for (std::size_t i = 0; i < index; ++i)
    within += findings[i].level == finding.level && shown_.lets(findings[i]);
  return within < counts_[level].at(place->second) ? firstRow(level, place->second) + within : -1;
}

bool FindingRows::knows(const Job& job, Id wall) const {
  const auto place = places_.find(wall);
  return place != places_.end() && walls_.size() == job.walls.size() && job.walls.indexOf(wall) == place->second;
}

} // namespace sillwright
