// A small form of lines to fill in: what each means, an example, and what is wrong as it is typed.
#pragma once

#include <QDialog>
#include <QString>

#include <functional>
#include <optional>
#include <vector>

class QLabel;
class QLineEdit;
class QPushButton;

namespace sillwright {

struct FormLine {
  QString name;
  QString text;
  QString example; // shown while the line is empty
};

// What a form makes of what is typed: words to show below it, and whether it may be taken.
struct FormReading {
  QString words;
  bool good = true;
};

class FormDialog : public QDialog {
  Q_OBJECT

public:
  using Read = std::function<FormReading(const std::vector<QString>&)>;

  // `take` is the word on the button that takes it.
  FormDialog(const QString& title, const std::vector<FormLine>& lines, const QString& take, Read read,
             QWidget* parent = nullptr);

  std::vector<QString> typed() const;
  QLineEdit& line(std::size_t i) { return *lines_[i]; }
  QString reading() const;

private:
  void readAgain();

  std::vector<QLineEdit*> lines_;
  Read read_;
  QLabel* words_ = nullptr;
  QPushButton* take_ = nullptr;
};

} // namespace sillwright
