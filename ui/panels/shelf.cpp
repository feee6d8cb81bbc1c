#include "ui/panels/shelf.h"

#include <algorithm>

#include <QApplication>
#include <QDrag>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <array>

#include "core/gesture/shelf_mime.h"
#include "core/gesture/starters.h"
#include "ui/paint/painter.h"
#include "ui/panels/look.h"
#include "ui/panels/shelf_pictures.h"

namespace sillwright {

namespace {

constexpr int nameHeight = 20;
constexpr int titleHeight = 26;
constexpr int between = 12;
constexpr int inset = 6;

int perRow(ShelfRow row) {
  switch (row) {
  case ShelfRow::CastIn:
  case ShelfRow::Columns:
    return 4;
  case ShelfRow::Framing:
  case ShelfRow::Steel:
    return 3;
  case ShelfRow::Starters:
    return 2;
  }
  return 1;
}

// A job without walls begins with a starter.
std::array<ShelfRow, 5> rowsOf(bool withoutWalls) {
  std::array<ShelfRow, 5> rows{ShelfRow::Starters, ShelfRow::CastIn, ShelfRow::Columns, ShelfRow::Framing,
                               ShelfRow::Steel};
  if (!withoutWalls)
    std::rotate(rows.begin(), rows.begin() + 1, rows.end());
  return rows;
}

QString rowTitle(ShelfRow row) {
  switch (row) {
  case ShelfRow::CastIn: return Shelf::tr("Cast in");
  case ShelfRow::Columns: return Shelf::tr("Columns and studs");
  case ShelfRow::Framing: return Shelf::tr("Sills, panels, openings");
  case ShelfRow::Steel: return Shelf::tr("Steel");
  case ShelfRow::Starters:
    return Shelf::tr("Starters");
  }
  return {};
}

constexpr double captionSize = 10.5;
constexpr double captionLead = 13;
constexpr double captionApart = 1; // from the next one, at least

// A name on one line, or on two where it is too long for its cell.
QStringList captionLines(const QString& name, double width) {
  if (wordsWidth(name, captionSize) <= width)
    return {name};
  for (qsizetype at = name.lastIndexOf(QLatin1Char(' ')); at > 0; at = name.lastIndexOf(QLatin1Char(' '), at - 1))
    if (wordsWidth(name.left(at), captionSize) <= width)
      return {name.left(at), elided(name.mid(at + 1), captionSize, width)};
  return {elided(name, captionSize, width)};
}

bool sameItems(const std::vector<ShelfItem>& a, const std::vector<ShelfItem>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const ShelfItem& x, const ShelfItem& y) {
    return x.key == y.key && x.title == y.title && x.kind == y.kind;
  });
}

std::vector<ShelfItem> itemsOf(const Workbench& bench) {
  std::vector<ShelfItem> items = bench.shelf();
  for (const Starter& starter : starters())
    items.push_back({starterPrefix + starter.key, starter.title, std::nullopt});
  return items;
}

// Titles of the rows and lines between them.
class ShelfSheet final : public QWidget {
public:
  struct Heading {
    QString words;
    int y = 0;
  };
  std::vector<Heading> headings;
  ThemeName theme = ThemeName::Light;

protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.fillRect(rect(), colourOf(theme, Ink::Panel));
    for (const Heading& heading : headings) {
      if (heading.y > 0)
        painter.fillRect(10, heading.y - 1, width() - 20, 1, colourOf(theme, Ink::Rule2));
      paintWords(painter, theme, {12, heading.y + 18.0}, heading.words, 11.5, Ink::Text2, Weight::Bold);
    }
  }
};

} // namespace

void startRealDrag(QWidget& from, std::unique_ptr<QMimeData> data, const QPixmap& picture) {
  auto* drag = new QDrag(&from); // the toolkit frees it when the drag is over
  drag->setMimeData(data.release());
  drag->setPixmap(picture);
  drag->setHotSpot({static_cast<int>(picture.width() / picture.devicePixelRatio() / 2), 8});
  drag->exec(Qt::CopyAction);
}

// ---- an item ----------------------------------------------------------------------------------------------------

class Shelf::Item final : public QAbstractButton {
public:
  Item(const ShelfItem& item, const HardwareTypes& types, QWidget* parent)
      : QAbstractButton(parent), item_(item), types_(types) {
    const QString title = QString::fromStdString(item.title);
    setText(title);
    setAccessibleName(title);
    setAccessibleDescription(item.kind
                                 ? Shelf::tr("Drag onto a canvas, or press Enter to put it in the middle of the view.")
                                 : Shelf::tr("Click or press Enter to say its lengths."));
    setToolTip(title);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(item.kind ? Qt::OpenHandCursor : Qt::PointingHandCursor);
  }
  const ShelfItem& item() const { return item_; }
  ThemeName theme = ThemeName::Light;

  QPixmap picture() {
    const int height = static_cast<int>(pictureHeight(shelfRowOf(item_)));
    QPixmap pixmap(QSize(width(), height) * devicePixelRatioF());
    pixmap.setDevicePixelRatio(devicePixelRatioF());
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setOpacity(0.85);
    paintPixels(painter, shelfPicture(item_, types_, width()), theme);
    return pixmap;
  }

protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    if (underMouse() || isDown())
      painter.fillRect(rect(), colourOf(theme, Ink::Hover));
    paintPixels(painter, shelfPicture(item_, types_, width()), theme);
    const QStringList lines = captionLines(text(), width() - captionApart);
    const double base = pictureHeight(shelfRowOf(item_)) + nameHeight - 6;
    for (int i = 0; i < lines.size(); ++i)
      paintWords(painter, theme, {width() / 2.0, base + captionLead * i}, lines[i], captionSize, Ink::Text, Weight::Regular, Anchor::Middle);
    if (hasFocus()) {
      painter.setPen(QPen(colourOf(theme, Ink::Hand), 1.5));
      painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
  }
  void keyPressEvent(QKeyEvent* event) override {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
      click();
    else
      QAbstractButton::keyPressEvent(event); // Space presses, arrows go to the next item
  }

private:
  ShelfItem item_;
  HardwareTypes types_;
};

// ---- the shelf --------------------------------------------------------------------------------------------------

Shelf::Shelf(Workbench& bench, QWidget* parent) : QScrollArea(parent), bench_(bench), sheet_(new ShelfSheet) {
  setWidget(sheet_);
  setWidgetResizable(false);
  setFrameShape(NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::NoFocus);
  setAccessibleName(tr("Shelf"));
  build();
}

void Shelf::follow(const WorkNotice& notice) {
  if ((!notice.session.job && !notice.session.file) || bench_.session().previewing())
    return;
  if (!sameItems(items_, itemsOf(bench_)))
    build();
  else if (startersFirst_ != bench_.job().walls.empty())
    arrange();
}

void Shelf::build() {
  for (Item* button : buttons_) {
    button->hide();
    button->deleteLater();
  }
  buttons_.clear();
  items_ = itemsOf(bench_);
  for (const ShelfItem& item : items_) {
    auto* button = new Item(item, *bench_.job().types, sheet_);
    button->theme = theme_;
    button->installEventFilter(this);
    button->show();
    connect(button, &QAbstractButton::clicked, this,
            [this, key = item.key] { Q_EMIT wanted(QString::fromStdString(key)); });
    buttons_.push_back(button);
  }
  arrange();
}

void Shelf::arrange() {
  auto& sheet = static_cast<ShelfSheet&>(*sheet_);
  sheet.headings.clear();
  const int width = viewport()->width();
  int y = 0;
  startersFirst_ = bench_.job().walls.empty();
  for (const ShelfRow row : rowsOf(startersFirst_)) {
    std::vector<Item*> inRow;
    for (Item* button : buttons_)
      if (shelfRowOf(button->item()) == row)
        inRow.push_back(button);
    if (inRow.empty())
      continue;
    sheet.headings.push_back({rowTitle(row), y});
    y += titleHeight;
    const int columns = std::min(perRow(row), std::max(1, static_cast<int>(inRow.size())));
    const int inner = width - 2 * inset;
    const bool twoLines = std::any_of(inRow.begin(), inRow.end(), [&](const Item* item) {
      return captionLines(item->text(), double(inner) / columns - captionApart).size() > 1;
    });
    const int cell = static_cast<int>(pictureHeight(row) + nameHeight + (twoLines ? captionLead : 0));
    for (std::size_t i = 0; i < inRow.size(); ++i) {
      const int column = static_cast<int>(i) % columns, line = static_cast<int>(i) / columns;
      const int x0 = inset + inner * column / columns, x1 = inset + inner * (column + 1) / columns;
      inRow[i]->setGeometry(x0, y + line * cell, x1 - x0, cell);
    }
    y += (static_cast<int>(inRow.size() - 1) / columns + 1) * cell + between;
  }
  sheet_->resize(width, y);
  sheet_->update();
}

void Shelf::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  arrange();
}

void Shelf::setTheme(ThemeName theme) {
  theme_ = theme;
  static_cast<ShelfSheet&>(*sheet_).theme = theme;
  for (Item* button : buttons_)
    button->theme = theme;
  sheet_->update();
}

QAbstractButton* Shelf::itemButton(const std::string& key) const {
  for (Item* button : buttons_)
    if (button->item().key == key)
      return button;
  return nullptr;
}

void Shelf::drag(Item& item) {
  auto carried = std::make_unique<QMimeData>();
  carried->setData(shelfMimeType, QByteArray::fromStdString(item.item().key));
  item.setDown(false); // the drag takes the release: it must not count as a click
  startDrag_(item, std::move(carried), item.picture());
}

bool Shelf::eventFilter(QObject* watched, QEvent* event) {
  // The area watches its sheet, too: only what is pressed on a piece is the start of a drag.
  const auto found = std::find(buttons_.begin(), buttons_.end(), watched);
  if (found == buttons_.end())
    return QScrollArea::eventFilter(watched, event);
  Item* item = *found;
  if (event->type() == QEvent::MouseButtonPress) {
    const auto* mouse = static_cast<QMouseEvent*>(event);
    pressed_ = mouse->button() == Qt::LeftButton && item->item().kind;
    pressedAt_ = mouse->position().toPoint();
  } else if (event->type() == QEvent::MouseMove && pressed_) {
    const QPoint moved = static_cast<QMouseEvent*>(event)->position().toPoint() - pressedAt_;
    if (moved.manhattanLength() >= QApplication::startDragDistance()) {
      pressed_ = false;
      drag(*item);
      return true;
    }
  } else if (event->type() == QEvent::MouseButtonRelease) {
    pressed_ = false;
  } else if (event->type() == QEvent::FocusIn) {
    ensureWidgetVisible(item, 0, 20);
  }
  return QScrollArea::eventFilter(watched, event);
}

} // namespace sillwright
