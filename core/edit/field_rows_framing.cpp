// Fields of what stands on the concrete: sills, openings, columns, panels.
#include <algorithm>

#include "core/edit/field_makers.h"
#include "core/model/sill_reach.h"

namespace sillwright {

using namespace field_makers;

namespace {

std::string wrongSplices(const Sill& sill) {
  double before = sill.from;
  for (const double splice : sill.splices) {
    if (splice <= sill.from || splice >= sill.to)
      return "a splice would stand outside the sill";
    if (splice <= before)
      return "two splices would stand at one station";
    before = splice;
  }
  return {};
}

// Stations separated by commas, in any order; blank for none.
FieldRow<Sill> splicesRow(const FieldPlace& place) {
  const LengthStyle style = place.job->units;
  const auto text = [=](const Sill& sill) {
    std::string written;
    for (const double splice : sill.splices)
      written += (written.empty() ? "" : ", ") + printLength(splice, style, shownTo);
    return written;
  };
  const auto set = [=](Sill& sill, std::string_view typed) -> std::string {
    std::vector<double> splices;
    const bool none = typed.find_first_not_of(" \t") == typed.npos;
    while (!none) {
      const std::size_t comma = typed.find(',');
      const auto station = parseLength(typed.substr(0, comma), style);
      if (!station)
        return station.problem().text();
      splices.push_back(*station);
      if (comma == typed.npos)
        break;
      typed.remove_prefix(comma + 1);
    }
    std::sort(splices.begin(), splices.end());
    sill.splices = std::move(splices);
    return {};
  };
  return checked<Sill>({{"splices", "splices", "from the hook", FieldKind::Text, {}, {}}, text, set}, wrongSplices);
}

Allowed sillRange(const FieldPlace& place) {
  const Interval reach = sillReach(placeOf(*place.job, *place.wall));
  return between(reach.from, reach.to, "is outside the wall");
}

} // namespace

std::vector<FieldRow<Sill>> rowsOf(const FieldPlace& place, const Sill&) {
  Rows<Sill> rows{markRow<Sill>(place)};
  addStretch(rows, place, sillRange(place));
  for (auto row = rows.begin() + 1; row != rows.end(); ++row)
    *row = checked(std::move(*row), wrongSplices);
  rows.push_back(splicesRow(place));
  rows.push_back(nominalRow<Sill>("nominal", "size", [](auto& sill) -> auto& { return sill.nominal; }));
  rows.push_back(textRow("species", "species", &Sill::species));
  return rows;
}

std::vector<FieldRow<Opening>> rowsOf(const FieldPlace& place, const Opening& item) {
  Rows<Opening> rows{markRow<Opening>(place)};
  rows.push_back(choiceRow("kind", "kind", &Opening::kind,
                           {{"door", OpeningKind::Door},
                            {"garage door", OpeningKind::GarageDoor},
                            {"window", OpeningKind::Window}}));
  addStretch(rows, place, insideWall(place));
  const auto wrongEnd = [allowed = insideWall(place)](const Opening& opening) -> std::string {
    if (opening.to - opening.from < tolerance::tapeMark)
      return "must be more than nothing";
    return within(opening.to, allowed) ? "" : "takes the right end outside the wall";
  };
  rows.push_back(checked(measuredRow<Opening>(
                             place, {"width", "width", "the left end stays", {}, {}, {}},
                             [](const Opening& opening) { return opening.to - opening.from; },
                             [](Opening& opening, double width) { opening.to = opening.from + width; },
                             between(-1e6, 1e6, "is too far out"), false),
                         wrongEnd));
  const auto wrongHead = [](const Opening& opening) -> std::string {
    return opening.headHeight > opening.sillHeight ? "" : "the head must stay above the sill";
  };
  if (item.kind == OpeningKind::Window || item.sillHeight != 0)
    rows.push_back(checked(
        lengthRow(place, {"sill", "sill height", "above the pour line", {}, {}, {}}, &Opening::sillHeight), wrongHead));
  rows.push_back(checked(
      lengthRow(place, {"head", "head height", "above the pour line", {}, {}, {}}, &Opening::headHeight), wrongHead));
  rows.push_back(lengthRow(place, {"header", "header depth", "", {}, {}, {}}, &Opening::headerDepth, sizesOrNone));
  return rows;
}

std::vector<FieldRow<Column>> rowsOf(const FieldPlace& place, const Column&) {
  const auto wrong = [place](const Column& column) -> std::string {
    for (const Rod& rod : place.wall->rods)
      if (rod.column == column.id && !within(*stationBeside(&column, rod), insideWall(place)))
        return "puts its rod " + rod.mark + " outside the wall";
    return {};
  };
  const FieldRow<Column> makeUp{{"makeUp", "make-up", "", FieldKind::Text, {}, {}},
                                [](const Column& item) { return print(item.makeUp); },
                                [](Column& item, std::string_view typed) -> std::string {
                                  const auto read = parseMakeUp(typed);
                                  if (!read || !dressed(read->nominal.thickness) || !dressed(read->nominal.width) ||
                                      read->plies < 1 || read->plies > 9)
                                    return "expected a make-up such as 4x6 or 2-2x6";
                                  item.makeUp = *read;
                                  return {};
                                }};
  return {markRow<Column>(place), checked(stationRow(place, &Column::station), wrong), checked(makeUp, wrong),
          choiceRow("role", "role", &Column::role,
                    {{"king", ColumnRole::King}, {"trimmer", ColumnRole::Trimmer}, {"post", ColumnRole::Post}}),
          lengthRow(place, {"leeway", "leeway", "either way", {}, {}, {}}, &Column::leeway, sizesOrNone)};
}

namespace {

// Plan's mark at an end of the panel.
FieldRow<Panel> endMarkRow(const FieldPlace& place, const char* key, const char* title, std::string Panel::*member) {
  std::vector<std::pair<std::string, std::string>> named{{"none", ""}};
  for (const WallEndMark& row : *place.job->marks)
    named.push_back({row.mark, row.mark});
  return choiceRow(key, title, member, std::move(named));
}

Load plfFromPlans(const char* key, const char* title) {
  return {key, title, "plf, from the plans", "plf", 100000};
}

} // namespace

std::vector<FieldRow<Panel>> rowsOf(const FieldPlace& place, const Panel&) {
  Rows<Panel> rows{markRow<Panel>(place)};
  addStretch(rows, place, insideWall(place));
  rows.push_back(lengthRow(place, {"height", "height", "", {}, {}, {}}, &Panel::height, sizes));
  rows.push_back(loadRow(plfFromPlans("unitShear", "nominal shear"), &Panel::unitShear));
  rows.push_back(loadRow(plfFromPlans("designShear", "shear to carry"), &Panel::designShear));
  rows.push_back(loadRow(plfFromPlans("deadLoad", "dead load"), &Panel::deadLoad));
  rows.push_back(optionalLengthRow(place, {"lever", "hold-downs apart", "on the plans", {}, {}, {}}, &Panel::lever, sizes));
  rows.push_back(choiceRow(
      "sheathing", "sheathing", &Panel::sheathing,
      {{"outside", Sheathing::Outside}, {"inside", Sheathing::Inside}, {"both", Sheathing::Both}}));
  rows.push_back(endMarkRow(place, "leftMark", "left end", &Panel::leftMark));
  rows.push_back(endMarkRow(place, "rightMark", "right end", &Panel::rightMark));
  return rows;
}

} // namespace sillwright
