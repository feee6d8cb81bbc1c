// The tables of standards that the rule book shows: whole, and saying of every row how sure it is.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/standards/standard_tables.h"

namespace sillwright {
namespace {

const StandardTable& table(std::string_view title) {
  const auto tables = standardTables();
  const auto found =
      std::find_if(tables.begin(), tables.end(), [&](const StandardTable& each) { return each.title == title; });
  EXPECT_NE(found, tables.end()) << title;
  return found == tables.end() ? tables.front() : *found;
}

std::vector<std::string> rowOf(std::string_view title, std::string_view first) {
  for (const StandardRow& row : table(title).rows)
    if (row.cells.front() == first)
      return row.cells;
  return {};
}

std::vector<std::string> fromMemory(std::string_view title) {
  std::vector<std::string> rows;
  for (const StandardRow& row : table(title).rows)
    if (row.source.status == Status::FromMemory)
      rows.push_back(row.cells.front());
  return rows;
}

using Cells = std::vector<std::string>;

TEST(StandardTables, AreWhole) {
  EXPECT_EQ(standardTables().size(), 22u);
  for (const StandardTable& each : standardTables()) {
    EXPECT_FALSE(each.title.empty());
    EXPECT_FALSE(each.source.document.empty()) << each.title;
    EXPECT_FALSE(each.rows.empty()) << each.title;
    for (const StandardRow& row : each.rows) {
      EXPECT_EQ(row.cells.size(), each.columns.size()) << each.title;
      EXPECT_FALSE(row.source.document.empty()) << each.title;
      EXPECT_TRUE(row.source.status == Status::Published || row.source.status == Status::FromMemory) << each.title;
      for (const std::string& cell : row.cells)
        EXPECT_FALSE(cell.empty() && &cell != &row.cells.back()) << each.title; // plain factors have no unit
    }
  }
}

// What is only remembered: threads of 7/8 and 1 in (ASME B1.1), the 3d nail (ASTM F1667), the width of nuts across
// flats (ASME B18.2.2), the edge distance of nails (NDS commentary). Nothing else.
TEST(StandardTables, SayWhatIsOnlyRemembered) {
  EXPECT_EQ(fromMemory("Threads, UNC"), (Cells{"7/8", "1"}));
  EXPECT_EQ(fromMemory("Common nails"), (Cells{"3d common"}));
  EXPECT_EQ(fromMemory("Hex nuts, width"), (Cells{"1/2", "5/8", "3/4", "7/8", "1"}));
  EXPECT_EQ(fromMemory("Nails in wood"), (Cells{"nail to the edge of the wood, at least"}));
  for (const StandardTable& each : standardTables()) {
    if (each.title != "Threads, UNC" && each.title != "Common nails" && each.title != "Hex nuts, width" &&
        each.title != "Nails in wood") {
      EXPECT_TRUE(fromMemory(each.title).empty()) << each.title;
    }
  }
}

// A row of every table, typed from the document it names.
TEST(StandardTables, ReadAsPrinted) {
  EXPECT_EQ(rowOf("Dressed lumber", "8"), (Cells{"8", "7 1/4"}));
  EXPECT_EQ(rowOf("Species", "Hem-Fir"), (Cells{"Hem-Fir", "0.43"}));
  EXPECT_EQ(rowOf("Dowel bearing strength", "Douglas Fir-Larch"), (Cells{"Douglas Fir-Larch", "1/2", "5600", "3150"}));
  EXPECT_EQ(rowOf("Anchor bolts through sills", "end bolt to the end of its piece, at most"),
            (Cells{"end bolt to the end of its piece, at most", "12", "in"}));
  EXPECT_EQ(rowOf("Anchors cast into concrete", "leg of a hooked bolt, at most"),
            (Cells{"leg of a hooked bolt, at most", "4.5", "d"}));
  EXPECT_EQ(rowOf("Shear panels", "height by length, at most"), (Cells{"height by length, at most", "3.5", ""}));
  EXPECT_EQ(rowOf("Nails in wood", "nail in the main member, for its full value"),
            (Cells{"nail in the main member, for its full value", "10", "d"}));
  EXPECT_EQ(rowOf("Bars in foundations", "bar along the top, from the top at most"),
            (Cells{"bar along the top, from the top at most", "12", "in"}));
  EXPECT_EQ(rowOf("Bolts in wood", "bolt, bending yield strength"),
            (Cells{"bolt, bending yield strength", "45000", "psi"}));
  EXPECT_EQ(rowOf("Reinforcing bars", "No. 5"), (Cells{"No. 5", "0.625", "1.043"}));
  EXPECT_EQ(rowOf("Standard 90° hooks", "No. 4"), (Cells{"No. 4", "3", "6"}));
  EXPECT_EQ(rowOf("Laps in foundation walls", "No. 5"), (Cells{"No. 5", "38"}));
  EXPECT_EQ(rowOf("Concrete cover", "cast against earth"), (Cells{"cast against earth", "No. 3 to 8", "3"}));
  EXPECT_EQ(rowOf("Hex nuts", "3/4"), (Cells{"3/4", "0.665", "0.617"}));
  EXPECT_EQ(rowOf("Hex nuts, width", "1/2"), (Cells{"1/2", "0.75"}));
  EXPECT_EQ(rowOf("Cut washers, type A wide", "5/8"), (Cells{"5/8", "0.16", "1.75"}));
  EXPECT_EQ(rowOf("Plate washers on sills", "slot, length at most"), (Cells{"slot, length at most", "1 3/4", "in"}));
  EXPECT_EQ(rowOf("Threads, UNC", "1/2"), (Cells{"1/2", "13"}));
  EXPECT_EQ(rowOf("Common nails", "10d common"), (Cells{"10d common", "0.148", "3"}));
  EXPECT_EQ(rowOf("Pressure of fresh concrete on wall forms", "slow placing, height up to"),
            (Cells{"slow placing, height up to", "14", "ft"}));
  EXPECT_EQ(rowOf("Setting out", "wall up to 12 in, thicker by at most"),
            (Cells{"wall up to 12 in, thicker by at most", "3/8", "in"}));
}

// 1/2 in through a 2x of Douglas Fir-Larch: 648 lb along (NDS 2018 Table 12E: 650), mode III_s. 6 in as in that table.
TEST(StandardTables, BoltValues) {
  const StandardTable& values = table("One bolt through a sill, 6 in into concrete, by the six yield modes");
  const auto found = std::find_if(values.rows.begin(), values.rows.end(), [](const StandardRow& row) {
    return row.cells[0] == "1/2" && row.cells[1] == "2x" && row.cells[2] == "Douglas Fir-Larch";
  });
  ASSERT_NE(found, values.rows.end());
  EXPECT_EQ(found->cells[3], "648");
  EXPECT_EQ(found->cells[4], "IIIs");
  EXPECT_EQ(values.rows.size(), 5u * 2 * 6);
}

} // namespace
} // namespace sillwright
