// Flags of the findings over the exact regions, and what their labels must keep off.
#include <algorithm>

#include "core/drawing/elevation_parts.h"

namespace sillwright::elevation {

void drawFlags(Scene& scene) {
  std::vector<const Finding*> seen;
  for (const Finding& finding : scene.input.wall->findings)
    if (scene.sees(finding.region.s) && scene.box(finding.region.s, finding.region.z).grown(1).overlaps(scene.frame))
      seen.push_back(&finding);
  // The worst lies on top.
  std::stable_sort(seen.begin(), seen.end(), [](const Finding* a, const Finding* b) { return a->level > b->level; });
  for (const Finding* finding : seen) {
    const Bounds region = scene.within(scene.box(finding->region.s, finding->region.z));
    scene.keepOff.push_back(drawFlag(scene.drawing, finding->level, region));
  }
}

void placeFlagLabels(Scene&, ElevationDrawing&) {}

} // namespace sillwright::elevation
