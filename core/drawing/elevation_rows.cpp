// Running dimensions: every station from the one hook point, so that errors do not add up.
#include <algorithm>
#include <cmath>
#include <optional>

#include "core/drawing/elevation_parts.h"
#include "core/drawing/text_metrics.h"

namespace sillwright::elevation {

namespace {

struct Drop {
  std::string mark;
  double station = 0;
  Ink ink = Ink::Text;
  bool bold = false;
};

std::vector<Drop> hardwareDrops(const Scene& scene) {
  std::vector<Drop> drops;
  const auto add = [&](const std::string& mark, double station, Id id) {
    if (!scene.sees(station))
      return;
    const Ink ink = inkOf(scene, id, Ink::Text);
    drops.push_back({mark, station, ink, ink == Ink::Hand || ink == Ink::Fix || scene.paper});
  };
  for (const StrapBody& strap : scene.wall.straps)
    add(strap.strap->mark, strap.strap->station, strap.id);
  for (const AnchorBody& anchor : scene.wall.anchors)
    add(anchor.bolt ? anchor.bolt->mark : anchor.rod->mark, anchor.station, anchor.id);
  std::sort(drops.begin(), drops.end(), [](const Drop& a, const Drop& b) { return a.station < b.station; });
  return drops;
}

std::vector<Drop> barDrops(const Scene& scene, bool& found) {
  std::vector<Drop> drops;
  found = std::any_of(scene.wall.bars.begin(), scene.wall.bars.end(),
                      [](const BarBody& bar) { return bar.found && bar.bar->run == BarRun::Upright; });
  for (const BarBody& bar : scene.wall.bars)
    if (bar.bar->run == BarRun::Upright && bar.found == found && scene.sees(bar.body.a.s))
      drops.push_back({bar.bar->mark, bar.body.a.s, Ink::Text2, false});
  std::sort(drops.begin(), drops.end(), [](const Drop& a, const Drop& b) { return a.station < b.station; });
  return drops;
}

constexpr double turnedGap = 12; // pt from one turned value to the next

double valueSize(const Scene& scene) { return scene.paper ? 11.5 : 11; }

TextStyle valueStyle(const Scene& scene, const Drop& drop, Anchor anchor, double turn, Ink halo = Ink::None) {
  return styled(valueSize(scene), drop.bold ? Weight::Bold : Weight::Regular, anchor, halo, turn);
}

// Upright under the line, each at one of two levels; nothing where one of them has no free place. The first value never
// stands left of the hook line.
std::optional<std::vector<Point2>> uprightPlaces(const Scene& scene, const std::vector<Drop>& drops, double y) {
  std::vector<Bounds> taken;
  for (const TakenBox& other : scene.drawing.taken())
    taken.push_back(other.box);
  std::vector<Point2> places;
  const double size = valueSize(scene), hook = scene.x(0);
  for (const Drop& drop : drops) {
    const std::string value = lengthOf(scene, drop.station);
    const double x = scene.x(drop.station), half = textWidth(value, size) / 2 + 4;
    const double clear = scene.view.fromInside ? std::min(x, hook - half) : std::max(x, hook + half);
    const auto before = places.size();
    for (int level = 0; level < 2 && places.size() == before; ++level) {
      const Point2 at{clear, y + size * (1.22 + 1.16 * level)};
      const Bounds box = textBox(at, value, valueStyle(scene, drop, Anchor::Middle, 0));
      if (!scene.frame.contains(box) ||
          std::any_of(taken.begin(), taken.end(), [&](const Bounds& other) { return other.overlaps(box); }))
        continue;
      taken.push_back(box);
      places.push_back(at);
    }
    if (places.size() == before)
      return std::nullopt;
  }
  return places;
}

// The places nearest to the wanted ones, in their order, with at least that gap between neighbours.
std::vector<double> spread(const std::vector<double>& wanted, double gap) {
  struct Block {
    double sum;
    double count;
    double middle() const { return sum / count; }
  };
  std::vector<Block> blocks;
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    blocks.push_back({wanted[i] - gap * static_cast<double>(i), 1});
    while (blocks.size() > 1 && blocks[blocks.size() - 2].middle() >= blocks.back().middle()) {
      const Block last = blocks.back();
      blocks.pop_back();
      blocks.back() = {blocks.back().sum + last.sum, blocks.back().count + last.count};
    }
  }
  std::vector<double> places;
  for (const Block& block : blocks)
    for (double k = 0; k < block.count; ++k)
      places.push_back(block.middle() + gap * static_cast<double>(places.size()));
  return places;
}

// A quarter turn each; where marks are closer than letters are high, the values spread and a short line leads to them.
void sayTurned(Scene& scene, const std::vector<Drop>& drops, double y) {
  const double size = valueSize(scene);
  const double sign = scene.view.fromInside ? -1 : 1;
  std::vector<double> wanted;
  for (const Drop& drop : drops)
    wanted.push_back(sign * scene.x(drop.station));
  const std::vector<double> places = spread(wanted, turnedGap);
  const double first = sign * scene.x(0);
  for (std::size_t i = 0; i < drops.size(); ++i) {
    const double x = sign * std::max(places[i], first + turnedGap * static_cast<double>(i)), at = scene.x(drops[i].station);
    if (std::abs(x - at) > 0.5)
      scene.drawing.line({at, y + 1}, {x, y + 6}, drops[i].ink, 0.5);
    say(scene, "run " + drops[i].mark, {x + size * 0.37, y + 7}, lengthOf(scene, drops[i].station), drops[i].ink,
        valueStyle(scene, drops[i], Anchor::End, 90));
  }
}

// Below the line: two levels of upright values, or turned ones.
double valuesRoom(const Scene& scene, const std::vector<Drop>& drops, double y) {
  return scene.paper && uprightPlaces(scene, drops, y) ? 32 : 62;
}

// On the screen turned always; on paper upright where all of the row can be.
void sayValues(Scene& scene, const std::vector<Drop>& drops, double y) {
  const auto places = scene.paper ? uprightPlaces(scene, drops, y) : std::nullopt;
  if (!places)
    return sayTurned(scene, drops, y);
  for (std::size_t i = 0; i < drops.size(); ++i)
    say(scene, "run " + drops[i].mark, (*places)[i], lengthOf(scene, drops[i].station), drops[i].ink,
        valueStyle(scene, drops[i], Anchor::Middle, 0, Ink::Paper));
}

void row(Scene& scene, double y, double from, const std::vector<Drop>& drops, std::string_view title,
         std::string_view second) {
  const Interval s = overlap({0, scene.wall.length}, scene.stations);
  const double out = scene.view.fromInside ? 1 : -1;
  const Anchor anchor = scene.view.fromInside ? Anchor::Start : Anchor::End;
  for (const Interval part : scene.view.shownParts(s))
    scene.drawing.line({scene.x(part.from), y}, {scene.x(part.to), y}, Ink::Dim, 0.7);
  const double near = scene.x(s.from); // the hook, or the end of the stretch toward it
  if (scene.sees(0)) {
    scene.drawing.line({near, from}, {near, y + 6}, Ink::Dim, 0.6);
    scene.drawing.disc({near, y}, 3, Ink::Paper);
    scene.drawing.ring({near, y}, 3, Ink::Dim, 1.2);
  }
  const Bounds& room = scene.input.window;
  sayWithin(scene, room, "row " + std::string(title), {near + out * 11, y + 1}, title, Ink::Text,
            styled(scene.paper ? 10 : 11, Weight::Bold, anchor));
  sayWithin(scene, room, "row second " + std::string(title), {near + out * 11, y + 13}, second, Ink::Text2,
            styled(scene.paper ? 9 : 10, scene.paper ? Weight::Italic : Weight::Regular, anchor));
  for (const Drop& drop : drops) {
    const double x = scene.x(drop.station);
    scene.drawing.line({x, from}, {x, y - 1}, drop.ink, 0.5);
    drawCrowsFoot(scene.drawing, x, y, Pointing::Down, drop.ink, 6, 1.2);
  }
  const double size = scene.paper ? 9.5 : 10.5;
  for (const Drop& drop : drops)
    for (int level = 0; level < 2; ++level) // the mark of a near neighbour goes one level up
      if (say(scene, "row mark " + drop.mark, {scene.x(drop.station), y - 11 - level * 1.05 * size}, drop.mark, drop.ink,
              styled(size, Weight::Bold, Anchor::Middle, Ink::Paper)))
        break;
  sayValues(scene, drops, y);
}

} // namespace

void drawRunningRows(Scene& scene) {
  double foot = scene.y(scene.wall.bottom) + (scene.paper ? 10 : 18);
  double first = foot + 27;
  const std::vector<Drop> hardware = hardwareDrops(scene);
  const double values = valuesRoom(scene, hardware, first);
  if (!scene.paper && first + values > scene.frame.y1) { // zoomed in: they stay in sight at the foot of the canvas
    first = scene.frame.y1 - values;
    foot = first - 27;
    if (foot < scene.y(pourAt(scene.wall, scene.view.s((scene.frame.x0 + scene.frame.x1) / 2))) + scene.blade + 60)
      return;
    scene.drawing.fillRect(scene.frame.x0, foot, scene.frame.x1, scene.frame.y1, Ink::Paper);
  }
  bool found = false;
  const std::vector<Drop> bars = barDrops(scene, found);
  const double second = first + values + 22;
  const bool roomForBars = second + valuesRoom(scene, bars, second) <= scene.frame.y1;
  if (scene.paper && !roomForBars)
    for (const Drop& bar : bars)
      scene.unsaidBars.push_back(bar.mark + " · " + lengthOf(scene, bar.station));
  if (first + values > scene.frame.y1 + 1e-6)
    return;
  row(scene, first, foot, hardware, scene.paper ? "SET AT" : "set at",
      scene.paper ? "coloque a" : "from the hook");
  if (bars.empty() || !roomForBars)
    return;
  row(scene, second, second - 8, bars, scene.paper ? "BARS AT" : found ? "bars found" : "bars at",
      scene.paper ? "varillas a" : found ? "from the hook" : "as planned");
}

} // namespace sillwright::elevation
