// What the hand does, without a toolkit.
#pragma once

#include <cstdint>
#include <optional>

#include "core/drawing/drawing.h"
#include "core/model/lookup.h"

namespace sillwright {

enum class CanvasKind : std::uint8_t { Elevation, Plan, Section };

struct Keys {
  bool shift = false;
  bool control = false;
  bool alt = false; // no snapping
};

// A place of the pointer, in inches. Elevation: s and z of the wall in view. Section: d and z. Plan: x and y.
struct PointerAt {
  CanvasKind canvas = CanvasKind::Elevation;
  Point3 at;
  Point2 plan;
  double reach = 0.5; // inches that a few pixels are worth: how near counts as on it
  std::optional<HitArea> hit; // what lies under it, topmost, if anything
  Keys keys;
};

} // namespace sillwright
