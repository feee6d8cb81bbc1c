#include "ui/window/form_dialog.h"

#include <QComboBox>
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
    QWidget* editor = makeEditor(each);
    editor->setMinimumWidth(lineWidth);
    editor->setAccessibleName(each.name);
    form->addRow(each.name, editor);
    editors_.push_back(editor);
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
  before_ = typed();
  readAgain();
}

void FormDialog::setPicture(QWidget* picture) {
  static_cast<QVBoxLayout*>(layout())->insertWidget(0, picture, 1);
}

QWidget* FormDialog::makeEditor(const FormLine& line) {
  if (line.choices.empty()) {
    auto* edit = new QLineEdit(line.text);
    edit->setPlaceholderText(line.example);
    connect(edit, &QLineEdit::textChanged, this, &FormDialog::readAgain);
    return edit;
  }
  auto* choice = new QComboBox;
  for (const QString& each : line.choices)
    choice->addItem(each);
  choice->setCurrentIndex(std::max(choice->findText(line.text), 0));
  connect(choice, &QComboBox::currentIndexChanged, this, &FormDialog::readAgain);
  return choice;
}

std::vector<QString> FormDialog::typed() const {
  std::vector<QString> all;
  for (QWidget* each : editors_) {
    const auto* choice = qobject_cast<QComboBox*>(each);
    all.push_back(choice ? choice->currentText() : static_cast<QLineEdit*>(each)->text());
  }
  return all;
}

QLineEdit& FormDialog::line(std::size_t i) const { return *static_cast<QLineEdit*>(editors_[i]); }

QComboBox& FormDialog::choice(std::size_t i) const { return *static_cast<QComboBox*>(editors_[i]); }

bool FormDialog::mayTake() const { return take_->isEnabled(); }

QString FormDialog::reading() const { return words_->text(); }

void FormDialog::readAgain() {
  const FormReading reading = read_ ? read_(typed()) : FormReading{};
  words_->setText(reading.words);
  const bool touched = typed() != before_;
  words_->setProperty("wrong", !reading.good && touched); // a form that is not filled in yet is not wrong
  words_->style()->unpolish(words_);
  words_->style()->polish(words_);
  take_->setEnabled(reading.good);
}

} // namespace sillwright
