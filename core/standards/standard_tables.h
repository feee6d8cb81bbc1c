// The standards this program works from, as tables to be read: what the functions of this folder use, and no more.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/standards/source.h"

namespace sillwright {

struct StandardRow {
  std::vector<std::string> cells; // as many as there are columns
  Source source;                  // of this row; its status may differ from that of the table
};

struct StandardTable {
  std::string title;
  Source source;
  std::vector<std::string> columns; // with their units: "diameter, in"
  std::vector<StandardRow> rows;
};

// Made on first use from the arrays and constants of this folder; then always the same.
std::span<const StandardTable> standardTables();

} // namespace sillwright
