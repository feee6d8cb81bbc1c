// How a cell of the wall-end schedule is painted, and what it is typed into.
#pragma once

#include <QStyledItemDelegate>

#include "core/drawing/theme.h"

namespace sillwright {

class ScheduleDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void setTheme(ThemeName theme) { theme_ = theme; }

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  // Once: what is being typed stays when the job changes beside it.
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const override;

private:
  ThemeName theme_ = ThemeName::Light;
};

} // namespace sillwright
