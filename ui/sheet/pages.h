// The layout sheet: pages composed from the same drawings as the canvases. Page coordinates in points, y down.
// This file and the composition behind it know no toolkit; ui/sheet/output makes PDF and SVG of the pages.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/rules/checker.h"

namespace sillwright {

struct Paper {
  std::string_view key;   // "letter": command line and settings
  std::string_view title; // "Letter 8 1/2 x 11"
  double width = 0;       // inches, landscape: the longer side
  double height = 0;
};
// letter tabloid arch-b arch-c arch-d a4 a3
const std::vector<Paper>& papers();
std::optional<Paper> paperByKey(std::string_view key);

// Question: to the engineer, of walls that have no layout.
enum class PageKind { Plan, Elevation, Section, Question };

struct SheetOptions {
  Paper paper;      // landscape
  std::string date; // YYYY-MM-DD
  std::vector<PageKind> kinds{PageKind::Plan, PageKind::Elevation, PageKind::Section, PageKind::Question};
};

struct Page {
  Drawing drawing;
  double width = 0;  // pt
  double height = 0; // pt
  std::string title; // "Wall A, left pier"
  std::string scale; // 1" = 1'-0"; empty where nothing is to scale
};

// All pages, numbered n of N. Nothing is clipped or left out: a wall that does not fit is broken at a match line.
std::vector<Page> composeSheets(const Job& job, const SheetOptions& options);

// "YYYY-MM-DD" of a real day.
bool isDate(std::string_view text);

} // namespace sillwright
