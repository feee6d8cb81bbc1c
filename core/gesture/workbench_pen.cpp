// Drawing walls on the plan.
#include "core/gesture/workbench.h"

#include "core/geometry/wall_frame.h"

namespace sillwright {

void Workbench::takePen() {
  cancel();
  pen_ = penFor(session_.base(), session_.wall());
  tellGesture();
}

void Workbench::putPen() {
  if (!pen_)
    return;
  pen_.reset();
  penPressed_.reset();
  tellGesture();
}

void Workbench::hover(const PointerAt& pointer) {
  if (!pen_ || pointer.canvas != CanvasKind::Plan)
    return;
  aim(*pen_, pointer);
  tellGesture();
}

void Workbench::pressPen(const PointerAt& pointer) {
  aim(*pen_, pointer);
  penPressed_.reset();
  if (pen_->problem.empty() && (pen_->closes || pen_->ends))
    return finishPen(pen_->closes);
  if (setCorner(*pen_))
    penPressed_ = pointer.plan;
  tellGesture();
}

// A wall may be drawn with the button down, too: then letting go sets its other corner.
void Workbench::releasePen(const PointerAt& pointer) {
  const auto pressed = std::exchange(penPressed_, std::nullopt);
  if (!pressed || distance(*pressed, pointer.plan) < 2 * pointer.reach)
    return;
  pressPen(pointer);
  penPressed_.reset();
}

void Workbench::finishPen(bool closed) {
  auto made = finished(*pen_, session_.base(), closed);
  if (!made) {
    refuse(*pen_, made.problem().message);
    return tellGesture();
  }
  pen_.reset();
  penPressed_.reset();
  const std::size_t count = made->walls.size();
  session_.apply(std::move(made->job), count == 1 ? "Draw a wall" : "Draw " + std::to_string(count) + " walls",
                 {{made->walls.front(), {}}});
  tellGesture();
}

bool Workbench::penKey(char32_t key) {
  if (!pen_)
    return false;
  const bool enter = key == U'\r' || key == U'\n';
  const std::size_t corners = pen_->corners.size();
  if (enter && !pen_->typed.empty() && pen_->closes) {
    finishPen(true);
    return true;
  }
  if (enter && (!pen_->typed.empty() || corners == 0)) {
    setCorner(*pen_);
  } else if (enter || (pen_->typed.empty() && (key == U'c' || key == U'C'))) {
    if (corners > 1 || !enter)
      finishPen(corners != 2 || !enter);
    return true;
  } else if (pen_->typed.empty() && (key == U'o' || key == U'O')) {
    finishPen(false);
    return true;
  } else if (!typeAt(*pen_, key)) {
    return false;
  }
  tellGesture();
  return true;
}

bool Workbench::takePenBack() {
  if (!pen_ || !takeCornerBack(*pen_))
    return false;
  tellGesture();
  return true;
}

void Workbench::penArrow(Point2 arrow, double step) {
  if (!pen_)
    return;
  aim(*pen_, arrow, step);
  tellGesture();
}

} // namespace sillwright
