#include "ui/panels/field_editor.h"

#include <QCheckBox>
#include <QComboBox>
#include <QKeyEvent>

namespace sillwright {

namespace {

QString text(const std::string& words) { return QString::fromStdString(words); }

} // namespace

QWidget* makePickedEditor(const Field& field, const std::function<void(const QString&)>& send) {
  if (field.kind == FieldKind::Choice) {
    auto* choice = new QComboBox;
    for (const std::string& word : field.choices)
      choice->addItem(text(word));
    QObject::connect(choice, &QComboBox::activated, choice, [choice, send] { send(choice->currentText()); });
    choice->setFocusPolicy(Qt::StrongFocus); // the wheel scrolls the form, it does not choose
    return choice;
  }
  if (field.kind == FieldKind::Toggle) {
    auto* toggle = new QCheckBox;
    QObject::connect(toggle, &QCheckBox::clicked, toggle,
                     [send](bool on) { send(on ? QStringLiteral("yes") : QStringLiteral("no")); });
    return toggle;
  }
  return nullptr;
}

void nameEditor(QWidget& editor, const Field& field) {
  editor.setObjectName(text(field.key));
  editor.setAccessibleName(text(field.title));
  editor.setAccessibleDescription(text(field.note));
}

bool asksForUndo(const QEvent& event) {
  if (event.type() != QEvent::ShortcutOverride)
    return false;
  const auto& key = static_cast<const QKeyEvent&>(event);
  return key.matches(QKeySequence::Undo) || key.matches(QKeySequence::Redo);
}

} // namespace sillwright
