// Fields of a wall itself.
#include "core/edit/field_makers.h"

namespace sillwright {

using namespace field_makers;

namespace {

FieldRow<WallLine> wallMarkRow(const FieldPlace& place) {
  const auto wrong = [job = place.job](const WallLine& wall) -> std::string {
    if (wall.mark.empty())
      return "must not be empty";
    for (std::size_t i = 0; i < job->walls.size(); ++i)
      if (job->walls[i].id != wall.id && job->walls[i].mark == wall.mark)
        return "another wall has this mark";
    return {};
  };
  return checked(textRow("mark", "mark", &WallLine::mark), wrong);
}

std::string wrongThickness(const WallLine& wall) {
  const auto outside = [&](double depth) { return depth > wall.thickness + tolerance::same; };
  for (const Bolt& bolt : wall.bolts)
    if (outside(bolt.depth))
      return "leaves bolt " + bolt.mark + " outside the concrete";
  for (const Rod& rod : wall.rods)
    if (outside(rod.depth))
      return "leaves rod " + rod.mark + " outside the concrete";
  return {};
}

std::string wrongStem(const WallLine& wall) {
  for (const PourStep& step : wall.steps)
    if (step.height <= -wall.stemHeight)
      return "step " + step.mark + " would go down to the bottom of the wall";
  return {};
}

// A length inside a part of the wall, such as its footing.
template <class Part>
FieldRow<WallLine> partRow(const FieldPlace& place, Field field, Part part, Allowed allowed) {
  return measuredRow<WallLine>(
      place, std::move(field), [=](const WallLine& wall) { return part(wall); },
      [=](WallLine& wall, double value) { part(wall) = value; }, allowed, true);
}

void addConcrete(Rows<WallLine>& rows, const FieldPlace& place) {
  rows.push_back(choiceRow("kind", "kind", &WallLine::kind,
                           {{"stem wall", EdgeKind::StemWall}, {"thickened edge", EdgeKind::ThickenedEdge}}));
  rows.push_back(checked(lengthRow(place, {"thickness", "thickness", "", {}, {}, {}}, &WallLine::thickness, sizes),
                         wrongThickness));
  rows.push_back(
      checked(lengthRow(place, {"stem", "stem height", "", {}, {}, {}}, &WallLine::stemHeight, sizes), wrongStem));
  rows.push_back(partRow(place, {"footingWidth", "footing width", "0: none", {}, {}, {}},
                         [](auto& wall) -> auto& { return wall.footing.width; }, sizesOrNone));
  rows.push_back(partRow(place, {"footingDepth", "footing depth", "", {}, {}, {}},
                         [](auto& wall) -> auto& { return wall.footing.depth; }, sizesOrNone));
  rows.push_back(partRow(place, {"footingProjection", "footing out", "past the outside face", {}, {}, {}},
                         [](auto& wall) -> auto& { return wall.footing.projection; }, offsets));
}

void addForms(Rows<WallLine>& rows, const FieldPlace& place) {
  rows.push_back(partRow(place, {"formOutside", "outside form", "thickness", {}, {}, {}},
                         [](auto& wall) -> auto& { return wall.forms.outside; }, sizesOrNone));
  rows.push_back(partRow(place, {"formInside", "inside form", "thickness", {}, {}, {}},
                         [](auto& wall) -> auto& { return wall.forms.inside; }, sizesOrNone));
  rows.push_back(lengthRow(place, {"formTop", "form top", "above the pour line", {}, {}, {}}, &WallLine::formTop));
}

void addStuds(Rows<WallLine>& rows, const FieldPlace& place, bool on) {
  rows.push_back(toggleRow<WallLine>(
      "studs", "studs", [](const WallLine& wall) { return wall.studs.has_value(); },
      [](WallLine& wall, bool wanted) {
        if (wanted != wall.studs.has_value())
          wall.studs = wanted ? std::optional(StudLayout{}) : std::nullopt;
      }));
  if (!on)
    return;
  rows.push_back(partRow(place, {"studSpacing", "stud spacing", "on centre", {}, {}, {}},
                         [](auto& wall) -> auto& { return wall.studs->spacing; },
                         {1, 1200, "must be one inch or more", "is too far out"}));
  rows.push_back(choiceRow<WallLine, Side>(
      "studFrom", "studs from", {{"left", Side::Left}, {"right", Side::Right}},
      [](const WallLine& wall) { return wall.studs->from; },
      [](WallLine& wall, Side side) { wall.studs->from = side; }));
  rows.push_back(partRow(place, {"studFirst", "first stud", "its centre from there", {}, {}, {}},
                         [](auto& wall) -> auto& { return wall.studs->first; }, offsets));
  rows.push_back(
      nominalRow<WallLine>("studSize", "stud size", [](auto& wall) -> auto& { return wall.studs->nominal; }));
}

} // namespace

std::vector<FieldRow<WallLine>> rowsOf(const FieldPlace& place, const WallLine& item) {
  Rows<WallLine> rows{wallMarkRow(place), textRow("title", "title", &WallLine::title)};
  addConcrete(rows, place);
  addForms(rows, place);
  rows.push_back(lengthRow(place, {"inset", "sill inset", "from the outside face", {}, {}, {}}, &WallLine::sillInset));
  rows.push_back(
      lengthRow(place, {"height", "wall height", "above the pour line", {}, {}, {}}, &WallLine::wallHeight, sizes));
  const std::vector<std::pair<std::string, EndFraming>> framing{{"runs by", EndFraming::RunsBy},
                                                                {"butts", EndFraming::Butts}};
  rows.push_back(choiceRow("start", "left end", &WallLine::startFraming, framing));
  rows.push_back(choiceRow("end", "right end", &WallLine::endFraming, framing));
  addStuds(rows, place, item.studs.has_value());
  return rows;
}

} // namespace sillwright
