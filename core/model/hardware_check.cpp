#include "core/model/hardware_check.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <utility>

#include "core/base/tolerance.h"

namespace sillwright {
namespace {

// Keeps the first fault only.
class Faults {
public:
  void require(bool good, std::initializer_list<HardwareStep> path, const char* message) {
    if (!good && !first_)
      first_ = HardwareFault{path, message};
  }
  bool any() const { return first_.has_value(); }
  std::optional<HardwareFault> first() && { return std::move(first_); }

private:
  std::optional<HardwareFault> first_;
};

HardwareStep item(std::size_t position) { return {{}, position}; }

// Down from the joint line; up again only for the hook at the end, and not out of the concrete.
void checkProfile(const std::vector<ProfilePoint>& profile, Faults& faults) {
  faults.require(profile.size() >= 2, {{"profile"}}, "needs two points or more");
  if (faults.any())
    return;
  faults.require(std::abs(profile.front().z) <= tolerance::same, {{"profile"}, item(0)},
                 "does not start at the joint line, height 0");
  bool below = false;               // it has gone down
  std::optional<std::size_t> rises; // the first point of what must be the hook
  for (std::size_t i = 1; i < profile.size(); ++i) {
    const ProfilePoint a = profile[i - 1];
    const ProfilePoint b = profile[i];
    faults.require(std::hypot(b.d - a.d, b.z - a.z) > tolerance::same, {{"profile"}, item(i)},
                   "is the same point as the one before");
    faults.require(b.z <= tolerance::same, {{"profile"}, item(i)}, "is above the joint line");
    faults.require(!below || b.z < -tolerance::same, {{"profile"}, item(i)}, "comes up to the joint line again");
    if (b.z > a.z + tolerance::same && !rises)
      rises = i;
    if (rises)
      faults.require(b.z >= a.z - tolerance::same, {{"profile"}, item(*rises)}, "goes up before the hook at the end");
    below = below || b.z < -tolerance::same;
  }
  faults.require(below, {{"profile"}}, "does not go down");
}

void checkNails(const StrapType& type, Faults& faults) {
  const NailPattern& nails = type.nails;
  if (nails.count == 0)
    return;
  faults.require(!nails.rows.empty(), {{"nails"}, {"rows"}}, "has no row for the nails");
  faults.require(nails.count == 1 || nails.spacing > 0, {{"nails"}, {"spacing"}}, "puts all nails at one height");
  const double top = nails.first + (nails.count - 1) * nails.spacing;
  faults.require(top <= type.exposedLength + tolerance::same, {{"nails"}, {"count"}},
                 "puts nails above the top of the plate");
  for (std::size_t i = 0; i < nails.rows.size(); ++i)
    faults.require(std::abs(nails.rows[i]) <= type.plateWidth / 2, {{"nails"}, {"rows"}, item(i)}, "is beside the plate");
}

} // namespace

std::optional<HardwareFault> faultOf(const StrapType& type) {
  Faults faults;
  checkProfile(type.profile, faults);
  checkNails(type, faults);
  faults.require(!type.hangerReach.empty(), {{"hangerReach"}}, "ends below where it begins");
  return std::move(faults).first();
}

std::optional<HardwareFault> faultOf(const BoltType& type) {
  Faults faults;
  faults.require(type.threadLength <= type.length, {{"threadLength"}}, "is longer than the bolt");
  faults.require(type.diameter < type.length, {{"diameter"}}, "is more than the length");
  if (type.end == BoltEnd::Headed) {
    faults.require(type.headWidth > type.diameter, {{"headWidth"}}, "is no wider than the bolt");
  } else {
    faults.require(type.hookLeg > type.diameter / 2, {{"hookLeg"}}, "does not stand out from the bolt");
    faults.require(type.hookReturn < type.length, {{"hookReturn"}}, "is longer than the bolt");
  }
  return std::move(faults).first();
}

std::optional<HardwareFault> faultOf(const RodType& type) {
  Faults faults;
  faults.require(type.footWidth == 0 || type.footWidth > type.diameter, {{"footWidth"}}, "is no wider than the rod");
  return std::move(faults).first();
}

std::optional<HardwareFault> faultOf(const WasherType& type) {
  Faults faults;
  faults.require(type.hole < std::min(type.along, type.across), {{"hole"}}, "is bigger than the washer");
  if (type.slot) {
    const bool along = type.slot->direction == SlotDirection::Along;
    faults.require(type.slot->length < (along ? type.along : type.across), {{"slot"}, {"length"}},
                   "is longer than the washer");
    faults.require(type.slot->width < (along ? type.across : type.along), {{"slot"}, {"width"}},
                   "is wider than the washer");
  }
  return std::move(faults).first();
}

std::optional<HardwareFault> faultOf(const WallEndMark& mark) {
  Faults faults;
  faults.require(!mark.strapType || !mark.rodType, {{"rodType"}}, "is called for beside a strap: a mark has one of the two");
  return std::move(faults).first();
}

} // namespace sillwright
