// What a bolt must stand above the concrete for: sill, washers, nut and the threads beyond it. Inches.
#pragma once

#include <optional>

#include "core/model/hardware.h"

namespace sillwright {

struct ThreadStack {
  double sill = 0;
  double plateWasher = 0;
  double cutWasher = 0;
  double nut = 0;      // largest, ASME B18.2.2
  double standout = 0; // threads beyond the nut
};

struct Thread {
  double diameter = 0;
  double threadsPerInch = 0; // 0: as tabulated for that diameter
};

// Nothing where the nut or a wanted cut washer of that diameter is not tabulated. washer may be null.
std::optional<ThreadStack> threadStack(const Thread& thread, double sillThickness, const WasherType* washer,
                                       bool cutWasher, double standoutThreads);
double total(const ThreadStack& stack);
// Rounded up to the next sixteenth: what is measured with a tape.
double neededProjection(const ThreadStack& stack);

} // namespace sillwright
