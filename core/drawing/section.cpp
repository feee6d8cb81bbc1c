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
  return drawing;
}

SectionView fitSection(const CheckedWall& wall, Id piece, const Bounds& window) {
  const WallLayout& layout = wall.layout;
  Interval z{layout.bottom - 2, layout.pour.empty() ? 0 : layout.pour.front().height + 12};
  for (const StrapBody& strap : layout.straps)
    if (piece && strap.id == piece)
      z.to = strap.plate.z.to + 2;
  for (const AnchorBody& anchor : layout.anchors)
    if (piece && anchor.id == piece)
      z = {anchor.bottom - 4, anchor.top + 2};
  const double left = 92;   // form heights
  const double right = 140; // dimensions and lists
  const double title = 20;
  const double wide = layout.across.length() + layout.wall->forms.outside + layout.wall->forms.inside;
  SectionView view;
  view.scale = std::clamp(std::min((window.y1 - window.y0 - title - 8) / z.length(),
                                   (window.x1 - window.x0 - left - right) / wide), 1.0, 24.0);
  view.origin.x = window.x0 + left + layout.wall->forms.outside * view.scale;
  view.origin.y = window.y0 + title + z.to * view.scale;
  return view;
}

} // namespace sillwright
