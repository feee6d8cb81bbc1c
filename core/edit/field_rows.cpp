#include "core/edit/field_rows.h"

#include <array>
#include <cmath>

#include "core/base/length.h"
#include "core/base/tolerance.h"

namespace sillwright {

namespace {

constexpr int shownTo = 64; // a field shows what is stored, to the finest fraction that can be typed

template <class Item> using Rows = std::vector<FieldRow<Item>>;

struct Range {
  double from = -1e5;
  double to = 1e5;
  const char* wrong = "is too far out";
};
constexpr Range notNegative{0, 1e5, "must not be less than nothing"};

template <class Item, class Get>
FieldRow<Item> lengthRow(const FieldPlace& place, const char* key, const char* title, const char* note, Get get,
                         Range range = {}, bool measure = true) {
  const LengthStyle style = place.job->units;
  const auto text = [=](const Item& item) {
    const double value = get(const_cast<Item&>(item));
    return measure ? printMeasure(value, style, shownTo) : printLength(value, style, shownTo);
  };
  const auto set = [=](Item& item, std::string_view typed) -> std::string {
    const auto value = parseLength(typed, style);
    if (!value)
      return value.problem().text();
    if (*value < range.from - tolerance::same || *value > range.to + tolerance::same)
      return range.wrong;
    get(item) = *value;
    return {};
  };
  return {{key, title, note, FieldKind::Length, {}, {}}, text, set};
}

template <class Item, class Get>
FieldRow<Item> stationRow(const FieldPlace& place, const char* key, const char* title, const char* note, Get get) {
  return lengthRow<Item>(place, key, title, note, get, {0, place.length, "is outside the wall"}, false);
}

template <class Item> FieldRow<Item> textRow(const char* key, const char* title, std::string Item::*member) {
  return {{key, title, "", FieldKind::Text, {}, {}},
          [=](const Item& item) { return item.*member; },
          [=](Item& item, std::string_view typed) {
            item.*member = std::string(typed);
            return std::string{};
          }};
}

template <class Item> FieldRow<Item> markRow(const FieldPlace& place) {
  FieldRow<Item> row = textRow("mark", "mark", &Item::mark);
  row.set = [wall = place.wall](Item& item, std::string_view typed) -> std::string {
    if (typed.empty())
      return "must not be empty";
    bool used = false;
    forEachList(*wall, [&](const auto& list) {
      for (const auto& other : list)
        used = used || (other.id != item.id && other.mark == typed);
    });
    if (used)
      return "another piece of this wall has this mark";
    item.mark = std::string(typed);
    return {};
  };
  return row;
}

// The start of a stretch stays left of its end.
template <class Item> void addStretch(Rows<Item>& rows, const FieldPlace& place) {
  rows.push_back(stationRow<Item>(place, "from", "from", "from the hook", [](Item& i) -> double& { return i.from; }));
  rows.push_back(stationRow<Item>(place, "to", "to", "from the hook", [](Item& i) -> double& { return i.to; }));
  for (std::size_t i = rows.size() - 2; i < rows.size(); ++i)
    rows[i].set = [set = rows[i].set](Item& item, std::string_view typed) {
      Item changed = item;
      std::string wrong = set(changed, typed);
      if (wrong.empty() && changed.to - changed.from < tolerance::tapeMark)
        wrong = "the left end must stay left of the right end";
      if (wrong.empty())
        item = changed;
      return wrong;
    };
}

template <class Item, class Enum, std::size_t count>
FieldRow<Item> enumRow(const char* key, const char* title, Enum Item::*member,
                       const std::array<const char*, count>& names) {
  return {{key, title, "", FieldKind::Choice, {}, {names.begin(), names.end()}},
          [=](const Item& item) { return std::string(names[static_cast<std::size_t>(item.*member)]); },
          [=](Item& item, std::string_view typed) -> std::string {
            for (std::size_t i = 0; i < count; ++i)
              if (typed == names[i]) {
                item.*member = static_cast<Enum>(i);
                return {};
              }
            return "is not one of the choices";
          }};
}

template <class Item, class Type>
FieldRow<Item> typeRow(const char* key, const char* title, Id Item::*member, const std::vector<Type>& types,
                       bool orNone) {
  std::vector<std::pair<std::string, Id>> names;
  if (orNone)
    names.push_back({"none", {}});
  for (const Type& type : types) {
    if constexpr (std::is_same_v<Type, Column>)
      names.push_back({type.mark, type.id});
    else
      names.push_back({type.name, type.id});
  }
  std::vector<std::string> choices;
  for (const auto& name : names)
    choices.push_back(name.first);
  return {{key, title, "", FieldKind::Choice, {}, choices},
          [=](const Item& item) {
            for (const auto& [name, id] : names)
              if (id == item.*member)
                return name;
            return std::string{};
          },
          [=](Item& item, std::string_view typed) -> std::string {
            for (const auto& [name, id] : names)
              if (name == typed) {
                item.*member = id;
                return {};
              }
            return "is not one of the choices";
          }};
}

} // namespace

std::vector<FieldRow<PourStep>> rowsOf(const FieldPlace& place, const PourStep&) {
  Rows<PourStep> rows{markRow<PourStep>(place)};
  addStretch(rows, place);
  rows.push_back(lengthRow<PourStep>(place, "height", "height", "above the pour line",
                                     [](PourStep& i) -> double& { return i.height; }));
  return rows;
}

std::vector<FieldRow<Sill>> rowsOf(const FieldPlace& place, const Sill&) {
  Rows<Sill> rows{markRow<Sill>(place)};
  addStretch(rows, place);
  rows.push_back({{"nominal", "size", "", FieldKind::Text, {}, {}},
                  [](const Sill& item) { return print(item.nominal); },
                  [](Sill& item, std::string_view typed) -> std::string {
                    const auto nominal = parseNominal(typed);
                    if (!nominal)
                      return "expected a size such as 3x6";
                    item.nominal = *nominal;
                    return {};
                  }});
  rows.push_back(textRow("species", "species", &Sill::species));
  return rows;
}

std::vector<FieldRow<Opening>> rowsOf(const FieldPlace& place, const Opening& item) {
  Rows<Opening> rows{markRow<Opening>(place)};
  rows.push_back(enumRow("kind", "kind", &Opening::kind, std::array{"door", "garage door", "window"}));
  addStretch(rows, place);
  if (item.kind == OpeningKind::Window)
    rows.push_back(lengthRow<Opening>(place, "sill", "sill height", "above the pour line",
                                      [](Opening& i) -> double& { return i.sillHeight; }));
  rows.push_back(lengthRow<Opening>(place, "head", "head height", "above the pour line",
                                    [](Opening& i) -> double& { return i.headHeight; }));
  rows.push_back(lengthRow<Opening>(place, "header", "header depth", "",
                                    [](Opening& i) -> double& { return i.headerDepth; }, notNegative));
  return rows;
}

std::vector<FieldRow<Column>> rowsOf(const FieldPlace& place, const Column&) {
  return {markRow<Column>(place),
          stationRow<Column>(place, "station", "at", "from the hook", [](Column& i) -> double& { return i.station; }),
          {{"makeUp", "make-up", "", FieldKind::Text, {}, {}},
           [](const Column& item) { return print(item.makeUp); },
           [](Column& item, std::string_view typed) -> std::string {
             const auto makeUp = parseMakeUp(typed);
             if (!makeUp)
               return "expected a make-up such as 4x6 or 2-2x6";
             item.makeUp = *makeUp;
             return {};
           }},
          enumRow("role", "role", &Column::role, std::array{"king", "trimmer", "post"}),
          lengthRow<Column>(place, "leeway", "leeway", "either way", [](Column& i) -> double& { return i.leeway; },
                            notNegative)};
}

std::vector<FieldRow<Panel>> rowsOf(const FieldPlace& place, const Panel&) {
  Rows<Panel> rows{markRow<Panel>(place)};
  addStretch(rows, place);
  rows.push_back(lengthRow<Panel>(place, "height", "height", "", [](Panel& i) -> double& { return i.height; },
                                  notNegative));
  rows.push_back(enumRow("sheathing", "sheathing", &Panel::sheathing, std::array{"outside", "inside", "both"}));
  rows.push_back(textRow("leftMark", "left end", &Panel::leftMark));
  rows.push_back(textRow("rightMark", "right end", &Panel::rightMark));
  return rows;
}

std::vector<FieldRow<Strap>> rowsOf(const FieldPlace& place, const Strap&) {
  return {markRow<Strap>(place),
          stationRow<Strap>(place, "station", "at", "from the hook", [](Strap& i) -> double& { return i.station; }),
          lengthRow<Strap>(place, "joint", "joint", "above the pour line",
                           [](Strap& i) -> double& { return i.heightOffset; }),
          typeRow("type", "type", &Strap::type, place.job->types->straps, false),
          typeRow("column", "column", &Strap::column, place.wall->columns, true)};
}

std::vector<FieldRow<Bolt>> rowsOf(const FieldPlace& place, const Bolt&) {
  return {markRow<Bolt>(place),
          stationRow<Bolt>(place, "station", "at", "from the hook", [](Bolt& i) -> double& { return i.station; }),
          lengthRow<Bolt>(place, "depth", "in", "from the outside face", [](Bolt& i) -> double& { return i.depth; }),
          lengthRow<Bolt>(place, "projection", "projection", "above the pour line",
                          [](Bolt& i) -> double& { return i.projection; }),
          enumRow("hook", "hook", &Bolt::hook, std::array{"inward", "outward", "left", "right"}),
          typeRow("washer", "washer", &Bolt::washer, place.job->types->washers, true),
          typeRow("type", "type", &Bolt::type, place.job->types->bolts, false)};
}

std::vector<FieldRow<Rod>> rowsOf(const FieldPlace& place, const Rod&) {
  return {markRow<Rod>(place),
          typeRow("column", "column", &Rod::column, place.wall->columns, false),
          enumRow("side", "side", &Rod::side, std::array{"left", "right"}),
          lengthRow<Rod>(place, "offset", "off the column", "from its face",
                         [](Rod& i) -> double& { return i.offset; }, notNegative),
          lengthRow<Rod>(place, "depth", "in", "from the outside face", [](Rod& i) -> double& { return i.depth; }),
          lengthRow<Rod>(place, "projection", "projection", "above the pour line",
                         [](Rod& i) -> double& { return i.projection; }),
          typeRow("type", "type", &Rod::type, place.job->types->rods, false)};
}

std::vector<FieldRow<Bar>> rowsOf(const FieldPlace& place, const Bar&) { return {markRow<Bar>(place)}; }

std::vector<FieldRow<GradeShot>> rowsOf(const FieldPlace& place, const GradeShot&) {
  return {markRow<GradeShot>(place),
          stationRow<GradeShot>(place, "station", "at", "from the hook",
                                [](GradeShot& i) -> double& { return i.station; }),
          lengthRow<GradeShot>(place, "reading", "reading", "above the pour line",
                               [](GradeShot& i) -> double& { return i.reading; })};
}

std::vector<FieldRow<WallLine>> rowsOf(const FieldPlace& place, const WallLine&) {
  const auto row = [&](const char* key, const char* title, const char* note, auto get, Range range) {
    return lengthRow<WallLine>(place, key, title, note, get, range);
  };
  return {textRow("mark", "mark", &WallLine::mark),
          textRow("title", "title", &WallLine::title),
          row("thickness", "thickness", "", [](WallLine& w) -> double& { return w.thickness; },
              {tolerance::tapeMark, 1e5, "must be more than nothing"}),
          row("stem", "stem height", "", [](WallLine& w) -> double& { return w.stemHeight; }, notNegative),
          row("formTop", "form top", "above the pour line", [](WallLine& w) -> double& { return w.formTop; }, {}),
          row("inset", "sill inset", "from the outside face", [](WallLine& w) -> double& { return w.sillInset; }, {}),
          row("height", "wall height", "above the pour line", [](WallLine& w) -> double& { return w.wallHeight; },
              notNegative),
          enumRow("start", "left end", &WallLine::startFraming, std::array{"runs by", "butts"}),
          enumRow("end", "right end", &WallLine::endFraming, std::array{"runs by", "butts"}),
          enumRow("kind", "kind", &WallLine::kind, std::array{"stem wall", "thickened edge"})};
}

} // namespace sillwright
