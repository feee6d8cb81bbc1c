#include "core/rules/thread_stack.h"

#include "core/rules/measure.h"
#include "core/standards/fasteners.h"

namespace sillwright {

std::optional<ThreadStack> threadStack(const Thread& thread, double sillThickness, const WasherType* washer,
                                       bool cutWasher, double standoutThreads) {
  const auto hardware = boltHardware(thread.diameter);
  if (!hardware || (cutWasher && hardware->cutWasherThickness <= 0))
    return std::nullopt;
  const double pitch = 1 / (thread.threadsPerInch > 0 ? thread.threadsPerInch : hardware->threadsPerInch);
  return ThreadStack{sillThickness, washer ? washer->thickness : 0, cutWasher ? hardware->cutWasherThickness : 0,
                     hardware->nutThickness, standoutThreads * pitch};
}

double total(const ThreadStack& stack) {
  return stack.sill + stack.plateWasher + stack.cutWasher + stack.nut + stack.standout;
}

double neededProjection(const ThreadStack& stack) {
  return byToMark(0, total(stack));
}

} // namespace sillwright
