// The lengths of a starter, with a picture of what they make as they are typed.
#pragma once

#include <optional>

#include "core/gesture/starters.h"
#include "core/rules/checker.h"
#include "ui/paint/painter.h"
#include "ui/window/form_dialog.h"

namespace sillwright {

// The wall that a starter would make, in elevation; empty while it cannot be made.
class StarterPicture : public QWidget {
  Q_OBJECT

public:
  explicit StarterPicture(ThemeName theme, QWidget* parent = nullptr);

  void show(std::optional<Started> started);
  QSize sizeHint() const override { return {640, 300}; }

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  ThemeName theme_;
  std::optional<Started> started_;
  std::shared_ptr<const CheckedWall> wall_;
};

// Asks for the lengths of a starter on a job; with `onto`, only for those that a wall of the plan does not have.
// Nothing where it was given up.
std::optional<Started> askStarter(const Job& job, const Starter& starter, Id onto, ThemeName theme, QWidget* parent);

} // namespace sillwright
