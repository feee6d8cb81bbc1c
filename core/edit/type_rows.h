// The tables behind edit/types: one row a field. Keys are the names of the fields in job files, so that a fault of a
// type finds its row.
#pragma once

#include <cmath>

#include "core/edit/field_makers.h"
#include "core/edit/type_words.h"

namespace sillwright {

std::vector<FieldRow<StrapType>> rowsOf(const FieldPlace& place, const StrapType& type);
std::vector<FieldRow<BoltType>> rowsOf(const FieldPlace& place, const BoltType& type);
std::vector<FieldRow<RodType>> rowsOf(const FieldPlace& place, const RodType& type);
std::vector<FieldRow<WasherType>> rowsOf(const FieldPlace& place, const WasherType& type);
std::vector<FieldRow<WallEndMark>> rowsOf(const FieldPlace& place, const WallEndMark& mark);

namespace field_makers {

// A length shown as finely as it is stored; get(item) is a reference to it.
template <class Item, class Get>
FieldRow<Item> exactRow(const FieldPlace& place, Field field, Get get, Allowed allowed = sizes) {
  FieldRow<Item> row = measuredRow<Item>(
      place, std::move(field), [=](const Item& item) { return get(item); },
      [=](Item& item, double value) { get(item) = value; }, allowed, true);
  row.text = [=, style = place.job->units](const Item& item) { return exactMeasure(get(item), style); };
  return row;
}

template <class Item>
FieldRow<Item> exactRow(const FieldPlace& place, Field field, double Item::*member, Allowed allowed = sizes) {
  return exactRow<Item>(place, std::move(field), [=](auto& item) -> auto& { return item.*member; }, allowed);
}

struct NumbersAllowed {
  double from = 0;
  double to = 0;
  const char* wrong = "";
  bool whole = false;
};

// get(item) is the number, put(item, value) sets it.
template <class Item, class Get, class Put>
FieldRow<Item> countRow(Field field, NumbersAllowed allowed, Get get, Put put) {
  field.kind = FieldKind::Number;
  return {std::move(field), [=](const Item& item) { return plainDigits(get(item)); },
          [=](Item& item, std::string_view typed) -> std::string {
            const auto value = readPlainNumber(typed);
            if (!value || *value < allowed.from || *value > allowed.to || (allowed.whole && *value != std::floor(*value)))
              return allowed.wrong;
            put(item, *value);
            return {};
          }};
}

inline Load poundsFromPlans(const char* key, const char* title) {
  return {key, title, "lb, from the plans; empty: not said", "lb", 1'000'000};
}

// Anything with words of its own; get(item) is a reference to it.
template <class Item, class Get, class Print, class Parse>
FieldRow<Item> wordedRow(Field field, Get get, Print write, Parse read) {
  field.kind = FieldKind::Text;
  return {std::move(field), [=](const Item& item) { return write(get(item)); },
          [=](Item& item, std::string_view typed) -> std::string {
            auto value = read(typed);
            if (!value)
              return value.problem().text();
            get(item) = *value;
            return {};
          }};
}

// Said once among the types of a kind.
template <class Type> FieldRow<Type> nameRow(const std::vector<Type>& types) {
  return checked(textRow("name", "name", &Type::name), [&types](const Type& type) -> std::string {
    if (type.name.find_first_not_of(' ') == std::string::npos)
      return "must not be empty";
    for (const Type& other : types)
      if (other.id != type.id && other.name == type.name)
        return "another type of this kind has this name";
    return {};
  });
}

template <class Type> FieldRow<Type> noteRow() {
  FieldRow<Type> row = textRow("note", "note", &Type::note);
  row.field.note = "where its numbers come from";
  return row;
}

} // namespace field_makers

} // namespace sillwright
