// One finding on the card: its label in the shape of its level, the sentence that explains it, where the limit comes
// from, and a button for each way to put it right.
#pragma once

#include <QWidget>

#include <vector>

#include "core/drawing/theme.h"
#include "core/gesture/workbench.h"
#include "ui/panels/panel_frame.h"

class QLabel;
class QVBoxLayout;

namespace sillwright {

class FindingLine : public QWidget {
  Q_OBJECT

public:
  explicit FindingLine(Workbench& bench, QWidget* parent = nullptr);

  void setFinding(const Finding& finding, bool first);
  void setTheme(ThemeName theme);

Q_SIGNALS:
  void whyWanted(int rule); // a RuleId

protected:
  void resizeEvent(QResizeEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

private:
  void showWays(bool first);

  Workbench& bench_;
  Finding finding_;
  QLabel* sentence_;
  QLabel* source_;
  QVBoxLayout* ways_;
  std::vector<WordButton*> buttons_; // one for each of allWays
  WordButton* why_;
  ThemeName theme_ = ThemeName::Light;
};

} // namespace sillwright
