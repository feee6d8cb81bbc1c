// Fields of a strap type, from its plate down to its hook and up to its nails.
#include "core/edit/type_rows.h"

#include "core/standards/fasteners.h"

namespace sillwright {

using namespace field_makers;

namespace {

constexpr Allowed fromNothing = sizesOrNone;

// The name of a nail of the standard brings its diameter and length.
FieldRow<StrapType> nailRow() {
  return {{"nails.nail", "nail", "a common nail, such as 10d common, brings its size", FieldKind::Text, {}, {}},
          [](const StrapType& type) { return type.nails.nail; },
          [](StrapType& type, std::string_view typed) -> std::string {
            type.nails.nail = std::string(typed);
            if (const NailSize* nail = commonNail(typed)) {
              type.nails.nailDiameter = nail->diameter;
              type.nails.nailLength = nail->length;
            }
            return {};
          }};
}

template <class Part>
FieldRow<StrapType> nailLength(const FieldPlace& place, const char* key, const char* title, const char* note,
                               Part NailPattern::*member) {
  return exactRow<StrapType>(
      place, {key, title, note, {}, {}, {}}, [=](auto& type) -> auto& { return type.nails.*member; }, fromNothing);
}

void addPlate(Rows<StrapType>& rows, const FieldPlace& place) {
  const LengthStyle style = place.job->units;
  rows.push_back(exactRow(place, {"plateWidth", "plate width", "", {}, {}, {}}, &StrapType::plateWidth));
  rows.push_back(exactRow(place, {"plateThickness", "plate thickness", "", {}, {}, {}}, &StrapType::plateThickness));
  rows.push_back(exactRow(place, {"exposedLength", "exposed", "above the joint line", {}, {}, {}}, &StrapType::exposedLength));
  rows.push_back(wordedRow<StrapType>(
      {"profile", "in the concrete", "a point a line, from the joint line to the hook's tip: how far in from the form, how far down",
       {}, {}, {}},
      [](auto& type) -> auto& { return type.profile; },
      [=](const std::vector<ProfilePoint>& profile) { return printProfile(profile, style); },
      [=](std::string_view typed) { return parseProfile(typed, style); }));
}

void addNails(Rows<StrapType>& rows, const FieldPlace& place) {
  const LengthStyle style = place.job->units;
  rows.push_back(nailRow());
  rows.push_back(nailLength(place, "nails.nailDiameter", "nail diameter", "", &NailPattern::nailDiameter));
  rows.push_back(nailLength(place, "nails.nailLength", "nail length", "", &NailPattern::nailLength));
  rows.push_back(wordedRow<StrapType>(
      {"nails.rows", "nail rows", "off the centre line of the plate", {}, {}, {}},
      [](auto& type) -> auto& { return type.nails.rows; },
      [=](const std::vector<double>& each) { return printNailRows(each, style); },
      [=](std::string_view typed) { return parseNailRows(typed, style); }));
  rows.push_back(toggleRow<StrapType>(
      "nails.staggered", "staggered", [](const StrapType& type) { return type.nails.staggered; },
      [](StrapType& type, bool on) { type.nails.staggered = on; }));
  rows.back().field.note = "row by row, going up";
  rows.push_back(countRow<StrapType>(
      {"nails.count", "nails", "in all; if not staggered, in a row", {}, {}, {}},
      {0, 1000, "expected a whole number of nails from 0 to 1000", true},
      [](const StrapType& type) { return double(type.nails.count); },
      [](StrapType& type, double value) { type.nails.count = static_cast<int>(value); }));
  rows.push_back(nailLength(place, "nails.first", "first nail", "above the joint line", &NailPattern::first));
  rows.push_back(nailLength(place, "nails.spacing", "nail spacing", "up the plate", &NailPattern::spacing));
}

void addPlacing(Rows<StrapType>& rows, const FieldPlace& place) {
  rows.push_back(exactRow(place, {"edgeMinimum", "edge, at least", "plate to an end or corner of concrete", {}, {}, {}},
                          &StrapType::edgeMinimum, fromNothing));
  rows.push_back(exactRow(place, {"edgeTarget", "edge, aimed for", "", {}, {}, {}}, &StrapType::edgeTarget, fromNothing));
  rows.push_back(exactRow(place, {"jointTolerance", "joint, give or take", "off the pour line", {}, {}, {}},
                          &StrapType::jointTolerance, fromNothing));
  rows.push_back(exactRow<StrapType>(
      place, {"hangerReach.from", "hangs on forms from", "form top above the pour line", {}, {}, {}},
      [](auto& type) -> auto& { return type.hangerReach.from; }, offsets));
  rows.push_back(exactRow<StrapType>(
      place, {"hangerReach.to", "to", "form top above the pour line", {}, {}, {}},
      [](auto& type) -> auto& { return type.hangerReach.to; }, offsets));
  rows.push_back(wordedRow<StrapType>({"columns", "columns", "it may be nailed to", {}, {}, {}},
                                      [](auto& type) -> auto& { return type.columns; }, printColumns, parseColumns));
  rows.push_back(loadRow(poundsFromPlans("statedCapacity", "stated capacity"), &StrapType::statedCapacity));
}

} // namespace

std::vector<FieldRow<StrapType>> rowsOf(const FieldPlace& place, const StrapType&) {
  Rows<StrapType> rows{nameRow(place.job->types->straps)};
  addPlate(rows, place);
  addNails(rows, place);
  addPlacing(rows, place);
  rows.push_back(noteRow<StrapType>());
  return rows;
}

} // namespace sillwright
