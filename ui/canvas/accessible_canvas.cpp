#include "ui/canvas/accessible_canvas.h"

#include <QAccessibleWidget>

#include <map>

#include "ui/canvas/canvas.h"

namespace sillwright {

namespace {

class AccessiblePiece final : public QAccessibleInterface {
public:
  AccessiblePiece(Canvas& canvas, PieceRef piece) : canvas_(canvas), piece_(piece) {}

  bool isValid() const override { return find().has_value(); }
  QObject* object() const override { return nullptr; }
  QWindow* window() const override { return canvas_.window()->windowHandle(); }
  QAccessibleInterface* parent() const override { return QAccessible::queryAccessibleInterface(&canvas_); }
  QAccessibleInterface* child(int) const override { return nullptr; }
  QAccessibleInterface* childAt(int, int) const override { return nullptr; }
  int childCount() const override { return 0; }
  int indexOfChild(const QAccessibleInterface*) const override { return -1; }
  QAccessible::Role role() const override { return QAccessible::ListItem; }
  void setText(QAccessible::Text, const QString&) override {}

  QString text(QAccessible::Text kind) const override {
    const auto piece = find();
    if (!piece)
      return {};
    if (kind == QAccessible::Name)
      return piece->description.isEmpty() ? piece->name : piece->name + QStringLiteral("; ") + piece->description;
    return kind == QAccessible::Description ? piece->description : QString();
  }
  QRect rect() const override {
    const auto piece = find();
    return piece ? QRect(canvas_.mapToGlobal(piece->box.topLeft()), piece->box.size()) : QRect();
  }
  QAccessible::State state() const override {
    QAccessible::State state;
    state.selectable = true;
    state.focusable = true;
    if (const auto piece = find()) {
      state.selected = piece->selected;
      state.focused = piece->selected && canvas_.hasFocus();
    } else {
      state.invalid = true;
    }
    return state;
  }

private:
  std::optional<SpokenPiece> find() const {
    for (SpokenPiece& piece : canvas_.spokenPieces())
      if (piece.piece == piece_)
        return std::move(piece);
    return std::nullopt;
  }

  Canvas& canvas_;
  PieceRef piece_;
};

class AccessibleCanvas final : public QAccessibleWidget {
public:
  explicit AccessibleCanvas(Canvas& canvas) : QAccessibleWidget(&canvas, QAccessible::List), canvas_(canvas) {}
  ~AccessibleCanvas() override {
    for (const auto& [piece, id] : ids_)
      QAccessible::deleteAccessibleInterface(id);
  }

  int childCount() const override { return static_cast<int>(canvas_.spokenPieces().size()); }
  QAccessibleInterface* child(int index) const override {
    const std::vector<SpokenPiece> pieces = canvas_.spokenPieces();
    if (index < 0 || index >= static_cast<int>(pieces.size()))
      return nullptr;
    return interfaceOf(pieces[static_cast<std::size_t>(index)].piece);
  }
  QAccessibleInterface* childAt(int x, int y) const override {
    const std::vector<SpokenPiece> pieces = canvas_.spokenPieces();
    const QPoint at = canvas_.mapFromGlobal(QPoint(x, y));
    for (auto piece = pieces.rbegin(); piece != pieces.rend(); ++piece)
      if (piece->box.contains(at))
        return interfaceOf(piece->piece);
    return nullptr;
  }
  int indexOfChild(const QAccessibleInterface* wanted) const override {
    const std::vector<SpokenPiece> pieces = canvas_.spokenPieces();
    for (std::size_t i = 0; i < pieces.size(); ++i)
      if (interfaceOf(pieces[i].piece) == wanted)
        return static_cast<int>(i);
    return -1;
  }

private:
  QAccessibleInterface* interfaceOf(PieceRef piece) const {
    const auto known = ids_.find(piece);
    if (known != ids_.end())
      return QAccessible::accessibleInterface(known->second);
    auto* made = new AccessiblePiece(canvas_, piece); // owned by the toolkit's registry until we give the id back
    ids_[piece] = QAccessible::registerAccessibleInterface(made);
    return made;
  }

  Canvas& canvas_;
  mutable std::map<PieceRef, QAccessible::Id> ids_;
};

QAccessibleInterface* makeAccessible(const QString&, QObject* object) {
  auto* canvas = qobject_cast<Canvas*>(object);
  return canvas ? new AccessibleCanvas(*canvas) : nullptr;
}

} // namespace

void installAccessibleCanvas() {
  static const bool once = [] {
    QAccessible::installFactory(makeAccessible);
    return true;
  }();
  Q_UNUSED(once);
}

} // namespace sillwright
