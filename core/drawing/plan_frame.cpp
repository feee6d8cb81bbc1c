#include "core/base/tolerance.h"
#include "core/drawing/hatch.h"
#include "core/drawing/plan_places.h"
#include "core/model/lookup.h"

namespace sillwright {

namespace {

void drawDiagonals(Drawing& drawing, const PlanDiagonals& diagonals, const PlanView& view) {
  for (int i = 0; i < 2; ++i) {
    const Point2 line[] = {view.page(diagonals.corner[i]), view.page(diagonals.corner[i + 2])};
    drawing.dashed(line, 7, 3, Ink::Dim, 0.7);
  }
  for (const PlanText& text : diagonals.texts) {
    const Bounds box = boxOf(text).grown(2);
    drawing.fillRect(box.x0, box.y0, box.x1, box.y1, Ink::Paper);
    drawPlanText(drawing, text, Ink::Text);
  }
}

void drawOverall(Drawing& drawing, const PlanOverall& overall) {
  drawing.line(overall.a, overall.b, Ink::Dim, 0.7);
  const bool level = overall.a.y == overall.b.y;
  drawCrowsFoot(drawing, overall.a.x, overall.a.y, level ? Pointing::Left : Pointing::Down, Ink::Dim);
  drawCrowsFoot(drawing, overall.b.x, overall.b.y, level ? Pointing::Right : Pointing::Up, Ink::Dim);
  drawPlanText(drawing, overall.text, Ink::Text);
}

void drawNorth(Drawing& drawing, Point2 at) {
  const Polygon2 arrow{{at.x, at.y - 14}, {at.x + 5, at.y + 8}, {at.x, at.y + 4}, {at.x - 5, at.y + 8}};
  drawing.fill(arrow, Ink::Text);
  TextStyle style;
  style.size = 10;
  style.weight = Weight::Bold;
  style.anchor = Anchor::Middle;
  drawing.take("N", drawing.text({at.x, at.y + 20}, "N", Ink::Text, style));
}

// A tape's hook over the left end of the wall that stations are read from.
void drawHookPoint(Drawing& drawing, const PlanFrame& frame, double thickness) {
  const double pt = 1 / frame.scale;
  const Point2 hook[] = {frame.page(7 * pt, -3 * pt), frame.page(-3 * pt, -3 * pt),
                         frame.page(-3 * pt, thickness + 3 * pt)};
  drawing.polyline(hook, Ink::Text, 2.6);
}

} // namespace

Drawing drawPlanFrame(const Job& job, const PlanStyle& style) {
  Drawing drawing;
  if (job.walls.empty())
    return drawing;
  const auto places = style.places ? style.places : planPlaces(job, style);
  for (const PlanDiagonals& diagonals : places->diagonals)
    drawDiagonals(drawing, diagonals, style.view);
  for (const PlanOverall& overall : places->overall)
    drawOverall(drawing, overall);
  drawNorth(drawing, places->north);
  const WallLine* hooked = job.walls.find(style.shown ? style.shown : job.walls[0].id);
  if (hooked && wallLength(job, *hooked) >= tolerance::same)
    drawHookPoint(drawing, PlanFrame(placeOf(job, *hooked), style.view), hooked->thickness);
  if (places->hook)
    drawPlanText(drawing, *places->hook, Ink::Text2);
  return drawing;
}

} // namespace sillwright
