#include "core/store/migrations.h"

#include "core/store/job_json.h"

namespace sillwright {

// Format 1 is the first.
std::span<const Migration> migrations() {
  static_assert(currentFormat == 1, "a new format number needs a migration from the one before");
  return {};
}

Result<std::string> migrated(std::string text, int from, std::span<const Migration> steps) {
  const int newest = static_cast<int>(steps.size()) + 1;
  if (from > newest)
    return Problem{"format", std::to_string(from) + " is newer than this program, which reads up to " +
                                 std::to_string(newest)};
  if (from < 1)
    return Problem{"format", std::to_string(from) + " is not a format; the first is 1"};
  for (const Migration step : steps.subspan(static_cast<std::size_t>(from - 1))) {
    auto next = step(text);
    if (!next)
      return next;
    text = std::move(next.value());
  }
  return text;
}

} // namespace sillwright
