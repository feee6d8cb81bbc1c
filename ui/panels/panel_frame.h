// The frame every part of the window stands in: a head of 28 px with a title, a note and switches, and a body below.
// The panel that has the keyboard carries a line in the colour of the hand.
#pragma once

#include <QHBoxLayout>
#include <QPushButton>
#include <QWidget>

#include "core/drawing/theme.h"

namespace sillwright {

class PanelFrame : public QWidget {
  Q_OBJECT

public:
  // Takes the body over.
  PanelFrame(const QString& title, QWidget* body, QWidget* parent = nullptr);
  ~PanelFrame() override;

  QWidget* body() const { return body_; }
  QString title() const { return title_; }
  void setNote(const QString& note);
  QString note() const { return note_; }
  void addToHead(QWidget* widget);
  void setTheme(ThemeName theme);

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  QString title_;
  QString note_;
  QWidget* body_;
  QHBoxLayout* head_;
  ThemeName theme_ = ThemeName::Light;
  bool active_ = false;
};

// A button whose words may hold fractions; where it is given less room than they need they go on in further lines.
// Primary: filled with the colour of the hand, for what acts on what is in it.
class WordButton : public QPushButton {
  Q_OBJECT

public:
  explicit WordButton(const QString& words, QWidget* parent = nullptr, double size = 12.5);

  void setTheme(ThemeName theme);
  void setPrimary(bool primary);
  bool isPrimary() const { return primary_; }
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override { return wraps_ ? QSize(60, sizeHint().height()) : sizeHint(); }
  // To be called before it is laid out.
  void setWraps(bool wraps);
  bool hasHeightForWidth() const override { return wraps_; }
  int heightForWidth(int width) const override;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  double size_;
  bool primary_ = false;
  bool wraps_ = false;
  ThemeName theme_ = ThemeName::Light;
};

// The same look for a button that is only painted (in rows of a list).
struct ButtonLook {
  QRectF box;
  QString words; // lines where there are several
  double size = 12.5;
  bool primary = false;
  bool pressed = false;
  bool focused = false;
  bool enabled = true;
};
void paintButton(QPainter& painter, ThemeName theme, const ButtonLook& look);
double buttonWidth(const QString& words, double size);

} // namespace sillwright
