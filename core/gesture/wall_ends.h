// The ends of a wall's panels, and what stands at each: the rows of the wall-end schedule.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/rules/checker.h"

namespace sillwright {

struct WallEnd {
  Id wall;
  std::string wallMark;
  Id panel;
  std::string panelMark;
  Side end = Side::Left;
  std::string mark; // of the plan's wall-end schedule; empty: the plan calls for nothing
  Id column;        // at that end; may be empty
  std::string columnMakeUp;
  Id hardware; // strap or rod; may be empty
  std::string hardwareMark;
  std::string hardwareKind; // "strap", "rod"
  std::optional<double> station;
  std::optional<Level> worst; // of the findings on its hardware or column; nothing: clear
};

// Left to right. The column of an end is the one that covers it or stands nearest inside the panel, within 12 in;
// its hardware is the strap that belongs to that column, or the rod on it, or a strap within 6 in of the end.
std::vector<WallEnd> wallEnds(const CheckedWall& wall);
// The same without its findings.
std::vector<WallEnd> wallEnds(const WallLayout& layout);

} // namespace sillwright
