// Job files and other files on disk. Paths are UTF-8. A problem's place is the path, or the place in the file behind it.
#pragma once

#include <memory>
#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/model/job.h"

namespace sillwright {

// Reads a whole job or nothing. Files over 64 MB are refused before they are read.
Result<Job> loadJob(const std::string& path);

// Saves atomically and durably: written beside, flushed, renamed. Keeps the file's permissions, follows links, and keeps
// one previous version beside it (previousPath). On any problem (full disk, no permission) the old file is still whole.
// Refused: a job that could not be read again, and replacing a file that is there but is no readable job (it may be
// somebody's damaged work).
Result<Done> saveJob(const Job& job, const std::string& path);
std::string previousPath(const std::string& path);

// Any file, atomically and durably, the same way.
Result<Done> writeFile(const std::string& path, std::string_view bytes);

// Held while a job is open, so that a second program is told. Gone with the object, also after a crash.
class JobLock {
public:
  // Null where another program holds it; holder then says who. Where no lock can be made (a folder that cannot be
  // written), a lock that holds nothing.
  static std::unique_ptr<JobLock> take(const std::string& path, std::string& holder);
  ~JobLock();

private:
  struct Hold;
  explicit JobLock(std::unique_ptr<Hold> hold);
  std::unique_ptr<Hold> hold_;
};

} // namespace sillwright
