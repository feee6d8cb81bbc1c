#include "tests/tasks/hand.h"

#include <QApplication>
#include <QMouseEvent>
#include <QTest>
#include <QTimer>

namespace sillwright::tasks {

void Hand::click(QWidget& on, QPoint at) {
  ++actions_;
  QTest::mouseClick(&on, Qt::LeftButton, {}, at);
}

void Hand::drag(QWidget& on, QPoint from, QPoint to, Qt::KeyboardModifiers with) {
  ++actions_;
  const auto move = [&](QPoint at) { // QTest moves without modifiers
    QMouseEvent event(QEvent::MouseMove, at, on.mapToGlobal(at), Qt::NoButton, Qt::LeftButton, with);
    QApplication::sendEvent(&on, &event);
  };
  QTest::mousePress(&on, Qt::LeftButton, with, from);
  const QPoint past = to + QPoint(40, 0); // a short way is too little for a drag: out and back
  for (int i = 1; i <= 10; ++i)
    move(from + (past - from) * i / 10);
  move(to);
  QTest::mouseRelease(&on, Qt::LeftButton, with, to);
}

void Hand::key(QWidget& on, Qt::Key key, Qt::KeyboardModifiers with) {
  ++actions_;
  QTest::keyClick(&on, key, with);
}

void Hand::type(QWidget& into, const QString& value) {
  ++actions_;
  QTest::keyClicks(&into, value);
}

void Hand::retype(QWidget& into, const QString& value) {
  key(into, Qt::Key_A, Qt::ControlModifier);
  type(into, value);
}

void Hand::asked(const std::function<void()>& opens, const std::function<void(QWidget& dialog)>& then) {
  QTimer waiting;
  bool there = false;
  QObject::connect(&waiting, &QTimer::timeout, [&] {
    QWidget* dialog = QApplication::activeModalWidget();
    if (there || !dialog || !dialog->isActiveWindow() || !dialog->focusWidget())
      return;
    there = true;
    then(*dialog);
  });
  waiting.start(10);
  opens();
}

} // namespace sillwright::tasks
