#include "core/geometry/oriented_box.h"

#include <random>

#include <Eigen/Geometry>
#include <gtest/gtest.h>

namespace sillwright {
namespace {

class Boxes {
public:
  explicit Boxes(unsigned seed) : random_(seed) {}

  double number(double from, double to) { return std::uniform_real_distribution<double>(from, to)(random_); }
  Eigen::Vector3d vector(double from, double to) { return {number(from, to), number(from, to), number(from, to)}; }
  // Turned any way, or along the axes.
  OrientedBox box(bool turned) {
    OrientedBox box{vector(-2, 2), Eigen::Matrix3d::Identity(), vector(0, 1.5)};
    if (turned)
      box.axes = Eigen::AngleAxisd(number(0, 6), vector(-1, 1).normalized()).toRotationMatrix();
    return box;
  }

private:
  std::mt19937 random_;
};

double outside(const Eigen::Vector3d& point, const OrientedBox& box) {
  const Eigen::Vector3d local = box.axes.transpose() * (point - box.centre);
  return (local.cwiseAbs() - box.half).cwiseMax(0.0).norm();
}

TEST(OrientedBoxes, OverlapExactlyWhereTheyHaveNoDistance) {
  Boxes boxes(31);
  int apart = 0;
  int overlapping = 0;
  for (int i = 0; i < 20000; ++i) {
    const OrientedBox first = boxes.box(i % 4 != 0);
    const OrientedBox second = boxes.box(i % 5 != 0);
    const NearestPair pair = nearest(first, second);
    const double depth = overlapDepth(first, second);
    ASSERT_NEAR(outside(pair.onFirst, first), 0, 1e-12) << i;
    ASSERT_NEAR(outside(pair.onSecond, second), 0, 1e-12) << i;
    ASSERT_NEAR(nearest(second, first).distance(), pair.distance(), 1e-12) << i;
    ASSERT_NEAR(overlapDepth(second, first), depth, 1e-12) << i;
    if (pair.distance() > 1e-9) {
      ++apart;
      ASSERT_LT(depth, 0) << i;
      ASSERT_LE(-depth, pair.distance() + 1e-9) << i; // a gap between parallel planes is never more than the distance
    } else {
      ++overlapping;
      ASSERT_GT(depth, -1e-9) << i;
    }
  }
  EXPECT_GT(apart, 5000);
  EXPECT_GT(overlapping, 5000);
}

} // namespace
} // namespace sillwright
