// Marks, notes and dimensions: everything written but the labels of flags.
#include <algorithm>
#include <cmath>

#include "core/drawing/elevation_parts.h"
#include "core/drawing/text_metrics.h"

namespace sillwright::elevation {

namespace {

void markAt(Scene& scene, const std::string& mark, double station, double top, Id id, double size) {
  if (mark.empty() || !scene.sees(station) || (scene.input.magnified && isInHand(scene, id))) // its head says it
    return;
  const Ink ink = isInHand(scene, id) ? Ink::Hand : Ink::Text;
  const double y = std::max(scene.y(top) - 6, scene.frame.y0 + size + 4);
  if (scene.y(top) >= scene.frame.y1)
    return;
  for (int level = 0; level < 3; ++level) // above the mark of a near neighbour
    if (say(scene, "mark " + mark, {scene.x(station), y - level * 1.05 * size}, mark, ink,
            styled(size, Weight::Bold, Anchor::Middle, Ink::Paper)))
      return scene.named.push_back({id, scene.drawing.taken().back().box});
}

bool overHardware(const Scene& scene, const Bounds& box) {
  return std::any_of(scene.keepOff.begin(), scene.keepOff.end(), [&](const Bounds& b) { return b.overlaps(box); });
}

void columnWords(Scene& scene, const ColumnBody& column) {
  const Column* made = findIn(scene.wall.wall->columns, column.id);
  if (!made || column.role == ColumnRole::Trimmer || !scene.sees(column.box.s.middle()))
    return;
  const std::string words = made->mark + "  " + print(column.makeUp);
  const double size = scene.paper ? 9 : 11;
  const double wide = column.box.s.length() * scene.view.scale;
  const bool fits = wide > size * 1.6 && column.seams.empty();
  const Bounds box = scene.box(column.box.s, column.box.z);
  const double top = std::max(scene.y(column.box.z.to), scene.frame.y0);
  const auto tried = [&](double x, double y, const TextStyle& style) {
    // Beside the last column of a stretch the words stand outside it.
    return !overHardware(scene, textBox({x, y}, words, style)) &&
           sayWithin(scene, scene.input.window, "column " + made->mark, {x, y}, words, Ink::WoodLine, style);
  };
  // Upright inside a wide column, else beside it, away from the nearer end of the wall's opening side.
  const bool leftHalf = (column.box.s.middle() < scene.wall.length / 2) != scene.view.fromInside;
  const double outer = leftHalf ? box.x0 - size * 0.4 : box.x1 + size;
  const TextStyle turned = styled(size, Weight::Regular, Anchor::Start, fits ? Ink::Wood : Ink::Wood2, 90);
  for (const double x : {fits ? scene.x(column.box.s.middle()) + size * 0.37 : outer, outer})
    for (const double down : {30.0, 16.0, 6.0})
      if (tried(x, std::min(top + textWidth(words, size) + down, box.y1 - 8), turned))
        return;
  // Level beside it, under the break.
  for (const double down : {10.0, 4.0})
    for (const bool right : {leftHalf, !leftHalf})
      if (tried(right ? box.x1 + 4 : box.x0 - 4, top + size + down,
                styled(size, Weight::Regular, right ? Anchor::Start : Anchor::End, Ink::Wood2)))
        return;
}

void panelLabel(Scene& scene, const Panel& panel) {
  const Interval s = overlap({panel.from, panel.to}, scene.stations);
  if (s.length() <= 0)
    return;
  std::string size = lengthOf(scene, panel.to - panel.from) + " × " + lengthOf(scene, panel.height);
  if (panel.unitShear)
    size += " · " + std::to_string(std::lround(*panel.unitShear)) + " plf";
  const std::string title = "Panel " + panel.mark;
  const double wide = std::max(textWidth(title, 12), textWidth(size, 11)) + 14;
  const double x = scene.x(s.middle());
  const double top = std::max(scene.y(panel.height) + 22, scene.frame.y0 + 12);
  const Bounds b{x - wide / 2, top, x + wide / 2, top + 34};
  const bool free = std::none_of(scene.drawing.taken().begin(), scene.drawing.taken().end(),
                                 [&](const TakenBox& t) { return t.box.overlaps(b); });
  if (wide > s.length() * scene.view.scale || !scene.frame.contains(b) || !free || b.y1 > scene.y(4) ||
      overHardware(scene, b))
    return;
  scene.drawing.fillRect(b.x0, b.y0, b.x1, b.y1, Ink::Paper);
  scene.drawing.rect(b.x0, b.y0, b.x1, b.y1, Ink::WoodLine, scene.paper ? 0.5 : 0.9);
  scene.drawing.text({x, top + 14}, title, Ink::Text, styled(12, Weight::Bold, Anchor::Middle));
  scene.drawing.text({x, top + 28}, size, Ink::Text, styled(11, Weight::Regular, Anchor::Middle));
  scene.drawing.take("panel " + panel.mark, b);
}

// What an opening is, where it stands open.
void openingWordsIn(Scene& scene, const Opening& opening) {
  const Interval s = overlap({opening.from, opening.to}, scene.stations);
  const double head = std::max(scene.y(opening.headHeight), scene.frame.y0);
  if (scene.paper || s.length() * scene.view.scale < 60 || scene.y(12) - head < 24)
    return;
  constexpr const char* kinds[] = {"door", "garage door", "window"};
  const std::string words = (opening.mark.empty() ? "" : opening.mark + " · ") +
                            kinds[static_cast<std::size_t>(opening.kind)] + " " +
                            lengthOf(scene, opening.to - opening.from);
  if (say(scene, "opening " + opening.mark, {scene.x(s.middle()), head + 18}, words, Ink::Text2,
          styled(11, Weight::Regular, Anchor::Middle)))
    scene.named.push_back({opening.id, scene.drawing.taken().back().box});
}

void chain(Scene& scene, double y, const std::vector<double>& stops, const std::vector<std::string>& names) {
  for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
    const Interval seen = overlap({stops[i], stops[i + 1]}, scene.stations);
    if (seen.length() <= 0)
      continue;
    const double a = std::min(scene.x(seen.from), scene.x(seen.to));
    const double b = std::max(scene.x(seen.from), scene.x(seen.to));
    const double half = textWidth(names[i], 12) / 2 + 5;
    const bool written = 2 * half < b - a && say(scene, "chain " + std::to_string(y) + " " + std::to_string(i),
                                                  {(a + b) / 2, y + 4.4}, names[i], Ink::Text,
                                                  styled(12, Weight::Regular, Anchor::Middle));
    const double middle = (a + b) / 2;
    scene.drawing.line({a, y}, {written ? middle - half : middle, y}, Ink::Dim, 0.7);
    scene.drawing.line({written ? middle + half : middle, y}, {b, y}, Ink::Dim, 0.7);
  }
  for (const double stop : stops)
    if (scene.sees(stop)) {
      scene.drawing.line({scene.x(stop), y - 8}, {scene.x(stop), y + 5}, Ink::Dim, 0.6);
      drawCrowsFoot(scene.drawing, scene.x(stop), y, Pointing::Down, Ink::Dim, 5.5, 1.1);
    }
}

std::string openingWords(const Scene& scene, const Opening& opening) {
  return lengthOf(scene, opening.to - opening.from) + " rough opening";
}

void overall(Scene& scene) {
  const double top = scene.y(scene.wall.wall->wallHeight);
  if (top - 46 < scene.frame.y0)
    return;
  std::vector<double> stops{0, scene.wall.length};
  for (const Opening& opening : scene.wall.wall->openings)
    stops.insert(stops.end(), {opening.from, opening.to});
  std::sort(stops.begin(), stops.end());
  stops.erase(std::unique(stops.begin(), stops.end()), stops.end());
  std::vector<std::string> names;
  for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
    names.push_back(lengthOf(scene, stops[i + 1] - stops[i]));
    for (const Opening& opening : scene.wall.wall->openings)
      if (opening.from == stops[i] && opening.to == stops[i + 1])
        names.back() = openingWords(scene, opening);
  }
  if (stops.size() > 2)
    chain(scene, top - 18, stops, names);
  chain(scene, top - 36, {0, scene.wall.length}, {lengthOf(scene, scene.wall.length)});
}

void heightNotes(Scene& scene) {
  const double size = scene.paper ? 9 : 11;
  for (const PourRun& run : scene.wall.pour) {
    Interval s{0, 0}; // the longest part of it that is in sight
    for (const Interval part : scene.view.shownParts(overlap(run.s, scene.stations)))
      s = part.length() > s.length() ? part : s;
    if (std::abs(run.height) < 1e-6 || s.length() * scene.view.scale < 110)
      continue;
    const std::string words = scene.paper ? inches(std::abs(run.height)) + (run.height < 0 ? " down" : " up")
                                          : "pour line " + inches(std::abs(run.height)) +
                                                (run.height < 0 ? " down" : " up");
    const double left = std::min(scene.x(s.from), scene.x(s.to));
    const double up = scene.wall.wall->formTop * scene.view.scale + 6;
    say(scene, "step", {left + 14, scene.y(run.height) - up}, words, Ink::Text2,
        styled(size, Weight::Regular, Anchor::Start, Ink::Paper));
    if (scene.wall.wall->formTop > 0)
      say(scene, "form top", {left + 34 + textWidth(words, size), scene.y(run.height) - up},
          "top of form board " + inches(scene.wall.wall->formTop) + " above the pour line", Ink::FormLine,
          styled(size, Weight::Regular, Anchor::Start, Ink::Paper));
  }
}

void hookWords(Scene& scene) {
  if (!scene.paper || !scene.sees(0))
    return;
  const bool inside = scene.view.fromInside;
  const double out = inside ? 1 : -1;
  const double x = scene.x(0) + out * 22;
  const double y = scene.y(scene.wall.pour.front().height);
  const Anchor anchor = inside ? Anchor::Start : Anchor::End;
  say(scene, "hook", {x, y - 9}, "HOOK", Ink::Text, styled(10, Weight::Bold, anchor));
  say(scene, "tape here", {x, y + 2}, "TAPE HERE", Ink::Text, styled(10, Weight::Bold, anchor));
  say(scene, "hook es", {x, y + 13}, "enganche aquí", Ink::Text, styled(9, Weight::Italic, anchor));
  scene.drawing.line({scene.x(0) + out * 19, y + 4}, {scene.x(0) + out * 8, y + 4}, Ink::Text, 1);
}

void pourLineWords(Scene& scene) {
  const double far = scene.view.fromInside ? 0 : scene.wall.length;
  if (!scene.paper || !scene.sees(far))
    return;
  const double x = scene.x(far) + 16;
  const double y = scene.y(pourAt(scene.wall, far));
  say(scene, "pour line", {x, y + 8}, "POUR LINE", Ink::Text, styled(9, Weight::Bold, Anchor::Start));
  say(scene, "pour line es", {x, y + 19}, "línea de colado", Ink::Text, styled(8.5, Weight::Italic, Anchor::Start));
  scene.drawing.line({scene.x(far), y}, {x - 2, y}, Ink::Text, 0.9);
}

// In the concrete under the tape, where there is room for them.
void barMarks(Scene& scene) {
  constexpr double size = 9;
  for (const BarBody& bar : scene.wall.bars) {
    if (bar.bar->run != BarRun::Upright || !scene.sees(bar.body.a.s))
      continue;
    const double y = scene.y(bar.body.a.z) - 10;
    if (y - size > scene.y(pourAt(scene.wall, bar.body.a.s)) + scene.blade)
      say(scene, "bar mark " + bar.bar->mark, {scene.x(bar.body.a.s) + 5 + bar.body.radius * scene.view.scale, y},
          bar.bar->mark, Ink::Text2, styled(size, Weight::Regular, Anchor::Start, Ink::Concrete));
  }
}

} // namespace

void drawMarks(Scene& scene) {
  for (const StrapBody& strap : scene.wall.straps)
    markAt(scene, strap.strap->mark, strap.strap->station, strap.plate.z.to, strap.id, 13);
  for (const AnchorBody& anchor : scene.wall.anchors)
    markAt(scene, anchor.bolt ? anchor.bolt->mark : anchor.rod->mark, anchor.station, anchor.top, anchor.id, 12);
  for (const Panel& panel : scene.wall.wall->panels)
    panelLabel(scene, panel);
  for (const ColumnBody& column : scene.wall.columns)
    columnWords(scene, column);
  for (const Opening& opening : scene.wall.wall->openings)
    openingWordsIn(scene, opening);
  heightNotes(scene);
  barMarks(scene);
}

void drawDimensions(Scene& scene) {
  hookWords(scene);
  pourLineWords(scene);
  overall(scene);
  if (scene.input.runningDimensions)
    drawRunningRows(scene);
}

} // namespace sillwright::elevation
