#include "ui/sheet/section_pages.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "core/drawing/section.h"
#include "core/drawing/text_metrics.h"
#include "ui/sheet/sheet_text.h"

namespace sillwright::sheet {

namespace {

long sixteenths(double value) { return std::lround(value * 16); }

// What must agree for two pieces to be cut alike: wall section, type, and where across and how high it stands.
using Likeness = std::tuple<bool, std::uint32_t, long, long, long, long, std::uint32_t, long, long, int, bool>;

Likeness likeness(const CheckedWall& wall, bool strap, std::uint32_t type, double depth, double height,
                  std::uint32_t washer, int hook, double station, bool found) {
  const WallLine& line = *wall.layout.wall;
  const auto sill = sillAt(wall.layout, station);
  const int sillSize = sill ? wall.layout.sills[*sill].nominal.thickness * 100 + wall.layout.sills[*sill].nominal.width : 0;
  return {strap, type, sixteenths(depth), sixteenths(height), sixteenths(line.thickness), sixteenths(line.stemHeight),
          washer, sixteenths(line.footing.width), sixteenths(line.formTop), hook + 10 * sillSize, found};
}

void addCut(std::vector<Cut>& cuts, std::map<Likeness, std::size_t>& seen, const Likeness& key, Cut cut) {
  const auto [at, fresh] = seen.emplace(key, cuts.size());
  if (fresh)
    cuts.push_back(std::move(cut));
  else
    cuts[at->second].like.push_back({cut.wall->layout.wall->mark, cut.mark});
}

// "wall A: B1, B2; wall C: B9"
std::string likeWords(const Cut& cut) {
  std::string wall = cut.wall->layout.wall->mark;
  std::string words = "wall " + wall + ": " + cut.mark;
  for (const auto& [where, mark] : cut.like) {
    words += (where == wall ? ", " : "; wall " + where + ": ") + mark;
    wall = where;
  }
  return words;
}

void drawCut(Draft& draft, const Job& job, const Cut& cut, const Bounds& cell) {
  std::string title = cut.name;
  draft.drawing.text({cell.x0, cell.y0 + 12}, title, Ink::Text, bold(11));
  const auto lines = wrapped(likeWords(cut), smallSize, cell.x1 - cell.x0);
  Bounds window = cell;
  SectionInput input;
  window.y0 += 23 + 11 * static_cast<double>(lines.size());
  input.job = &job;
  input.wall = cut.wall;
  input.station = cut.station;
  input.piece = cut.piece;
  input.medium = Medium::Paper;
  input.title = false;
  input.view = fitSection(*cut.wall, cut.piece, window);
  const Scale scale = detailScale(input.view.scale);
  const double shrink = scale.pointsPerInch / input.view.scale;
  const Point2 middle{(window.x0 + window.x1) / 2, window.y0};
  input.view.origin = {middle.x + (input.view.origin.x - middle.x) * shrink,
                       middle.y + (input.view.origin.y - middle.y) * shrink};
  input.view.scale = scale.pointsPerInch;
  input.window = window;
  draft.drawing.text({cell.x1, cell.y0 + 12}, scale.name, Ink::Text, plain(bodySize, Anchor::End));
  double y = cell.y0 + 25;
  for (std::size_t i = 0; i < lines.size(); ++i, y += 11)
    draft.drawing.text({cell.x0, y}, lines[i], Ink::Text, plain(smallSize));
  draft.drawing.line({cell.x0, cell.y0 + 15}, {cell.x1, cell.y0 + 15}, Ink::Text, 1.0);
  draft.drawing.add(drawSection(input));
}

} // namespace

std::vector<Cut> distinctCuts(const std::vector<std::shared_ptr<const CheckedWall>>& walls) {
  std::vector<Cut> cuts;
  std::map<Likeness, std::size_t> seen;
  for (const auto& wall : walls) {
    for (const StrapBody& strap : wall->layout.straps)
      addCut(cuts, seen,
             likeness(*wall, true, strap.strap->type.value, 0, strap.strap->heightOffset, 0, 0, strap.strap->station,
                      false),
             {wall.get(), strap.id, strap.strap->station, strap.strap->mark, strap.type->name, {}});
    for (const AnchorBody& anchor : wall->layout.anchors) {
      const std::string& mark = anchor.isRod ? anchor.rod->mark : anchor.bolt->mark;
      const std::string& name = anchor.isRod ? anchor.rodType->name : anchor.boltType->name;
      const std::uint32_t type = anchor.isRod ? anchor.rod->type.value : anchor.bolt->type.value;
      const int hook = anchor.isRod ? 9 : static_cast<int>(anchor.bolt->hook);
      addCut(cuts, seen,
             likeness(*wall, false, type, anchor.depth, anchor.top - anchor.pour,
                      anchor.washer ? anchor.washer->id.value : 0, hook, anchor.station, false),
             {wall.get(), anchor.id, anchor.station, mark, name, {}});
    }
  }
  return cuts;
}

void addSectionPages(std::vector<Draft>& drafts, const Job& job,
                     const std::vector<std::shared_ptr<const CheckedWall>>& walls, const PageFrame& frame) {
  const auto cuts = distinctCuts(walls);
  const double width = frame.content.x1 - frame.content.x0;
  const std::size_t across = std::max<std::size_t>(1, static_cast<std::size_t>(width / 350));
  const std::size_t down = std::max<std::size_t>(
      1, static_cast<std::size_t>((frame.content.y1 - frame.content.y0 - 36) / 560));
  for (std::size_t first = 0; first < cuts.size(); first += across * down) {
    Draft draft;
    draft.title = "CUTS";
    draft.subject = "cuts";
    draft.note = "each distinct piece";
    const Bounds content = drawHead(draft, frame, "across the wall, looking left: outside on the left");
    const double cellWidth = (content.x1 - content.x0) / static_cast<double>(across);
    const double cellHeight = (content.y1 - content.y0) / static_cast<double>(down);
    for (std::size_t i = first; i < std::min(cuts.size(), first + across * down); ++i) {
      const double x = content.x0 + cellWidth * static_cast<double>((i - first) % across);
      const double y = content.y0 + cellHeight * static_cast<double>((i - first) / across);
      drawCut(draft, job, cuts[i], {x, y, x + cellWidth - 16, y + cellHeight - 10});
    }
    drafts.push_back(std::move(draft));
  }
}

} // namespace sillwright::sheet
