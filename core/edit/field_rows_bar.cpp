// Fields of a bar: its planned place, and the place it was found at.
#include "core/edit/field_makers.h"

namespace sillwright {

using namespace field_makers;

namespace {

using Get = double (*)(const BarPlace&);
using Put = void (*)(BarPlace&, double);

struct PlaceRow {
  const char* key; // "station" is "plannedStation" and "foundStation"
  const char* title;
  const char* note;
  Get get;
  Put put;
  bool measure;
};

// Both ends by as much, so that the bar keeps the way it runs.
template <double Point3::*axis> void shiftTo(BarPlace& place, double value) {
  const double run = place.b.*axis - place.a.*axis;
  place.a.*axis = value;
  place.b.*axis = value + run;
}
template <double Point3::*axis> double first(const BarPlace& place) { return place.a.*axis; }
template <double Point3::*axis> double last(const BarPlace& place) { return place.b.*axis; }
template <double Point3::*axis> double run(const BarPlace& place) { return place.b.*axis - place.a.*axis; }
template <double Point3::*axis> void putFirst(BarPlace& place, double value) { place.a.*axis = value; }
template <double Point3::*axis> void putLast(BarPlace& place, double value) { place.b.*axis = value; }
template <double Point3::*axis> void putRun(BarPlace& place, double value) { place.b.*axis = place.a.*axis + value; }

constexpr auto s = &Point3::s;
constexpr auto d = &Point3::d;
constexpr auto z = &Point3::z;

constexpr PlaceRow upright[] = {
    {"Station", "at", "from the hook", first<s>, shiftTo<s>, false},
    {"Depth", "in", "from the outside face", first<d>, shiftTo<d>, true},
    {"Bottom", "bottom", "above the pour line", first<z>, putFirst<z>, true},
    {"Top", "top", "above the pour line", last<z>, putLast<z>, true},
    {"LeanAlong", "lean along", "of its top, + right", run<s>, putRun<s>, true},
    {"LeanIn", "lean in", "of its top, + inward", run<d>, putRun<d>, true},
};
constexpr PlaceRow along[] = {
    {"Station", "from", "from the hook", first<s>, putFirst<s>, false},
    {"To", "to", "from the hook", last<s>, putLast<s>, false},
    {"Depth", "in", "from the outside face", first<d>, shiftTo<d>, true},
    {"Height", "height", "above the pour line", first<z>, shiftTo<z>, true},
    {"RunIn", "runs in", "right end against left", run<d>, putRun<d>, true},
    {"Rise", "rises", "right end against left", run<z>, putRun<z>, true},
};

std::string wrongRun(BarRun way, const BarPlace& place) {
  if (way == BarRun::Upright)
    return place.b.z - place.a.z > tolerance::same ? "" : "the bottom must stay below the top";
  return place.b.s - place.a.s > tolerance::same ? "" : "the left end must stay left of the right end";
}

constexpr Allowed anywhere{-1e6, 1e6}; // bars may run past the wall

FieldRow<Bar> plannedRow(const FieldPlace& place, const PlaceRow& row) {
  Field field{std::string("planned") + row.key, std::string("planned ") + row.title, row.note, {}, {}, {}};
  return checked(measuredRow<Bar>(
                     place, std::move(field), [get = row.get](const Bar& bar) { return get(bar.planned); },
                     [put = row.put](Bar& bar, double value) { put(bar.planned, value); }, anywhere, row.measure),
                 [](const Bar& bar) { return wrongRun(bar.run, bar.planned); });
}

// Empty until the bar was measured; the first value measured starts from the planned place. An emptied station takes
// the found place away.
FieldRow<Bar> foundRow(const FieldPlace& place, const PlaceRow& row) {
  Field field{std::string("found") + row.key, std::string("found ") + row.title, row.note, {}, {}, {}};
  FieldRow<Bar> made = checked(measuredRow<Bar>(
                                   place, std::move(field), [get = row.get](const Bar& bar) { return get(*bar.found); },
                                   [put = row.put](Bar& bar, double value) {
                                     if (!bar.found)
                                       bar.found = bar.planned;
                                     put(*bar.found, value);
                                   },
                                   anywhere, row.measure),
                               [](const Bar& bar) { return wrongRun(bar.run, *bar.found); });
  const bool clears = std::string_view(row.key) == "Station";
  made.text = [text = made.text](const Bar& bar) { return bar.found ? text(bar) : std::string(); };
  made.set = [clears, set = made.set](Bar& bar, std::string_view typed) {
    if (!clears || !typed.empty())
      return set(bar, typed);
    bar.found.reset();
    return std::string();
  };
  return made;
}

// The way a bar runs is given with the piece and stays.
FieldRow<Bar> runRow(BarRun way) {
  const char* name = way == BarRun::Upright ? "upright" : "along";
  return choiceRow("run", "runs", &Bar::run, {{name, way}});
}

} // namespace

std::vector<FieldRow<Bar>> rowsOf(const FieldPlace& place, const Bar& bar) {
  std::vector<std::pair<std::string, int>> sizesOfBars;
  for (int size = 3; size <= 8; ++size)
    sizesOfBars.push_back({"No. " + std::to_string(size), size});
  Rows<Bar> rows{markRow<Bar>(place), choiceRow("size", "size", &Bar::size, std::move(sizesOfBars)), runRow(bar.run)};
  const auto& table = bar.run == BarRun::Upright ? upright : along;
  for (const PlaceRow& row : table)
    rows.push_back(plannedRow(place, row));
  for (const PlaceRow& row : table)
    rows.push_back(foundRow(place, row));
  return rows;
}

} // namespace sillwright
