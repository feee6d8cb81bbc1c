#include "ui/panels/end_rows.h"

#include <algorithm>

namespace sillwright {

namespace {

int endsOn(const CheckedWall* wall) {
  return wall ? 2 * static_cast<int>(wall->layout.wall->panels.size()) : 0;
}

} // namespace

const std::vector<WallEnd>& EndRows::endsOf(const Entry& entry) const {
  if (!entry.ends) {
    entry.ends = wallEnds(*entry.wall);
    ++looked_;
  }
  return *entry.ends;
}

std::vector<std::size_t> EndRows::shownOf(const CheckedWall& wall, const std::vector<WallEnd>& ends) const {
  std::vector<std::size_t> shown;
  for (std::size_t i = 0; i < ends.size(); ++i)
    if ((!only_ || wall.layout.wall->id == only_) && (!lets_ || lets_(ends[i])))
      shown.push_back(i);
  return shown;
}

int EndRows::countOf(const Entry& entry) const {
  if (!entry.wall || (only_ && entry.wall->layout.wall->id != only_))
    return 0;
  return lets_ ? static_cast<int>(entry.shown.size()) : endsOn(entry.wall.get());
}

void EndRows::reset(const Job& job, const Checker& checker, Id only, Lets lets, Before before) {
  only_ = only;
  lets_ = std::move(lets);
  before_ = std::move(before);
  walls_.assign(job.walls.size(), {});
  places_.clear();
  counts_ = RunningCounts(job.walls.size());
  all_ = 0;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const Id id = job.walls[i].id;
    places_[id] = i;
    Entry& entry = walls_[i];
    entry.wall = checker.wall(id);
    all_ += endsOn(entry.wall.get());
    if (lets_ && entry.wall && (!only_ || id == only_))
      entry.shown = shownOf(*entry.wall, endsOf(entry));
    counts_.set(i, countOf(entry));
  }
  sort();
}

void EndRows::sort() {
  order_.clear();
  if (!before_)
    return;
  for (std::size_t wall = 0; wall < walls_.size(); ++wall)
    for (std::size_t i = 0; i < static_cast<std::size_t>(countOf(walls_[wall])); ++i)
      order_.emplace_back(wall, i);
  const auto endAt = [this](const std::pair<std::size_t, std::size_t>& at) -> const WallEnd& {
    const Entry& entry = walls_[at.first];
    return endsOf(entry)[lets_ ? entry.shown[at.second] : at.second];
  };
  std::stable_sort(order_.begin(), order_.end(),
                   [&](const auto& a, const auto& b) { return before_(endAt(a), endAt(b)); });
  for (Entry& entry : walls_)
    entry.rows.assign(static_cast<std::size_t>(countOf(entry)), 0);
  for (std::size_t row = 0; row < order_.size(); ++row)
    walls_[order_[row].first].rows[order_[row].second] = static_cast<int>(row);
}

std::optional<EndRows::Row> EndRows::row(int at) const {
  if (at < 0 || at >= size())
    return std::nullopt;
  const std::size_t wall = before_ ? order_[static_cast<std::size_t>(at)].first : counts_.placeOf(at);
  const auto number =
      before_ ? order_[static_cast<std::size_t>(at)].second : static_cast<std::size_t>(at - counts_.before(wall));
  const Entry& entry = walls_[wall];
  const std::size_t of = lets_ ? entry.shown[number] : number;
  const std::vector<WallEnd>& ends = endsOf(entry);
  return of < ends.size() ? std::optional(Row{entry.wall, &ends[of], of}) : std::nullopt;
}

int EndRows::rowOf(Id wall, const std::function<bool(const WallEnd&)>& holds) const {
  const auto place = places_.find(wall);
  if (place == places_.end())
    return -1;
  const Entry& entry = walls_[place->second];
  for (int i = 0; i < countOf(entry); ++i) {
    const auto number = static_cast<std::size_t>(i);
    if (holds(endsOf(entry)[lets_ ? entry.shown[number] : number]))
      return before_ ? entry.rows[number] : counts_.before(place->second) + i;
  }
  return -1;
}

bool EndRows::knows(const Job& job, Id wall) const {
  const auto place = places_.find(wall);
  return place != places_.end() && walls_.size() == job.walls.size() && job.walls.indexOf(wall) == place->second;
}

EndRows::Change EndRows::changeOf(Id wall, const std::shared_ptr<const CheckedWall>& now) const {
  const std::size_t at = places_.at(wall);
  const Entry& old = walls_[at];
  Entry next{now, {}, {}, {}};
  if (lets_ && now && (!only_ || wall == only_))
    next.shown = shownOf(*now, endsOf(next));
  const int before = countOf(old), after = countOf(next);
  Change change;
  if (before_) {
    change.all = before != after || old.shown != next.shown;
    change.rows = change.all ? std::vector<int>{} : old.rows;
    return change;
  }
  change.first = counts_.before(at);
  change.kept = std::min(before, after);
  change.gone = before - change.kept;
  change.come = after - change.kept;
  return change;
}

void EndRows::take(Id wall, std::shared_ptr<const CheckedWall> now) {
  const std::size_t at = places_.at(wall);
  Entry& entry = walls_[at];
  all_ += endsOn(now.get()) - endsOn(entry.wall.get());
  const int before = countOf(entry);
  entry.wall = std::move(now);
  entry.ends.reset();
  if (lets_ && entry.wall && (!only_ || wall == only_)) {
    std::vector<std::size_t> shown = shownOf(*entry.wall, endsOf(entry));
    const bool sorted = before_ && shown != entry.shown;
    entry.shown = std::move(shown);
    counts_.set(at, countOf(entry));
    if (sorted)
      sort();
    return;
  }
  counts_.set(at, countOf(entry));
  if (before_ && countOf(entry) != before)
    sort();
}

} // namespace sillwright
