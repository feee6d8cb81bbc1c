#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"
#include "core/store/job_check.h"

namespace sillwright {
namespace {

void checkProfile(const StrapType& type, const FilePlace& at, Problems& problems) {
  const auto& profile = type.profile;
  problems.require(profile.size() >= 2, at, "needs two points or more");
  if (problems)
    return;
  problems.require(std::abs(profile.front().z) <= tolerance::same, at.item(0), "does not start at the joint line, height 0");
  bool goesDown = false;
  for (std::size_t i = 1; i < profile.size(); ++i) {
    const ProfilePoint a = profile[i - 1];
    const ProfilePoint b = profile[i];
    problems.require(std::hypot(b.d - a.d, b.z - a.z) > tolerance::same, at.item(i), "is the same point as the one before");
    problems.require(b.z <= tolerance::same, at.item(i), "is above the joint line");
    goesDown = goesDown || b.z < -tolerance::same;
  }
  problems.require(goesDown, at, "does not go down");
}

void checkNails(const StrapType& type, const FilePlace& at, Problems& problems) {
  const NailPattern& nails = type.nails;
  if (nails.count == 0)
    return;
  problems.require(!nails.rows.empty(), at.field("rows"), "has no row for the nails");
  problems.require(nails.count == 1 || nails.spacing > 0, at.field("spacing"), "puts all nails at one height");
  const double top = nails.first + (nails.count - 1) * nails.spacing;
  problems.require(top <= type.exposedLength + tolerance::same, at.field("count"), "puts nails above the top of the plate");
  for (std::size_t i = 0; i < nails.rows.size(); ++i)
    problems.require(std::abs(nails.rows[i]) <= type.plateWidth / 2, at.field("rows").item(i), "is beside the plate");
}

void checkStrap(const StrapType& type, const FilePlace& at, Problems& problems) {
  checkProfile(type, at.field("profile"), problems);
  checkNails(type, at.field("nails"), problems);
  problems.require(!type.hangerReach.empty(), at.field("hangerReach"), "ends below where it begins");
}

void checkBolt(const BoltType& type, const FilePlace& at, Problems& problems) {
  problems.require(type.threadLength <= type.length, at.field("threadLength"), "is longer than the bolt");
  problems.require(type.diameter < type.length, at.field("diameter"), "is more than the length");
  if (type.end == BoltEnd::Headed) {
    problems.require(type.headWidth > type.diameter, at.field("headWidth"), "is no wider than the bolt");
    return;
  }
  problems.require(type.hookLeg > type.diameter / 2, at.field("hookLeg"), "does not stand out from the bolt");
  problems.require(type.hookReturn < type.length, at.field("hookReturn"), "is longer than the bolt");
}

void checkRod(const RodType& type, const FilePlace& at, Problems& problems) {
  problems.require(type.footWidth == 0 || type.footWidth > type.diameter, at.field("footWidth"),
                   "is no wider than the rod");
}

void checkWasher(const WasherType& type, const FilePlace& at, Problems& problems) {
  problems.require(type.hole < std::min(type.along, type.across), at.field("hole"), "is bigger than the washer");
  if (!type.slot)
    return;
  const bool along = type.slot->direction == SlotDirection::Along;
  const FilePlace slot = at.field("slot");
  problems.require(type.slot->length < (along ? type.along : type.across), slot.field("length"),
                   "is longer than the washer");
  problems.require(type.slot->width < (along ? type.across : type.along), slot.field("width"), "is wider than the washer");
}

template <class Type, class Check>
void each(const std::vector<Type>& list, const FilePlace& at, Problems& problems, Check check) {
  for (std::size_t i = 0; i < list.size() && !problems; ++i) {
    const FilePlace item = at.item(i);
    check(list[i], item, problems);
  }
}

} // namespace

void checkHardware(const HardwareTypes& types, const FilePlace& place, Problems& problems) {
  each(types.straps, place.field("straps"), problems, checkStrap);
  each(types.bolts, place.field("bolts"), problems, checkBolt);
  each(types.rods, place.field("rods"), problems, checkRod);
  each(types.washers, place.field("washers"), problems, checkWasher);
}

} // namespace sillwright
