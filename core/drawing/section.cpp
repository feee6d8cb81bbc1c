#include "core/drawing/section.h"

#include <algorithm>

#include "core/drawing/section_pen.h"
#include "core/model/lookup.h"

namespace sillwright {

Drawing drawSection(const SectionInput& input) {
  Drawing drawing;
  if (!input.job || !input.wall || !input.wall->layout.wall)
    return drawing;
  const WallLayout& layout = input.wall->layout;
  SectionPen pen{drawing, input, layout};
  pen.paper = input.medium == Medium::Paper;
  pen.pour = pourAt(layout, input.station);
  pen.seen = {input.view.z(input.window.y1), input.view.z(input.window.y0)};
  if (pen.paper) // a cut of one piece on a sheet stops where there is nothing more to say
    pen.seen = overlap(pen.seen, heightsOfCut(*input.wall, input.piece));
  for (const StrapBody& strap : layout.straps)
    if (input.piece && strap.id == input.piece)
      pen.strap = &strap;
  for (const AnchorBody& anchor : layout.anchors)
    if (input.piece && anchor.id == input.piece)
      pen.anchor = &anchor;
  if (input.title) {
    const std::string mark = markOf(*input.job, {layout.wall->id, input.piece});
    const std::string at = input.piece ? mark : printLength(input.station, input.job->units);
    pen.note(input.window.x0 + 8, input.window.y0 + 14, "through " + at + ", looking left", 10.5, Ink::Text2);
  }
  drawSectionConcrete(pen);
  drawSectionBars(pen);
  drawSectionFraming(pen);
  drawSectionFlags(pen);
  if (pen.strap)
    drawSectionStrap(pen);
  if (pen.anchor)
    drawSectionAnchor(pen);
  drawSectionNotes(pen);
  drawSectionLists(pen);
  if (input.labels)
    drawSectionFlagLabels(pen);
  return drawing;
}

constexpr double stackRoom = 128; // pt above a bolt for the list of what its thread must hold

Interval heightsOfCut(const CheckedWall& wall, Id piece) {
  const WallLayout& layout = wall.layout;
  constexpr double belowFooting = 4; // in; for its width
  Interval z{layout.bottom - belowFooting, layout.pour.empty() ? 0 : layout.pour.front().height + 12};
  for (const StrapBody& strap : layout.straps)
    if (piece && strap.id == piece)
      z.to = strap.plate.z.to + 2;
  for (const AnchorBody& anchor : layout.anchors)
    if (piece && anchor.id == piece)
      z = {anchor.bottom - 4, anchor.top + 2};
  return z;
}

SectionView fitSection(const CheckedWall& wall, Id piece, const Bounds& window) {
  const WallLayout& layout = wall.layout;
  const Interval z = heightsOfCut(wall, piece);
  const double left = 92;   // form heights
  const double right = 140; // dimensions and lists
  double title = 20;
  const double wide = layout.across.length() + layout.wall->forms.outside + layout.wall->forms.inside;
  SectionView view;
  view.scale = std::clamp(std::min((window.y1 - window.y0 - title - 8) / z.length(),
                                   (window.x1 - window.x0 - left - right) / wide), 1.0, 24.0);
  const bool isAnchor = std::any_of(layout.anchors.begin(), layout.anchors.end(),
                                    [&](const AnchorBody& anchor) { return anchor.id == piece; });
  if (isAnchor && z.length() * view.scale + stackRoom < window.y1 - window.y0)
    title = stackRoom - 8;
  view.origin.x = window.x0 + left + layout.wall->forms.outside * view.scale;
  view.origin.y = window.y0 + title + z.to * view.scale;
  return view;
}

} // namespace sillwright
