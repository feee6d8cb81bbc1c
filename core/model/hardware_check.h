// Hardware that cannot be made, and marks that call for what cannot be: thread longer than the bolt, a profile that goes
// up, a hole bigger than its washer … Looked at where a job is loaded and where a type is entered. Single numbers out of
// range are not looked at here.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/job.h"

namespace sillwright {

// One step down into a type: a field by its name in job files, or an item of a list where the name is empty.
struct HardwareStep {
  std::string_view field;
  std::size_t item = 0;
  bool operator==(const HardwareStep&) const = default;
};

struct HardwareFault {
  std::vector<HardwareStep> path; // profile, item 2
  std::string message;            // goes on after the name of the field: "is above the joint line"
};

// The first fault, or nothing.
std::optional<HardwareFault> faultOf(const StrapType& type);
std::optional<HardwareFault> faultOf(const BoltType& type);
std::optional<HardwareFault> faultOf(const RodType& type);
std::optional<HardwareFault> faultOf(const WasherType& type);
std::optional<HardwareFault> faultOf(const WallEndMark& mark);

} // namespace sillwright
