// What the parts of a section share; used by the section's drawings only.
#pragma once

#include <string_view>
#include <vector>

#include "core/drawing/section.h"

namespace sillwright {

struct SectionPen {
  Drawing& drawing;
  const SectionInput& input;
  const WallLayout& layout;
  const StrapBody* strap = nullptr;
  const AnchorBody* anchor = nullptr;
  double pour = 0;      // at the cut
  Interval seen{};      // heights that are drawn: what the window shows of the wall
  bool paper = false;
  std::vector<Bounds> texts{};

  double x(double d) const { return input.view.x(d); }
  double y(double z) const { return input.view.y(z); }
  Bounds box(Interval d, Interval z) const { return {x(d.from), y(z.to), x(d.to), y(z.from)}; }
  // Writes at the first free line at or below the wanted one.
  void note(double px, double py, std::string_view words, double size, Ink ink, Anchor anchor = Anchor::Start,
            Weight weight = Weight::Regular);
};

void drawSectionConcrete(SectionPen& pen);
void drawSectionBars(SectionPen& pen);
void drawSectionFraming(SectionPen& pen);
void drawSectionStrap(SectionPen& pen);
void drawSectionAnchor(SectionPen& pen);
void drawSectionFlags(SectionPen& pen);
void drawSectionNotes(SectionPen& pen);

} // namespace sillwright
