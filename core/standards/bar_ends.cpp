#include "core/standards/bar_ends.h"

#include <array>

#include "core/standards/bars.h"

namespace sillwright {

namespace {

constexpr std::array<BarLap, 3> laps{{{4, 30}, {5, 38}, {6, 45}}};

} // namespace

std::optional<StandardHook> standardHook(int barNumber) {
  const auto bar = barSize(barNumber);
  if (!bar)
    return std::nullopt;
  return StandardHook{hookBend.value * bar->diameter, hookExtension.value * bar->diameter};
}

std::span<const BarLap> barLaps() {
  return laps;
}

std::optional<double> lapLength(int barNumber) {
  for (const BarLap& lap : laps)
    if (lap.number == barNumber)
      return lap.length;
  return std::nullopt;
}

} // namespace sillwright
