// A job as UTF-8 JSON text and back; the format is described by resources/job.schema.json. Lengths in inches as numbers.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/model/job.h"

namespace sillwright {

// The number this program writes. Texts of earlier numbers are brought up to it when read.
inline constexpr int currentFormat = 1;

// Errors: place is the path of the field ("walls[2].straps[0].station", message "-3 is outside 0 … 288"), or "line N,
// character M" where the text is not JSON at all. Only the first problem is told, and nothing is loaded half.
// Fields this program does not know are kept in `extra` of the entity they stand in, and written back by writeJob.
Result<Job> readJob(std::string_view utf8);

// Stable order and formatting, one piece a line: writeJob(readJob(x)) is a fixed point, readJob(writeJob(job)) == job.
// Precondition: checkJob(job) finds nothing.
std::string writeJob(const Job& job);

// What readJob would refuse about the values of this job: numbers out of range, references to nothing, ids twice, pieces
// outside their wall, impossible hardware. Saving asks this first, so that no file is written that cannot be read.
std::optional<Problem> checkJob(const Job& job);

} // namespace sillwright
