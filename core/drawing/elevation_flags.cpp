// Flags of the findings over the exact regions, and what their labels must keep off.
#include <algorithm>

#include "core/drawing/elevation_parts.h"
#include "core/rules/correction.h"

namespace sillwright::elevation {

namespace {

constexpr double fieldCost = 15; // over a sheathed field, a stud, the earth
constexpr double studCost = 30;
constexpr double earthCost = 45;
constexpr double lookCost = 90; // where the close look is, so that it may stay there
constexpr double noLabel = 1e6; // concrete shows steel and numbers; hardware is never covered

void request(Scene& scene, const Finding& finding, const Bounds& flag) {
  if (!scene.input.labels || !scene.input.words || !scene.input.job)
    return;
  const Id piece = finding.pieces.empty() ? Id{} : finding.pieces.front();
  LabelText words = scene.input.words(*scene.input.job, finding);
  // Left and right are said as from outside, everywhere; from inside they would send the hand the wrong way.
  const auto way = firstWay(finding);
  if (scene.view.fromInside && way && way->field == Correction::Field::Station)
    words.hint += ", seen from outside";
  scene.requests.push_back({std::move(words), flag, flagKey(finding), {finding.wall, piece}});
}

std::vector<Ground> groundsOf(const Scene& scene) {
  const WallLayout& w = scene.wall;
  std::vector<Ground> grounds;
  for (const Panel& panel : w.wall->panels)
    grounds.push_back({scene.box({panel.from, panel.to}, {0, panel.height}), fieldCost});
  for (const StudBody& stud : w.studs)
    if (scene.sees(stud.box.s))
      grounds.push_back({scene.box(stud.box.s, stud.box.z), studCost});
  for (const ColumnBody& column : w.columns)
    grounds.push_back({scene.box(column.box.s, column.box.z), studCost});
  for (const SillPiece& sill : w.sills)
    grounds.push_back({scene.box(sill.box.s, sill.box.z), noLabel});
  for (const PourRun& run : w.pour)
    grounds.push_back({scene.box(run.s, {w.bottom, run.height}), noLabel});
  for (const Opening& opening : w.wall->openings)
    if (scene.sees({opening.from, opening.to}))
      grounds.push_back({scene.box({opening.from, opening.to}, {2, opening.headHeight}), 0});
  Bounds earth = scene.box(w.footingAcross.empty() ? w.concrete : w.footingAlong, {w.bottom, w.stemBottom});
  grounds.push_back({{earth.x0 - 52, earth.y0, earth.x1 + 52, earth.y1 + 20}, earthCost});
  for (const Bounds& hardware : scene.keepOff)
    grounds.push_back({hardware, noLabel});
  return grounds;
}

// Above or below what is in view: its label points at that edge.
Bounds edgeToward(const Scene& scene, const Bounds& region) {
  const Bounds& frame = scene.frame;
  const double y = region.y1 < frame.y0 ? frame.y0 : frame.y1;
  return {std::clamp(region.x0, frame.x0, frame.x1), y, std::clamp(region.x1, frame.x0, frame.x1), y};
}

} // namespace

void drawFlags(Scene& scene) {
  std::vector<const Finding*> seen;
  for (const Finding& finding : scene.input.wall->findings) {
    if (!scene.sees(finding.region.s))
      continue;
    const Bounds region = scene.box(finding.region.s, finding.region.z);
    if (region.grown(1).overlaps(scene.frame))
      seen.push_back(&finding);
    else
      request(scene, finding, edgeToward(scene, region));
  }
  // The worst lies on top.
  std::stable_sort(seen.begin(), seen.end(), [](const Finding* a, const Finding* b) { return a->level > b->level; });
  for (const Finding* finding : seen) {
    const Bounds region = scene.within(scene.box(finding->region.s, finding->region.z));
    const Bounds flag = drawFlag(scene.drawing, finding->level, region);
    scene.keepOff.push_back(flag);
    scene.flags.push_back(flag);
    request(scene, *finding, flag);
  }
}

void placeFlagLabels(Scene& scene, ElevationDrawing& result) {
  PlacementInput placement;
  placement.window = scene.input.window.grown(-4);
  placement.requests = scene.requests;
  for (const TakenBox& taken : scene.drawing.taken())
    placement.taken.push_back(taken.box);
  placement.outlines = scene.keepOff;
  placement.grounds = groundsOf(scene);
  if (scene.input.inHand && scene.input.lastLook)
    placement.grounds.push_back({scene.input.lastLook->box, lookCost});
  placement.last = scene.input.lastLabels;
  result.labels = placeLabels(placement);
  drawPlacedLabels(scene.drawing, result.labels);
  for (const PlacedLabel& label : result.labels) {
    if (label.number > 0)
      result.listed.push_back(std::to_string(label.number) + " " + label.request.text.word + " " +
                              label.request.text.measure);
    else
      scene.drawing.take("label " + label.request.key, label.box);
  }
}

} // namespace sillwright::elevation

namespace sillwright {

std::string flagKey(const Finding& finding) {
  std::string key = std::to_string(static_cast<int>(finding.rule)) + "/" + std::to_string(finding.variant);
  for (const Id piece : finding.pieces)
    key.append("/").append(std::to_string(piece.value));
  return key;
}

} // namespace sillwright
