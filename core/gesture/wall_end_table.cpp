#include "core/gesture/wall_end_table.h"

#include <algorithm>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/edit/fields.h"
#include "core/edit/operations.h"
#include "core/edit/text_table.h"
#include "core/gesture/wall_end_heads.h"
#include "core/rules/wording.h"

namespace sillwright {

namespace {

constexpr int finest = 64; // as in the fields of the card

PieceRef panelOf(const WallEnd& end) {
  return {end.wall, end.panel};
}

std::string marksOf(const Job& job) {
  std::string all;
  for (const WallEndMark& row : *job.marks)
    all += (all.empty() ? "" : ", ") + row.mark;
  return all.empty() ? "none" : all + " or none";
}

Problem asCell(EndCell cell, std::string message) {
  return {std::string(headOf(cell)), std::move(message)};
}

Result<Job> setMark(const Job& job, const WallEnd& end, std::string_view typed) {
  const bool none = typed.empty() || typed == noMark;
  if (!none && !findMark(job, typed))
    return asCell(EndCell::Mark, "expected a mark of the plan's schedule: " + marksOf(job));
  return setField(job, panelOf(end), end.end == Side::Left ? "leftMark" : "rightMark", none ? noMark : typed);
}

Result<Job> setRodStation(const Job& job, const WallEnd& end, std::string_view typed) {
  const auto station = parseLength(typed, job.units);
  if (!station)
    return station.problem();
  const double length = wallLength(job, *job.walls.find(end.wall));
  if (*station < -tolerance::same || *station > length + tolerance::same)
    return Problem{"", "is outside the wall"};
  return movePieces(job, std::vector<PieceRef>{{end.wall, end.hardware}}, *station - *end.station);
}

} // namespace

std::string_view headOf(EndCell cell) {
  return cell == EndCell::Mark ? "mark" : cell == EndCell::Column ? "column" : "at";
}

bool canSet(const WallEnd& end, EndCell cell) {
  return cell == EndCell::Mark || (cell == EndCell::Column ? static_cast<bool>(end.column) : end.station.has_value());
}

std::string cellText(const Job& job, const WallEnd& end, EndCell cell) {
  switch (cell) {
  case EndCell::Mark:
    return end.mark.empty() ? std::string(noMark) : end.mark;
  case EndCell::Column:
    return end.columnMakeUp;
  case EndCell::Station:
    return end.station ? printLength(*end.station, job.units, finest) : std::string();
  }
  return {};
}

Result<Job> setCell(const Job& job, const WallEnd& end, EndCell cell, std::string_view typed) {
  if (!canSet(end, cell))
    return asCell(cell, cell == EndCell::Column ? "no column stands at this end"
                                                : "neither strap nor rod stands at this end");
  if (typed == cellText(job, end, cell))
    return job;
  Result<Job> changed = job;
  if (cell == EndCell::Mark)
    changed = setMark(job, end, typed);
  else if (cell == EndCell::Column)
    changed = setField(job, {end.wall, end.column}, "makeUp", typed);
  else if (const WallLine* wall = job.walls.find(end.wall); wall && findIn(wall->rods, end.hardware))
    changed = setRodStation(job, end, typed);
  else
    changed = setField(job, {end.wall, end.hardware}, "station", typed);
  return changed ? changed : Result<Job>(asCell(cell, parseWords(changed.problem())));
}

// ---- rows as text -----------------------------------------------------------------------------------------------

std::string parseWords(const Problem& problem) {
  const bool ofTyping = problem.place.starts_with("character ");
  return ofTyping ? problem.text() : problem.message;
}

std::string endsAsText(const Job& job, std::span<const WallEnd> ends) {
  std::vector<std::string> cells;
  for (const EndHead head : copiedHeads)
    cells.emplace_back(nameOf(head));
  std::string all = writeTextRow(cells) + "\n";
  for (const WallEnd& end : ends) {
    cells = {end.wallMark,
             end.panelMark,
             end.end == Side::Left ? "left" : "right",
             cellText(job, end, EndCell::Mark),
             cellText(job, end, EndCell::Column),
             end.hardware ? end.hardwareMark + " " + end.hardwareKind : "none",
             cellText(job, end, EndCell::Station),
             end.worst ? std::string(word(*end.worst)) : "clear"};
    all += writeTextRow(cells) + "\n";
  }
  return all;
}

} // namespace sillwright
