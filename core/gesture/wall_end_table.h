// The wall-end schedule as a table: what may be typed into a cell, its rows as text for a spreadsheet, and text of a
// spreadsheet back into the job.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/gesture/wall_ends.h"

namespace sillwright {

// ---- a cell -----------------------------------------------------------------------------------------------------

enum class EndCell { Mark, Column, Station };

// The mark always; make-up and station where a column, a strap or a rod stands there.
bool canSet(const WallEnd& end, EndCell cell);
// As it is typed, in the job's units and to the finest fraction: typed again it changes nothing. "none" for no mark.
std::string cellText(const Job& job, const WallEnd& end, EndCell cell);
// Through the fields of the card; a rod goes along its column. Error: place is the head of the cell's column.
Result<Job> setCell(const Job& job, const WallEnd& end, EndCell cell, std::string_view typed);

// ---- rows as text -----------------------------------------------------------------------------------------------

// A head and a line a row: wall, panel, end, mark, column, hardware, at, state.
std::string endsAsText(const Job& job, std::span<const WallEnd> ends);

struct PastedEnds {
  Job job;
  std::string name; // of the undo step: "Paste 24 wall ends"
  int ends = 0;     // that were set or made
  int panels = 0;   // that were made
};

// What a table sets: mark, column and station (at) of the ends its rows name by wall, panel and end (left, right or
// both); empty cells leave what is there, and hardware, slide room and state are results that are not read. Without a
// head the columns are those of endsAsText. Where the head has from and to, a panel that is not there is made at those
// stations: with a sill under it and a post at each end where none stands, straps and bolts laid out.
// Error: nothing is taken. place is "row 3, at": rows are lines of the text, its head is row 1.
Result<PastedEnds> pasteEnds(const Job& job, std::string_view text);

} // namespace sillwright
