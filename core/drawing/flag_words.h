// What the label of a flag says: level, measure, and the correction or where it is.
#pragma once

#include "core/drawing/flags.h"
#include "core/model/job.h"
#include "core/rules/finding.h"

namespace sillwright {

LabelText flagWords(const Job& job, const Finding& finding);

} // namespace sillwright
