#include "core/edit/copies.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/edit/copy_room.h"
#include "core/edit/fresh_marks.h"
#include "core/edit/turned.h"
#include "core/model/sill_reach.h"

namespace sillwright {

namespace {

bool same(double a, double b) {
  return std::abs(a - b) < tolerance::same;
}

template <class Visit> void eachCopied(const Copied& copied, Visit&& visit) {
  const std::set<Id> wanted(copied.pieces.begin(), copied.pieces.end());
  if (copied.wall)
    forEachList(*copied.wall, [&](const auto& list) {
      for (const auto& item : list)
        if (wanted.contains(item.id))
          visit(item);
    });
}

template <class Item> Interval stretchOf(const Copied& copied, const Item& item) {
  if constexpr (std::is_same_v<Item, Rod>) {
    const double at = stationOf(*copied.wall, item.id).value_or(0);
    return {at, at};
  } else {
    return stationsTaken(item, *copied.types);
  }
}

template <class Item> bool saysWhere(const Item& item) {
  if constexpr (std::is_same_v<Item, Bar>)
    return item.run == BarRun::Upright;
  else
    return !std::is_same_v<Item, GradeShot>;
}

// The hardware of this job that a type of another stands for: the same, or one with its name.
template <class Types> Id typeIn(const Types& here, const Types& there, Id id) {
  const auto* wanted = findIn(there, id);
  const auto* own = findIn(here, id);
  if (wanted && own && *wanted == *own)
    return id;
  for (const auto& type : here)
    if (wanted && type.name == wanted->name)
      return type.id;
  return {};
}

class Putting {
public:
  Putting(const Job& job, const WallLine& wall, const Copied& copied)
      : job_(job), line_(wall), copied_(copied), wanted_(copied.pieces.begin(), copied.pieces.end()), marks_(job),
        sills_(sillReach(placeOf(job, wall))), length_(wallLength(job, wall)) {}

  void put(const Carry& carry) {
    carry_ = carry;
    columns_.clear();
    forEachList(*copied_.wall, [&](const auto& list) {
      for (const auto* item : fromLeft(list))
        putOne(*item);
    });
  }

  Copies finish() {
    job_.walls.replace(std::move(line_));
    return {std::move(job_), std::move(selection_), std::move(leftOut_)};
  }

private:
  // In the order in which they will stand, so that marks count from the left.
  template <class List> auto fromLeft(const List& list) const {
    std::vector<const typename List::value_type*> items;
    for (const auto& item : list)
      if (wanted_.contains(item.id))
        items.push_back(&item);
    const auto at = [&](const auto& item) { return carry_(stretchOf(copied_, item).middle()); };
    std::stable_sort(items.begin(), items.end(), [&](const auto* a, const auto* b) { return at(*a) < at(*b); });
    return items;
  }

  template <class Item> void putOne(const Item& item) {
    Item copy = std::get<Item>(carried(item));
    const auto why = madeFit(copy, item);
    if (why) {
      leftOut_.push_back({item.mark, *why, {}});
      return;
    }
    for (const Item& there : listOf<Item>(line_))
      if (inTheWay(there, copy, *job_.types)) {
        leave(item, there, copy);
        return;
      }
    copy.id = takeId(job_);
    copy.mark = marks_.next(kindOf(Piece(copy)));
    if constexpr (std::is_same_v<Item, Column>)
      columns_[item.id] = copy.id;
    selection_.push_back({line_.id, copy.id});
    insert(copy);
  }

  template <class Item> void leave(const Item& item, const Item& there, const Item& copy) {
    const LeftOutWhy why = standsThere(there, copy) ? LeftOutWhy::StandsAlready : LeftOutWhy::InTheWay;
    if constexpr (std::is_same_v<Item, Column>)
      columns_[item.id] = there.id;
    leftOut_.push_back({item.mark, why, there.mark});
  }

  // Twice turned it is only moved.
  Piece carried(const Piece& piece) const {
    return carry_.turned ? turned(piece, carry_.by, *copied_.types)
                         : turned(turned(piece, 0, *copied_.types), carry_.by, *copied_.types);
  }

  template <class Item> void insert(const Item& item) {
    auto& list = listOf<Item>(line_);
    auto at = list.end();
    if constexpr (std::is_same_v<Item, Sill>) // neighbours ask for the first and the last one
      at = std::find_if(list.begin(), list.end(), [&](const Sill& sill) { return sill.from > item.from; });
    list.insert(at, item);
  }

  // ---- what each kind needs to stand on this wall; why it cannot ------------------------------------------------
  using Why = std::optional<LeftOutWhy>;

  template <class Stretch> Why within(const Stretch& stretch, Interval range) const {
    const Interval allowed = grown(range, tolerance::same);
    return allowed.contains(stretch.from) && allowed.contains(stretch.to) ? Why{} : LeftOutWhy::PastTheEnd;
  }
  Why within(double station) const {
    return grown({0, length_}, tolerance::same).contains(station) ? Why{} : LeftOutWhy::PastTheEnd;
  }

  Why madeFit(PourStep& copy, const PourStep&) const {
    return copy.height <= -line_.stemHeight ? LeftOutWhy::TooDeep : within(copy, {0, length_});
  }
  Why madeFit(Sill& copy, const Sill&) const { return within(copy, sills_); }
  Why madeFit(Opening& copy, const Opening&) const { return within(copy, {0, length_}); }
  Why madeFit(Panel& copy, const Panel&) const { return within(copy, {0, length_}); }
  Why madeFit(Column& copy, const Column&) const { return within(copy.station); }
  Why madeFit(GradeShot&, const GradeShot&) const { return LeftOutWhy::OnlyRead; }

  Why madeFit(Strap& copy, const Strap& from) const {
    copy.type = typeIn(job_.types->straps, copied_.types->straps, from.type);
    if (!copy.type)
      return LeftOutWhy::NoType;
    copy.column = columnInPlaceOf(from.column);
    if (!copy.column)
      copy.column = columnUnderneath(copy.station);
    return within(copy.station);
  }

  Why madeFit(Bolt& copy, const Bolt& from) const {
    copy.type = typeIn(job_.types->bolts, copied_.types->bolts, from.type);
    copy.washer = typeIn(job_.types->washers, copied_.types->washers, from.washer);
    if (!copy.type || (from.washer && !copy.washer))
      return LeftOutWhy::NoType;
    return copy.depth > line_.thickness ? LeftOutWhy::TooDeep : within(copy.station);
  }

  Why madeFit(Rod& copy, const Rod& from) const {
    copy.type = typeIn(job_.types->rods, copied_.types->rods, from.type);
    if (!copy.type)
      return LeftOutWhy::NoType;
    copy.column = columnInPlaceOf(from.column);
    if (!copy.column && !hangBeside(copy, carry_(stationOf(*copied_.wall, from.id).value_or(0))))
      return LeftOutWhy::NoColumn;
    if (copy.depth > line_.thickness)
      return LeftOutWhy::TooDeep;
    const Column& column = *findIn(line_.columns, copy.column);
    const double half = alongWall(column.makeUp) / 2 + copy.offset;
    return within(column.station + (copy.side == Side::Right ? half : -half));
  }

  Why madeFit(Bar& copy, const Bar& from) const {
    copy.found.reset();
    const double bottom = bottomOf(line_) - bottomOf(*copied_.wall);
    BarPlace& place = copy.planned;
    const bool upright = copy.run == BarRun::Upright;
    const Point3& top = upright ? from.planned.b : from.planned.a;
    const double before = pourOf(copied_.wall->steps, upright ? top.s : (from.planned.a.s + from.planned.b.s) / 2);
    const double after = pourOf(line_.steps, upright ? place.b.s : (place.a.s + place.b.s) / 2);
    if (upright) {
      place.a.z += bottom;
      place.b.z += after - before;
    } else { // with whichever of the two it lies nearer
      const double up =
          before - from.planned.a.z < from.planned.a.z - bottomOf(*copied_.wall) ? after - before : bottom;
      place.a.z += up;
      place.b.z += up;
    }
    if (upright && place.b.z - place.a.z <= tolerance::same)
      return LeftOutWhy::TooDeep;
    if (std::max(place.a.d, place.b.d) > line_.thickness && line_.thickness < copied_.wall->thickness)
      return LeftOutWhy::TooDeep;
    return upright ? within(place.a.s) : Why{}; // what runs along may go on past a corner
  }

  Id columnInPlaceOf(Id column) const {
    const auto found = columns_.find(column);
    return found == columns_.end() ? Id{} : found->second;
  }

  // Trimmers only where there is nothing else.
  Id columnUnderneath(double station) const {
    Id trimmer;
    for (const Column& column : line_.columns) {
      const Interval body = grown(around(column.station, alongWall(column.makeUp)), tolerance::same);
      if (!body.contains(station))
        continue;
      if (column.role != ColumnRole::Trimmer)
        return column.id;
      trimmer = column.id;
    }
    return trimmer;
  }

  // The column that a rod at a station can hang on: the nearest one on the side it has to be.
  bool hangBeside(Rod& rod, double station) const {
    constexpr double farthest = 6; // in, from the face of the column
    double least = farthest;
    for (const Column& column : line_.columns) {
      const double half = alongWall(column.makeUp) / 2;
      const double off = rod.side == Side::Right ? station - column.station - half : column.station - half - station;
      if (column.role == ColumnRole::Trimmer || off < -tolerance::same || off > least)
        continue;
      least = off;
      rod.column = column.id;
      rod.offset = off;
    }
    return static_cast<bool>(rod.column);
  }

  Job job_;
  WallLine line_;
  const Copied& copied_;
  std::set<Id> wanted_;
  FreshMarks marks_;
  Interval sills_;
  double length_ = 0;
  Carry carry_;
  std::map<Id, Id> columns_; // copied → what stands in its place
  Selection selection_;
  std::vector<LeftOut> leftOut_;
};

} // namespace

Copied copyOf(const Job& job, Id wall, std::span<const Id> pieces) {
  Copied copied;
  copied.wall = job.walls.findPointer(wall);
  if (!copied.wall)
    return copied;
  copied.length = wallLength(job, *copied.wall);
  copied.types = job.types;
  std::set<Id> wanted(pieces.begin(), pieces.end());
  for (const Opening& opening : copied.wall->openings)
    for (const PourStep& step : copied.wall->steps)
      if (wanted.contains(opening.id) && same(step.from, opening.from) && same(step.to, opening.to))
        wanted.insert(step.id);
  for (const Id id : piecesOf(*copied.wall))
    if (wanted.contains(id))
      copied.pieces.push_back(id);
  return copied;
}

Interval stretchOf(const Copied& copied) {
  std::optional<Interval> all, any;
  const auto add = [](std::optional<Interval>& to, Interval own) { to = to ? hull(*to, own) : own; };
  eachCopied(copied, [&](const auto& item) {
    const Interval own = stretchOf(copied, item);
    add(any, own);
    if (saysWhere(item))
      add(all, own);
  });
  return all ? *all : any.value_or(Interval{});
}

std::string textOf(const Copied& copied, LengthStyle units) {
  std::vector<std::pair<double, std::string>> lines;
  eachCopied(copied, [&](const auto& item) {
    const Piece piece(item);
    const Interval own = stretchOf(copied, item);
    std::string line = std::string(tradeName(kindOf(piece))) + " " + item.mark;
    if (isStretch(kindOf(piece)) || (std::holds_alternative<Bar>(piece) && own.length() > tolerance::same))
      line += " from " + printLength(own.from, units) + " to " + printLength(own.to, units);
    else
      line += " at " + printLength(own.middle(), units);
    lines.emplace_back(own.middle(), std::move(line));
  });
  std::stable_sort(lines.begin(), lines.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::string text;
  for (const auto& [station, line] : lines)
    text += line + "\n";
  return text;
}

Copies putCopies(const Job& job, Id wall, const Copied& copied, std::span<const Carry> carries) {
  const WallLine* line = job.walls.find(wall);
  if (!line || copied.empty())
    return {job, {}, {}};
  Putting putting(job, *line, copied);
  for (const Carry& carry : carries)
    putting.put(carry);
  return putting.finish();
}

} // namespace sillwright
