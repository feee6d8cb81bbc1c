#include "ui/panels/type_list.h"

#include <QPainter>
#include <QSignalBlocker>

#include <algorithm>

#include "ui/paint/painter.h"
#include "ui/panels/look.h"

namespace sillwright {

namespace {

constexpr int headHeight = 25;
constexpr int lineHeight = 27;

enum Role { Kind = Qt::UserRole, At, Uses };
constexpr int headKind = -1;

QString kindWords(ListedKind kind) {
  switch (kind) {
  case ListedKind::Strap: return TypeList::tr("Straps");
  case ListedKind::Bolt: return TypeList::tr("Bolts");
  case ListedKind::Rod: return TypeList::tr("Rods");
  case ListedKind::Washer: return TypeList::tr("Washers");
  case ListedKind::Mark: return TypeList::tr("Marks of the plans");
  }
  return {};
}

} // namespace

// ---- a row ------------------------------------------------------------------------------------------------------

QSize TypeListDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
  return {120, index.data(Kind).toInt() == headKind ? headHeight : lineHeight};
}

void TypeListDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const QRect box = option.rect;
  const double x = box.x(), y = box.y();
  const QString words = index.data(Qt::DisplayRole).toString();
  if (index.data(Kind).toInt() == headKind)
    return paintRowHead(*painter, theme, box, words);
  paintRowGround(*painter, theme, box, option.state.testFlag(QStyle::State_Selected));
  const QString uses = index.data(Uses).toString();
  const double right = box.right() - 10 - wordsWidth(uses, 11.5);
  paintWords(*painter, theme, {right, y + 17.5}, uses, 11.5, Ink::Text2);
  const bool none = index.data(At).toUInt() == 0;
  paintWords(*painter, theme, {x + 14, y + 17.5}, elided(words, 12.5, right - 8 - (x + 14)), 12.5,
             none ? Ink::Text2 : Ink::Text);
}

// ---- the list ---------------------------------------------------------------------------------------------------

TypeList::TypeList(QWidget* parent) : QListWidget(parent) {
  setItemDelegate(&delegate_);
  setFrameShape(NoFrame);
  setVerticalScrollMode(ScrollPerPixel);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setAccessibleName(tr("Hardware types and marks"));
}

void TypeList::addHead(ListedKind kind) {
  auto* head = new QListWidgetItem(kindWords(kind), this);
  head->setFlags(Qt::NoItemFlags);
  head->setData(Kind, headKind);
}

void TypeList::addLine(const Listed& entry, const ListedUse* use) {
  const QString name = entry.id ? QString::fromStdString(entry.name) : tr("none yet");
  auto* line = new QListWidgetItem(name, this);
  line->setData(Kind, static_cast<int>(entry.kind));
  line->setData(At, entry.id.value);
  if (!entry.id)
    return;
  const QString used = use ? QString::fromStdString(useWords(*use, entry.kind)) : tr("not used");
  line->setData(Uses, use && use->pieces > 0 ? QStringLiteral("× %1").arg(use->pieces) : QString());
  line->setToolTip(used);
  line->setData(Qt::AccessibleTextRole, tr("%1. %2").arg(name, used));
}

void TypeList::setListed(const std::vector<Listed>& all, const std::unordered_map<Id, ListedUse>& uses) {
  const Id before = chosen();
  const int row = currentRow();
  {
    const QSignalBlocker quiet(this); // one word about what is chosen, at the end
    clear();
    all_ = all;
    for (const ListedKind kind :
         {ListedKind::Strap, ListedKind::Bolt, ListedKind::Rod, ListedKind::Washer, ListedKind::Mark}) {
      addHead(kind);
      const int first = count();
      for (const Listed& each : all)
        if (each.kind == kind) {
          const auto use = uses.find(each.id);
          addLine(each, use == uses.end() ? nullptr : &use->second);
        }
      if (count() == first)
        addLine({kind, {}, {}}, nullptr);
    }
    choose(before);
    for (int at = std::clamp(row, 1, count() - 1); !currentItem() && at > 0; --at)
      if (item(at)->flags() != Qt::NoItemFlags)
        setCurrentRow(at);
  }
  Q_EMIT currentRowChanged(currentRow());
}

void TypeList::setTheme(ThemeName theme) {
  delegate_.theme = theme;
  viewport()->update();
}

void TypeList::choose(Id id) {
  for (int i = 0; id && i < count(); ++i)
    if (item(i)->data(Kind).toInt() != headKind && item(i)->data(At).toUInt() == id.value) {
      setCurrentRow(i);
      scrollToItem(item(i));
    }
}

Id TypeList::chosen() const { return currentItem() ? Id{currentItem()->data(At).toUInt()} : Id{}; }

ListedKind TypeList::chosenKind() const {
  return currentItem() ? static_cast<ListedKind>(currentItem()->data(Kind).toInt()) : ListedKind::Strap;
}

} // namespace sillwright
