#include "ui/window/paste_dialog.h"

#include <QApplication>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>

#include "ui/panels/look.h"

namespace sillwright {

PasteDialog::PasteDialog(const QString& title, const QString& take, Read read, QWidget* parent)
    : QDialog(parent), read_(std::move(read)), lines_(new QPlainTextEdit), words_(new QLabel) {
  setWindowTitle(title);
  setFont(uiFont(12.5));
  setMinimumWidth(420);
  lines_->setAccessibleName(title);
  lines_->setTabChangesFocus(false); // a tab stands between mark and station
  words_->setWordWrap(true);
  words_->setTextFormat(Qt::PlainText);
  words_->setProperty("second", true);
  words_->setMinimumHeight(52);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  take_ = buttons->addButton(take, QDialogButtonBox::AcceptRole);
  take_->setDefault(true);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* column = new QVBoxLayout(this);
  column->addWidget(lines_);
  column->addWidget(words_);
  column->addWidget(buttons);
  const QString kept = QApplication::clipboard()->text();
  if (read_(kept).good)
    lines_->setPlainText(kept);
  connect(lines_, &QPlainTextEdit::textChanged, this, &PasteDialog::readAgain);
  readAgain();
}

bool PasteDialog::mayTake() const {
  return take_->isEnabled();
}

QString PasteDialog::reading() const {
  return words_->text();
}

void PasteDialog::readAgain() {
  const FormReading reading = read_(lines_->toPlainText());
  words_->setText(reading.words);
  const bool wrong = !reading.good && !lines_->toPlainText().trimmed().isEmpty();
  for (QWidget* each : {static_cast<QWidget*>(words_), static_cast<QWidget*>(lines_)}) {
    each->setProperty("wrong", wrong);
    each->style()->unpolish(each);
    each->style()->polish(each);
  }
  take_->setEnabled(reading.good);
}

} // namespace sillwright
