// The pieces the rules' pictures are put together from, on the ground of rule_sketch.h.
#pragma once

#include "core/drawing/rule_sketch.h"

namespace sillwright::sketch {

// Concrete and earth.
void concrete(Sketch& s, const Bounds& b, Edges edges = {});
void concrete(Sketch& s, const Polygon2& outline, const std::vector<Polygon2>& edges);
void earth(Sketch& s, const Bounds& b);
// The pour line seen from the side: a tape hanging from y.
void blade(Sketch& s, double x0, double x1, double y);
// The pour line at a cut.
void pourLine(Sketch& s, double x0, double x1, double y);

// Lumber: along, cut across, and a sheet of sheathing.
void wood(Sketch& s, const Bounds& b, double width = 0.9);
void woodCut(Sketch& s, const Bounds& b, double width = 1);
void field(Sketch& s, const Bounds& b);
void formBoard(Sketch& s, const Bounds& b);
// A shear panel from its top plates to the foot of its sill, with a column at each end or without.
void panel(Sketch& s, const Bounds& b, bool leftColumn = true, bool rightColumn = true);
inline constexpr double panelColumn = 14, panelPlate = 7; // widths in that picture
// A piece that is not there, or where it belongs.
void ghost(Sketch& s, const Bounds& b);

// A bar: seen along, or cut.
void bar(Sketch& s, Point2 a, Point2 b, double thick = 4);
void barCut(Sketch& s, Point2 at, double radius = 3.4);

// A strap from outside: plate above its joint line with two rows of nails, open in the concrete below.
struct StrapFront {
  double x = 0, width = 16; // of its middle
  double top = 0, joint = 0, bottom = 0;
  double lean = 0; // of the top to the right
  int nails = 5;   // in each row
};
void strapFront(Sketch& s, const StrapFront& strap);
// A strap in the cut: up the sheathing at x, bent into the concrete, with its hook turned up.
void strapCut(Sketch& s, double x, double top, double joint, Point2 bend, Point2 tip);

enum class AnchorEnd { Hook, Plate, CutOff }; // cut off: it goes on below the picture
// An anchor from outside: shank from top to bottom with thread, plate washer and nut on the level `on`.
struct AnchorFront {
  double x = 0, top = 0, on = 0, pour = 0, bottom = 0;
  double thick = 4.4, washer = 26; // no washer: 0
  AnchorEnd end = AnchorEnd::Hook; // its leg away from the eye
  double nutAt = 0;                // foot of the nut where it does not sit on its washer
};
void anchorFront(Sketch& s, const AnchorFront& anchor);
// The same in the cut, its leg to the side: reach to the right, or to the left where negative.
struct AnchorCut {
  double x = 0, top = 0, on = 0, bottom = 0;
  double thick = 4.4, washer = 26, reach = 18; // no leg: 0, a nut on a plate instead
};
void anchorCut(Sketch& s, const AnchorCut& anchor);

// From above: a plate washer with its bolt and nut, a bare anchor, a column as it is cut.
void washerAbove(Sketch& s, Point2 at, double across, double bolt = 5);
void anchorAbove(Sketch& s, Point2 at, double radius);

// A spirit level: standing plumb, and the vial alone, its bubble off the middle.
void levelUpright(Sketch& s, const Bounds& b);
void vial(Sketch& s, Point2 at, double off);

// What is asked against what is there: two gauges side by side, the shortfall hatched.
void gauges(Sketch& s, double x, double y0, double y1, double held, std::string_view asked, std::string_view there);

} // namespace sillwright::sketch
