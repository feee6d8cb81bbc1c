// Overturning of a shear panel. Forces in lb, line loads in plf, lengths in inches, moments in ft-lb.
#pragma once

#include "core/standards/source.h"

namespace sillwright {

inline constexpr Source tieForceSource{"SDPWS 2021 4.3.6.1; wood design manual M14.3", Status::Published};

// Tie force at the end of a panel of that height and length under its unit shear; lever is the distance between tie and
// the compression at the other end. deadLoad is what the codes leave of it to hold the panel down. Negative: no uplift.
// T = v L h / lever - w L^2 / (2 lever). Precondition: lever > 0.
double tieForce(double unitShear, double height, double length, double lever, double deadLoad = 0);

// (overturningFactor x overturning - resistingFactor x resisting) / lever: moments in ft-lb, lever in inches.
struct Moments {
  double overturning = 0;
  double resisting = 0;
  double overturningFactor = 1;
  double resistingFactor = 1;
};
double tieForce(const Moments& moments, double lever);

} // namespace sillwright
