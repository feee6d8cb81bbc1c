#include "core/edit/types.h"

#include <algorithm>

#include "core/edit/operations.h"
#include "core/edit/type_rows.h"
#include "core/model/hardware_check.h"

namespace sillwright {

namespace {

FieldPlace placeOf(const Job& job) { return {&job, nullptr, 0}; }

// Calls visit(list, kind) for each list of types.
template <class Types, class Visit> void forEachTypes(Types& types, Visit&& visit) {
  visit(types.straps, ListedKind::Strap);
  visit(types.bolts, ListedKind::Bolt);
  visit(types.rods, ListedKind::Rod);
  visit(types.washers, ListedKind::Washer);
}

// ---- faults, said at the field that was typed ---------------------------------------------------------------------

std::string keyOf(const HardwareFault& fault) {
  std::string key;
  for (const HardwareStep& step : fault.path)
    if (!step.field.empty())
      key += (key.empty() ? "" : ".") + std::string(step.field);
  return key;
}

// "point 3 " of a profile, "row 2 " of nails.
std::string itemWords(const HardwareFault& fault) {
  if (fault.path.empty() || !fault.path.back().field.empty())
    return {};
  const bool profile = fault.path.front().field == "profile";
  return (profile ? "point " : "row ") + std::to_string(fault.path.back().item + 1) + " ";
}

bool isPartOf(std::string_view key, std::string_view whole) {
  return key == whole || (key.starts_with(whole) && key[whole.size()] == '.');
}

template <class Item>
std::string faultWords(const HardwareFault& fault, const std::vector<FieldRow<Item>>& rows, std::string_view typedKey) {
  const std::string key = keyOf(fault);
  const auto about = [&](std::string_view rowKey) { return isPartOf(key, rowKey) || isPartOf(rowKey, key); };
  const std::string words = itemWords(fault) + fault.message;
  if (about(typedKey))
    return words;
  for (const FieldRow<Item>& row : rows)
    if (about(row.field.key))
      return row.field.title + ": " + words;
  return words;
}

// ---- what else a job would not hold -------------------------------------------------------------------------------

// The first bolt of the type that stands out as far as it is long.
std::string tooShort(const Job& job, const BoltType& type) {
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    for (const Bolt& bolt : job.walls[i].bolts)
      if (bolt.type == type.id && bolt.projection >= type.length)
        return "is too short for bolt " + bolt.mark + " on wall " + job.walls[i].mark + ", which stands out " +
               printMeasure(bolt.projection, job.units);
  return {};
}

template <class Item> std::string clash(const Job& job, const Item& item) {
  if constexpr (std::is_same_v<Item, BoltType>)
    return tooShort(job, item);
  else
    return {};
}

// The problem, or nothing when the item holds the new value.
template <class Item>
std::optional<Problem> setIn(const Job& job, Item& item, std::string_view key, std::string_view typed) {
  const auto rows = rowsOf(placeOf(job), item);
  for (const FieldRow<Item>& row : rows) {
    if (row.field.key != key)
      continue;
    if (typed == row.text(item)) // what is shown may be rounded: typing it again changes nothing
      return std::nullopt;
    std::string wrong = row.set(item, typed);
    if (wrong.empty())
      if (const auto fault = faultOf(item))
        wrong = faultWords(*fault, rows, key);
    if (wrong.empty() && key == "length")
      wrong = clash(job, item);
    return wrong.empty() ? std::nullopt : std::optional(Problem{row.field.title, wrong});
  }
  return Problem{std::string(key), "there is no such field here"};
}

template <class Item> std::vector<Field> shown(const Job& job, const Item& item) {
  std::vector<Field> fields;
  for (const FieldRow<Item>& row : rowsOf(placeOf(job), item)) {
    Field field = row.field;
    field.text = row.text(item);
    fields.push_back(std::move(field));
  }
  return fields;
}

// ---- marks --------------------------------------------------------------------------------------------------------

// Panels bear marks by name.
Job renamedInPanels(Job job, const std::string& before, const std::string& after) {
  std::vector<WallLine> changed;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    WallLine wall = job.walls[i];
    bool bears = false;
    for (Panel& panel : wall.panels)
      for (std::string* end : {&panel.leftMark, &panel.rightMark})
        if (*end == before) {
          *end = after;
          bears = true;
        }
    if (bears)
      changed.push_back(std::move(wall));
  }
  for (WallLine& wall : changed)
    job.walls.replace(std::move(wall));
  return job;
}

Result<Job> setMarkField(const Job& job, Id id, std::string_view key, std::string_view typed) {
  std::vector<WallEndMark> marks = *job.marks;
  WallEndMark& mark = *findIn(marks, id);
  const std::string before = mark.mark;
  if (auto problem = setIn(job, mark, key, typed))
    return *problem;
  const std::string after = mark.mark;
  Job next = job;
  next.marks = Shared<std::vector<WallEndMark>>(std::move(marks));
  return before == after ? next : renamedInPanels(std::move(next), before, after);
}

} // namespace

// ---- what is there ------------------------------------------------------------------------------------------------

std::vector<Listed> listed(const Job& job) {
  std::vector<Listed> all;
  forEachTypes(*job.types, [&](const auto& list, ListedKind kind) {
    for (const auto& type : list)
      all.push_back({kind, type.id, type.name});
  });
  for (const WallEndMark& mark : *job.marks)
    all.push_back({ListedKind::Mark, mark.id, mark.mark});
  return all;
}

std::optional<Listed> findListed(const Job& job, Id id) {
  for (Listed& each : listed(job))
    if (each.id == id)
      return std::move(each);
  return std::nullopt;
}

std::vector<Field> listedFields(const Job& job, Id id) {
  std::vector<Field> fields;
  forEachTypes(*job.types, [&](const auto& list, ListedKind) {
    if (const auto* type = findIn(list, id))
      fields = shown(job, *type);
  });
  if (const auto* mark = findIn(*job.marks, id))
    fields = shown(job, *mark);
  return fields;
}

Result<Job> setListedField(const Job& job, Id id, std::string_view key, std::string_view typed) {
  if (findIn(*job.marks, id))
    return setMarkField(job, id, key, typed);
  HardwareTypes types = *job.types;
  std::optional<Problem> problem = Problem{std::string(key), "it is not in the list any more"};
  forEachTypes(types, [&](auto& list, ListedKind) {
    if (auto* type = findIn(list, id))
      problem = setIn(job, *type, key, typed);
  });
  return problem ? Result<Job>(*problem) : Result<Job>(setTypes(job, std::move(types)));
}

} // namespace sillwright
