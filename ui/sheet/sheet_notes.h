// The column beside an elevation: what the flags say, limits changed, readings to take, checks, how to read the marks.
#pragma once

#include <string>
#include <vector>

#include "core/rules/checker.h"
#include "ui/sheet/sheet_frame.h"

namespace sillwright::sheet {

struct NotesInput {
  const Job* job = nullptr;
  const CheckedWall* wall = nullptr;
  Interval stretch;
  std::vector<std::string> listed; // labels that the drawing carries as numbers
};

// Draws blocks from `first` on while they fit; returns the first block that did not.
std::size_t drawNotes(Drawing& page, const NotesInput& input, const Bounds& column, std::size_t first);
std::size_t noteBlocks();

// Pages for the blocks that are left.
void addNotePages(std::vector<Draft>& drafts, const Draft& like, const NotesInput& input, std::size_t first,
                  const PageFrame& frame);

} // namespace sillwright::sheet
