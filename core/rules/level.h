// How bad a finding is.
#pragma once

#include <cstdint>

namespace sillwright {

enum class Level : std::uint8_t {
  Fix,  // outside a requirement: put right before the pour
  Ask,  // allowed only with a word from the engineer or the plans
  Watch // inside the requirement but closer than the target
};

} // namespace sillwright
