// One finding on the card: its label in the shape of its level, where the limit comes from, and the button that puts it
// right.
#pragma once

#include <QWidget>

#include "core/drawing/theme.h"
#include "core/gesture/workbench.h"
#include "ui/panels/panel_frame.h"

namespace sillwright {

class FindingLine : public QWidget {
  Q_OBJECT

public:
  explicit FindingLine(Workbench& bench, QWidget* parent = nullptr);

  void setFinding(const Finding& finding, bool first);
  void setTheme(ThemeName theme);

signals:
  void whyWanted(int rule); // a RuleId

protected:
  void resizeEvent(QResizeEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

private:
  Workbench& bench_;
  Finding finding_;
  WordButton* fix_;
  WordButton* why_;
  ThemeName theme_ = ThemeName::Light;
};

} // namespace sillwright
