#include "tests/support/fill_wall.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace sillwright::support {

namespace {

constexpr const char* invented = "invented sample hardware";
constexpr double boltHalf = 0.3125, barHalf = 0.25, washerHalf = 1.5, plateHalf = 1.25;

class Filler {
public:
  Filler(Job& job, WallLine& wall, double length, const WallPlan& plan, const Hardware& hardware, Marks& marks)
      : job_(job), wall_(wall), length_(length), plan_(plan), hardware_(hardware), marks_(marks) {}

  void fill() {
    openings();
    sills();
    columns();
    panels();
    holdDowns();
    wall_.studs = StudLayout{};
    bolts();
    uprights();
    alongBars();
  }

private:
  std::string mark(const char* prefix, int& number) { return prefix + std::to_string(number++); }

  void openings() {
    for (PourStep step : plan_.steps) {
      step.id = takeId(job_);
      step.mark = mark("D", marks_.step);
      wall_.steps.push_back(step);
    }
    for (Opening opening : plan_.openings) {
      opening.id = takeId(job_);
      opening.mark = mark("O", marks_.opening);
      wall_.openings.push_back(opening);
    }
  }

  double pourAt(double s) const {
    double height = 0;
    for (const PourStep& step : plan_.steps)
      if (s > step.from && s < step.to)
        height = std::min(height, step.height);
    return height;
  }

  static constexpr double longestLumber = 240;

  // Stretches of the framing between doors and where the pour line changes.
  std::vector<Interval> sillStretches() const {
    std::vector<double> cuts{plan_.inAtStart, length_ - plan_.inAtEnd};
    std::vector<Interval> doors;
    for (const Opening& opening : plan_.openings)
      if (opening.kind != OpeningKind::Window) {
        doors.push_back({opening.from, opening.to});
        cuts.insert(cuts.end(), {opening.from, opening.to});
      }
    for (const PourStep& step : plan_.steps)
      for (const double s : {step.from, step.to})
        if (s > cuts[0] && s < cuts[1])
          cuts.push_back(s);
    std::sort(cuts.begin(), cuts.end());
    std::vector<Interval> stretches;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
      const Interval part{cuts[i], cuts[i + 1]};
      const bool door = std::any_of(doors.begin(), doors.end(),
                                    [&](Interval d) { return part.middle() > d.from && part.middle() < d.to; });
      if (part.length() <= 12 || door)
        continue;
      if (part.length() <= longestLumber) {
        stretches.push_back(part);
      } else { // two pieces, end to end
        stretches.push_back({part.from, part.middle()});
        stretches.push_back({part.middle(), part.to});
      }
    }
    if (plan_.sillPastStart > 0)
      stretches.front().from = -plan_.sillPastStart;
    if (plan_.sillPastEnd > 0)
      stretches.back().to = length_ + plan_.sillPastEnd;
    return stretches;
  }

  void sills() {
    for (const Interval stretch : sillStretches())
      wall_.sills.push_back({takeId(job_), mark("L", marks_.sill), stretch.from, stretch.to, plan_.sill,
                             "Douglas Fir-Larch", {}, ""});
  }

  void column(double centre, const MakeUp& makeUp, ColumnRole role) {
    const bool trimmer = role == ColumnRole::Trimmer;
    wall_.columns.push_back({takeId(job_), trimmer ? "T" : "C", centre, makeUp, role, 0, ""});
  }

  void columns() {
    const double first = plan_.inAtStart, last = length_ - plan_.inAtEnd;
    column(first + 2.75, {1, {6, 6}}, ColumnRole::Post);
    column(last - 2.75, {1, {6, 6}}, ColumnRole::Post);
    for (const Opening& opening : plan_.openings) {
      column(opening.from - 3, {2, {2, 6}}, ColumnRole::King);
      column(opening.from - 0.75, {1, {2, 6}}, ColumnRole::Trimmer);
      column(opening.to + 0.75, {1, {2, 6}}, ColumnRole::Trimmer);
      column(opening.to + 3, {2, {2, 6}}, ColumnRole::King);
    }
    for (const Interval panel : plan_.panels)
      for (const bool left : {true, false}) {
        const double end = left ? panel.from : panel.to;
        if (nearestColumn(end, 8))
          continue;
        column(left ? end + 1.75 : end - 1.75, {1, {4, 6}}, ColumnRole::Post);
      }
    std::sort(wall_.columns.begin(), wall_.columns.end(),
              [](const Column& a, const Column& b) { return a.station < b.station; });
    for (Column& each : wall_.columns)
      each.mark += std::to_string(each.role == ColumnRole::Trimmer ? marks_.trimmer++ : marks_.column++);
  }

  const Column* nearestColumn(double s, double within) const {
    const Column* nearest = nullptr;
    for (const Column& c : wall_.columns)
      if (c.role != ColumnRole::Trimmer && std::abs(c.station - s) < within &&
          (!nearest || std::abs(c.station - s) < std::abs(nearest->station - s)))
        nearest = &c;
    return nearest;
  }

  void panels() {
    const char* endMark = plan_.rods ? "HD2" : "HD1";
    for (const Interval panel : plan_.panels)
      wall_.panels.push_back({takeId(job_), mark("P", marks_.panel), panel.from, panel.to, wall_.wallHeight,
                              plan_.unitShear, {}, {}, {}, Sheathing::Outside, endMark, endMark, ""});
  }

  void holdDowns() {
    for (const Interval panel : plan_.panels)
      for (const bool left : {true, false}) {
        const Column* post = nearestColumn(left ? panel.from : panel.to, 8);
        if (!post)
          continue;
        if (plan_.rods)
          wall_.rods.push_back({takeId(job_), mark("R", marks_.rod), hardware_.rod, post->id,
                                left ? Side::Right : Side::Left, 1.5, 3.25, 9, ""});
        else
          wall_.straps.push_back({takeId(job_), mark("S", marks_.strap), hardware_.strap, post->station, 0, post->id, ""});
      }
  }

  double rodStation(const Rod& rod) const {
    for (const Column& c : wall_.columns)
      if (c.id == rod.column) {
        const double off = alongWall(c.makeUp) / 2 + rod.offset;
        return c.station + (rod.side == Side::Right ? off : -off);
      }
    return 0;
  }

  // Room for a washer: clear of columns, studs and hold-downs.
  bool boltFits(double s) const {
    for (const Column& c : wall_.columns)
      if (std::abs(s - c.station) < alongWall(c.makeUp) / 2 + washerHalf + 0.125)
        return false;
    for (double stud = 16; stud < length_; stud += 16)
      if (std::abs(s - stud) < 0.75 + washerHalf + 0.0625)
        return false;
    for (const Strap& strap : wall_.straps)
      if (std::abs(s - strap.station) < plateHalf + boltHalf + 1)
        return false;
    for (const Rod& rod : wall_.rods)
      if (std::abs(s - rodStation(rod)) < 2 * boltHalf + 1.25)
        return false;
    return true;
  }

  std::optional<double> boltBetween(double from, double to, bool fromRight) const {
    const int steps = static_cast<int>((to - from) * 2);
    for (int i = 0; i <= steps; ++i) {
      const double s = fromRight ? to - i * 0.5 : from + i * 0.5;
      if (s >= from && s <= to && boltFits(s))
        return s;
    }
    return std::nullopt;
  }

  void bolt(double s) {
    const double projection = plan_.sill.thickness >= 3 ? 4 : 3;
    wall_.bolts.push_back({takeId(job_), mark("B", marks_.bolt), hardware_.bolt, s, 2.4375, projection,
                           HookDirection::Inward, hardware_.washer, true, 0, ""});
  }

  void bolts() {
    for (const Sill& sill : wall_.sills) {
      const auto first = boltBetween(sill.from + 4.5, sill.from + 12, true);
      const auto last = boltBetween(sill.to - 12, sill.to - 4.5, false);
      if (!first || !last || *last - *first < 4)
        continue;
      double at = *first;
      bolt(at);
      while (*last - at > 48) {
        const auto next = boltBetween(at + 24, std::min(at + 48, *last - 8), true);
        if (!next)
          break;
        at = *next;
        bolt(at);
      }
      bolt(*last);
    }
  }

  bool barFits(double s) const {
    const auto clear = [&](double other, double half) { return std::abs(s - other) >= half + barHalf + 1.0625; };
    for (const Strap& strap : wall_.straps)
      if (!clear(strap.station, plateHalf))
        return false;
    for (const Bolt& b : wall_.bolts)
      if (!clear(b.station, boltHalf))
        return false;
    for (const Rod& rod : wall_.rods)
      if (!clear(rodStation(rod), 1))
        return false;
    for (const PourStep& step : plan_.steps)
      for (const double edge : {step.from, step.to})
        if (std::abs(s - edge) < 2)
          return false;
    return s > 2 && s < length_ - 2;
  }

  void uprights() {
    double before = -10;
    for (double wanted = 8; wanted < length_; wanted += 24)
      for (int i = 0; i < 40; ++i) {
        const double s = wanted + (i % 2 ? 0.25 : -0.25) * ((i + 1) / 2);
        if (!barFits(s) || s < before + 4)
          continue;
        const double bottom = -wall_.stemHeight - wall_.footing.depth + 3.5;
        wall_.bars.push_back({takeId(job_), mark("V", marks_.upright), BarRun::Upright, 4,
                              {{s, 4, bottom}, {s, 4, pourAt(s) - 2}}, std::nullopt, ""});
        before = s;
        break;
      }
  }

  void along(double from, double to, double d, double z) {
    wall_.bars.push_back({takeId(job_), mark("H", marks_.along), BarRun::Along, 4, {{from, d, z}, {to, d, z}},
                          std::nullopt, ""});
  }

  void alongBars() {
    std::vector<double> cuts{0, length_};
    for (const PourStep& step : plan_.steps)
      for (const double s : {step.from, step.to})
        if (s > 0 && s < length_)
          cuts.push_back(s);
    std::sort(cuts.begin(), cuts.end());
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i)
      along(cuts[i] + 2, cuts[i + 1] - 2, 4.5, pourAt((cuts[i] + cuts[i + 1]) / 2) - 4);
    along(2, length_ - 2, 4.5, -19);
    const double low = -wall_.stemHeight - wall_.footing.depth + 3.5;
    along(-1, length_ + 1, 0.5, low);
    along(-1, length_ + 1, 7.5, low);
  }

  Job& job_;
  WallLine& wall_;
  double length_;
  const WallPlan& plan_;
  const Hardware& hardware_;
  Marks& marks_;
};

} // namespace

Hardware addHardware(Job& job) {
  Hardware ids{takeId(job), takeId(job), takeId(job), takeId(job)};
  job.types.edit([&](HardwareTypes& types) {
    StrapType strap;
    strap.id = ids.strap;
    strap.name = "Strap 2 1/2 x 36";
    strap.plateWidth = 2.5;
    strap.plateThickness = 0.105;
    strap.profile = {{0.05, 0}, {0.5, -2}, {3.75, -12}, {5.5, -14}, {5.5, -12.5}};
    strap.exposedLength = 22;
    strap.nails = {{-0.5, 0.5}, 5, 1, 16, true, "10d common", 0.148, 3};
    strap.hangerReach = {0.5, 3};
    strap.statedCapacity = 4900;
    strap.note = invented;
    types.straps.push_back(strap);
    BoltType bolt;
    bolt.id = ids.bolt;
    bolt.name = "J-bolt 5/8 x 12";
    bolt.diameter = 0.625;
    bolt.length = 12;
    bolt.threadLength = 5;
    bolt.threadsPerInch = 11;
    bolt.end = BoltEnd::L;
    bolt.hookLeg = 2.8125;
    bolt.note = invented;
    types.bolts.push_back(bolt);
    WasherType washer;
    washer.id = ids.washer;
    washer.name = "Plate washer 3 x 3";
    washer.hole = 0.6875;
    washer.note = invented;
    types.washers.push_back(washer);
    RodType rod;
    rod.id = ids.rod;
    rod.name = "Rod 5/8";
    rod.diameter = 0.625;
    rod.embedment = 15;
    rod.threadLength = 6;
    rod.threadsPerInch = 11;
    rod.footWidth = 1.5;
    rod.footThickness = 0.5;
    rod.bracketOffset = 1.5;
    rod.note = invented;
    types.rods.push_back(rod);
  });
  const Id first = takeId(job), second = takeId(job);
  job.marks.edit([&](std::vector<WallEndMark>& rows) {
    rows.push_back({first, "HD1", ids.strap, {}, std::nullopt, 4160.0, std::nullopt, std::nullopt, ""});
    rows.push_back({second, "HD2", {}, ids.rod, std::nullopt, 4600.0, std::nullopt, std::nullopt, ""});
  });
  return ids;
}

void fillWall(Job& job, WallLine& wall, double length, const WallPlan& plan, const Hardware& hardware, Marks& marks) {
  Filler(job, wall, length, plan, hardware, marks).fill();
}

} // namespace sillwright::support
