// FIX, ASK and WATCH of the whole job, in the shapes of their labels. Each is a switch that shows or hides its level in
// the punch list.
#pragma once

#include <QWidget>

#include <array>

#include "core/drawing/theme.h"
#include "core/rules/checker.h"

class QAbstractButton;

namespace sillwright {

class CountsBar : public QWidget {
  Q_OBJECT

public:
  explicit CountsBar(QWidget* parent = nullptr);

  void setCounts(const Counts& counts);
  void setTheme(ThemeName theme);
  QAbstractButton* button(Level level) const;
  std::array<bool, 3> shown() const;
  void setShown(Level level, bool on);

Q_SIGNALS:
  void shownChanged();

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  class Count;
  std::array<Count*, 3> buttons_{};
  ThemeName theme_ = ThemeName::Light;
};

} // namespace sillwright
