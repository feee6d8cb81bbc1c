#include "ui/sheet/elevation_pages.h"

#include <algorithm>
#include <cmath>

#include "core/drawing/elevation.h"
#include "core/drawing/flag_words.h"
#include "core/drawing/hatch.h"
#include "core/rules/wording.h"
#include "ui/sheet/setting_table.h"
#include "ui/sheet/sheet_notes.h"
#include "ui/sheet/sheet_text.h"

namespace sillwright::sheet {

namespace {

constexpr double wideOpening = 72;   // in: a clear opening from here on is not drawn out between two piers
constexpr double intoOpening = 12;   // in of the opening drawn beside a pier
constexpr double sideMargin = 64;    // pt: hook note and labels beside the drawing
constexpr double dimensionRows = 92; // pt below the concrete
constexpr double earthBelow = 6;     // in
constexpr double largeEnough = 4.5;  // pt per inch: 3/4" = 1'-0", for what is looked at closely
constexpr double leastScale = 3.0;   // pt per inch: 1/2" = 1'-0", below which a wall is broken at match lines

bool holdsHardware(const WallLayout& layout, Interval stretch) {
  for (const StrapBody& strap : layout.straps)
    if (stretch.contains(strap.strap->station))
      return true;
  return std::any_of(layout.anchors.begin(), layout.anchors.end(),
                     [&](const AnchorBody& anchor) { return stretch.contains(anchor.station); });
}

double heightAbove(const WallLayout& layout) {
  double top = 12;
  for (const StrapBody& strap : layout.straps)
    top = std::max(top, strap.plate.z.to);
  return top + 12;
}

// Nothing that is set, and no upright bar, stands so near to a match line there that it or its label were cut off.
bool isClear(const WallLayout& layout, double cut, double beside) {
  const auto away = [&](const Interval& s) { return !grown(s, beside).contains(cut); };
  return std::all_of(layout.straps.begin(), layout.straps.end(),
                     [&](const StrapBody& strap) { return away(strap.plate.s); }) &&
         std::all_of(layout.anchors.begin(), layout.anchors.end(),
                     [&](const AnchorBody& anchor) { return away(around(anchor.station, 3)); }) &&
         std::all_of(layout.bars.begin(), layout.bars.end(),
                     [&](const BarBody& bar) { return bar.bar->run != BarRun::Upright || away(bar.box.s); });
}

// The clear place nearest to where a match line would be.
std::optional<double> clearCut(const WallLayout& layout, double cut, const Interval& allowed, double beside) {
  for (double off = 0; off <= 24; off += 0.5)
    for (const double at : {cut + off, cut - off})
      if (allowed.contains(at) && isClear(layout, at, beside))
        return at;
  return std::nullopt;
}

// So many parts, none longer than `longest`, with match lines about where they would be even, each so far from all
// pieces, in; without that, even. Nothing where that cannot be.
std::optional<std::vector<Interval>> brokenInto(const WallLayout& layout, Interval stations, double longest, int count,
                                                std::optional<double> beside) {
  std::vector<Interval> parts;
  double from = stations.from;
  for (int i = 1; i <= count; ++i) {
    const double even = stations.from + stations.length() * i / count;
    // What is left must still fit into the parts that are left.
    const Interval allowed{std::max(from, stations.to - longest * (count - i)), std::min(from + longest, stations.to)};
    const std::optional<double> to = i == count || !beside ? even : clearCut(layout, even, allowed, *beside);
    if (!to)
      return std::nullopt;
    parts.push_back({from, *to});
    from = *to;
  }
  return parts;
}

// Match lines so that every part is as long as fits, all are about the same, and none goes through a piece: rather one
// part more.
std::vector<Interval> broken(const WallLayout& layout, Interval stations, double longest) {
  const int count = std::max(1, static_cast<int>(std::ceil(stations.length() / longest - 1e-9)));
  for (const int parts : {count, count + 1})
    for (const double beside : {10.0, 6.0}) // room for a label
      if (auto clear = brokenInto(layout, stations, longest, parts, beside))
        return *clear;
  if (auto clear = brokenInto(layout, stations, longest, count, 2.0)) // at least for the piece
    return *clear;
  return *brokenInto(layout, stations, longest, count, std::nullopt);
}

struct Fit {
  Scale scale;
  std::vector<Interval> parts;
};

// The largest scale at which the stretch fits the area; at 1/2" = 1'-0" it is broken rather than made smaller.
Fit fitStretch(const WallLayout& layout, Interval stations, const Bounds& area) {
  const double tall = heightAbove(layout) - layout.bottom + earthBelow;
  const double byHeight = (area.y1 - area.y0 - dimensionRows) / tall;
  const double room = area.x1 - area.x0 - 2 * sideMargin;
  const Scale whole = elevationScale(std::min(byHeight, room / stations.length()));
  if (whole.pointsPerInch >= leastScale)
    return {whole, {stations}};
  const Scale kept = elevationScale(std::min(byHeight, leastScale));
  return {kept, broken(layout, stations, room / kept.pointsPerInch)};
}

double heightOnPage(const WallLayout& layout, double scale) {
  return (heightAbove(layout) - layout.bottom + earthBelow) * scale + dimensionRows;
}

double tableRoom(std::size_t rows) {
  return rows > 0 ? tableHeadHeight + tableRowHeight * static_cast<double>(rows) + 10 : 0;
}

ElevationView viewOf(const WallLayout& layout, Interval part, const Bounds& area, double scale) {
  ElevationView view;
  view.scale = scale;
  const double drawn = part.length() * scale;
  const double left = area.x0 + std::max(sideMargin, (area.x1 - area.x0 - drawn) / 2);
  view.origin.x = left - part.from * scale;
  const double high = heightAbove(layout) * scale;
  const double spare = std::max(0.0, area.y1 - area.y0 - heightOnPage(layout, scale));
  view.origin.y = area.y0 + high + spare / 2;
  return view;
}

std::string partWords(const WallLine& wall, const Stretch& stretch, std::size_t part, std::size_t parts) {
  std::string words = "wall " + wall.mark + (stretch.name.empty() ? "" : ", " + stretch.name);
  if (parts > 1)
    words += ", part " + std::to_string(part + 1) + " of " + std::to_string(parts);
  return words;
}

// The mark stays as it was given, the words become capitals.
std::string stretchTitle(const WallLine& wall, const Stretch& stretch, std::size_t part, std::size_t parts) {
  std::string title = "WALL " + wall.mark;
  for (const char c : partWords(wall, stretch, part, parts).substr(title.size()))
    title += static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
  return title;
}

Draft withoutDrawing(const Draft& draft) {
  Draft like;
  like.title = draft.title;
  like.subject = draft.subject;
  like.note = draft.note;
  return like;
}

ElevationInput partInput(const Job& job, const CheckedWall& wall, Interval part, const Bounds& area,
                         const Scale& scale) {
  ElevationInput input;
  input.job = &job;
  input.wall = &wall;
  input.medium = Medium::Paper;
  input.words = flagWords;
  input.window = area;
  input.view = viewOf(wall.layout, part, area, scale.pointsPerInch);
  const bool whole = part.from <= 1e-6 && part.to >= wall.layout.length - 1e-6;
  if (!whole)
    input.stations = part;
  return input;
}

void drawWallDrawing(Draft& draft, const Job& job, const CheckedWall& wall, Interval part, const Bounds& area,
                     const Scale& scale, NotesInput& notes) {
  const ElevationInput input = partInput(job, wall, part, area, scale);
  const ElevationDrawing drawn = drawElevation(input);
  draft.drawing.add(drawn.drawing);
  for (const PlacedLabel& label : drawn.labels)
    if (label.number > 0)
      notes.numbers[label.request.key] = label.number;
  notes.bars = drawn.bars;
}

// Rows that did not fit below the drawing go to further pages of their own.
void addTablePages(std::vector<Draft>& drafts, const Draft& first, const Table& table, std::size_t from,
                   const PageFrame& frame) {
  while (from < table.rows.size()) {
    Draft draft;
    draft.title = first.title + ", SETTING TABLE";
    draft.subject = first.subject;
    draft.note = first.note;
    const Bounds content = drawHead(draft, frame, "continued");
    const std::size_t fit = std::max<std::size_t>(1, rowsThatFit(content.y1 - content.y0));
    drawTable(draft.drawing, table, from, fit, content.x0, content.y0,
              std::min(content.x1 - content.x0, tableWidth(table) * 1.15));
    from += fit;
    drafts.push_back(std::move(draft));
  }
}

void addStretchPage(std::vector<Draft>& drafts, const Job& job, const CheckedWall& wall, const PageFrame& frame,
                    const Stretch& stretch, std::vector<NotesInput>& later) {
  const WallLine& line = *wall.layout.wall;
  Table table = settingTable(job, wall, stretch.stations);
  const double contentHeight = frame.content.y1 - frame.content.y0 - 36;
  const std::size_t wanted = std::min<std::size_t>(table.rows.size(), rowsThatFit(contentHeight * 0.36));
  const bool besides = frame.width > 1000;
  const double notesWidth = besides ? 252 : 0;
  Bounds area = frame.content;
  area.y0 += 36;
  area.y1 -= tableRoom(wanted);
  area.x1 -= notesWidth > 0 ? notesWidth + 14 : 0;
  const Fit fit = fitStretch(wall.layout, stretch.stations, area);
  const double top = area.y0;
  for (std::size_t p = 0; p < fit.parts.size(); ++p) {
    const Interval part = fit.parts[p];
    if (fit.parts.size() > 1)
      table = settingTable(job, wall, part);
    // The table takes what the drawing leaves.
    const double left = frame.content.y1 - top - heightOnPage(wall.layout, fit.scale.pointsPerInch);
    const std::size_t shown = std::min(table.rows.size(), std::max(wanted, rowsThatFit(left - 10)));
    area.y1 = frame.content.y1 - tableRoom(shown);
    Draft draft;
    draft.title = stretchTitle(line, stretch, p, fit.parts.size());
    draft.subject = line.mark + (stretch.name.empty() ? "" : ", " + stretch.name);
    draft.note = line.title + (line.title.empty() ? "" : ", ") + "seen from outside";
    draft.scale = fit.scale.name;
    drawHead(draft, frame, "seen from outside · " + std::string(fit.scale.name));
    drawScaleBar(draft.drawing, area.x1 - 8, frame.content.y0 + 12, fit.scale.pointsPerInch);
    NotesInput notes{&job, &wall, part, {}, {}, false, {}};
    drawWallDrawing(draft, job, wall, part, area, fit.scale, notes);
    if (shown > 0)
      drawTable(draft.drawing, table, 0, shown, frame.content.x0, area.y1 + 4, area.x1 - frame.content.x0);
    const Draft like = withoutDrawing(draft);
    std::size_t noted = 0;
    if (besides) {
      const Bounds column{area.x1 + 14, frame.content.y0, frame.content.x1, frame.content.y1};
      draft.drawing.line({area.x1 + 7, column.y0}, {area.x1 + 7, column.y1}, Ink::Text, 0.6);
      noted = drawNotes(draft.drawing, notes, column);
    }
    drafts.push_back(std::move(draft));
    addTablePages(drafts, like, table, shown, frame);
    if (besides) {
      addRestOfNotes(drafts, like, notes, noted, frame);
    } else {
      notes.part = partWords(line, stretch, p, fit.parts.size());
      later.push_back(std::move(notes));
    }
  }
}

// Upright bars that no part of the wall shows.
std::vector<std::string> barsOutside(const Job& job, const WallLayout& layout, const std::vector<Stretch>& parts) {
  std::vector<std::string> bars;
  for (const BarBody& bar : layout.bars) {
    const double s = bar.body.a.s;
    const bool shown =
        std::any_of(parts.begin(), parts.end(), [&](const Stretch& part) { return part.stations.contains(s); });
    if (bar.bar->run == BarRun::Upright && !shown)
      bars.push_back(bar.bar->mark + " · " + printLength(s, job.units));
  }
  return bars;
}

// The whole wall small, so that the parts can be seen together.
void addOverview(std::vector<Draft>& drafts, const Job& job, const CheckedWall& wall, const PageFrame& frame,
                 const std::vector<Stretch>& parts, std::vector<NotesInput>& later) {
  const WallLine& line = *wall.layout.wall;
  Draft draft;
  draft.title = "WALL " + line.mark;
  draft.subject = line.mark;
  draft.note = line.title + (line.title.empty() ? "" : ", ") + "seen from outside";
  Bounds area = frame.content;
  area.y0 += 36;
  const double room = area.x1 - area.x0 - 2 * sideMargin;
  const double tall = line.wallHeight + 16 - wall.layout.bottom + earthBelow;
  const auto scaleAbove = [&](double rows) {
    return elevationScale(std::min(room / wall.layout.length, (area.y1 - area.y0 - rows - 50) / tall));
  };
  // Room for the bars' row, too, where that costs no scale.
  constexpr double bothRows = dimensionRows + 34;
  const Scale scale = scaleAbove(dimensionRows);
  const double rows = scaleAbove(bothRows).pointsPerInch == scale.pointsPerInch ? bothRows : dimensionRows;
  draft.scale = scale.name;
  drawHead(draft, frame, "whole wall, seen from outside · " + std::string(scale.name));
  drawScaleBar(draft.drawing, area.x1 - 8, frame.content.y0 + 12, scale.pointsPerInch);
  ElevationInput input;
  input.job = &job;
  input.wall = &wall;
  input.medium = Medium::Paper;
  input.words = flagWords;
  input.window = area;
  input.view.scale = scale.pointsPerInch;
  input.view.origin.x = (area.x0 + area.x1) / 2 - wall.layout.length * scale.pointsPerInch / 2;
  input.view.origin.y = area.y1 - rows - (-wall.layout.bottom + earthBelow) * scale.pointsPerInch;
  ElevationDrawing drawn = drawElevation(input);
  if (!drawn.listed.empty()) { // too little room for labels here: the parts carry them
    input.labels = false;
    drawn = drawElevation(input);
  }
  draft.drawing.add(drawn.drawing);
  std::vector<std::string> between = drawn.bars.empty() ? drawn.bars : barsOutside(job, wall.layout, parts);
  if (!between.empty())
    later.push_back({&job, &wall, {0, wall.layout.length}, {}, std::move(between), true, "wall " + line.mark});
  drafts.push_back(std::move(draft));
}

std::string partName(std::size_t i, std::size_t of) {
  if (of == 2)
    return i == 0 ? "left pier" : "right pier";
  return "part " + std::to_string(i + 1) + " of " + std::to_string(of);
}

} // namespace

bool nothingToSet(const CheckedWall& wall) {
  const WallLayout& layout = wall.layout;
  return layout.straps.empty() && layout.anchors.empty() && layout.bars.empty() && layout.wall->panels.empty() &&
         wall.findings.empty();
}

std::vector<Stretch> stretchesOf(const WallLayout& layout) {
  std::vector<Interval> clear;
  for (const Opening& opening : layout.wall->openings)
    if (opening.kind != OpeningKind::Window && opening.to - opening.from >= wideOpening &&
        !holdsHardware(layout, {opening.from, opening.to}))
      clear.push_back({opening.from, opening.to});
  std::sort(clear.begin(), clear.end(), [](Interval a, Interval b) { return a.from < b.from; });
  std::vector<Stretch> stretches;
  double from = 0;
  for (const Interval& opening : clear) {
    if (opening.from > from)
      stretches.push_back({{from, std::min(opening.from + intoOpening, opening.to)}, ""});
    from = std::max(from, opening.to - intoOpening);
  }
  if (from < layout.length)
    stretches.push_back({{from, layout.length}, ""});
  if (stretches.size() > 1)
    for (std::size_t i = 0; i < stretches.size(); ++i)
      stretches[i].name = partName(i, stretches.size());
  return stretches;
}

double longestPart(const Bounds& area) {
  return (area.x1 - area.x0 - 2 * sideMargin) / largeEnough;
}

DrawnPart drawPart(Drawing& page, const Job& job, const CheckedWall& wall, Interval part, const Bounds& area) {
  const double above = heightAbove(wall.layout), below = earthBelow - wall.layout.bottom;
  const double byLength = (area.x1 - area.x0 - 2 * sideMargin) / part.length();
  DrawnPart drawn;
  drawn.scale = elevationScale(std::min((area.y1 - area.y0) / (above + below), byLength));
  ElevationInput input = partInput(job, wall, part, area, drawn.scale);
  input.labels = false;
  input.runningDimensions = false;
  const double spare = area.y1 - area.y0 - (above + below) * drawn.scale.pointsPerInch;
  input.view.origin.y = area.y0 + above * drawn.scale.pointsPerInch + std::max(0.0, spare) / 2;
  drawn.view = input.view;
  drawn.top = input.view.y(above);
  drawn.bottom = input.view.y(-below);
  input.window.y0 = drawn.top;
  input.window.y1 = drawn.bottom;
  page.add(drawElevation(input).drawing);
  return drawn;
}

void addElevationPages(std::vector<Draft>& drafts, const Job& job, const CheckedWall& wall, const PageFrame& frame,
                       std::vector<NotesInput>& later) {
  const auto stretches = stretchesOf(wall.layout);
  if (stretches.size() > 1)
    addOverview(drafts, job, wall, frame, stretches, later);
  for (const Stretch& stretch : stretches)
    addStretchPage(drafts, job, wall, frame, stretch, later);
}

} // namespace sillwright::sheet
