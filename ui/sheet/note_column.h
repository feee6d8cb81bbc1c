// Words that run down a column, and on into the next one and on to further pages: notes, and questions.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "ui/sheet/sheet_frame.h"
#include "ui/sheet/sheet_text.h"

namespace sillwright::sheet {

// A pen that walks down a column.
struct Pen {
  Drawing& page;
  double x0 = 0;
  double x1 = 0;
  double y = 0;

  void title(std::string_view english, std::string_view spanish);
  void text(std::string_view words, double indent = 0, double size = noteSize);
  void gap(double by) { y += by; }
};

// One note; a line of a list carries the head of the list, which is written where it begins a column.
struct Note {
  std::function<void(Pen&)> draw;
  std::function<void(Pen&)> head = {};
  bool headAlways = false; // the first of its list
  double after = 12;
};

void addList(std::vector<Note>& notes, const std::function<void(Pen&)>& head,
             const std::vector<std::function<void(Pen&)>>& lines, double between);

// Notes from `first` on while they fit; the first that did not. One that is taller than the column stands alone in it.
std::size_t fillColumn(Drawing& page, const std::vector<Note>& notes, const Bounds& column, std::size_t first);

// Pages of two columns for the notes from `first` on.
void addColumnPages(std::vector<Draft>& drafts, const Draft& like, const std::string& secondLine,
                    const std::vector<Note>& notes, const PageFrame& frame, std::size_t first = 0);

} // namespace sillwright::sheet
