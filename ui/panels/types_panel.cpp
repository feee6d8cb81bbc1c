#include "ui/panels/types_panel.h"

#include <QHeaderView>
#include <QLabel>
#include <QPainter>
#include <QShortcut>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

#include "core/drawing/type_picture.h"
#include "ui/panels/look.h"
#include "ui/panels/panel_frame.h"
#include "ui/panels/type_form.h"

namespace sillwright {

// The picture of the chosen type, as large as there is room.
class TypePicture : public QWidget {
public:
  explicit TypePicture(const Workbench& bench) : bench_(bench) {
    setMinimumSize(310, 190);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  }
  void show(Id id) {
    id_ = id;
    const auto entry = findListed(bench_.job(), id);
    setAccessibleName(entry ? TypesPanel::tr("Picture of %1").arg(QString::fromStdString(entry->name)) : QString());
    update();
  }
  void setTheme(ThemeName theme) {
    theme_ = theme;
    update();
  }

protected:
  void paintEvent(QPaintEvent*) override {
    constexpr double margin = 8;
    QPainter painter(this);
    paintPixels(painter, typePicture(bench_.job(), id_, {margin, margin, width() - margin, height() - margin}), theme_);
  }

private:
  const Workbench& bench_;
  Id id_;
  ThemeName theme_ = ThemeName::Light;
};

namespace {

constexpr int listWidth = 236;
constexpr int formWidth = 356, widestForm = 470;
constexpr int formHeight = 300; // left for the form of a mark, with the words over both
constexpr int pictureWidth = 350;
constexpr int markHeight = 26;
constexpr const char* markKeys[] = {"mark", "hardware", "column", "requiredCapacity", "sill", "boltSpacing"};
constexpr int markColumns = static_cast<int>(std::size(markKeys)) + 1; // and how many ends bear it

QString text(const std::string& words) { return QString::fromStdString(words); }

QLabel* wrapped(const QString& words, bool second) {
  auto* label = new QLabel(words);
  label->setFont(uiFont(12));
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setProperty("second", second);
  label->setContentsMargins(14, 6, 12, 6);
  return label;
}

} // namespace

TypesPanel::TypesPanel(Workbench& bench, QWidget* parent)
    : QWidget(parent), bench_(bench), list_(new TypeList), form_(new TypeForm(bench)), picture_(new TypePicture(bench)),
      marks_(new QTableWidget), problem_(wrapped({}, false)), copy_(new WordButton(tr("add a copy"), nullptr, 12)),
      plain_(new WordButton(tr("add plain"), nullptr, 12)), remove_(new WordButton(tr("remove"), nullptr, 12)) {
  auto* line = new QHBoxLayout;
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(0);
  line->addWidget(makeLeft());
  line->addWidget(makeRight(), 1);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(wrapped(tr("Enter the numbers from the hardware's own instructions and from the approved plans. "
                               "The program knows none of its own."),
                            true));
  column->addLayout(line, 1);
  setFocusProxy(list_);
  connect(list_, &QListWidget::currentRowChanged, this, [this] {
    say({});
    showChosen();
  });
  connect(copy_, &QPushButton::clicked, this, [this] { add(true); });
  connect(plain_, &QPushButton::clicked, this, [this] { add(false); });
  connect(remove_, &QPushButton::clicked, this, &TypesPanel::remove);
  connect(marks_, &QTableWidget::itemChanged, this, &TypesPanel::enterMark);
  connect(marks_, &QTableWidget::currentCellChanged, this, [this](int row) {
    const auto& all = *bench_.job().marks;
    if (!filling_ && row >= 0 && static_cast<std::size_t>(row) < all.size())
      list_->choose(all[static_cast<std::size_t>(row)].id);
  });
  auto* leave = new QShortcut(Qt::Key_Escape, this, nullptr, nullptr, Qt::WidgetWithChildrenShortcut);
  connect(leave, &QShortcut::activated, this, [this] {
    if (!form_->giveUp())
      Q_EMIT leaveWanted();
  });
}

QWidget* TypesPanel::makeLeft() {
  auto* left = new QWidget;
  left->setFixedWidth(listWidth);
  copy_->setAccessibleName(tr("Add a copy of what is chosen"));
  plain_->setAccessibleName(tr("Add a plain one of this kind, to fill in"));
  remove_->setAccessibleName(tr("Remove what is chosen"));
  problem_->setProperty("wrong", true);
  problem_->hide();
  auto* buttons = new QHBoxLayout;
  buttons->setContentsMargins(8, 6, 8, 8);
  buttons->setSpacing(5);
  for (WordButton* button : {copy_, plain_, remove_})
    buttons->addWidget(button);
  buttons->addStretch(1);
  auto* column = new QVBoxLayout(left);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(list_, 1);
  column->addWidget(problem_);
  column->addLayout(buttons);
  return left;
}

QWidget* TypesPanel::makeRight() {
  auto* right = new QWidget;
  marks_->setColumnCount(markColumns);
  marks_->setHorizontalHeaderLabels({tr("mark"), tr("hardware"), tr("column"), tr("required, lb"), tr("sill"),
                                     tr("bolts, at most"), tr("ends")});
  marks_->setFont(uiFont(12));
  marks_->setFrameShape(QFrame::NoFrame);
  marks_->setSelectionBehavior(QAbstractItemView::SelectRows);
  marks_->setSelectionMode(QAbstractItemView::SingleSelection);
  marks_->verticalHeader()->hide();
  marks_->verticalHeader()->setDefaultSectionSize(markHeight);
  marks_->horizontalHeader()->setFont(uiFont(11.5));
  marks_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  marks_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  marks_->horizontalHeader()->setSectionResizeMode(1, QHeaderView::Stretch);
  marks_->setTabKeyNavigation(false);
  marks_->setAccessibleName(tr("Wall-end schedule of the plans"));
  right_ = new QBoxLayout(QBoxLayout::LeftToRight, right);
  right_->setContentsMargins(0, 0, 0, 0);
  right_->setSpacing(0);
  right_->addWidget(form_);
  right_->addWidget(picture_, 1);
  right_->addWidget(marks_);
  return right;
}

// ---- following --------------------------------------------------------------------------------------------------

void TypesPanel::follow() {
  if (!isVisible() || bench_.session().previewing())
    return;
  list_->setListed(listed(bench_.job()), usesOfListed(bench_.job()));
}

void TypesPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  follow();
}

void TypesPanel::setTheme(ThemeName theme) {
  list_->setTheme(theme);
  picture_->setTheme(theme);
  for (WordButton* button : {copy_, plain_, remove_})
    button->setTheme(theme);
}

QString TypesPanel::note() const {
  const HardwareTypes& types = *bench_.job().types;
  const std::size_t count = types.straps.size() + types.bolts.size() + types.rods.size() + types.washers.size();
  return tr("%1 types, %2 marks").arg(count).arg(bench_.job().marks->size());
}

void TypesPanel::choose(Id id) { list_->choose(id); }

void TypesPanel::focusList() { list_->setFocus(Qt::ShortcutFocusReason); }

QString TypesPanel::problem() const { return problem_->text(); }

void TypesPanel::say(const QString& problem) {
  problem_->setText(problem);
  problem_->setVisible(!problem.isEmpty());
}

// A type stands beside its picture, a mark under the whole schedule.
void TypesPanel::showChosen() {
  const bool mark = list_->chosenKind() == ListedKind::Mark;
  const Id id = list_->chosen();
  form_->show(id);
  picture_->show(id);
  right_->setDirection(mark ? QBoxLayout::BottomToTop : QBoxLayout::LeftToRight);
  right_->setStretchFactor(form_, mark ? 1 : 0);
  picture_->setVisible(!mark);
  marks_->setVisible(mark);
  copy_->setEnabled(static_cast<bool>(id));
  remove_->setEnabled(static_cast<bool>(id));
  if (mark)
    showMarks();
  shareRoom();
}

// The form takes what the picture can spare; over the form of a mark the schedule takes what its rows need.
void TypesPanel::shareRoom() {
  const bool mark = list_->chosenKind() == ListedKind::Mark;
  const int form = std::clamp(width() - listWidth - pictureWidth, formWidth, widestForm);
  form_->setMinimumWidth(mark ? 0 : form);
  form_->setMaximumWidth(mark ? QWIDGETSIZE_MAX : form);
  const int rows = marks_->horizontalHeader()->sizeHint().height() + 6 + marks_->rowCount() * markHeight;
  marks_->setFixedHeight(std::clamp(rows, 2 * markHeight, std::max(3 * markHeight, height() - formHeight)));
}

void TypesPanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  shareRoom();
}

void TypesPanel::showMarks() {
  filling_ = true;
  const std::vector<WallEndMark>& all = *bench_.job().marks;
  const auto uses = usesOfListed(bench_.job());
  marks_->setRowCount(static_cast<int>(all.size()));
  for (int r = 0; r < marks_->rowCount(); ++r) {
    const Id id = all[static_cast<std::size_t>(r)].id;
    const std::vector<Field> fields = listedFields(bench_.job(), id);
    for (int c = 0; c < markColumns; ++c) {
      QTableWidgetItem* cell = marks_->item(r, c); // kept: it may be the one that is being typed in
      if (!cell)
        marks_->setItem(r, c, cell = new QTableWidgetItem);
      if (static_cast<std::size_t>(c) < fields.size()) {
        cell->setText(text(fields[static_cast<std::size_t>(c)].text));
      } else {
        const auto use = uses.find(id);
        cell->setText(QString::number(use == uses.end() ? 0 : use->second.pieces));
      }
      const bool typed = static_cast<std::size_t>(c) < std::size(markKeys) && std::string_view(markKeys[c]) != "hardware";
      const Qt::ItemFlags flags = typed ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable
                                        : Qt::ItemIsEnabled | Qt::ItemIsSelectable; // hardware is chosen in the form
      if (cell->flags() != flags) // setting them anew would put an open editor back to what the cell holds
        cell->setFlags(flags);
    }
    if (id == list_->chosen() && marks_->currentRow() != r)
      marks_->setCurrentCell(r, std::max(marks_->currentColumn(), 0));
  }
  filling_ = false;
}

// ---- changing ---------------------------------------------------------------------------------------------------

void TypesPanel::enterMark(QTableWidgetItem* cell) {
  const auto& all = *bench_.job().marks;
  const auto row = static_cast<std::size_t>(cell->row()), column = static_cast<std::size_t>(cell->column());
  if (filling_ || row >= all.size() || column >= std::size(markKeys))
    return;
  const QString typed = cell->text();
  list_->choose(all[row].id);
  form_->enter(markKeys[column], typed);
  // The cell holds again what the job holds, once the view is done with the edit.
  QMetaObject::invokeMethod(this, &TypesPanel::showMarks, Qt::QueuedConnection);
}

void TypesPanel::add(bool copy) {
  bench_.cancel();
  const auto [job, id] = addListed(bench_.session().base(), list_->chosenKind(), copy ? list_->chosen() : Id{});
  const auto entry = findListed(job, id);
  bench_.session().apply(job, tr("Add %1").arg(text(entry->name)).toStdString());
  list_->choose(id);
  form_->focusFirst();
}

void TypesPanel::remove() {
  bench_.cancel();
  const Id id = list_->chosen();
  const auto entry = findListed(bench_.job(), id);
  const Result<Job> removed = removeListed(bench_.session().base(), id);
  if (!removed)
    return say(tr("%1 %2.").arg(text(removed.problem().place), text(removed.problem().message)));
  bench_.session().apply(*removed, tr("Remove %1").arg(text(entry->name)).toStdString());
}

} // namespace sillwright
