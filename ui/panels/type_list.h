// The job's hardware types and marks by kind, each with how often it is used.
#pragma once

#include <QListWidget>
#include <QStyledItemDelegate>

#include <unordered_map>

#include "core/drawing/theme.h"
#include "core/edit/types.h"

namespace sillwright {

class TypeListDelegate : public QStyledItemDelegate {
  Q_OBJECT

public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override;

  ThemeName theme = ThemeName::Light;
};

class TypeList : public QListWidget {
  Q_OBJECT

public:
  explicit TypeList(QWidget* parent = nullptr);

  // Keeps what is chosen; where that is gone, chooses what stands in its place.
  void setListed(const std::vector<Listed>& all, const std::unordered_map<Id, ListedUse>& uses);
  void setTheme(ThemeName theme);
  void choose(Id id);
  // Empty on the line of a kind that the job has none of.
  Id chosen() const;
  ListedKind chosenKind() const;

private:
  void addHead(ListedKind kind);
  void addLine(const Listed& entry, const ListedUse* use);

  TypeListDelegate delegate_;
  std::vector<Listed> all_;
};

} // namespace sillwright
