// Copy, paste, mirror, repeat, match a pair.
#include "ui/window/action_rows.h"

namespace sillwright {

std::vector<ActionRow> copyRows() {
  return {
      row(
          "copy", "Edit", QT_TRANSLATE_NOOP("sillwright::Actions", "Copy"),
          QKeySequence::keyBindings(QKeySequence::Copy), [](MainWindow& w) { w.copyPieces(); }, hasSelection),
      last(row(
          "paste", "Edit", QT_TRANSLATE_NOOP("sillwright::Actions", "Paste"),
          QKeySequence::keyBindings(QKeySequence::Paste), [](MainWindow& w) { w.pastePieces(); }, hasWall)),
      row(
          "mirror", "Edit", QT_TRANSLATE_NOOP("sillwright::Actions", "Mirror to the other end"), {Qt::CTRL | Qt::Key_M},
          [](MainWindow& w) { w.mirrorPieces(); }, hasSelection),
      row(
          "repeat", "Edit", QT_TRANSLATE_NOOP("sillwright::Actions", "Repeat along the sill…"), {Qt::CTRL | Qt::Key_R},
          [](MainWindow& w) { w.repeatPieces(); }, hasSelection),
      row(
          "match-pair", "Edit", QT_TRANSLATE_NOOP("sillwright::Actions", "Match a pair of straps"),
          {Qt::CTRL | Qt::Key_E}, [](MainWindow& w) { w.matchPair(); }, hasSelection),
  };
}

} // namespace sillwright
