#include "core/rules/waiting.h"

#include <algorithm>
#include <functional>
#include <set>

#include "core/model/lookup.h"
#include "core/standards/species.h"

namespace sillwright {

namespace {

constexpr std::size_t named = 4;

// Collects those that lack one input.
class Lack {
public:
  Lack(const Job& job, std::string_view input, std::string_view kind) : job_(job) {
    found_.input = input;
    found_.kind = kind;
  }

  void piece(const WallLine& wall, Id id) {
    const std::string mark = markOf(job_, {wall.id, id});
    add({(mark.empty() ? std::string("one without a mark") : mark) + ", wall " + wall.mark, {wall.id, id}});
  }
  void wall(const WallLine& wall) { add({wall.mark, {wall.id, {}}}); }
  void named(std::string name) { add({std::move(name), {}}); }
  Waiting take() { return std::move(found_); }

private:
  void add(Lacking lacking) {
    ++found_.count;
    if (found_.first.size() < sillwright::named)
      found_.first.push_back(std::move(lacking));
  }

  const Job& job_;
  Waiting found_;
};

template <class Each> void forEachWall(const Job& job, Each each) {
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    each(job.walls[i]);
}

// Pieces of one list of every wall for which `lacks(wall, piece)`.
template <class Piece, class Lacks>
Waiting pieces(const Job& job, std::string_view input, std::string_view kind, std::vector<Piece> WallLine::*list,
               Lacks lacks) {
  Lack found(job, input, kind);
  forEachWall(job, [&](const WallLine& wall) {
    for (const Piece& piece : wall.*list)
      if (lacks(wall, piece))
        found.piece(wall, piece.id);
  });
  return found.take();
}

template <class Lacks> Waiting walls(const Job& job, std::string_view input, Lacks lacks) {
  Lack found(job, input, "wall");
  forEachWall(job, [&](const WallLine& wall) {
    if (lacks(wall))
      found.wall(wall);
  });
  return found.take();
}

// Types of hardware that hang in some wall and lack it.
template <class Type, class Piece, class Lacks>
Waiting types(const Job& job, std::string_view input, std::string_view kind, const std::vector<Type>& all,
              std::vector<Piece> WallLine::*list, Lacks lacks) {
  std::set<Id> used;
  forEachWall(job, [&](const WallLine& wall) {
    for (const Piece& piece : wall.*list)
      used.insert(piece.type);
  });
  Lack found(job, input, kind);
  for (const Type& type : all)
    if (used.count(type.id) && lacks(type))
      found.named(type.name);
  return found.take();
}

// Marks that some panel end calls for.
template <class Lacks> Waiting marks(const Job& job, std::string_view input, Lacks lacks) {
  std::set<std::string_view> called;
  forEachWall(job, [&](const WallLine& wall) {
    for (const Panel& panel : wall.panels)
      called.insert({panel.leftMark, panel.rightMark});
  });
  Lack found(job, input, "mark");
  for (const WallEndMark& mark : *job.marks)
    if (called.count(mark.mark) && lacks(mark))
      found.named(mark.mark);
  return found.take();
}

Waiting ofTheJob(std::string_view sentence) {
  Waiting waiting;
  waiting.input = sentence;
  waiting.count = 1;
  return waiting;
}

bool has(const Job& job, const std::function<bool(const WallLine&)>& what) {
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    if (what(job.walls[i]))
      return true;
  return false;
}

const Reading* readingOf(const WallLine& wall, Id piece) {
  for (const Reading& reading : wall.readings)
    if (reading.piece == piece)
      return &reading;
  return nullptr;
}

bool unread(const WallLine& wall, Id piece) {
  const Reading* reading = readingOf(wall, piece);
  return !reading || !reading->plumb;
}

Waiting plumbOfStraps(const Job& job) {
  return pieces(job, "a plumb reading", "strap", &WallLine::straps,
                [](const WallLine& wall, const Strap& strap) { return unread(wall, strap.id); });
}

Waiting plumbOfRods(const Job& job) {
  return pieces(job, "a plumb reading", "rod", &WallLine::rods,
                [](const WallLine& wall, const Rod& rod) { return unread(wall, rod.id); });
}

// Panels whose ends call for nothing at all: the plan's wall-end schedule is not entered.
Waiting endMarks(const Job& job) {
  const bool panels = has(job, [](const WallLine& wall) { return !wall.panels.empty(); });
  const bool called = has(job, [](const WallLine& wall) {
    return std::any_of(wall.panels.begin(), wall.panels.end(),
                       [](const Panel& panel) { return !panel.leftMark.empty() || !panel.rightMark.empty(); });
  });
  return panels && !called ? ofTheJob("No end of a panel has a mark of the plan's wall-end schedule.") : Waiting{};
}

Waiting hardwareOfMarks(const Job& job) {
  return marks(job, "the strap or rod type", [](const WallEndMark& mark) { return !mark.strapType && !mark.rodType; });
}

Waiting capacityOfMarks(const Job& job) {
  return marks(job, "the required capacity", [](const WallEndMark& mark) { return !mark.requiredCapacity; });
}

Waiting shearToCarry(const Job& job) {
  return pieces(job, "the shear to carry", "panel", &WallLine::panels,
                [](const WallLine&, const Panel& panel) { return !panel.designShear; });
}

Waiting speciesOfSills(const Job& job) {
  return pieces(job, "the species", "sill", &WallLine::sills, [](const WallLine& wall, const Sill& sill) {
    return !speciesByName(sill.species) && std::any_of(wall.panels.begin(), wall.panels.end(), [&](const Panel& panel) {
      return panel.designShear && panel.from < sill.to && sill.from < panel.to;
    });
  });
}

Waiting lever(const Job& job) {
  const auto saysColumn = [&](const std::string& called) {
    const WallEndMark* mark = findMark(job, called);
    return mark && mark->column;
  };
  return pieces(job, "the lever on the plans", "panel", &WallLine::panels, [&](const WallLine&, const Panel& panel) {
    return !panel.lever && !(saysColumn(panel.leftMark) && saysColumn(panel.rightMark));
  });
}

Waiting nailPattern(const Job& job) {
  return types(job, "the nail pattern", "strap type", job.types->straps, &WallLine::straps,
               [](const StrapType& type) { return type.nails.count == 0; });
}

Waiting nailSize(const Job& job) {
  return types(job, "the length and diameter of the nail", "strap type", job.types->straps, &WallLine::straps,
               [](const StrapType& type) {
                 return type.nails.count > 0 && (type.nails.nailLength <= 0 || type.nails.nailDiameter <= 0);
               });
}

Waiting nailDiameter(const Job& job) {
  return types(job, "the diameter of the nail", "strap type", job.types->straps, &WallLine::straps,
               [](const StrapType& type) { return type.nails.count > 0 && type.nails.nailDiameter <= 0; });
}

Waiting statedCapacity(const Job& job) {
  return types(job, "the stated capacity", "strap type", job.types->straps, &WallLine::straps,
               [](const StrapType& type) { return !type.statedCapacity; });
}

Waiting threadOfBolts(const Job& job) {
  return types(job, "the thread length", "bolt type", job.types->bolts, &WallLine::bolts,
               [](const BoltType& type) { return type.threadLength <= 0; });
}

Waiting unitShear(const Job& job) {
  return pieces(job, "the nominal unit shear capacity", "panel", &WallLine::panels,
                [](const WallLine&, const Panel& panel) { return !panel.unitShear; });
}

Waiting gradeShots(const Job& job) {
  return walls(job, "grade shots", [](const WallLine& wall) { return wall.shots.empty(); });
}

Waiting formWidths(const Job& job) {
  return walls(job, "a form width", [](const WallLine& wall) {
    return std::none_of(wall.shots.begin(), wall.shots.end(),
                        [](const GradeShot& shot) { return shot.width.has_value(); });
  });
}

std::vector<Waiting> all(const Job& job, RuleId rule) {
  using R = RuleId;
  switch (rule) {
  case R::StrapPlumb:
    return {plumbOfStraps(job)};
  case R::StrapLean:
    return {plumbOfStraps(job), nailPattern(job)};
  case R::RodPlumb:
    return {plumbOfRods(job)};
  case R::StrapColumn:
    return {nailPattern(job)};
  case R::StrapNailEdge:
  case R::StrapSeam:
    return {nailPattern(job), nailDiameter(job)};
  case R::StrapNailDepth:
    return {nailPattern(job), nailSize(job)};
  case R::StrapMissing:
  case R::StrapType:
    return {endMarks(job), hardwareOfMarks(job)};
  case R::StrapCapacity:
    return {endMarks(job), capacityOfMarks(job), statedCapacity(job)};
  case R::ColumnPlan:
    return {endMarks(job),
            marks(job, "the make-up of the column", [](const WallEndMark& mark) { return !mark.column; })};
  case R::SillMark:
    return {endMarks(job), marks(job, "the size of the sill", [](const WallEndMark& mark) { return !mark.sill; })};
  case R::PanelTie:
    return {shearToCarry(job), endMarks(job), capacityOfMarks(job)};
  case R::PanelLever:
    return {lever(job)};
  case R::BoltShear:
    return {shearToCarry(job), speciesOfSills(job)};
  case R::BoltRunOut:
    return {threadOfBolts(job)};
  case R::WasherSheathing:
    return {unitShear(job)};
  case R::WasherSize:
    return {job.limits->plateWashers ? Waiting{} : ofTheJob("The job's options do not call for plate washers.")};
  case R::BarTop:
    return {job.limits->topBar ? Waiting{} : ofTheJob("The job's options do not call for a bar near the top.")};
  case R::BarOpening:
    return {job.limits->openingBars ? Waiting{} : ofTheJob("The job's options do not call for bars beside openings.")};
  case R::PourShot:
  case R::PourLevel:
    return {gradeShots(job)};
  case R::FormThickness:
    return {formWidths(job)};
  case R::FormSquare:
    return {job.diagonals->empty() ? ofTheJob("No diagonal has been taped yet.") : Waiting{}};
  default: // everything else works from what a piece cannot be without
    return {};
  }
}

} // namespace

std::vector<Waiting> waitsFor(const Job& job, RuleId rule) {
  std::vector<Waiting> waiting = all(job, rule);
  waiting.erase(std::remove_if(waiting.begin(), waiting.end(), [](const Waiting& each) { return each.count == 0; }),
                waiting.end());
  return waiting;
}

std::string waitingWords(const Waiting& waiting) {
  if (waiting.kind.empty())
    return std::string(waiting.input);
  std::string list;
  for (const Lacking& each : waiting.first)
    list += (list.empty() ? "" : "; ") + each.name;
  const std::size_t more = waiting.count - waiting.first.size();
  const std::string kind = waiting.count == 1 ? std::string(waiting.kind) + " "
                                              : std::to_string(waiting.count) + " " + std::string(waiting.kind) + "s: ";
  return "Waits for " + std::string(waiting.input) + " of " + kind + list +
         (more ? "; and " + std::to_string(more) + " more" : "") + ".";
}

} // namespace sillwright
