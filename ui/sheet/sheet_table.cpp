#include "ui/sheet/sheet_table.h"

#include <algorithm>
#include <numeric>
#include <utility>

#include "core/drawing/slide_sign.h"
#include "ui/sheet/sheet_text.h"

namespace sillwright::sheet {

namespace {

constexpr double roomyPad = 6, closePad = 3.5; // beside the words of a cell; close in a table that is wide for its page

constexpr double signRoom = slideSignReach + 3.5; // from the middle of the sign to an amount

double sizeOf(const TableColumn& column) { return column.big ? bigSize : bodySize; }

double headWidth(const TableColumn& column) {
  return std::max(textWidth(column.english, bodySize) + (column.slide ? 2 * signRoom : 0),
                  textWidth(column.spanish, bodySize));
}

// The amounts on either side of the sign; empty where a cell has none.
std::pair<std::string, std::string> amountsOf(const std::string& cell) {
  const std::size_t at = cell.find(" | ");
  return at == std::string::npos ? std::pair<std::string, std::string>{}
                                 : std::pair{cell.substr(0, at), cell.substr(at + 3)};
}

double cellWidth(const TableColumn& column, const std::string& cell) {
  if (!column.slide || amountsOf(cell).first.empty())
    return textWidth(cell, sizeOf(column));
  const auto [left, right] = amountsOf(cell); // the signs of a column stand one under the other
  return 2 * (signRoom + std::max(textWidth(left, bodySize), textWidth(right, bodySize)));
}

std::vector<double> leastWidths(const Table& table, double pad) {
  std::vector<double> widths;
  for (std::size_t c = 0; c < table.columns.size(); ++c) {
    const TableColumn& column = table.columns[c];
    double wide = std::max(column.least, headWidth(column) + 2 * pad);
    for (const Row& row : table.rows)
      wide = std::max(wide, cellWidth(column, row[c]) + 2 * pad);
    widths.push_back(wide);
  }
  return widths;
}

double sum(const std::vector<double>& widths) {
  return std::accumulate(widths.begin(), widths.end(), 0.0);
}

// Least widths, stretched or pressed together evenly to the width there is.
std::vector<double> widthsFor(const Table& table, double width, double pad) {
  std::vector<double> widths = leastWidths(table, pad);
  const double total = sum(widths);
  for (double& w : widths)
    w *= width / total;
  return widths;
}

void drawTickBox(Drawing& page, double x, double middle) {
  page.rect(x, middle - 5.5, x + 11, middle + 5.5, Ink::Text, 0.9);
}

void drawAmounts(Drawing& page, const TableColumn& column, const std::string& cell, double x0, double x1, double middle,
                 double pad) {
  const double scale = std::min(1.0, (x1 - x0 - 2 * pad) / cellWidth(column, cell));
  const auto [left, right] = amountsOf(cell);
  const double x = (x0 + x1) / 2, base = middle + bodySize * scale * capHeight / 2;
  page.text({x - signRoom * scale, base}, left, Ink::Text, plain(bodySize * scale, Anchor::End));
  drawSlideArrow(page, {x, middle}, Ink::Text, scale);
  page.text({x + signRoom * scale, base}, right, Ink::Text, plain(bodySize * scale));
}

void drawCellText(Drawing& page, const TableColumn& column, const std::string& text, double x0, double x1,
                  double middle, double pad) {
  if (column.slide && !amountsOf(text).first.empty())
    return drawAmounts(page, column, text, x0, x1, middle, pad);
  if (text == "[]")
    return drawTickBox(page, (x0 + x1) / 2 - 5.5, middle);
  if (text == "...") {
    const std::vector<Point2> blank{{x0 + pad, middle + 5}, {x1 - pad, middle + 5}};
    return page.dashed(blank, 1, 2, Ink::Text, 0.6);
  }
  double size = sizeOf(column);
  const double room = x1 - x0 - 2 * pad;
  const double wide = textWidth(text, size);
  if (wide > room)
    size *= room / wide;
  TextStyle style = column.big || column.bold ? bold(size, column.anchor) : plain(size, column.anchor);
  const double x = column.anchor == Anchor::Start ? x0 + pad : column.anchor == Anchor::End ? x1 - pad : (x0 + x1) / 2;
  page.text({x, middle + size * capHeight / 2}, text, Ink::Text, style);
}

void drawHeads(Drawing& page, const TableColumn& column, double left, double width, double y, double pad) {
  const double scale = std::min(1.0, (width - 2 * pad + 2) / std::max(1.0, headWidth(column)));
  const double size = bodySize * scale;
  const Bounds english = page.text({left + pad, y + 12.5}, column.english, Ink::Text, bold(size));
  page.text({left + pad, y + 24.5}, column.spanish, Ink::Text, italic(size));
  if (column.slide)
    drawSlideArrow(page, {english.x1 + signRoom * scale, y + 12.5 - size * capHeight / 2}, Ink::Text, scale);
}

} // namespace

double tableWidth(const Table& table) {
  return sum(leastWidths(table, roomyPad));
}

std::size_t rowsThatFit(double height) {
  return height < tableHeadHeight ? 0 : static_cast<std::size_t>((height - tableHeadHeight) / tableRowHeight + 1e-9);
}

double drawTable(Drawing& page, const Table& table, std::size_t first, std::size_t count, double x, double y,
                 double width) {
  const double pad = tableWidth(table) > width ? closePad : roomyPad;
  const std::vector<double> widths = widthsFor(table, width, pad);
  const std::size_t end = std::min(first + count, table.rows.size());
  const double bottom = y + tableHeadHeight + tableRowHeight * static_cast<double>(end - first);
  page.rect(x, y, x + width, bottom, Ink::Text, 1.2);
  page.line({x, y + tableHeadHeight}, {x + width, y + tableHeadHeight}, Ink::Text, 1.2);
  double left = x;
  for (std::size_t c = 0; c < widths.size(); ++c) {
    const TableColumn& column = table.columns[c];
    const double right = left + widths[c];
    if (c + 1 < widths.size())
      page.line({right, y}, {right, bottom}, Ink::Text, 0.6);
    drawHeads(page, column, left, widths[c], y, pad);
    for (std::size_t r = first; r < end; ++r) {
      const double top = y + tableHeadHeight + tableRowHeight * static_cast<double>(r - first);
      drawCellText(page, column, table.rows[r][c], left, right, top + tableRowHeight / 2, pad);
    }
    left = right;
  }
  for (std::size_t r = first + 1; r < end; ++r) {
    const double top = y + tableHeadHeight + tableRowHeight * static_cast<double>(r - first);
    page.line({x, top}, {x + width, top}, Ink::Text, 0.5);
  }
  return bottom;
}

} // namespace sillwright::sheet
