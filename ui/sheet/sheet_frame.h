// What every page has: frame, head, cautions and title block.
#pragma once

#include <string>

#include "core/model/job.h"
#include "ui/sheet/pages.h"

namespace sillwright::sheet {

// A page being made: the drawing without its title block, which needs the number of pages.
struct Draft {
  Drawing drawing;
  std::string title;    // WALL A, LEFT PIER
  std::string subject;  // what the title block says of it: "A, left pier P1"
  std::string note;     // second line there: "front, seen from outside"
  std::string scale;    // 1" = 1'-0", or empty
};

struct PageFrame {
  double width = 0, height = 0; // pt
  Bounds frame;                 // the heavy line
  Bounds content;               // inside it, above cautions and title block
};
PageFrame pageFrame(const Paper& paper);

// Title at the top left of the content; returns the content below it.
Bounds drawHead(Draft& draft, const PageFrame& frame, const std::string& secondLine);

// Frame, cautions and title block, once the number of pages is known.
void finishPage(Draft& draft, const PageFrame& frame, const Job& job, const SheetOptions& options, int number,
                int of);

// "1" = 1'-0"" for points per inch, where it is one of the architect's scales.
struct Scale {
  double pointsPerInch = 0;
  std::string_view name;
};
// Largest of the elevation scales that is not greater than `limit` (pt per inch); the smallest where none is.
Scale elevationScale(double limit);
Scale planScale(double limit);
Scale detailScale(double limit);

// A bar of one foot in four parts, black and white, right end at (right, y).
void drawScaleBar(Drawing& page, double right, double y, double pointsPerInch);

} // namespace sillwright::sheet
