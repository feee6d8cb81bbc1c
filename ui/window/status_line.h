// The bottom line: where the pointer is, what is selected or in hand, and what keys do.
#pragma once

#include <QWidget>

#include "core/drawing/theme.h"
#include "core/gesture/workbench.h"

namespace sillwright {

class StatusLine : public QWidget {
  Q_OBJECT

public:
  explicit StatusLine(const Workbench& bench, QWidget* parent = nullptr);

  void follow();
  void setPointer(const QString& words);
  // What has just been done, until something else is.
  void tell(const QString& words);
  void setTheme(ThemeName theme);
  // Everything it says, as one line.
  QString words() const;
  QSize sizeHint() const override { return {400, 28}; }

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  struct Part {
    QString words;
    Ink ink = Ink::Text2;
    Weight weight = Weight::Regular;
  };
  std::vector<Part> parts() const;
  std::vector<Part> inHandParts(const InHand& hand) const;
  std::vector<Part> planParts(const InHand& hand) const;
  std::vector<Part> penParts(const WallPen& pen) const;
  QString rightWords() const;

  const Workbench& bench_;
  QString pointer_;
  QString told_;
  ThemeName theme_ = ThemeName::Light;
};

} // namespace sillwright
