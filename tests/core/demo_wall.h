// The demo wall: a 24'-0" front with a 16'-0" opening between two piers. Job and hardware are invented.
#pragma once

#include <memory>

#include "core/drawing/flags.h"
#include "core/model/job.h"
#include "core/rules/checker.h"

namespace sillwright::test {

// As drawn after the drag: S1 a little near the end, S2 on the seam, S4 near bar V18.
Job demoJob();
// Its one wall laid out, with three findings written by hand, one of each level (no rule is asked).
std::shared_ptr<const CheckedWall> demoWall(const Job& job);

// Words for those findings, as a label says them.
LabelText demoWords(const Job& job, const Finding& finding);

} // namespace sillwright::test
