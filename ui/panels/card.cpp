#include "ui/panels/card.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>

#include "core/edit/types.h"
#include "core/rules/wording.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/finding_line.h"
#include "ui/panels/look.h"
#include "ui/panels/panel_frame.h"

namespace sillwright {

namespace {

constexpr int labelWidth = 86;
constexpr std::size_t mostFindings = 6;

QString text(const std::string& words) { return QString::fromStdString(words); }

bool sameShape(const std::vector<Field>& a, const std::vector<Field>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Field& x, const Field& y) {
    return x.key == y.key && x.kind == y.kind && x.choices == y.choices;
  });
}

bool namesListed(const std::string& key) {
  return key == "type" || key == "washer" || key == "leftMark" || key == "rightMark";
}

bool involves(const Finding& finding, const std::vector<PieceRef>& pieces) {
  return std::any_of(pieces.begin(), pieces.end(), [&](const PieceRef& piece) {
    return finding.wall == piece.wall &&
           (!piece.piece || std::find(finding.pieces.begin(), finding.pieces.end(), piece.piece) != finding.pieces.end());
  });
}

} // namespace

Card::Card(Workbench& bench, QWidget* parent) : QScrollArea(parent), bench_(bench) {
  sheet_ = new QWidget;
  auto* column = new QVBoxLayout(sheet_);
  column->setContentsMargins(0, 8, 6, 8);
  grid_ = new QGridLayout;
  grid_->setHorizontalSpacing(10);
  grid_->setVerticalSpacing(4);
  grid_->setColumnMinimumWidth(0, labelWidth);
  grid_->setColumnStretch(1, 1);
  findings_ = new QVBoxLayout;
  findings_->setContentsMargins(14, 6, 0, 0);
  findings_->setSpacing(6);
  column->addLayout(grid_);
  column->addLayout(findings_);
  column->addStretch(1);
  setWidget(sheet_);
  setWidgetResizable(true);
  setFrameShape(NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setAccessibleName(tr("Card"));
  setFocusPolicy(Qt::NoFocus);
  showFields();
}

// ---- what is shown ----------------------------------------------------------------------------------------------

std::vector<PieceRef> Card::shownPieces() const {
  if (!bench_.session().selection().empty())
    return bench_.session().selection();
  const Id wall = bench_.session().wall();
  return wall ? std::vector<PieceRef>{{wall, {}}} : std::vector<PieceRef>{};
}

QString Card::note() const {
  const Job& job = bench_.job();
  if (pieces_.empty())
    return {};
  if (pieces_.size() > 1)
    return tr("%1 pieces").arg(pieces_.size());
  const QString mark = text(markOf(job, pieces_.front()));
  if (!pieces_.front().piece)
    return tr("wall %1").arg(mark);
  const auto piece = findPiece(job, pieces_.front());
  return piece ? tr("%1, %2").arg(mark, text(std::string(tradeName(kindOf(*piece))))) : QString();
}

// The fields all shown pieces have; the text of one where they agree, nothing where they differ.
std::vector<Field> Card::commonFields() const {
  std::vector<Field> common;
  for (std::size_t i = 0; i < pieces_.size(); ++i) {
    const std::vector<Field> fields = fieldsOf(bench_.job(), pieces_[i]);
    if (i == 0) {
      common = fields;
      continue;
    }
    std::erase_if(common, [&](Field& field) {
      const auto same = std::find_if(fields.begin(), fields.end(),
                                     [&](const Field& f) { return f.key == field.key && f.kind == field.kind; });
      if (same == fields.end() || field.key == "mark") // marks are each piece's own
        return true;
      if (same->text != field.text)
        field.text.clear();
      return false;
    });
  }
  return common;
}

void Card::follow(const WorkNotice& notice) {
  if (notice.session.job || notice.session.selection || notice.session.wall || notice.session.file)
    showFields();
}

void Card::showFields() {
  const std::vector<PieceRef> pieces = shownPieces();
  const bool others = pieces != pieces_;
  pieces_ = pieces;
  const std::vector<Field> fields = commonFields();
  std::vector<Field> old;
  for (const Row& row : rows_)
    old.push_back(row.field);
  if (!sameShape(old, fields))
    build(fields);
  filling_ = true;
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    if (others || !rows_[i].refused || rows_[i].field.text != fields[i].text)
      fill(rows_[i], fields[i]);
    rows_[i].field = fields[i];
  }
  filling_ = false;
  slotRows_.show(bench_, pieces_);
  showFindings();
}

void Card::build(const std::vector<Field>& fields) {
  for (const Row& row : rows_)
    row.editor->disconnect(this); // going, it loses the keyboard, and that is no edit
  while (QLayoutItem* item = grid_->takeAt(0)) {
    if (QWidget* widget = item->widget()) {
      widget->hide();
      widget->deleteLater(); // it may be the one whose signal brought us here
    }
    delete item;
  }
  rows_.clear();
  for (const Field& field : fields) {
    Row row;
    row.field = field;
    row.editor = makeEditor(field);
    row.note = new QLabel;
    row.note->setFont(uiFont(11.5));
    row.note->setProperty("second", true);
    row.note->setMinimumWidth(1);
    row.note->setWordWrap(true);
    auto* title = new QLabel(text(field.title));
    title->setFont(uiFont(12));
    title->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    title->setProperty("second", true);
    title->setBuddy(row.editor);
    const int at = static_cast<int>(rows_.size());
    grid_->addWidget(title, at, 0);
    auto* value = new QWidget;
    auto* line = new QHBoxLayout(value);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(8);
    line->addWidget(row.editor);
    if (namesListed(field.key))
      line->addWidget(makeTypeButton(field));
    line->addWidget(row.note, 1);
    grid_->addWidget(value, at, 1);
    rows_.push_back(std::move(row));
  }
  slotRows_.addTo(*grid_, static_cast<int>(rows_.size()));
}

// From a field that names a type or a mark to where its numbers are entered.
QWidget* Card::makeTypeButton(const Field& field) {
  auto* button = new WordButton(QStringLiteral("…"), nullptr, 12);
  button->setTheme(theme_);
  button->setObjectName(text(field.key) + QStringLiteral(" shown"));
  button->setAccessibleName(tr("%1: show it in hardware and marks").arg(text(field.title)));
  button->setToolTip(tr("Its numbers, in hardware and marks"));
  connect(button, &QPushButton::clicked, this, [this, key = field.key] {
    Q_EMIT typeWanted(pieces_.empty() ? Id{} : listedAt(bench_.job(), pieces_.front(), key));
  });
  return button;
}

QWidget* Card::makeEditor(const Field& field) {
  const std::string key = field.key;
  QWidget* editor = makePickedEditor(field, [this, key](const QString& picked) { send(key, picked); });
  if (!editor) {
    auto* line = new QLineEdit;
    auto* back = new QShortcut(Qt::Key_Escape, line, nullptr, nullptr, Qt::WidgetShortcut);
    connect(back, &QShortcut::activated, this, [this, key] { // what stands in the job stands here again
      if (Row* row = rowOf(key)) {
        filling_ = true;
        fill(*row, row->field);
        filling_ = false;
      }
    });
    connect(line, &QLineEdit::editingFinished, this, [this, key, line] {
      if (line->isModified())
        send(key, line->text());
    });
    line->installEventFilter(this);
    editor = line;
  }
  editor->setFont(uiFont(13, field.key == "station"));
  nameEditor(*editor, field);
  editor->setFixedHeight(23);
  // A narrow card makes its fields narrower, it does not cut them off.
  editor->setMinimumWidth(field.kind == FieldKind::Toggle ? 20 : 64);
  editor->setMaximumWidth(namesListed(field.key) ? 164 : field.kind == FieldKind::Choice ? 200 : 108);
  editor->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  return editor;
}

// A field that was not typed in leaves undo and redo to the job.
bool Card::eventFilter(QObject* watched, QEvent* event) {
  const auto* line = qobject_cast<QLineEdit*>(watched);
  if (line && !line->isModified() && asksForUndo(*event)) {
    event->ignore();
    return true;
  }
  return QScrollArea::eventFilter(watched, event);
}

void Card::fill(Row& row, const Field& field) {
  row.refused = false;
  const QString value = text(field.text);
  if (auto* choice = qobject_cast<QComboBox*>(row.editor)) {
    choice->setCurrentIndex(choice->findText(value));
  } else if (auto* toggle = qobject_cast<QCheckBox*>(row.editor)) {
    toggle->setChecked(field.text == "yes");
  } else if (auto* line = qobject_cast<QLineEdit*>(row.editor)) {
    if (line->text() != value)
      line->setText(value);
    line->setModified(false);
    line->setCursorPosition(0);
    line->setPlaceholderText(pieces_.size() > 1 ? tr("several") : QString());
  }
  say(row, {});
  row.note->setText(text(field.note));
}

// ---- editing ----------------------------------------------------------------------------------------------------

void Card::send(const std::string& key, const QString& typed) {
  if (filling_)
    return;
  const std::vector<PieceRef> wall = bench_.session().selection().empty() ? pieces_ : std::vector<PieceRef>{};
  std::optional<Problem> problem;
  if (wall.empty()) {
    problem = bench_.setFieldOfSelected(key, typed.toStdString());
  } else { // the wall itself
    const Result<Job> changed = setField(bench_.session().base(), wall.front(), key, typed.toStdString());
    if (changed)
      bench_.session().apply(*changed, tr("Set %1 of wall %2")
                                           .arg(text(rowOf(key) ? rowOf(key)->field.title : key),
                                                text(markOf(bench_.job(), wall.front())))
                                           .toStdString());
    else
      problem = changed.problem();
  }
  Row* row = rowOf(key);
  if (!row)
    return;
  if (problem) {
    row->refused = true;
    say(*row, text(problem->message));
  } else {
    filling_ = true;
    fill(*row, row->field); // "1.5" reads 0'-1 1/2" once it is understood
    filling_ = false;
  }
}

void Card::say(Row& row, const QString& problem) {
  const bool wrong = !problem.isEmpty();
  row.editor->setToolTip(problem);
  row.editor->setAccessibleDescription(wrong ? problem : text(row.field.note));
  row.note->setToolTip(problem);
  if (row.editor->property("wrong").toBool() == wrong && !wrong)
    return;
  for (QWidget* widget : {row.editor, static_cast<QWidget*>(row.note)}) {
    widget->setProperty("wrong", wrong);
    widget->style()->unpolish(widget);
    widget->style()->polish(widget);
  }
  if (wrong)
    row.note->setText(problem);
}

Card::Row* Card::rowOf(const std::string& key) {
  const auto found = std::find_if(rows_.begin(), rows_.end(), [&](const Row& row) { return row.field.key == key; });
  return found == rows_.end() ? nullptr : &*found;
}

QWidget* Card::editorOf(const std::string& key) const {
  Row* row = const_cast<Card*>(this)->rowOf(key);
  return row ? row->editor : nullptr;
}

QString Card::errorAt(const std::string& key) const {
  Row* row = const_cast<Card*>(this)->rowOf(key);
  return row && row->refused ? row->note->text() : QString();
}

// ---- what was found on it ---------------------------------------------------------------------------------------

void Card::showFindings() {
  std::vector<Finding> findings;
  const auto wall = bench_.wall();
  for (std::size_t i = 0; wall && i < wall->findings.size() && findings.size() < mostFindings; ++i)
    if (involves(wall->findings[i], pieces_))
      findings.push_back(wall->findings[i]);
  if (findings == shownFindings_)
    return;
  shownFindings_ = findings;
  while (findings_->count() > static_cast<int>(findings.size()))
    if (QLayoutItem* item = findings_->takeAt(findings_->count() - 1)) {
      item->widget()->hide();
      item->widget()->deleteLater(); // its button may be what brought us here
      delete item;
    }
  for (std::size_t i = 0; i < findings.size(); ++i) {
    if (static_cast<int>(i) == findings_->count()) {
      auto* made = new FindingLine(bench_);
      made->setTheme(theme_);
      connect(made, &FindingLine::whyWanted, this, &Card::whyWanted);
      findings_->addWidget(made);
    }
    auto* line = static_cast<FindingLine*>(findings_->itemAt(static_cast<int>(i))->widget());
    line->setFinding(findings[i], i == 0);
  }
}

void Card::setTheme(ThemeName theme) {
  theme_ = theme;
  slotRows_.setTheme(theme);
  for (FindingLine* line : findChildren<FindingLine*>())
    line->setTheme(theme);
  for (WordButton* button : findChildren<WordButton*>())
    button->setTheme(theme);
}

} // namespace sillwright
