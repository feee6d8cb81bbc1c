#include "core/geometry/wall_frame.h"

#include <cmath>

namespace sillwright {

Eigen::Isometry2d wallFrame(Point2 from, Point2 to) {
  const double length = distance(from, to);
  const Eigen::Vector2d along((to.x - from.x) / length, (to.y - from.y) / length);
  Eigen::Isometry2d frame = Eigen::Isometry2d::Identity();
  frame.linear() << along.x(), -along.y(), along.y(), along.x();
  frame.translation() << from.x, from.y;
  return frame;
}

Point2 toPlan(const Eigen::Isometry2d& frame, double s, double d) {
  const Eigen::Vector2d plan = frame * Eigen::Vector2d(s, d);
  return {plan.x(), plan.y()};
}

Point2 toWall(const Eigen::Isometry2d& frame, Point2 plan) {
  const Eigen::Vector2d wall = frame.linear().transpose() * (Eigen::Vector2d(plan.x, plan.y) - frame.translation());
  return {wall.x(), wall.y()};
}

double distance(Point2 a, Point2 b) {
  return std::hypot(b.x - a.x, b.y - a.y);
}

} // namespace sillwright
