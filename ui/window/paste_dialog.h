// A form of one field with several lines, for a column that is pasted: it holds what is on the clipboard where that can
// be read, and says what is wrong as it is typed.
#pragma once

#include <QDialog>

#include <functional>

#include "ui/window/form_dialog.h"

class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace sillwright {

class PasteDialog : public QDialog {
  Q_OBJECT

public:
  using Read = std::function<FormReading(const QString&)>;

  // `take` is the word on the button that takes it.
  PasteDialog(const QString& title, const QString& take, Read read, QWidget* parent = nullptr);

  QPlainTextEdit& lines() const { return *lines_; }
  bool mayTake() const;
  QString reading() const;

private:
  void readAgain();

  Read read_;
  QPlainTextEdit* lines_;
  QLabel* words_;
  QPushButton* take_ = nullptr;
};

} // namespace sillwright
