#include "ui/canvas/changed_area.h"

#include <bit>
#include <cmath>
#include <cstdint>
#include <unordered_map>

#include "core/drawing/text_metrics.h"

namespace sillwright {

namespace {

using Hash = std::uint64_t;

Hash mixed(Hash seed, Hash value) {
  value *= 0x9E3779B97F4A7C15ull;
  value ^= value >> 32;
  return (seed ^ value) * 0xD6E8FEB86659FD93ull + 0x2545F4914F6CDD1Dull;
}

Hash mixed(Hash seed, double value) { return mixed(seed, std::bit_cast<Hash>(value)); }

Hash hashOf(const Drawing& drawing, const Prim& prim) {
  Hash h = mixed(Hash{1}, static_cast<Hash>(prim.kind) << 16 | static_cast<Hash>(prim.ink) << 8 |
                              static_cast<Hash>(prim.cap));
  h = mixed(mixed(h, double{prim.width}), double{prim.opacity});
  for (const Point2& p : drawing.pointsOf(prim))
    h = mixed(mixed(h, p.x), p.y);
  if (prim.kind == Prim::Kind::Text) {
    const TextPrim& text = drawing.textOf(prim);
    h = mixed(h, static_cast<Hash>(std::hash<std::string>{}(text.text)));
    h = mixed(mixed(h, text.style.size), text.style.turn);
    h = mixed(h, static_cast<Hash>(text.style.weight) << 16 | static_cast<Hash>(text.style.anchor) << 8 |
                     static_cast<Hash>(text.style.halo));
  }
  return h;
}

Bounds boxOf(const Drawing& drawing, const Prim& prim) {
  const std::span<const Point2> points = drawing.pointsOf(prim);
  if (points.empty())
    return {};
  Bounds box{points[0].x, points[0].y, points[0].x, points[0].y};
  double margin = prim.width * 2.0 + 1; // mitres stand out
  if (prim.kind == Prim::Kind::Text) {
    const TextPrim& text = drawing.textOf(prim);
    margin = textWidth(text.text, text.style.size) + text.style.size + text.style.haloWidth;
  } else if (prim.kind == Prim::Kind::Ring) {
    margin += points.size() > 1 ? points[1].x : 0;
  } else {
    for (const Point2& p : points)
      box = {std::min(box.x0, p.x), std::min(box.y0, p.y), std::max(box.x1, p.x), std::max(box.y1, p.y)};
  }
  return box.grown(margin);
}

double areaOf(const Bounds& box) { return (box.x1 - box.x0) * (box.y1 - box.y0); }

// Joins a box to the one it costs least to join with, when there is no room for another or they nearly cover each other.
void join(std::vector<Bounds>& boxes, const Bounds& box, std::size_t most) {
  std::size_t best = boxes.size();
  double bestCost = 0;
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    const double cost = areaOf(hull(boxes[i], box)) - areaOf(boxes[i]) - areaOf(box);
    if (best == boxes.size() || cost < bestCost) {
      best = i;
      bestCost = cost;
    }
  }
  if (best < boxes.size() && (bestCost <= 0 || boxes.size() >= most))
    boxes[best] = hull(boxes[best], box);
  else
    boxes.push_back(box);
}

} // namespace

std::vector<Bounds> changedArea(const Drawing& before, const Drawing& after, std::size_t most) {
  std::unordered_map<Hash, int> seen;
  seen.reserve(before.prims().size());
  for (const Prim& prim : before.prims())
    ++seen[hashOf(before, prim)];
  std::vector<Bounds> boxes;
  for (const Prim& prim : after.prims()) {
    const auto found = seen.find(hashOf(after, prim));
    if (found == seen.end() || found->second == 0)
      join(boxes, boxOf(after, prim), most);
    else
      --found->second;
  }
  for (const Prim& prim : before.prims()) {
    const auto found = seen.find(hashOf(before, prim));
    if (found->second > 0) {
      --found->second;
      join(boxes, boxOf(before, prim), most);
    }
  }
  return boxes;
}

} // namespace sillwright
