// A job seen in a mirror.
#pragma once

#include "core/model/job.h"

namespace sillwright {

// Left and right change places everywhere: plan points about x = 0, stations of every wall about its middle, ends,
// sides, hooks and rows of nails. Ids and marks stay. The order of sills turns round, for walls ask their neighbour for
// its first and last one. Mirrored twice it is the job again.
Job mirrored(const Job& job);

} // namespace sillwright
