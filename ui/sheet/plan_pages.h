// The plan page with the wall-end schedule.
#pragma once

#include <memory>
#include <vector>

#include "core/rules/checker.h"
#include "ui/sheet/sheet_frame.h"

namespace sillwright::sheet {

void addPlanPages(std::vector<Draft>& drafts, const Job& job,
                  const std::vector<std::shared_ptr<const CheckedWall>>& walls, const PageFrame& frame);

} // namespace sillwright::sheet
