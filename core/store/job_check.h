// The parts of checkJob that look at more than one field at a time. Each notes the first problem and stops.
#pragma once

#include <optional>
#include <string>

#include "core/base/result.h"
#include "core/model/job.h"
#include "core/store/file_place.h"

namespace sillwright {

// Notes the first problem only.
class Problems {
public:
  std::optional<Problem>& first() { return first_; }
  explicit operator bool() const { return first_.has_value(); }
  // Notes words() at the place unless good.
  template <class Words> void require(bool good, const FilePlace& place, Words&& words) {
    if (!good && !first_)
      first_ = Problem{place.text(), std::string(words())};
  }
  void require(bool good, const FilePlace& place, const char* message) {
    require(good, place, [&] { return message; });
  }

private:
  std::optional<Problem> first_;
};

// Hardware that cannot be made, and marks that call for what cannot be: see model/hardware_check.h.
void checkHardware(const HardwareTypes& types, const FilePlace& place, Problems& problems);
void checkMarks(const std::vector<WallEndMark>& marks, const FilePlace& place, Problems& problems);

// Everything on the wall inside the wall, stretches from left to right, bars the way they say they run.
// Precondition: the single fields were found good.
void checkWall(const Job& job, const WallLine& wall, const FilePlace& place, Problems& problems);

} // namespace sillwright
