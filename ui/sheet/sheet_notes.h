// The column beside an elevation: what the flags say, limits changed, readings to take, checks, how to read the marks.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/rules/checker.h"
#include "ui/sheet/sheet_frame.h"

namespace sillwright::sheet {

struct NotesInput {
  const Job* job = nullptr;
  const CheckedWall* wall = nullptr;
  Interval stretch;
  std::map<std::string, int> numbers; // of labels that the drawing carries as numbers, by flagKey
  std::vector<std::string> bars;   // "V3 · 3'-4 1/4\"": bars that have no running dimension beside the drawing
  bool onlyBars = false;           // of a whole wall drawn small: its parts carry the rest
  std::string part{};              // "wall A, left pier", for notes away from their drawing
};

// Notes in a column beside their drawing; how many of them are done with. Every finding is a note of its own: a long list
// goes on in the next column or page.
std::size_t drawNotes(Drawing& page, const NotesInput& input, const Bounds& column);
// Pages for those from `first` on.
void addRestOfNotes(std::vector<Draft>& drafts, Draft like, const NotesInput& input, std::size_t first,
                    const PageFrame& frame);

// On paper too small for a column: the notes of all parts together, checks and key once.
void addNotePages(std::vector<Draft>& drafts, const std::vector<NotesInput>& parts, const PageFrame& frame);

} // namespace sillwright::sheet
