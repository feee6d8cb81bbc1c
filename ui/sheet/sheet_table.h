// A ruled table that flows over pages with its heads repeated.
#pragma once

#include <string>
#include <vector>

#include "core/drawing/drawing.h"

namespace sillwright::sheet {

struct TableColumn {
  std::string english;
  std::string spanish;
  double least = 0;    // width in pt
  bool big = false;    // the number that is read at arm's length
  bool bold = false;
  Anchor anchor = Anchor::Start;
  bool slide = false; // slide room: its sign stands in the head and between the amounts "left | right" of a cell
};

// A cell that is "[]" is a tick box, "..." a dotted blank.
using Row = std::vector<std::string>;

struct Table {
  std::vector<TableColumn> columns;
  std::vector<Row> rows;
};

inline constexpr double tableHeadHeight = 30;
inline constexpr double tableRowHeight = 22;

// Least width, from heads and cells.
double tableWidth(const Table& table);
// Rows that fit into a height, heads included.
std::size_t rowsThatFit(double height);
// Draws rows [first, first + count) with heads from (x, y), spread to the width; returns the lower edge.
double drawTable(Drawing& page, const Table& table, std::size_t first, std::size_t count, double x, double y,
                 double width);

} // namespace sillwright::sheet
