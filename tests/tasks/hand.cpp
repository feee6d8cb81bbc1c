#include "tests/tasks/hand.h"

#include <QApplication>
#include <QTest>
#include <QTimer>

namespace sillwright::tasks {

void Hand::click(QWidget& on, QPoint at) {
  ++actions_;
  QTest::mouseClick(&on, Qt::LeftButton, {}, at);
}

void Hand::drag(QWidget& on, QPoint from, QPoint to) {
  ++actions_;
  QTest::mousePress(&on, Qt::LeftButton, {}, from);
  for (int i = 1; i <= 10; ++i)
    QTest::mouseMove(&on, from + (to - from) * i / 10);
  QTest::mouseRelease(&on, Qt::LeftButton, {}, to);
}

void Hand::key(QWidget& on, Qt::Key key, Qt::KeyboardModifiers with) {
  ++actions_;
  QTest::keyClick(&on, key, with);
}

void Hand::type(QWidget& into, const QString& value) {
  ++actions_;
  QTest::keyClicks(&into, value);
}

void Hand::asked(const std::function<void()>& opens, const std::function<void(QWidget& dialog)>& then) {
  QTimer waiting;
  bool there = false;
  QObject::connect(&waiting, &QTimer::timeout, [&] {
    QWidget* dialog = QApplication::activeModalWidget();
    if (!dialog || there)
      return;
    there = true;
    then(*dialog);
  });
  waiting.start(10);
  opens();
}

} // namespace sillwright::tasks
