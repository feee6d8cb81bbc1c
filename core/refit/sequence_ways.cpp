#include "core/refit/sequence_ways.h"

#include <algorithm>

namespace sillwright::sequence {
namespace {

// Options with the same least gap to the same options.
struct Alike {
  Mark gap;
  std::vector<int> from;
  std::vector<int> to;
};

std::vector<Alike> alikeFrom(const Steps& steps, int left) {
  std::vector<Alike> kinds;
  for (int right = 0; right < steps.columns; ++right) {
    const Mark gap = steps.gap(left, right);
    const auto same = std::find_if(kinds.begin(), kinds.end(), [&](const Alike& kind) { return kind.gap == gap; });
    if (same == kinds.end())
      kinds.push_back({gap, {left}, {right}});
    else
      same->to.push_back(right);
  }
  return kinds;
}

std::vector<Alike> alikeOf(const Steps& steps) {
  std::vector<Alike> kinds;
  for (int left = 0; left < steps.columns; ++left)
    for (const Alike& kind : alikeFrom(steps, left)) {
      const auto same = std::find_if(kinds.begin(), kinds.end(),
                                     [&](const Alike& other) { return other.gap == kind.gap && other.to == kind.to; });
      if (same == kinds.end())
        kinds.push_back(kind);
      else
        same->from.push_back(left);
    }
  return kinds;
}

} // namespace

std::vector<Way> waysOf(const Steps& steps, const SillSteps& sill) {
  std::vector<Way> ways;
  for (const Alike& kind : alikeOf(steps))
    for (const GapBand& band : sill.bands)
      if (std::max(band.from, kind.gap) <= band.to)
        ways.push_back({kind.from, kind.to, std::max(band.from, kind.gap), band.to, band.cost});
  return ways;
}

void LeastRows::clear(std::size_t rowWidth) {
  older.clear();
  olderValues.clear();
  newer.clear();
  newerValues.clear();
  newerLeast.assign(rowWidth, kNever);
}

void LeastRows::add(Mark station, std::size_t from, std::size_t to, const Weight* values) {
  newer.push_back({station, from, to, newerValues.size()});
  newerValues.insert(newerValues.end(), values, values + (to - from));
  for (std::size_t index = from; index < to; ++index)
    newerLeast[index] = std::min(newerLeast[index], values[index - from]);
}

void LeastRows::limit(Mark farthest) {
  while (!older.empty() && older.back().station > farthest) {
    olderValues.resize(older.back().at);
    older.pop_back();
  }
  if (older.empty() && !newer.empty() && newer.front().station > farthest)
    turnOver(farthest);
}

void LeastRows::turnOver(Mark farthest) {
  std::size_t from = newerLeast.size();
  std::size_t to = 0;
  for (const Entry& entry : newer) {
    from = std::min(from, entry.from);
    to = std::max(to, entry.to);
  }
  std::fill(newerLeast.begin() + static_cast<std::ptrdiff_t>(from),
            newerLeast.begin() + static_cast<std::ptrdiff_t>(to), kNever);
  // newerLeast is empty now and serves to add up; it is emptied again at the end.
  std::size_t first = newerLeast.size();
  std::size_t last = 0;
  for (std::size_t index = newer.size(); index-- > 0 && newer[index].station <= farthest;) {
    const Entry& entry = newer[index];
    const Weight* values = &newerValues[entry.at];
    for (std::size_t column = entry.from; column < entry.to; ++column)
      newerLeast[column] = std::min(newerLeast[column], values[column - entry.from]);
    first = std::min(first, entry.from);
    last = std::max(last, entry.to);
    older.push_back({entry.station, first, last, olderValues.size()});
    olderValues.insert(olderValues.end(), newerLeast.begin() + static_cast<std::ptrdiff_t>(first),
                       newerLeast.begin() + static_cast<std::ptrdiff_t>(last));
  }
  std::fill(newerLeast.begin() + static_cast<std::ptrdiff_t>(from),
            newerLeast.begin() + static_cast<std::ptrdiff_t>(to), kNever);
  newer.clear();
  newerValues.clear();
}

} // namespace sillwright::sequence
