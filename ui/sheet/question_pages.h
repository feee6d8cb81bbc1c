// Questions to the engineer as pages: of walls that something stands wrong on and that have no layout.
#pragma once

#include <memory>
#include <vector>

#include "core/refit/refit.h"
#include "core/rules/checker.h"
#include "ui/sheet/sheet_frame.h"

namespace sillwright::sheet {

struct WallQuestion {
  std::shared_ptr<const CheckedWall> wall;
  NoLayout conflict;
};

// Of the walls that have a FIX of position, all that collides on those for which there is no layout, in order. Only such
// walls are laid out again, on all cores: it takes a while where there are many.
std::vector<WallQuestion> questionsOf(const Job& job, const std::vector<std::shared_ptr<const CheckedWall>>& walls);

// Each on a page of its own, beside a drawing of the place; what finds no room there goes on on a further page.
void addQuestionPages(std::vector<Draft>& drafts, const Job& job, const std::vector<WallQuestion>& questions,
                      const PageFrame& frame);

} // namespace sillwright::sheet
