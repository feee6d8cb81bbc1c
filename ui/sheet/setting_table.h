// The rows from which a crew sets: one line a piece of embedded hardware, in the order of the tape.
#pragma once

#include "core/rules/checker.h"
#include "ui/sheet/sheet_table.h"

namespace sillwright::sheet {

// Pieces whose station lies in the stretch, by station.
Table settingTable(const Job& job, const CheckedWall& wall, Interval stretch);

// Panel ends of the whole job: wall, panel, end, column, hardware, station.
Table wallEndTable(const Job& job, const std::vector<std::shared_ptr<const CheckedWall>>& walls);

} // namespace sillwright::sheet
