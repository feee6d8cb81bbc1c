#include "ui/panels/type_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLineEdit>
#include <QStyle>

#include <algorithm>

#include "ui/panels/field_editor.h"
#include "ui/panels/lines_edit.h"
#include "ui/panels/look.h"

namespace sillwright {

namespace {

constexpr int shortWidth = 108, wideWidth = 420, editorHeight = 24;

QString text(const std::string& words) { return QString::fromStdString(words); }

bool sameShape(const std::vector<Field>& a, const std::vector<Field>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Field& x, const Field& y) {
    return x.key == y.key && x.kind == y.kind && x.choices == y.choices;
  });
}

// Words take the whole width, and what is said of them stands below.
bool isWide(const Field& field) {
  static const char* keys[] = {"name", "note", "profile", "nails.rows", "nails.nail", "columns", "slot", "hardware",
                               "washer"};
  return std::any_of(std::begin(keys), std::end(keys), [&](const char* key) { return field.key == key; });
}

// A profile is typed a point a line.
bool hasLines(const Field& field) { return field.key == "profile"; }
QString onLines(const QString& words) { return QString(words).replace(QStringLiteral("; "), QStringLiteral("\n")); }
QString onOneLine(const QString& words) { return words.trimmed().replace(QLatin1Char('\n'), QStringLiteral("; ")); }

bool isTyped(const QWidget* editor) {
  if (const auto* lines = qobject_cast<const LinesEdit*>(editor))
    return lines->isModified();
  const auto* line = qobject_cast<const QLineEdit*>(editor);
  return line && line->isModified();
}

void setTaken(QWidget* editor) {
  if (auto* lines = qobject_cast<LinesEdit*>(editor))
    lines->setModified(false);
  else if (auto* line = qobject_cast<QLineEdit*>(editor))
    line->setModified(false);
}

QLabel* smallWords(const QString& words) {
  auto* label = new QLabel(words);
  label->setFont(uiFont(11.5));
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setMinimumWidth(1);
  return label;
}

} // namespace

TypeForm::TypeForm(Workbench& bench, QWidget* parent) : QScrollArea(parent), bench_(bench) {
  setWidgetResizable(true);
  setFrameShape(NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::NoFocus);
  setAccessibleName(tr("Fields"));
}

void TypeForm::show(Id id) {
  const bool other = id != id_;
  id_ = id;
  const std::vector<Field> fields = listedFields(bench_.job(), id);
  std::vector<Field> old;
  for (const Row& row : rows_)
    old.push_back(row.field);
  if (!sheet_ || !sameShape(old, fields))
    build(fields);
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    Row& row = rows_[i];
    const bool changed = row.field.text != fields[i].text;
    row.field = fields[i];
    const bool typing = isTyped(row.editor) && !changed;
    if (other || (!row.refused && !typing))
      fill(row);
  }
  if (other)
    ensureVisible(0, 0);
}

// All editors are new: the old ones lose the keyboard in going, and that is no edit.
void TypeForm::build(const std::vector<Field>& fields) {
  for (const Row& row : rows_)
    row.editor->disconnect(this);
  const QWidget* at = sheet_ ? sheet_->focusWidget() : nullptr;
  const QString focused = at && at->hasFocus() ? at->objectName() : QString();
  if (QWidget* gone = takeWidget()) {
    gone->hide();
    gone->deleteLater(); // one of its editors may have brought us here
  }
  rows_.clear();
  sheet_ = new QWidget;
  grid_ = new QGridLayout(sheet_);
  grid_->setContentsMargins(12, 8, 10, 10);
  grid_->setHorizontalSpacing(8);
  grid_->setVerticalSpacing(3);
  grid_->setColumnStretch(2, 1);
  for (const Field& field : fields)
    addRow(field);
  grid_->setRowStretch(grid_->rowCount(), 1);
  setWidget(sheet_);
  sheet_->show();
  if (focused.isEmpty())
    return;
  QWidget* same = sheet_->findChild<QWidget*>(focused);
  if (!same && !rows_.empty())
    same = rows_.front().editor;
  if (same)
    same->setFocus();
}

void TypeForm::addRow(const Field& field) {
  Row row;
  row.field = field;
  row.editor = makeEditor(field);
  auto* title = new QLabel(text(field.title));
  title->setFont(uiFont(12));
  title->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  title->setProperty("second", true);
  title->setBuddy(row.editor);
  const int at = grid_->rowCount();
  const bool wide = isWide(field);
  grid_->addWidget(title, at, 0);
  grid_->addWidget(row.editor, at, 1, 1, wide ? 2 : 1);
  if (!field.note.empty()) {
    QLabel* note = smallWords(text(field.note));
    note->setProperty("second", true);
    if (wide)
      grid_->addWidget(note, at + 1, 1, 1, 2);
    else
      grid_->addWidget(note, at, 2);
  }
  row.error = smallWords({});
  row.error->setProperty("wrong", true);
  row.error->hide();
  grid_->addWidget(row.error, at + 2, 1, 1, 2);
  rows_.push_back(std::move(row));
}

QWidget* TypeForm::makeEditor(const Field& field) {
  const std::string key = field.key;
  QWidget* editor = makePickedEditor(field, [this, key](const QString& picked) { send(key, picked); });
  if (!editor && hasLines(field)) {
    auto* lines = new LinesEdit;
    connect(lines, &LinesEdit::edited, this, [this, key, lines] { look(key, onOneLine(lines->toPlainText())); });
    connect(lines, &LinesEdit::finished, this, [this, key, lines] {
      if (lines->isModified())
        send(key, onOneLine(lines->toPlainText()));
    });
    lines->installEventFilter(this);
    editor = lines;
  } else if (!editor) {
    auto* line = new QLineEdit;
    connect(line, &QLineEdit::textEdited, this, [this, key](const QString& typed) { look(key, typed); });
    connect(line, &QLineEdit::editingFinished, this, [this, key, line] {
      if (line->isModified())
        send(key, line->text());
    });
    line->installEventFilter(this);
    editor = line;
  }
  editor->setFont(uiFont(13));
  nameEditor(*editor, field);
  if (!hasLines(field))
    editor->setFixedHeight(editorHeight);
  if (isWide(field))
    editor->setMaximumWidth(wideWidth);
  else
    editor->setFixedWidth(shortWidth);
  return editor;
}

// A field that was not typed in leaves undo and redo to the job.
bool TypeForm::eventFilter(QObject* watched, QEvent* event) {
  auto* editor = qobject_cast<QWidget*>(watched);
  if (editor && !isTyped(editor) && asksForUndo(*event)) {
    event->ignore();
    return true;
  }
  if (editor && event->type() == QEvent::FocusIn)
    ensureWidgetVisible(editor);
  return QScrollArea::eventFilter(watched, event);
}

void TypeForm::fill(Row& row) {
  filling_ = true;
  row.refused = false;
  const QString value = text(row.field.text);
  if (auto* choice = qobject_cast<QComboBox*>(row.editor)) {
    choice->setCurrentIndex(choice->findText(value));
  } else if (auto* toggle = qobject_cast<QCheckBox*>(row.editor)) {
    toggle->setChecked(row.field.text == "yes");
  } else if (auto* lines = qobject_cast<LinesEdit*>(row.editor)) {
    lines->putText(onLines(value));
  } else if (auto* line = qobject_cast<QLineEdit*>(row.editor)) {
    if (line->text() != value)
      line->setText(value);
    line->setModified(false);
    line->setCursorPosition(0);
  }
  say(row, {});
  filling_ = false;
}

// ---- editing ----------------------------------------------------------------------------------------------------

void TypeForm::look(const std::string& key, const QString& typed) {
  Row* row = rowOf(key);
  if (!row)
    return;
  const Result<Job> changed = setListedField(bench_.session().base(), id_, key, typed.trimmed().toStdString());
  row->refused = !changed;
  say(*row, changed ? QString() : text(changed.problem().message));
}

void TypeForm::send(const std::string& key, const QString& typed) {
  if (filling_ || !rowOf(key))
    return;
  bench_.cancel();
  const std::string title = rowOf(key)->field.title;
  const Result<Job> changed = setListedField(bench_.session().base(), id_, key, typed.trimmed().toStdString());
  if (!changed) {
    Row& row = *rowOf(key);
    if (!qobject_cast<QLineEdit*>(row.editor) && !qobject_cast<LinesEdit*>(row.editor))
      fill(row); // a choice goes back; what is wrong with it is said
    row.refused = true;
    return say(row, text(changed.problem().message));
  }
  setTaken(rowOf(key)->editor);
  rowOf(key)->refused = false;
  const auto entry = findListed(bench_.job(), id_);
  bench_.session().apply(
      *changed, tr("Change %1 of %2").arg(text(title), entry ? text(entry->name) : QString()).toStdString());
  if (Row* row = rowOf(key))
    fill(*row); // "1.5" reads 1 1/2" once it is understood
}

void TypeForm::enter(const std::string& key, const QString& typed) {
  Row* row = rowOf(key);
  if (!row)
    return;
  if (auto* line = qobject_cast<QLineEdit*>(row->editor))
    line->setText(typed);
  send(key, typed);
}

bool TypeForm::giveUp() {
  for (Row& row : rows_) {
    if (row.editor->hasFocus() && (row.refused || isTyped(row.editor))) {
      fill(row);
      return true;
    }
  }
  return false;
}

void TypeForm::focusFirst() {
  if (rows_.empty())
    return;
  rows_.front().editor->setFocus(Qt::TabFocusReason);
}

void TypeForm::say(Row& row, const QString& problem) {
  const bool wrong = !problem.isEmpty();
  row.error->setText(problem);
  row.error->setVisible(wrong);
  row.editor->setAccessibleDescription(wrong ? problem : text(row.field.note));
  if (row.editor->property("wrong").toBool() == wrong)
    return;
  row.editor->setProperty("wrong", wrong);
  row.editor->style()->unpolish(row.editor);
  row.editor->style()->polish(row.editor);
}

TypeForm::Row* TypeForm::rowOf(const std::string& key) {
  const auto found = std::find_if(rows_.begin(), rows_.end(), [&](const Row& row) { return row.field.key == key; });
  return found == rows_.end() ? nullptr : &*found;
}

QWidget* TypeForm::editorOf(const std::string& key) const {
  Row* row = const_cast<TypeForm*>(this)->rowOf(key);
  return row ? row->editor : nullptr;
}

QString TypeForm::errorAt(const std::string& key) const {
  Row* row = const_cast<TypeForm*>(this)->rowOf(key);
  return row && row->refused ? row->error->text() : QString();
}

} // namespace sillwright
