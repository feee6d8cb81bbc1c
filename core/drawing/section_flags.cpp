// Flags in a cut: only findings whose region the cut goes through, so that the hatch is where the measure falls short.
#include <algorithm>

#include "core/drawing/flag_words.h"
#include "core/drawing/label_placement.h"
#include "core/drawing/section_pen.h"

namespace sillwright {

namespace {

constexpr double materialCost = 45;
constexpr double noLabel = 1e6; // the piece itself is never covered

bool isCut(const SectionPen& pen, const Finding& finding) {
  const bool own = std::find(finding.pieces.begin(), finding.pieces.end(), pen.input.piece) != finding.pieces.end();
  return own && grown(finding.region.s, 1e-6).contains(pen.input.station) &&
         !overlap(finding.region.z, pen.seen).empty();
}

} // namespace

// Under the hardware, so that the piece itself stays seen.
void drawSectionFlags(SectionPen& pen) {
  for (const Finding& finding : pen.input.wall->findings)
    if (isCut(pen, finding))
      pen.lines.push_back(
          drawFlag(pen.drawing, finding.level, pen.box(finding.region.d, overlap(finding.region.z, pen.seen))));
}

void drawSectionFlagLabels(SectionPen& pen) {
  PlacementInput placement;
  placement.window = pen.input.window.grown(-3);
  placement.taken = pen.texts;
  placement.outlines = pen.lines;
  for (const HitArea& hit : pen.drawing.hits())
    placement.grounds.push_back({hit.box, noLabel});
  const WallLayout& l = pen.layout;
  placement.grounds.push_back({pen.box(hull(l.across, l.footingAcross), {l.bottom, pen.pour}), materialCost});
  for (const Finding& finding : pen.input.wall->findings)
    if (isCut(pen, finding))
      placement.requests.push_back({flagWords(*pen.input.job, finding),
                                    pen.box(finding.region.d, overlap(finding.region.z, pen.seen)),
                                    std::to_string(static_cast<int>(finding.rule)) + "/" +
                                        std::to_string(finding.pieces.back().value) + "/" +
                                        std::to_string(finding.variant),
                                    {finding.wall, finding.pieces.front()}});
  const auto labels = placeLabels(placement);
  drawPlacedLabels(pen.drawing, labels);
  for (const PlacedLabel& label : labels)
    pen.drawing.take("label " + label.request.text.measure, label.box);
}

} // namespace sillwright
