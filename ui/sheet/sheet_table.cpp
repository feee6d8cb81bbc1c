#include "ui/sheet/sheet_table.h"

#include <algorithm>

#include "ui/sheet/sheet_text.h"

namespace sillwright::sheet {

namespace {

constexpr double pad = 6;

double sizeOf(const TableColumn& column) { return column.big ? bigSize : bodySize; }

std::vector<double> leastWidths(const Table& table) {
  std::vector<double> widths;
  for (std::size_t c = 0; c < table.columns.size(); ++c) {
    const TableColumn& column = table.columns[c];
    double wide = std::max({column.least, textWidth(column.english, bodySize) + 2 * pad,
                            textWidth(column.spanish, bodySize) + 2 * pad});
    for (const Row& row : table.rows)
      wide = std::max(wide, textWidth(row[c], sizeOf(column)) + 2 * pad);
    widths.push_back(wide);
  }
  return widths;
}

// Least widths, stretched or pressed together evenly to the width there is.
std::vector<double> widthsFor(const Table& table, double width) {
  std::vector<double> widths = leastWidths(table);
  double total = 0;
  for (const double w : widths)
    total += w;
  for (double& w : widths)
    w *= width / total;
  return widths;
}

void drawTickBox(Drawing& page, double x, double middle) {
  page.rect(x, middle - 5.5, x + 11, middle + 5.5, Ink::Text, 0.9);
}

void drawCellText(Drawing& page, const TableColumn& column, const std::string& text, double x0, double x1, double middle) {
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

} // namespace

double tableWidth(const Table& table) {
  double total = 0;
  for (const double w : leastWidths(table))
    total += w;
  return total;
}

std::size_t rowsThatFit(double height) {
  return height < tableHeadHeight ? 0 : static_cast<std::size_t>((height - tableHeadHeight) / tableRowHeight + 1e-9);
}

double drawTable(Drawing& page, const Table& table, std::size_t first, std::size_t count, double x, double y,
                 double width) {
  const std::vector<double> widths = widthsFor(table, width);
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
    const double size = std::min(bodySize, bodySize * (widths[c] - 8) /
                                               std::max(1.0, std::max(textWidth(column.english, bodySize),
                                                                      textWidth(column.spanish, bodySize))));
    page.text({left + pad, y + 12.5}, column.english, Ink::Text, bold(size));
    page.text({left + pad, y + 24.5}, column.spanish, Ink::Text, italic(size));
    for (std::size_t r = first; r < end; ++r) {
      const double top = y + tableHeadHeight + tableRowHeight * static_cast<double>(r - first);
      drawCellText(page, column, table.rows[r][c], left, right, top + tableRowHeight / 2);
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
