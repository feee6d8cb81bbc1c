// Cuts through each distinct piece of hardware.
#pragma once

#include <memory>
#include <vector>

#include "core/rules/checker.h"
#include "ui/sheet/sheet_frame.h"

namespace sillwright::sheet {

// A piece that stands for all that are cut alike.
struct Cut {
  const CheckedWall* wall = nullptr;
  Id piece;
  double station = 0;
  std::string mark;              // of the piece
  std::string name;              // of its type
  std::vector<std::pair<std::string, std::string>> like; // wall and mark of each piece cut alike
};

std::vector<Cut> distinctCuts(const std::vector<std::shared_ptr<const CheckedWall>>& walls);

void addSectionPages(std::vector<Draft>& drafts, const Job& job,
                     const std::vector<std::shared_ptr<const CheckedWall>>& walls, const PageFrame& frame);

} // namespace sillwright::sheet
