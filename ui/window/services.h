// What the window needs from outside: reading and writing files. Handed in, so that tests can let a disk fail.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "core/base/result.h"
#include "core/model/job.h"

namespace sillwright {

struct Services {
  // Paths are UTF-8. Errors name the file or the place in it.
  std::function<Result<Job>(const std::string& path)> loadJob;
  std::function<std::optional<Problem>(const Job& job, const std::string& path)> saveJob;
  // Marks a file as open here for as long as the result lives. Null where another program has it open: `holder` says
  // which. Missing: nothing is marked.
  std::function<std::shared_ptr<void>(const std::string& path, std::string& holder)> lock;
  // The layout sheet as PDF, on a paper by its name ("tabloid"). Missing: the action is off.
  std::function<std::optional<Problem>(const Job& job, const std::string& path, const std::string& paper)> writeSheet;
};

} // namespace sillwright
