// Fields of bolt, rod and washer types and of the plan's wall-end marks.
#include "core/edit/type_rows.h"

#include <algorithm>

namespace sillwright {

using namespace field_makers;

namespace {

template <class Type> FieldRow<Type> threadsRow() {
  return countRow<Type>({"threadsPerInch", "threads", "in an inch", {}, {}, {}},
                        {1, 80, "expected a number of threads from 1 to 80", false},
                        [](const Type& type) { return type.threadsPerInch; },
                        [](Type& type, double value) { type.threadsPerInch = value; });
}

template <class Item> FieldRow<Item> optionalWords(FieldRow<Item> row, void (*clear)(Item&), bool (*there)(const Item&)) {
  row.text = [text = row.text, there](const Item& item) { return there(item) ? text(item) : std::string(); };
  row.set = [set = row.set, clear](Item& item, std::string_view typed) -> std::string {
    if (!typed.empty())
      return set(item, typed);
    clear(item);
    return {};
  };
  return row;
}

// A strap or a rod: a mark calls for one of the two, or for neither.
struct CalledFor {
  Id strap;
  Id rod;
  bool operator==(const CalledFor&) const = default;
};

FieldRow<WallEndMark> hardwareRow(const HardwareTypes& types) {
  std::vector<std::pair<std::string, CalledFor>> named{{"none", {}}};
  for (const StrapType& strap : types.straps)
    named.push_back({strap.name, {strap.id, {}}});
  for (const RodType& rod : types.rods) {
    const auto same = [&](const StrapType& strap) { return strap.name == rod.name; };
    const bool doubled = std::any_of(types.straps.begin(), types.straps.end(), same);
    named.push_back({doubled ? rod.name + " (rod)" : rod.name, {{}, rod.id}});
  }
  FieldRow<WallEndMark> row = choiceRow<WallEndMark, CalledFor>(
      "hardware", "hardware", std::move(named),
      [](const WallEndMark& mark) { return CalledFor{mark.strapType, mark.rodType}; },
      [](WallEndMark& mark, const CalledFor& called) {
        mark.strapType = called.strap;
        mark.rodType = called.rod;
      });
  row.field.note = "strap or rod the plans call for";
  return row;
}

FieldRow<WallEndMark> markNameRow(const FieldPlace& place) {
  FieldRow<WallEndMark> row = checked(
      textRow("mark", "mark", &WallEndMark::mark), [marks = place.job->marks](const WallEndMark& mark) -> std::string {
        if (mark.mark.find_first_not_of(' ') == std::string::npos)
          return "must not be empty";
        for (const WallEndMark& other : *marks)
          if (other.id != mark.id && other.mark == mark.mark)
            return "another line of the schedule has this mark";
        return {};
      });
  row.field.note = "as on the plans";
  return row;
}

FieldRow<WallEndMark> columnRow() {
  FieldRow<WallEndMark> row = wordedRow<WallEndMark>(
      {"column", "column", "make-up; empty: not said", {}, {}, {}}, [](auto& mark) -> auto& { return mark.column; },
      [](const std::optional<MakeUp>& makeUp) { return makeUp ? print(*makeUp) : std::string(); },
      [](std::string_view typed) -> Result<std::optional<MakeUp>> {
        const auto read = parseColumns(typed);
        if (!read || read->size() != 1)
          return Problem{"", "expected a make-up such as 4x6 or 2-2x6, or nothing"};
        return std::optional(read->front());
      });
  return optionalWords<WallEndMark>(std::move(row), [](WallEndMark& mark) { mark.column.reset(); },
                                    [](const WallEndMark& mark) { return mark.column.has_value(); });
}

FieldRow<WallEndMark> sillRow() {
  FieldRow<WallEndMark> row = wordedRow<WallEndMark>(
      {"sill", "sill", "size; empty: not said", {}, {}, {}}, [](auto& mark) -> auto& { return mark.sill; },
      [](const std::optional<Nominal>& nominal) { return nominal ? print(*nominal) : std::string(); },
      [](std::string_view typed) -> Result<std::optional<Nominal>> {
        const auto read = parseNominal(typed);
        if (!read || !dressed(read->thickness) || !dressed(read->width))
          return Problem{"", "expected a size such as 3x6, or nothing"};
        return std::optional(*read);
      });
  return optionalWords<WallEndMark>(std::move(row), [](WallEndMark& mark) { mark.sill.reset(); },
                                    [](const WallEndMark& mark) { return mark.sill.has_value(); });
}

FieldRow<WallEndMark> boltSpacingRow(const FieldPlace& place) {
  FieldRow<WallEndMark> row = optionalLengthRow(
      place, {"boltSpacing", "bolt spacing", "at most; empty: not said", {}, {}, {}}, &WallEndMark::boltSpacing, sizes);
  row.text = [style = place.job->units](const WallEndMark& mark) {
    return mark.boltSpacing ? exactMeasure(*mark.boltSpacing, style) : std::string();
  };
  return row;
}

} // namespace

std::vector<FieldRow<BoltType>> rowsOf(const FieldPlace& place, const BoltType&) {
  return {nameRow(place.job->types->bolts),
          exactRow(place, {"diameter", "diameter", "", {}, {}, {}}, &BoltType::diameter),
          exactRow(place, {"length", "length", "over all, along the shank", {}, {}, {}}, &BoltType::length),
          exactRow(place, {"threadLength", "thread", "from the upper end", {}, {}, {}}, &BoltType::threadLength, sizesOrNone),
          threadsRow<BoltType>(),
          choiceRow("end", "foot", &BoltType::end,
                    {{"L", BoltEnd::L}, {"J", BoltEnd::J}, {"headed", BoltEnd::Headed}}),
          exactRow(place, {"hookLeg", "hook", "L, J: axis to the outside of its tip", {}, {}, {}},
                   &BoltType::hookLeg, sizesOrNone),
          exactRow(place, {"hookReturn", "turns up again", "J only", {}, {}, {}}, &BoltType::hookReturn, sizesOrNone),
          exactRow(place, {"headWidth", "head across", "headed only", {}, {}, {}}, &BoltType::headWidth, sizesOrNone),
          exactRow(place, {"headThickness", "head thick", "headed only", {}, {}, {}}, &BoltType::headThickness, sizesOrNone),
          exactRow(place, {"minimumEmbedment", "embedment, at least", "", {}, {}, {}}, &BoltType::minimumEmbedment,
                   sizesOrNone),
          noteRow<BoltType>()};
}

std::vector<FieldRow<RodType>> rowsOf(const FieldPlace& place, const RodType&) {
  return {nameRow(place.job->types->rods),
          exactRow(place, {"diameter", "diameter", "", {}, {}, {}}, &RodType::diameter),
          exactRow(place, {"embedment", "embedment", "pour line to the bearing of the foot", {}, {}, {}},
                   &RodType::embedment),
          exactRow(place, {"threadLength", "thread", "from the upper end", {}, {}, {}}, &RodType::threadLength, sizesOrNone),
          threadsRow<RodType>(),
          exactRow(place, {"footWidth", "foot across", "square plate or nut; 0: none", {}, {}, {}}, &RodType::footWidth,
                   sizesOrNone),
          exactRow(place, {"footThickness", "foot thick", "", {}, {}, {}}, &RodType::footThickness, sizesOrNone),
          exactRow(place, {"bracketOffset", "off the column", "axis from the face of the column", {}, {}, {}},
                   &RodType::bracketOffset, sizesOrNone),
          typeRow("washer", "washer", &RodType::washer, place.job->types->washers, true),
          noteRow<RodType>()};
}

std::vector<FieldRow<WasherType>> rowsOf(const FieldPlace& place, const WasherType&) {
  const LengthStyle style = place.job->units;
  FieldRow<WasherType> slot{
      {"slot", "slot", "width x length, along or across the wall; empty: none", FieldKind::Text, {}, {}},
      [=](const WasherType& type) { return printSlot(type.slot, style); },
      [=](WasherType& type, std::string_view typed) -> std::string {
        auto read = parseSlot(typed, style);
        if (!read)
          return read.problem().text();
        if (read.value() && type.slot)
          read.value()->extra = type.slot->extra;
        type.slot = *read;
        return {};
      }};
  return {nameRow(place.job->types->washers),
          exactRow(place, {"along", "along the wall", "", {}, {}, {}}, &WasherType::along),
          exactRow(place, {"across", "across the wall", "", {}, {}, {}}, &WasherType::across),
          exactRow(place, {"thickness", "thickness", "", {}, {}, {}}, &WasherType::thickness),
          exactRow(place, {"hole", "round hole", "diameter; 0: none", {}, {}, {}}, &WasherType::hole, sizesOrNone),
          std::move(slot), noteRow<WasherType>()};
}

std::vector<FieldRow<WallEndMark>> rowsOf(const FieldPlace& place, const WallEndMark&) {
  return {markNameRow(place),
          hardwareRow(*place.job->types),
          columnRow(),
          loadRow(poundsFromPlans("requiredCapacity", "required capacity"), &WallEndMark::requiredCapacity),
          sillRow(),
          boltSpacingRow(place)};
}

} // namespace sillwright
