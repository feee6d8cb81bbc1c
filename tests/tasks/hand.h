// The hand of somebody at the window: real events, and a count of what was done. A click, a drag, a typed value and a
// key count one each.
#pragma once

#include <QPoint>
#include <QString>
#include <QWidget>

#include <functional>

namespace sillwright::tasks {

class Hand {
public:
  int actions() const { return actions_; }

  void click(QWidget& on, QPoint at);
  void click(QWidget& on) { click(on, on.rect().center()); }
  void drag(QWidget& on, QPoint from, QPoint to, Qt::KeyboardModifiers with = {});
  void key(QWidget& on, Qt::Key key, Qt::KeyboardModifiers with = {});
  void type(QWidget& into, const QString& value);
  void retype(QWidget& into, const QString& value); // a key selects what is there: two actions

  // Does something that opens a dialog, and goes on in the dialog: `then` is called with it once it has the keyboard.
  void asked(const std::function<void()>& opens, const std::function<void(QWidget& dialog)>& then);

private:
  int actions_ = 0;
};

} // namespace sillwright::tasks
