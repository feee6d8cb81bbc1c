// Boxes turned any way, and segments: the exact distances that clearances are made of. Inches; vectors are (s, d, z).
#pragma once

#include <vector>

#include <Eigen/Core>

#include "core/geometry/shapes.h"

namespace sillwright {

struct OrientedBox {
  Eigen::Vector3d centre = Eigen::Vector3d::Zero();
  Eigen::Matrix3d axes = Eigen::Matrix3d::Identity(); // columns: unit vectors square to each other
  Eigen::Vector3d half = Eigen::Vector3d::Zero();     // half the size along each axis, never negative
};

struct Segment3 {
  Eigen::Vector3d a;
  Eigen::Vector3d b;
};

// A pair of nearest points of two shapes; the same point twice where they overlap.
struct NearestPair {
  Eigen::Vector3d onFirst;
  Eigen::Vector3d onSecond;

  double distance() const { return (onSecond - onFirst).norm(); }
};

// An empty interval of the box counts as its middle.
OrientedBox orientedBox(const Box3& box);

// The straight pieces of a plate, in the order of the profile: axes across (s), along the profile, square to it.
// Pieces without length add nothing and are left out; a profile that is a single place gives one piece along z without
// length. No profile, no pieces.
std::vector<OrientedBox> pieces(const Ribbon& plate);

NearestPair nearest(const Segment3& first, const Segment3& second);
NearestPair nearest(const Segment3& segment, const OrientedBox& box);
NearestPair nearest(const OrientedBox& first, const OrientedBox& second);

// Least shift that parts two overlapping boxes; negative when they are apart.
double overlapDepth(const OrientedBox& first, const OrientedBox& second);

Box3 bounds(const OrientedBox& box);

} // namespace sillwright
