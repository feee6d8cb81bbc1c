// A small form of lines to fill in or choose from: what each means, an example, and what is wrong as it is typed.
#pragma once

#include <QDialog>
#include <QString>

#include <functional>
#include <optional>
#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace sillwright {

struct FormLine {
  QString name;
  QString text;
  QString example; // shown while the line is empty
  std::vector<QString> choices = {}; // not empty: one of these is chosen, nothing is typed
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

  // Shown over the lines; the form owns it from now on.
  void setPicture(QWidget* picture);
  // What is typed or chosen, in the order of the lines.
  std::vector<QString> typed() const;
  // Precondition: line i is typed, or has choices.
  QLineEdit& line(std::size_t i) const;
  QComboBox& choice(std::size_t i) const;
  bool mayTake() const;
  QString reading() const;

private:
  void readAgain();

  QWidget* makeEditor(const FormLine& line);

  std::vector<QWidget*> editors_; // QLineEdit or QComboBox
  std::vector<QString> before_;   // as the form opened
  Read read_;
  QLabel* words_ = nullptr;
  QPushButton* take_ = nullptr;
};

} // namespace sillwright
