#include "core/model/hardware_check.h"

#include "core/store/job_check.h"

namespace sillwright {
namespace {

// The place of a fault is a chain on the stack: one call a step of its path.
void note(const HardwareFault& fault, std::size_t step, const FilePlace& at, Problems& problems) {
  if (step == fault.path.size())
    return problems.require(false, at, fault.message.c_str());
  const HardwareStep& next = fault.path[step];
  const FilePlace below = next.field.empty() ? at.item(next.item) : at.field(next.field);
  note(fault, step + 1, below, problems);
}

template <class Item> void each(const std::vector<Item>& list, const FilePlace& at, Problems& problems) {
  for (std::size_t i = 0; i < list.size() && !problems; ++i)
    if (const auto fault = faultOf(list[i]))
      note(*fault, 0, at.item(i), problems);
}

} // namespace

void checkHardware(const HardwareTypes& types, const FilePlace& place, Problems& problems) {
  each(types.straps, place.field("straps"), problems);
  each(types.bolts, place.field("bolts"), problems);
  each(types.rods, place.field("rods"), problems);
  each(types.washers, place.field("washers"), problems);
}

void checkMarks(const std::vector<WallEndMark>& marks, const FilePlace& place, Problems& problems) {
  each(marks, place, problems);
}

} // namespace sillwright
