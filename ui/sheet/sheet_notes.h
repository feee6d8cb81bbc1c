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
  std::vector<std::string> bars;   // "V3 · 3'-4 1/4\"": bars that have no running dimension beside the drawing
  bool onlyBars = false;           // of a whole wall drawn small: its parts carry the rest
  std::string part{};              // "wall A, left pier", for notes away from their drawing
};

// Notes in a column beside their drawing; how many of them are done with.
std::size_t drawNotes(Drawing& page, const NotesInput& input, const Bounds& column);
// Pages for those from `first` on.
void addRestOfNotes(std::vector<Draft>& drafts, Draft like, const NotesInput& input, std::size_t first,
                    const PageFrame& frame);

// On paper too small for a column: the notes of all parts together, checks and key once.
void addNotePages(std::vector<Draft>& drafts, const std::vector<NotesInput>& parts, const PageFrame& frame);

} // namespace sillwright::sheet
