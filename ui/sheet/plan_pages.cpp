#include "ui/sheet/plan_pages.h"

#include <algorithm>

#include "core/drawing/plan.h"
#include "ui/sheet/elevation_pages.h"
#include "ui/sheet/setting_table.h"
#include "ui/sheet/sheet_text.h"

namespace sillwright::sheet {

namespace {

constexpr double dimensionMargin = 118; // pt around the plan for its dimensions and marks

PlanView viewOf(const Job& job, const Bounds& area, Scale& scale) {
  const auto box = planBounds(job);
  PlanView view;
  if (!box)
    return view;
  const double wide = std::max(1.0, box->second.x - box->first.x);
  const double high = std::max(1.0, box->second.y - box->first.y);
  scale = planScale(std::min((area.x1 - area.x0 - 2 * dimensionMargin) / wide,
                             (area.y1 - area.y0 - 2 * dimensionMargin) / high));
  view.scale = scale.pointsPerInch;
  view.origin.x = (area.x0 + area.x1) / 2 - (box->first.x + box->second.x) / 2 * view.scale;
  view.origin.y = (area.y0 + area.y1) / 2 + (box->first.y + box->second.y) / 2 * view.scale;
  return view;
}

void drawPlan(Draft& draft, const Job& job, const std::vector<std::shared_ptr<const CheckedWall>>& walls,
              const PlanView& view) {
  PlanStyle style;
  style.view = view;
  style.medium = Medium::Paper;
  style.places = planPlaces(job, style);
  for (const auto& wall : walls)
    draft.drawing.add(drawPlanWall(job, *wall, style));
  draft.drawing.add(drawPlanFrame(job, style));
}

void addSchedulePages(std::vector<Draft>& drafts, const Table& table, std::size_t from, const PageFrame& frame) {
  while (from < table.rows.size()) {
    Draft draft;
    draft.title = "WALL-END SCHEDULE";
    draft.subject = "all walls";
    draft.note = from > 0 ? "wall ends, continued" : "wall ends";
    const Bounds content = drawHead(draft, frame, from > 0 ? "continued" : "what stands at each end of the panels");
    const std::size_t fit = std::max<std::size_t>(1, rowsThatFit(content.y1 - content.y0));
    double x = content.x0;
    const double width = std::min(content.x1 - content.x0, tableWidth(table) * 1.1);
    while (x + width <= content.x1 + 1 && from < table.rows.size()) {
      drawTable(draft.drawing, table, from, fit, x, content.y0, width);
      from += fit;
      x += width + 20;
    }
    drafts.push_back(std::move(draft));
  }
}

std::string bareWalls(const std::vector<std::shared_ptr<const CheckedWall>>& walls) {
  std::string marks;
  for (const auto& wall : walls)
    if (nothingToSet(*wall))
      marks += (marks.empty() ? "wall " : ", ") + wall->layout.wall->mark;
  return marks;
}

} // namespace

void addPlanPages(std::vector<Draft>& drafts, const Job& job,
                  const std::vector<std::shared_ptr<const CheckedWall>>& walls, const PageFrame& frame) {
  const Table table = wallEndTable(job, walls);
  const bool beside = frame.width > 1000 && !table.rows.empty();
  const double tableRoom = beside ? std::min(tableWidth(table) * 1.05, 430.0) : 0;
  Draft draft;
  draft.title = "PLAN";
  draft.subject = "plan";
  draft.note = "from above; hook points marked";
  Bounds area = frame.content;
  area.y0 += 36;
  area.x1 -= beside ? tableRoom + 16 : 0;
  Scale scale;
  const PlanView view = viewOf(job, area, scale);
  draft.scale = scale.name;
  drawHead(draft, frame, "from above · " + std::string(scale.name) + " · stations run along the outside face from the "
                         "left end, seen from outside");
  drawPlan(draft, job, walls, view);
  if (const std::string bare = bareWalls(walls); !bare.empty())
    draft.drawing.text({frame.content.x0, frame.content.y1 - 4}, "Nothing to set on " + bare + ": no elevations of them.",
                       Ink::Text, plain(noteSize));
  std::size_t shown = 0;
  if (beside) {
    const double x = area.x1 + 16;
    head(draft.drawing, {x, frame.content.y0 + 50}, "WALL ENDS", "extremos de muro", 11);
    const double y = frame.content.y0 + 58;
    shown = std::min(table.rows.size(), rowsThatFit(frame.content.y1 - y));
    drawTable(draft.drawing, table, 0, shown, x, y, frame.content.x1 - x);
  }
  drafts.push_back(std::move(draft));
  addSchedulePages(drafts, table, shown, frame);
}

} // namespace sillwright::sheet
