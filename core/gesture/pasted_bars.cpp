#include "core/gesture/pasted_bars.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/edit/operations.h"
#include "core/edit/text_table.h"
#include "core/gesture/placing.h"
#include "core/model/layout.h"

namespace sillwright {

namespace {

struct Line {
  int line = 1;
  std::string mark; // empty: a new bar
  double station = 0;
};

Problem inLine(int line, std::string message) {
  return {"line " + std::to_string(line), std::move(message)};
}

const Bar* barMarked(const WallLine& wall, std::string_view mark) {
  for (const Bar& bar : wall.bars)
    if (bar.mark == mark)
      return &bar;
  return nullptr;
}

// Mark and station; a blank parts them, too, where what stands before it is a bar of the wall.
Result<std::vector<std::string>> cellsOf(const TextRow& row, const WallLine& wall) {
  std::vector<std::string> cells = row.cells;
  while (cells.size() > 1 && cells.back().empty())
    cells.pop_back();
  if (cells.size() > 2)
    return inLine(row.line, "expected a station, or a mark and a station");
  if (cells.size() == 2)
    return cells;
  const std::size_t blank = cells[0].find(' ');
  if (blank != std::string::npos && barMarked(wall, std::string_view(cells[0]).substr(0, blank)))
    return std::vector<std::string>{cells[0].substr(0, blank), cells[0].substr(blank + 1)};
  return std::vector<std::string>{"", cells[0]};
}

Result<Line> read(const TextRow& row, const Job& job, const WallLine& wall) {
  const auto cells = cellsOf(row, wall);
  if (!cells)
    return cells.problem();
  const auto station = parseLength((*cells)[1], job.units);
  if (!station)
    return inLine(row.line, station.problem().text());
  const double length = wallLength(job, wall);
  if (*station < -tolerance::same || *station > length + tolerance::same)
    return inLine(row.line, printLength(*station, job.units) + " is outside the wall, which is " +
                                printLength(length, job.units) + " long");
  const std::string& mark = (*cells)[0];
  const Bar* bar = mark.empty() ? nullptr : barMarked(wall, mark);
  if (!mark.empty() && !bar)
    return inLine(row.line, "there is no bar " + mark + " on wall " + wall.mark);
  if (bar && bar->run != BarRun::Upright)
    return inLine(row.line, mark + " does not stand upright");
  return Line{row.line, mark, *station};
}

// Moved along the wall only: it leans as it did.
BarPlace standingAt(BarPlace place, double station) {
  const double by = station - place.a.s;
  place.a.s += by;
  place.b.s += by;
  return place;
}

const Bar* nearestUpright(const WallLine& wall, double station) {
  const Bar* nearest = nullptr;
  for (const Bar& bar : wall.bars)
    if (bar.run == BarRun::Upright &&
        (!nearest || std::abs(placeOf(bar).a.s - station) < std::abs(placeOf(*nearest).a.s - station)))
      nearest = &bar;
  return nearest;
}

Bar newBarAt(const Job& job, const WallLayout& layout, double station) {
  Bar bar = std::get<Bar>(*newPiece(job, layout, "bar:upright", station, 0));
  if (const Bar* like = nearestUpright(*layout.wall, station)) {
    bar.size = like->size;
    bar.planned.a.d = like->planned.a.d;
    bar.planned.b.d = like->planned.b.d;
  }
  bar.found = bar.planned;
  return bar;
}

std::string stepName(int added, int found) {
  const auto counted = [](int count, const char* one, const char* several) {
    return std::to_string(count) + (count == 1 ? one : several);
  };
  if (found == 0)
    return "Paste " + counted(added, " bar as found", " bars as found");
  if (added == 0)
    return "Paste where " + counted(found, " bar was found", " bars were found");
  return "Paste where " + counted(found + added, " bar was found", " bars were found");
}

} // namespace

Result<PastedBars> pasteBars(const Job& job, Id wall, std::string_view text) {
  const auto line = job.walls.findPointer(wall);
  if (!line)
    return Problem{"", "there is no wall to put bars on"};
  const WallLayout layout = layOut(job, line);
  std::vector<Line> lines;
  std::map<std::string, int> named; // in which line
  for (const TextRow& row : readTextTable(text)) {
    Result<Line> one = read(row, job, *line);
    if (!one)
      return one.problem();
    if (!one->mark.empty())
      if (const auto [before, isNew] = named.insert({one->mark, one->line}); !isNew)
        return inLine(one->line, one->mark + " is in line " + std::to_string(before->second) + " already");
    lines.push_back(*std::move(one));
  }
  if (lines.empty())
    return Problem{"", "there is no text to paste"};
  PastedBars pasted;
  pasted.job = job;
  for (const Line& each : lines) {
    if (each.mark.empty()) {
      auto [next, id] = addPiece(pasted.job, wall, newBarAt(job, layout, each.station));
      pasted.job = std::move(next);
      pasted.bars.push_back({wall, id});
      ++pasted.added;
      continue;
    }
    Bar bar = *barMarked(*line, each.mark);
    bar.found = standingAt(placeOf(bar), each.station);
    pasted.job = replacePiece(pasted.job, wall, bar);
    pasted.bars.push_back({wall, bar.id});
    ++pasted.found;
  }
  pasted.name = stepName(pasted.added, pasted.found);
  return pasted;
}

} // namespace sillwright
