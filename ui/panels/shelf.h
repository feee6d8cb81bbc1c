// The shelf: what can be put on a canvas, by dragging, by a click or by Enter.
#pragma once

#include <QAbstractButton>
#include <QMimeData>
#include <QPixmap>
#include <QScrollArea>

#include <functional>
#include <memory>

#include "core/drawing/theme.h"
#include "core/gesture/workbench.h"

namespace sillwright {

// Starts a drag that carries `data`, shown by `picture`. Tests put their own in its place, for a real drag needs a
// real pointer.
using StartDrag = std::function<void(QWidget& from, std::unique_ptr<QMimeData> data, const QPixmap& picture)>;
void startRealDrag(QWidget& from, std::unique_ptr<QMimeData> data, const QPixmap& picture);

inline constexpr const char* starterPrefix = "starter:";

class Shelf : public QScrollArea {
  Q_OBJECT

public:
  explicit Shelf(Workbench& bench, QWidget* parent = nullptr);

  void follow(const WorkNotice& notice);
  void setTheme(ThemeName theme);
  void setStartDrag(StartDrag start) { startDrag_ = std::move(start); }
  // The button of an item; null where there is none.
  QAbstractButton* itemButton(const std::string& key) const;

Q_SIGNALS:
  // Clicked, or Enter or Space pressed on it: it wants to stand in the middle of what is seen. A starter: starterPrefix
  // and its key.
  void wanted(const QString& key);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

private:
  class Item;
  void build();
  void arrange();
  void drag(Item& item);

  Workbench& bench_;
  ThemeName theme_ = ThemeName::Light;
  StartDrag startDrag_ = startRealDrag;
  QWidget* sheet_;
  std::vector<ShelfItem> items_;
  std::vector<Item*> buttons_;
  QPoint pressedAt_;
  bool pressed_ = false;
  bool startersFirst_ = false;
};

} // namespace sillwright
