// Fields of what is set in the form: steps, straps, bolts, rods, grade shots.
#include "core/edit/field_rows.h"

#include "core/edit/field_makers.h"

namespace sillwright {

using namespace field_makers;

std::vector<FieldRow<PourStep>> rowsOf(const FieldPlace& place, const PourStep&) {
  Rows<PourStep> rows{markRow<PourStep>(place)};
  addStretch(rows, place, insideWall(place));
  const auto wrong = [stem = place.wall->stemHeight](const PourStep& step) -> std::string {
    return step.height <= -stem ? "goes down to the bottom of the wall" : "";
  };
  rows.push_back(
      checked(lengthRow(place, {"height", "height", "above the pour line", {}, {}, {}}, &PourStep::height), wrong));
  return rows;
}

namespace {

// Distance of the strap's centre line from the centre of its column, + to the right.
FieldRow<Strap> fromColumnRow(const FieldPlace& place) {
  const auto columnOf = [wall = place.wall](const Strap& strap) { return findIn(wall->columns, strap.column); };
  FieldRow<Strap> row = measuredRow<Strap>(
      place, {"fromColumn", "from column", "of its centre, + right", {}, {}, {}},
      [=](const Strap& strap) { return strap.station - columnOf(strap)->station; },
      [=](Strap& strap, double value) { strap.station = columnOf(strap)->station + value; }, offsets, true);
  row = checked(std::move(row), [allowed = insideWall(place)](const Strap& strap) -> std::string {
    return within(strap.station, allowed) ? "" : allowed.above;
  });
  row.text = [=, text = row.text](const Strap& strap) { return columnOf(strap) ? text(strap) : std::string(); };
  row.set = [=, set = row.set](Strap& strap, std::string_view typed) {
    return columnOf(strap) ? set(strap, typed) : std::string("the strap belongs to no column");
  };
  return row;
}

} // namespace

std::vector<FieldRow<Strap>> rowsOf(const FieldPlace& place, const Strap&) {
  return {markRow<Strap>(place),
          stationRow(place, &Strap::station),
          fromColumnRow(place),
          lengthRow(place, {"joint", "joint", "above the pour line", {}, {}, {}}, &Strap::heightOffset),
          typeRow("type", "type", &Strap::type, place.job->types->straps, false),
          typeRow("column", "column", &Strap::column, place.wall->columns, true)};
}

std::vector<FieldRow<Bolt>> rowsOf(const FieldPlace& place, const Bolt&) {
  const auto wrong = [types = &*place.job->types](const Bolt& bolt) -> std::string {
    const BoltType* type = findBoltType(*types, bolt.type);
    return type && bolt.projection >= type->length ? "the bolt is not long enough to stand out so far" : "";
  };
  return {markRow<Bolt>(place),
          stationRow(place, &Bolt::station),
          depthRow<Bolt>(place),
          checked(lengthRow(place, {"projection", "projection", "above the pour line", {}, {}, {}}, &Bolt::projection),
                  wrong),
          choiceRow("hook", "hook", &Bolt::hook,
                    {{"inward", HookDirection::Inward},
                     {"outward", HookDirection::Outward},
                     {"left", HookDirection::Left},
                     {"right", HookDirection::Right}}),
          typeRow("washer", "washer", &Bolt::washer, place.job->types->washers, true),
          lengthRow(place, {"washerShift", "washer slid", "in its slot, + in or right", {}, {}, {}}, &Bolt::washerShift),
          toggleRow<Bolt>(
              "cutWasher", "cut washer", [](const Bolt& bolt) { return bolt.cutWasher; },
              [](Bolt& bolt, bool on) { bolt.cutWasher = on; }),
          checked(typeRow("type", "type", &Bolt::type, place.job->types->bolts, false), wrong)};
}

std::vector<FieldRow<Rod>> rowsOf(const FieldPlace& place, const Rod&) {
  const auto wrong = [place](const Rod& rod) -> std::string {
    const auto station = stationBeside(findIn(place.wall->columns, rod.column), rod);
    return station && within(*station, insideWall(place)) ? "" : "puts the rod outside the wall";
  };
  return {markRow<Rod>(place),
          checked(typeRow("column", "column", &Rod::column, place.wall->columns, false), wrong),
          checked(choiceRow("side", "side", &Rod::side, {{"left", Side::Left}, {"right", Side::Right}}), wrong),
          checked(lengthRow(place, {"offset", "off the column", "from its face", {}, {}, {}}, &Rod::offset), wrong),
          depthRow<Rod>(place),
          lengthRow(place, {"projection", "projection", "above the pour line", {}, {}, {}}, &Rod::projection),
          typeRow("type", "type", &Rod::type, place.job->types->rods, false)};
}

std::vector<FieldRow<GradeShot>> rowsOf(const FieldPlace& place, const GradeShot&) {
  return {markRow<GradeShot>(place), stationRow(place, &GradeShot::station),
          lengthRow(place, {"reading", "reading", "above the pour line", {}, {}, {}}, &GradeShot::reading),
          optionalLengthRow(place, {"formWidth", "form width", "as taped", {}, {}, {}}, &GradeShot::width, sizes)};
}

} // namespace sillwright
