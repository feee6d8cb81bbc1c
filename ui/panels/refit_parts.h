// What panels in the place of a refit are made of: words above, rows, and below them what can be done.
#pragma once

#include <QString>
#include <QWidget>

#include <functional>
#include <vector>

class QLabel;

namespace sillwright {

constexpr int patienceOfRefit = 150; // ms until it says that it is at work: one that takes no time says nothing

struct RefitParts {
  QLabel* words = nullptr;
  QWidget* list = nullptr;
  QLabel* hint = nullptr;
  std::vector<QWidget*> buttons;
};

// Puts them into the panel; the list has its keyboard, Esc in it leaves.
void standTogether(QWidget& panel, const RefitParts& parts, const std::function<void()>& leave);

QLabel* wrappedLabel(double size, bool bold);
// With a capital and a full stop.
QString sentence(QString words);

} // namespace sillwright
