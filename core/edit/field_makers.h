// What the tables of fields are made of: one row for a length, a choice, a name … of an item. Rows keep to what a job
// file may hold: a value that its reader would refuse is refused here.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/edit/field_rows.h"
#include "core/edit/numbers.h"
#include "core/standards/lumber.h"

namespace sillwright::field_makers {

inline constexpr int shownTo = 64; // a field shows what is stored, to the finest fraction that can be typed

template <class Item> using Rows = std::vector<FieldRow<Item>>;

// Inches. Lengths that may be typed, the same as in a job file, and what is said of others.
struct Allowed {
  double from = -1200;
  double to = 1200;
  const char* below = "is too far out";
  const char* above = "is too far out";
};
inline constexpr Allowed offsets{};
inline constexpr Allowed sizes{1.0 / 1024, 1200, "must be more than nothing"};
inline constexpr Allowed sizesOrNone{0, 1200, "must not be less than nothing"};

// get(item) is the length, put(item, value) sets it.
template <class Item, class Get, class Put>
FieldRow<Item> measuredRow(const FieldPlace& place, Field field, Get get, Put put, Allowed allowed, bool measure) {
  const LengthStyle style = place.job->units;
  field.kind = FieldKind::Length;
  const auto text = [=](const Item& item) {
    return measure ? printMeasure(get(item), style, shownTo) : printLength(get(item), style, shownTo);
  };
  const auto set = [=](Item& item, std::string_view typed) -> std::string {
    const auto value = parseLength(typed, style);
    if (!value)
      return value.problem().text();
    if (*value < allowed.from)
      return allowed.below;
    if (*value > allowed.to)
      return allowed.above;
    put(item, *value);
    return {};
  };
  return {std::move(field), text, set};
}

template <class Item>
FieldRow<Item> lengthRow(const FieldPlace& place, Field field, double Item::*member, Allowed allowed = offsets,
                         bool measure = true) {
  return measuredRow<Item>(
      place, std::move(field), [=](const Item& item) { return item.*member; },
      [=](Item& item, double value) { item.*member = value; }, allowed, measure);
}

// A length that may be left out: the empty text.
// Forces from the plans; empty where they say nothing.
struct Load {
  const char* key;
  const char* title;
  const char* note;
  const char* unit; // "lb"
  double most;
};
template <class Item> FieldRow<Item> loadRow(const Load& load, std::optional<double> Item::*member) {
  return {{load.key, load.title, load.note, FieldKind::Number, {}, {}},
          [=](const Item& item) { return item.*member ? plainDigits(*(item.*member)) : std::string(); },
          [=](Item& item, std::string_view typed) -> std::string {
            const auto value = readLoad(typed);
            if (!value && !typed.empty())
              return std::string("expected a number of ") + load.unit + ", or nothing";
            if (value && (*value < 0 || *value > load.most))
              return "must be from 0 to " + plainDigits(load.most) + " " + load.unit;
            item.*member = value;
            return {};
          }};
}

template <class Item>
FieldRow<Item> optionalLengthRow(const FieldPlace& place, Field field, std::optional<double> Item::*member,
                                 Allowed allowed = offsets) {
  FieldRow<Item> row = measuredRow<Item>(
      place, std::move(field), [=](const Item& item) { return (item.*member).value_or(0); },
      [=](Item& item, double value) { item.*member = value; }, allowed, true);
  row.text = [=, text = row.text](const Item& item) { return item.*member ? text(item) : std::string(); };
  row.set = [=, set = row.set](Item& item, std::string_view typed) -> std::string {
    if (!typed.empty())
      return set(item, typed);
    (item.*member).reset();
    return {};
  };
  return row;
}

inline Allowed between(double from, double to, const char* wrong) {
  return {from - tolerance::same, to + tolerance::same, wrong, wrong};
}
inline Allowed insideWall(const FieldPlace& place) { return between(0, place.length, "is outside the wall"); }
inline Allowed acrossWall(const FieldPlace& place) {
  return between(0, place.wall->thickness, "is outside the concrete");
}

template <class Item> FieldRow<Item> stationRow(const FieldPlace& place, double Item::*member) {
  return lengthRow(place, {"station", "at", "from the hook", {}, {}, {}}, member, insideWall(place), false);
}

template <class Item> FieldRow<Item> depthRow(const FieldPlace& place) {
  return lengthRow(place, {"depth", "in", "from the outside face", {}, {}, {}}, &Item::depth, acrossWall(place));
}

inline bool within(double value, const Allowed& allowed) { return value >= allowed.from && value <= allowed.to; }

// Station of a rod that stands beside a column; nothing where the wall has no such column.
inline std::optional<double> stationBeside(const Column* column, const Rod& rod) {
  if (!column)
    return std::nullopt;
  const double away = alongWall(column->makeUp) / 2 + rod.offset;
  return column->station + (rod.side == Side::Right ? away : -away);
}

// A row that is refused, too, where wrong(item as it would be) is a sentence.
template <class Item, class Wrong> FieldRow<Item> checked(FieldRow<Item> row, Wrong wrong) {
  row.set = [set = std::move(row.set), wrong](Item& item, std::string_view typed) {
    Item changed = item;
    std::string sentence = set(changed, typed);
    if (sentence.empty())
      sentence = wrong(changed);
    if (sentence.empty())
      item = std::move(changed);
    return sentence;
  };
  return row;
}

template <class Item> FieldRow<Item> textRow(const char* key, const char* title, std::string Item::*member) {
  return {{key, title, "", FieldKind::Text, {}, {}},
          [=](const Item& item) { return item.*member; },
          [=](Item& item, std::string_view typed) {
            item.*member = std::string(typed);
            return std::string{};
          }};
}

// A mark is said once among the pieces of a kind, on all walls of the job.
template <class Item> FieldRow<Item> markRow(const FieldPlace& place) {
  const auto wrong = [job = place.job](const Item& item) -> std::string {
    if (item.mark.empty())
      return "must not be empty";
    bool used = false;
    for (std::size_t i = 0; i < job->walls.size() && !used; ++i)
      forEachList(job->walls[i], [&](const auto& list) {
        if constexpr (std::is_same_v<typename std::decay_t<decltype(list)>::value_type, Item>)
          for (const Item& other : list)
            used = used || (other.id != item.id && other.mark == item.mark);
      });
    return used ? "another piece of this kind has this mark" : "";
  };
  return checked(textRow("mark", "mark", &Item::mark), wrong);
}

// The start of a stretch stays left of its end.
template <class Item> void addStretch(Rows<Item>& rows, const FieldPlace& place, Allowed allowed) {
  const auto wrong = [](const Item& item) -> std::string {
    return item.to - item.from < tolerance::tapeMark ? "the left end must stay left of the right end" : "";
  };
  rows.push_back(
      checked(lengthRow(place, {"from", "from", "from the hook", {}, {}, {}}, &Item::from, allowed, false), wrong));
  rows.push_back(
      checked(lengthRow(place, {"to", "to", "from the hook", {}, {}, {}}, &Item::to, allowed, false), wrong));
}

// One of named values.
template <class Item, class Value, class Get, class Put>
FieldRow<Item> choiceRow(const char* key, const char* title, std::vector<std::pair<std::string, Value>> named, Get get,
                         Put put) {
  Field field{key, title, "", FieldKind::Choice, {}, {}};
  for (const auto& choice : named)
    field.choices.push_back(choice.first);
  const auto text = [=](const Item& item) {
    for (const auto& [name, value] : named)
      if (value == get(item))
        return name;
    return std::string{};
  };
  const auto set = [=](Item& item, std::string_view typed) -> std::string {
    for (const auto& [name, value] : named)
      if (name == typed) {
        put(item, value);
        return {};
      }
    return "is not one of the choices";
  };
  return {std::move(field), text, set};
}

template <class Item, class Value>
FieldRow<Item> choiceRow(const char* key, const char* title, Value Item::*member,
                         std::vector<std::pair<std::string, Value>> named) {
  return choiceRow<Item, Value>(
      key, title, std::move(named), [=](const Item& item) { return item.*member; },
      [=](Item& item, const Value& value) { item.*member = value; });
}

// The types of a shelf, or the columns of the wall.
template <class Item, class Type>
FieldRow<Item> typeRow(const char* key, const char* title, Id Item::*member, const std::vector<Type>& types,
                       bool orNone) {
  std::vector<std::pair<std::string, Id>> named;
  if (orNone)
    named.push_back({"none", {}});
  for (const Type& type : types) {
    if constexpr (std::is_same_v<Type, Column>)
      named.push_back({type.mark, type.id});
    else
      named.push_back({type.name, type.id});
  }
  return choiceRow(key, title, member, std::move(named));
}

// get(item) is "yes" or "no" for a toggle.
template <class Item, class Get, class Put>
FieldRow<Item> toggleRow(const char* key, const char* title, Get get, Put put) {
  return {{key, title, "", FieldKind::Toggle, {}, {"yes", "no"}},
          [=](const Item& item) { return std::string(get(item) ? "yes" : "no"); },
          [=](Item& item, std::string_view typed) -> std::string {
            if (typed != "yes" && typed != "no")
              return "is not one of the choices";
            put(item, typed == "yes");
            return {};
          }};
}

// A size of lumber; nominal(item) is a reference to it.
template <class Item, class Get> FieldRow<Item> nominalRow(const char* key, const char* title, Get nominal) {
  return {{key, title, "", FieldKind::Text, {}, {}},
          [=](const Item& item) { return print(nominal(item)); },
          [=](Item& item, std::string_view typed) -> std::string {
            const auto read = parseNominal(typed);
            if (!read || !dressed(read->thickness) || !dressed(read->width))
              return "expected a size such as 3x6";
            nominal(item) = *read;
            return {};
          }};
}

} // namespace sillwright::field_makers
