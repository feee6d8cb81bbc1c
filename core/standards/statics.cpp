#include "core/standards/statics.h"

namespace sillwright {

namespace {

constexpr double inchesPerFoot = 12;

} // namespace

double tieForce(double unitShear, double height, double length, double lever, double deadLoad) {
  const double feet = length / inchesPerFoot;
  return tieForce({.overturning = unitShear * feet * height / inchesPerFoot, .resisting = deadLoad * feet * feet / 2},
                  lever);
}

double tieForce(const Moments& moments, double lever) {
  return (moments.overturningFactor * moments.overturning - moments.resistingFactor * moments.resisting) /
         (lever / inchesPerFoot);
}

} // namespace sillwright
