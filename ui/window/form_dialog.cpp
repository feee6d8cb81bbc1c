#include "ui/window/form_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/paint/painter.h"
#include "ui/panels/look.h"

namespace sillwright {

FormDialog::FormDialog(const QString& title, const std::vector<FormLine>& lines, const QString& take, Read read,
                       QWidget* parent)
    : QDialog(parent), read_(std::move(read)) {
  constexpr int lineWidth = 280;
  setWindowTitle(title);
  setFont(uiFont(12.5));
  auto* column = new QVBoxLayout(this);
  auto* form = new QFormLayout;
  form->setLabelAlignment(Qt::AlignRight | Qt::AlignVCenter);
  for (const FormLine& each : lines) {
    auto* edit = new QLineEdit(each.text);
    edit->setPlaceholderText(each.example);
    edit->setMinimumWidth(lineWidth);
    edit->setAccessibleName(each.name);
    connect(edit, &QLineEdit::textChanged, this, &FormDialog::readAgain);
    form->addRow(each.name, edit);
    lines_.push_back(edit);
  }
  words_ = new QLabel;
  words_->setWordWrap(true);
  words_->setProperty("second", true);
  words_->setMinimumHeight(34);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  take_ = buttons->addButton(take, QDialogButtonBox::AcceptRole);
  take_->setDefault(true);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  column->addLayout(form);
  column->addWidget(words_);
  column->addWidget(buttons);
  readAgain();
}

std::vector<QString> FormDialog::typed() const {
  std::vector<QString> all;
  for (const QLineEdit* each : lines_)
    all.push_back(each->text());
  return all;
}

QString FormDialog::reading() const { return words_->text(); }

void FormDialog::readAgain() {
  const FormReading reading = read_ ? read_(typed()) : FormReading{};
  words_->setText(reading.words);
  const bool anything = std::any_of(lines_.begin(), lines_.end(), [](const QLineEdit* line) { return !line->text().isEmpty(); });
  words_->setProperty("wrong", !reading.good && anything); // a form that is not filled in yet is not wrong
  words_->style()->unpolish(words_);
  words_->style()->polish(words_);
  take_->setEnabled(reading.good);
}

} // namespace sillwright
