#include "ui/panels/slot_rows.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QRegularExpression>

#include "core/refit/in_the_way.h"
#include "core/refit/slot_words.h"
#include "ui/paint/painter.h"
#include "ui/panels/look.h"

namespace sillwright {

namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

QLabel* titleLabel(const QString& words) {
  auto* label = new QLabel(words);
  label->setFont(uiFont(12));
  label->setAlignment(Qt::AlignRight | Qt::AlignTop);
  label->setProperty("second", true);
  return label;
}

// Read with Tab and copied like the fields above, but a click on it leaves the keyboard where it is.
class ToldLabel : public QLabel {
public:
  using QLabel::QLabel;

protected:
  bool event(QEvent* event) override {
    if (event->type() == QEvent::ShortcutOverride) { // of the pieces, while it has the keyboard
      const auto* key = static_cast<QKeyEvent*>(event);
      if (key->matches(QKeySequence::Copy) || key->matches(QKeySequence::SelectAll)) {
        event->accept();
        return true;
      }
    }
    return QLabel::event(event);
  }
};

QLabel* valueLabel(const char* name) {
  auto* label = new ToldLabel;
  label->setObjectName(QLatin1String(name));
  label->setFont(uiFont(12.5));
  label->setWordWrap(true);
  label->setMinimumWidth(1);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  label->setFocusPolicy(Qt::TabFocus);
  return label;
}

// Whole inches stay on one line with their fraction.
QString unbroken(QString words) {
  static const QRegularExpression before(QStringLiteral("(?<=\\d) (?=\\d+/)"));
  return words.replace(before, QString(QChar(0x00a0)));
}

QString slotNote(const PieceSlots& slots) {
  const auto count = slots.slots.size();
  if (!slots.room)
    return count > 1 ? QObject::tr("nearest of %1").arg(count) : count == 1 ? QObject::tr("nearest") : QString();
  return count > 1 ? QObject::tr("one of %1").arg(count) : QString();
}

// One a line; the one that is shown is not among them.
QString otherSlots(const PieceSlots& slots, LengthStyle units) {
  const auto own = ownSlot(slots);
  QStringList others;
  for (const Interval slot : slots.slots)
    if (slot != own && !toMarks(slot).empty())
      others += text(slotWords(slot, units));
  return others.isEmpty() ? QString() : QObject::tr("other slots:\n%1").arg(others.join(QLatin1Char('\n')));
}

} // namespace

void SlotRows::addTo(QGridLayout& grid, int row) {
  slot_ = {titleLabel(QObject::tr("slot")), valueLabel("slot"), {}, {}};
  room_ = {titleLabel(QObject::tr("slide room")), valueLabel("slide room"), {}, {}};
  wall_.reset();
  for (Row* made : {&slot_, &room_}) {
    made->title->setBuddy(made->value);
    grid.addWidget(made->title, row, 0);
    grid.addWidget(made->value, row++, 1);
    made->title->hide();
    made->value->hide();
  }
}

void SlotRows::show(const Workbench& bench, const std::vector<PieceRef>& pieces) {
  if (!slot_.value)
    return;
  const auto wall = pieces.size() == 1 ? bench.checker().wall(pieces.front().wall) : nullptr;
  const bool has = wall && hasSlots(*wall->layout.wall, pieces.front().piece);
  const LengthStyle units = bench.job().units;
  if (has && wall == wall_ && pieces.front().piece == piece_ && units == units_)
    return;
  wall_ = has ? wall : nullptr;
  piece_ = has ? pieces.front().piece : Id{};
  units_ = units;
  std::optional<PieceSlots> slots;
  if (has) {
    const ResolvedLimits limits = resolve(*wall->layout.limits);
    slots = slotsOf(wall->layout, limits, piece_);
    ++computed_;
    const auto own = slots ? ownSlot(*slots) : std::nullopt;
    fill(slot_, own ? text(slotWords(*own, units)) : QObject::tr("nowhere"), slots ? slotNote(*slots) : QString());
    const bool none = slots && !slots->room;
    fill(room_, slots ? text(roomWords(*slots, units)) : QString(),
         none ? text(inTheWay(wall->layout, limits, piece_)) : QString());
    const QString others = slots ? otherSlots(*slots, units) : QString();
    slot_.value->setToolTip(others);
    slot_.value->setAccessibleDescription(others);
  }
  for (Row* row : {&slot_, &room_}) {
    row->title->setVisible(slots.has_value());
    row->value->setVisible(slots.has_value());
  }
}

void SlotRows::fill(Row& row, const QString& words, const QString& note) {
  row.words = words;
  row.note = note;
  row.value->setAccessibleName(row.title->text() + QStringLiteral(": ") + words +
                               (note.isEmpty() ? QString() : QStringLiteral(", ") + note));
  paint(row);
}

void SlotRows::paint(const Row& row) {
  const bool isSlot = &row == &slot_;
  const QString value = unbroken(row.words).toHtmlEscaped(), note = unbroken(row.note).toHtmlEscaped();
  const QString first =
      isSlot ? QStringLiteral("<b style=\"color:%1\">%2</b>") : QStringLiteral("<span style=\"color:%1\">%2</span>");
  const QString second = QStringLiteral("&nbsp; <span style=\"color:%1\">%2</span>");
  row.value->setText(first.arg(colourOf(theme_, isSlot ? Ink::Hand : Ink::Text).name(), value) +
                     (note.isEmpty() ? QString() : second.arg(colourOf(theme_, Ink::Text2).name(), note)));
}

void SlotRows::setTheme(ThemeName theme) {
  theme_ = theme;
  if (slot_.value)
    for (const Row* row : {&slot_, &room_})
      paint(*row);
}

} // namespace sillwright
