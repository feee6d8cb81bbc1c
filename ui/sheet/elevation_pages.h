// Pages of one wall in elevation, with running dimensions and the setting table.
#pragma once

#include <vector>

#include "core/drawing/view.h"
#include "core/rules/checker.h"
#include "ui/sheet/sheet_frame.h"
#include "ui/sheet/sheet_notes.h"

namespace sillwright::sheet {

// A part of a wall that gets pages of its own.
struct Stretch {
  Interval stations;
  std::string name; // "left pier", "middle", "part 2 of 3"; empty for a whole wall
};

// Whole wall, or its parts on both sides of wide openings that hold nothing to set.
std::vector<Stretch> stretchesOf(const WallLayout& layout);

// No hardware, bars or panels and nothing found: such a wall has no elevation; the plan says so.
bool nothingToSet(const CheckedWall& wall);

// How long a part of a wall may be, to be drawn in an area at 3/4" = 1'-0" or larger.
double longestPart(const Bounds& area);

struct DrawnPart {
  Scale scale;
  ElevationView view;
  double top = 0; // page: where framing is broken off, and the lower edge of the ground
  double bottom = 0;
};
// A part of a wall without labels and running dimensions, at the largest scale that fits into the area.
DrawnPart drawPart(Drawing& page, const Job& job, const CheckedWall& wall, Interval part, const Bounds& area);

// On paper with no room for notes beside the drawing they are collected in `later`.
void addElevationPages(std::vector<Draft>& drafts, const Job& job, const CheckedWall& wall, const PageFrame& frame,
                       std::vector<NotesInput>& later);

} // namespace sillwright::sheet
