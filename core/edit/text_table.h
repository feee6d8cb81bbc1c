// Tables as text: rows on lines, cells between tabs, as a spreadsheet gives them away and takes them.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sillwright {

struct TextRow {
  int line = 1;                   // where it begins, counted from 1 with the empty lines
  std::vector<std::string> cells; // without blanks around them
};

// The rows that are not empty. A cell in double quotes, with those inside it doubled, may hold tabs and line ends;
// quotes anywhere else are inch marks. Line ends of every system are read, and a mark of the encoding at the start.
std::vector<TextRow> readTextTable(std::string_view text);

// One line without its end; cells that could not be read again otherwise are put in quotes.
std::string writeTextRow(std::span<const std::string> cells);

} // namespace sillwright
