#include "ui/panels/schedule_delegate.h"

#include <QLineEdit>
#include <QPainter>

#include <algorithm>

#include "core/base/length.h"
#include "core/drawing/hatch.h"
#include "core/drawing/slide_sign.h"
#include "core/refit/slot_words.h"
#include "ui/paint/painter.h"
#include "ui/panels/look.h"
#include "ui/panels/schedule_model.h"

namespace sillwright {

namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

// Left amount, sign, right amount; smaller where the column is narrow, never cut off.
void paintRoom(QPainter& painter, ThemeName theme, const QRect& box, const PieceSlots& slots, LengthStyle units,
               bool targetsMet) {
  constexpr double size = 12, signScale = 0.8, sign = slideSignReach * signScale;
  const QPointF middle(box.x() + box.width() / 2.0, box.y() + 16.0);
  const std::optional<Room> room = roomInMarks(slots);
  if (!room) {
    const QString words = text(roomWords(slots, units));
    const double fits = std::min(1.0, (box.width() - 4) / wordsWidth(words, size));
    paintWords(painter, theme, {middle.x(), box.y() + 20.0}, words, size * fits, Ink::Text2, Weight::Regular,
               Anchor::Middle);
    return;
  }
  const QString left = text(printMeasure(room->left, units)), right = text(printMeasure(room->right, units));
  const double wide = std::max(wordsWidth(left, size), wordsWidth(right, size)) + sign + 3;
  const double fits = std::min(1.0, (box.width() / 2.0 - 2) / wide);
  Drawing drawing;
  (targetsMet ? drawSlideDiamond : drawSlideArrow)(drawing, {middle.x(), middle.y()}, Ink::Hand, signScale * fits);
  paintPixels(painter, drawing, theme);
  const double out = (sign + 3) * fits, base = box.y() + 16 + 4 * fits;
  paintWords(painter, theme, {middle.x() - out, base}, left, size * fits, Ink::Text, Weight::Regular, Anchor::End);
  paintWords(painter, theme, {middle.x() + out, base}, right, size * fits, Ink::Text);
}

} // namespace

void ScheduleDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const auto* model = qobject_cast<const ScheduleModel*>(index.model());
  const auto at = model ? model->end(index.row()) : std::nullopt;
  if (!at)
    return;
  const QRect box = option.rect;
  const bool selected = option.state.testFlag(QStyle::State_Selected);
  painter->fillRect(box, colourOf(theme_, selected ? Ink::Select : Ink::Panel));
  const bool first = box.left() <= 0; // of the columns that are shown
  if (selected && first)
    painter->fillRect(box.x(), box.y(), 4, box.height(), colourOf(theme_, Ink::Hand));
  painter->fillRect(box.x(), box.bottom(), box.width(), 1, colourOf(theme_, Ink::Rule2));
  const double base = box.y() + 20;
  const WallEnd& end = *at->end;
  if (index.column() == ScheduleModel::RoomColumn) {
    if (const auto& slots = model->slotsOfRow(index.row()))
      paintRoom(*painter, theme_, box, *slots, model->units(), !end.worst);
    return;
  }
  const QString words = index.data().toString();
  const bool says = index.column() == ScheduleModel::HardwareColumn ? static_cast<bool>(end.hardware)
                    : index.column() == ScheduleModel::MarkColumn   ? !end.mark.empty()
                                                                    : true;
  if (index.column() == ScheduleModel::StateColumn && end.worst) {
    Drawing swatch;
    drawSwatch(swatch, *end.worst, box.center().x() - 8, box.center().y(), 16, 9, inkOf(*end.worst), 1.2);
    paintPixels(*painter, swatch, theme_);
  } else if (index.column() == ScheduleModel::StateColumn) {
    paintWords(*painter, theme_, {box.center().x() + 0.0, base}, words, 12, Ink::Text2, Weight::Regular,
               Anchor::Middle);
  } else if (index.column() == ScheduleModel::AtColumn) {
    paintWords(*painter, theme_, {box.right() - 4.0, base}, words, 12.5, Ink::Text, Weight::Bold, Anchor::End);
  } else {
    const double inset = first ? 14 : 6;
    paintWords(*painter, theme_, {box.x() + inset, base}, elided(words, 12.5, box.width() - inset - 2), 12.5,
               says ? Ink::Text : Ink::Text2);
  }
  if (option.state.testFlag(QStyle::State_HasFocus) && index.flags().testFlag(Qt::ItemIsEditable)) {
    painter->setPen(QPen(colourOf(theme_, Ink::Hand), 1));
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(box.adjusted(1, 1, -2, -3));
  }
}

// ---- typing in a cell -------------------------------------------------------------------------------------------

QWidget* ScheduleDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const {
  auto* editor = new QLineEdit(parent);
  editor->setFont(uiFont(12.5));
  editor->setObjectName(QStringLiteral("cell"));
  editor->setAccessibleName(index.model()->headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString());
  return editor;
}

void ScheduleDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  const auto* model = qobject_cast<const ScheduleModel*>(index.model());
  auto* line = qobject_cast<QLineEdit*>(editor);
  if (!model || !line || line->property("opened").toBool())
    return;
  line->setProperty("opened", true);
  line->setText(model->typedText(index));
  line->selectAll();
}

// As wide as what is in it needs, and not past the table.
void ScheduleDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                            const QModelIndex&) const {
  constexpr int least = 92;
  QRect box = option.rect.adjusted(0, 2, 0, -3);
  if (box.width() < least) {
    box.setLeft(box.right() + 1 - least);
    box.translate(std::max(-box.left(), 0), 0);
  }
  editor->setGeometry(box);
}

} // namespace sillwright
