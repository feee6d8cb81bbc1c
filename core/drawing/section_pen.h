// What the parts of a section share; used by the section's drawings only.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/drawing/section.h"

namespace sillwright {

// One line of a list beside the cut: words, and a measure at the right end of the column.
struct ListLine {
  std::string words;
  std::string measure{};
  Weight weight = Weight::Regular;
  Ink ink = Ink::Text;
  bool detail = false; // left out where there is room for the gist only
};

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
  std::vector<Bounds> lines{}; // dimension lines and flags, which no list may cover

  double x(double d) const { return input.view.x(d); }
  double y(double z) const { return input.view.y(z); }
  Bounds box(Interval d, Interval z) const { return {x(d.from), y(z.to), x(d.to), y(z.from)}; }
  // The column of dimensions to the right of forms and concrete; where the notes to its left end.
  double dimensions() const;
  double leftNotes() const;
  // Writes at the first free line at or below the wanted one.
  void note(double px, double py, std::string_view words, double size, Ink ink, Anchor anchor = Anchor::Start,
            Weight weight = Weight::Regular);
  // Writes a list as one block where nothing is in its way, as near as can be to its wanted top, right of px.
  void list(double px, double top, std::vector<ListLine> rows);
};

void drawSectionConcrete(SectionPen& pen);
void drawSectionBars(SectionPen& pen);
void drawSectionFraming(SectionPen& pen);
void drawSectionStrap(SectionPen& pen);
void drawSectionAnchor(SectionPen& pen);
void drawSectionFlags(SectionPen& pen);
void drawSectionNotes(SectionPen& pen);
void drawSectionLists(SectionPen& pen);
void drawSectionFlagLabels(SectionPen& pen);

} // namespace sillwright
