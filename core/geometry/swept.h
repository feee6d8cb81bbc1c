// Shapes swept along the wall: the same rectangle of depth and height over a stretch of stations. Straight pieces of a
// plate are such shapes, boxes too, and so are bars' axes that keep one station or run along the wall. Their distance
// parts into one along the wall and one across it, so passing is a formula of a line. Inches, wall frame.
#pragma once

#include <optional>

#include "core/geometry/near_path.h"

namespace sillwright {

// Seen along the wall. Half sizes may be 0.
struct Rectangle {
  ProfilePoint centre;
  ProfilePoint along{1, 0}; // unit vector
  double halfLength = 0;    // along it
  double halfThickness = 0; // square to it
};

struct Swept {
  Interval stations;
  Rectangle section;
};

// The first axis of the box must be that of the stations, as it is for pieces of plates and boxes along the wall.
Swept swept(const OrientedBox& box);

// The axis of a bar; nothing where it goes along the wall and across it at once.
std::optional<Swept> sweptAxis(const Capsule& bar);

// Shifts of the first, by station or by depth, at which it is nearer than the reach to the second. Reach above 0.
Interval stationsNear(const Swept& first, const Swept& second, double reach);
Interval depthsNear(const Swept& first, const Swept& second, double reach);

// Shifts of the first at which the least shift that parts the two is more than `depth`, 0 or more.
Interval stationsOverlapping(const Swept& first, const Swept& second, double depth);
Interval depthsOverlapping(const Swept& first, const Swept& second, double depth);

} // namespace sillwright
