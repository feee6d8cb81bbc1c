#include "core/store/job_check.h"

#include <algorithm>

#include "core/model/lookup.h"
#include "core/rules/limits.h"
#include "core/rules/rule_book.h"
#include "core/store/field_checker.h"
#include "core/store/job_json.h"

namespace sillwright {
namespace {

using Kind = KnownIds::Kind;

// Every id of the job, each once and smaller than the next one to give.
class IdCollector {
public:
  IdCollector(const Job& job, const FilePlace& root, Problems& problems) : job_(job), root_(root), problems_(problems) {}

  KnownIds run() {
    const FilePlace types = root_.field("types");
    list(job_.types->straps, types.field("straps"), Kind::StrapType);
    list(job_.types->bolts, types.field("bolts"), Kind::BoltType);
    list(job_.types->rods, types.field("rods"), Kind::RodType);
    list(job_.types->washers, types.field("washers"), Kind::WasherType);
    list(*job_.marks, root_.field("marks"), Kind::Mark);
    list(*job_.corners, root_.field("corners"), Kind::Corner);
    list(*job_.diagonals, root_.field("diagonals"), Kind::Other);
    marks();
    const FilePlace walls = root_.field("walls");
    for (std::size_t i = 0; i < job_.walls.size(); ++i)
      wall(job_.walls[i], walls.item(i));
    return std::move(known_);
  }

private:
  void wall(const WallLine& wall, const FilePlace& at) {
    add(wall.id, at, Kind::Wall, {});
    static constexpr std::string_view names[] = {"steps",  "sills", "openings", "columns", "panels",
                                                 "straps", "bolts", "rods",     "bars",    "shots"};
    std::size_t i = 0;
    forEachList(wall, [&](const auto& pieces) {
      const bool columns = std::is_same_v<decltype(pieces), const std::vector<Column>&>;
      list(pieces, at.field(names[i++]), columns ? Kind::Column : Kind::OtherPiece, wall.id);
    });
  }

  template <class Item> void list(const std::vector<Item>& items, const FilePlace& at, Kind kind, Id wall = {}) {
    for (std::size_t i = 0; i < items.size(); ++i)
      add(items[i].id, at.item(i), kind, wall);
  }

  void add(Id id, const FilePlace& at, Kind kind, Id wall) {
    problems_.require(static_cast<bool>(id), at.field("id"), "is 0; ids begin at 1");
    problems_.require(id.value < job_.nextId, at.field("id"), [&] {
      return std::to_string(id.value) + " is not below nextId, " + std::to_string(job_.nextId);
    });
    const bool isNew = known_.ids.try_emplace(id, KnownIds::Known{kind, wall}).second;
    problems_.require(isNew, at.field("id"), [&] { return std::to_string(id.value) + " is there twice"; });
  }

  void marks() {
    const FilePlace at = root_.field("marks");
    for (std::size_t i = 0; i < job_.marks->size(); ++i) {
      const WallEndMark& row = (*job_.marks)[i];
      const bool isNew = known_.marks.try_emplace(row.mark, row.id).second;
      problems_.require(isNew, at.item(i).field("mark"), [&] { return "\"" + row.mark + "\" is there twice"; });
    }
  }

  const Job& job_;
  const FilePlace& root_;
  Problems& problems_;
  KnownIds known_;
};

void checkCorners(const Job& job, const FilePlace& at, Problems& problems) {
  const auto& corners = *job.corners;
  for (std::size_t i = 1; i < corners.size() && !problems; ++i)
    problems.require(corners[i - 1].id < corners[i].id, at.item(i).field("id"),
                     "is below the one before: corners stand in the order of their ids");
}

void checkOverrides(const JobLimits& limits, const FilePlace& at, Problems& problems) {
  for (std::size_t i = 0; i < limits.overrides.size() && !problems; ++i) {
    const std::string& key = limits.overrides[i].key;
    problems.require(limitKey(key).has_value(), at.item(i).field("key"),
                     [&] { return "\"" + key + "\" is not a limit of the rule book"; });
    const auto same = [&](const LimitOverride& other) { return other.key == key; };
    const auto before = limits.overrides.begin() + static_cast<std::ptrdiff_t>(i);
    problems.require(std::none_of(limits.overrides.begin(), before, same), at.item(i).field("key"),
                     [&] { return "\"" + key + "\" is there twice"; });
  }
}

void checkRuleOverrides(const JobLimits& limits, const FilePlace& at, Problems& problems) {
  for (std::size_t i = 0; i < limits.rules.size() && !problems; ++i) {
    const std::string& name = limits.rules[i].rule;
    problems.require(ruleByName(name).has_value(), at.item(i).field("rule"),
                     [&] { return "\"" + name + "\" is not a rule of the rule book"; });
    const auto same = [&](const RuleOverride& other) { return other.rule == name; };
    const auto before = limits.rules.begin() + static_cast<std::ptrdiff_t>(i);
    problems.require(std::none_of(limits.rules.begin(), before, same), at.item(i).field("rule"),
                     [&] { return "\"" + name + "\" is there twice"; });
  }
}

void checkDiagonals(const Job& job, const FilePlace& at, Problems& problems) {
  for (std::size_t i = 0; i < job.diagonals->size() && !problems; ++i)
    problems.require((*job.diagonals)[i].from != (*job.diagonals)[i].to, at.item(i).field("to"),
                     "is the corner where it begins");
}

void checkJobAt(const Job& job, const FilePlace& root, bool revision, Problems& problems);

void checkRevisions(const Job& job, const FilePlace& at, bool revision, Problems& problems) {
  problems.require(!revision || job.revisions->empty(), at, "a kept job holds no revisions of its own");
  for (std::size_t i = 0; i < job.revisions->size() && !problems; ++i) {
    const FilePlace item = at.item(i);
    const FilePlace kept = item.field("job");
    problems.require((*job.revisions)[i].job != nullptr, kept, "is missing");
    if (!problems)
      checkJobAt(*(*job.revisions)[i].job, kept, true, problems);
  }
}

void checkJobAt(const Job& job, const FilePlace& root, bool revision, Problems& problems) {
  const KnownIds known = IdCollector(job, root, problems).run();
  FieldChecker fields(known, problems.first(), root, {});
  describe(fields, job);
  checkHardware(*job.types, root.field("types"), problems);
  checkMarks(*job.marks, root.field("marks"), problems);
  checkCorners(job, root.field("corners"), problems);
  const FilePlace limits = root.field("limits");
  checkOverrides(*job.limits, limits.field("overrides"), problems);
  checkRuleOverrides(*job.limits, limits.field("rules"), problems);
  checkDiagonals(job, root.field("diagonals"), problems);
  const FilePlace walls = root.field("walls");
  for (std::size_t i = 0; i < job.walls.size() && !problems; ++i) {
    const FilePlace at = walls.item(i);
    FieldChecker wallFields(known, problems.first(), at, job.walls[i].id);
    describe(wallFields, job.walls[i]);
    if (!problems)
      checkWall(job, job.walls[i], at, problems);
  }
  checkRevisions(job, root.field("revisions"), revision, problems);
}

} // namespace

std::optional<Problem> checkJob(const Job& job) {
  Problems problems;
  checkJobAt(job, FilePlace{}, false, problems);
  return problems.first();
}

} // namespace sillwright
