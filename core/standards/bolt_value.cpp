#include "core/standards/bolt_value.h"

#include <algorithm>
#include <cmath>

namespace sillwright {

namespace {

constexpr double smallestDiameter = 0.25;
constexpr double largestDiameter = 1;

// NDS 2018 Table 12.3.1B, before the angle: bearing, rotation, bending.
constexpr double bearingReduction = 4;
constexpr double rotationReduction = 3.6;
constexpr double bendingReduction = 3.2;

double angleFactor(double degrees) {
  return 1 + 0.25 * degrees / 90;
}

double square(double x) {
  return x * x;
}

bool holds(const SingleShear& j) {
  return j.diameter >= smallestDiameter && j.diameter <= largestDiameter && j.angle >= 0 && j.angle <= 90 &&
         j.mainLength > 0 && j.sideLength > 0 && j.mainBearing > 0 && j.sideBearing > 0 && j.bendingYield > 0;
}

// NDS 2018 Equations 12.3-1 to 12.3-6, before the reduction terms. Letters as there.
std::array<double, 6> yieldLoads(const SingleShear& j) {
  const double D = j.diameter, lm = j.mainLength, ls = j.sideLength;
  const double Fem = j.mainBearing, Fes = j.sideBearing, Fyb = j.bendingYield;
  const double Re = Fem / Fes, Rt = lm / ls;
  const double k1 =
      (std::sqrt(Re + 2 * square(Re) * (1 + Rt + square(Rt)) + square(Rt) * Re * Re * Re) - Re * (1 + Rt)) / (1 + Re);
  const double k2 = -1 + std::sqrt(2 * (1 + Re) + 2 * Fyb * (1 + 2 * Re) * square(D) / (3 * Fem * square(lm)));
  const double k3 = -1 + std::sqrt(2 * (1 + Re) / Re + 2 * Fyb * (2 + Re) * square(D) / (3 * Fem * square(ls)));
  return {D * lm * Fem,
          D * ls * Fes,
          k1 * D * ls * Fes,
          k2 * D * lm * Fem / (1 + 2 * Re),
          k3 * D * ls * Fem / (2 + Re),
          square(D) * std::sqrt(2 * Fem * Fyb / (3 * (1 + Re)))};
}

} // namespace

std::optional<BoltValue> boltValue(const SingleShear& joint) {
  if (!holds(joint))
    return std::nullopt;
  constexpr std::array<double, 6> reductions{bearingReduction, bearingReduction, rotationReduction,
                                             bendingReduction, bendingReduction, bendingReduction};
  BoltValue value{yieldLoads(joint)};
  for (std::size_t i = 0; i < value.modes.size(); ++i)
    value.modes[i] /= reductions[i] * angleFactor(joint.angle);
  const auto least = std::min_element(value.modes.begin(), value.modes.end());
  value.governing = static_cast<YieldMode>(least - value.modes.begin());
  return value;
}

std::optional<BoltValue> sillBoltValue(double diameter, double sillThickness, const Species& sill, double embedment,
                                       double angle) {
  if (!(diameter > 0))
    return std::nullopt;
  return boltValue({.diameter = diameter,
                    .mainLength = embedment,
                    .sideLength = sillThickness,
                    .mainBearing = concreteBearing.value,
                    .sideBearing = bearingAtAngle(sill.specificGravity, diameter, angle),
                    .angle = angle});
}

} // namespace sillwright
