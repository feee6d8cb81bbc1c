// Plate washers as such: large enough, slotted no more than a cut washer covers.
#include <algorithm>
#include <cmath>

#include "core/rules/anchor_checks.h"
#include "core/rules/measure.h"
#include "core/rules/subjects.h"

namespace sillwright {

namespace {

using Field = Correction::Field;

bool largeEnough(const WasherType& type, double side, double thickness) {
  return !under(std::min(type.along, type.across), side) && !under(type.thickness, thickness);
}

// The smallest washer of the job's hardware that is large enough, round hole before slot.
std::optional<Correction> largeEnoughWasher(const WallLayout& layout, const AnchorBody& bolt, double side,
                                            double thickness) {
  const WasherType* best = nullptr;
  const auto rank = [](const WasherType& type) { return std::pair(type.slot.has_value(), type.along * type.across); };
  for (const WasherType& type : layout.types->washers)
    if (largeEnough(type, side, thickness) && (!best || rank(type) < rank(*best)))
      best = &type;
  return best ? std::optional(Correction{Field::Washer, bolt.id, 0, best->id}) : std::nullopt;
}

// How far a washer may be slid off its bolt: what hole or slot leave free.
double slideOf(const WasherType& type, double diameter) {
  const double free = type.slot ? type.slot->length : type.hole;
  return free > 0 ? std::max(0.0, (free - diameter) / 2) : 0;
}

void checkSlot(const WallLayout& layout, const ResolvedLimits& limits, const AnchorBody& bolt, Drafts& drafts) {
  const WasherType& type = *bolt.washer;
  const Box3& box = *bolt.washerBox;
  const auto off = [&](double measured, double limit, std::uint8_t variant, Unit unit = Unit::Inch) -> Draft& {
    return report(drafts, layout, RuleId::WasherSlot, Level::Fix, {bolt.id},
                  {measured, limit, box, Wanted::AtMost, unit, variant});
  };
  const double wide = bolt.diameter + limits[LimitKey::WasherSlotWidth], longest = limits[LimitKey::WasherSlotLength];
  if (type.slot && over(type.slot->width, wide))
    off(type.slot->width, wide, 0);
  if (type.slot && over(type.slot->length, longest))
    off(type.slot->length, longest, 1);
  if (type.slot && !bolt.bolt->cutWasher)
    off(1, 0, 2, Unit::Count).corrections.push_back({Field::CutWasher, bolt.id, 1});
  const double shift = bolt.bolt->washerShift, room = slideOf(type, bolt.diameter);
  if (over(std::abs(shift), room))
    off(std::abs(shift), room, 3)
        .corrections.push_back({Field::Washer, bolt.id, shift > 0 ? room : -room, type.id});
}

} // namespace

// Variants: 0 none, 1 too small, 2 too thin.
void checkWasherSize(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  const double side = limits[LimitKey::WasherSide], thickness = limits[LimitKey::WasherThickness];
  for (const AnchorBody& bolt : layout.anchors) {
    if (!layout.limits->plateWashers || bolt.isRod || !bolt.sillPiece)
      continue;
    if (bolt.washer && largeEnough(*bolt.washer, side, thickness))
      continue;
    const double across = bolt.washer ? std::min(bolt.washer->along, bolt.washer->across) : 0;
    const bool thin = bolt.washer && !under(across, side);
    Box3 region = bolt.washer ? *bolt.washerBox : nutBox(bolt);
    if (!bolt.washer)
      region = {around(bolt.station, side), around(bolt.depth, side), region.z};
    Draft& draft = report(drafts, layout, RuleId::WasherSize, Level::Fix, {bolt.id},
                          {thin ? bolt.washer->thickness : across, thin ? thickness : side, region, Wanted::AtLeast,
                           Unit::Inch, static_cast<std::uint8_t>(!bolt.washer ? 0 : thin ? 2 : 1)});
    if (const auto other = largeEnoughWasher(layout, bolt, side, thickness))
      draft.corrections.push_back(*other);
  }
}

// Variants: 0 slot wide, 1 slot long, 2 no cut washer over it, 3 slid farther than hole or slot allow.
void checkWasherSlot(const WallLayout& layout, const ResolvedLimits& limits, Drafts& drafts) {
  for (const AnchorBody& bolt : layout.anchors)
    if (!bolt.isRod && bolt.washer && bolt.washerBox)
      checkSlot(layout, limits, bolt, drafts);
}

} // namespace sillwright
