// Drawing the plan.
#include "ui/window/action_rows.h"

namespace sillwright {

std::vector<ActionRow> planRows() {
  return {
      toggle(row("draw-walls", "Wall", QT_TRANSLATE_NOOP("sillwright::Actions", "Draw walls"), {Qt::Key_F3},
                 [](MainWindow& w) { w.drawWalls(); }),
             [](const MainWindow& w) { return w.bench().pen().has_value(); }),
      row(
          "split-wall", "Wall", QT_TRANSLATE_NOOP("sillwright::Actions", "Split the wall…"), {},
          [](MainWindow& w) { w.splitWall(); }, hasWall),
      row(
          "move-wall", "Wall", QT_TRANSLATE_NOOP("sillwright::Actions", "Move the wall in or out…"), {},
          [](MainWindow& w) { w.moveWall(); }, hasWall),
      row(
          "take-corner", "Wall", QT_TRANSLATE_NOOP("sillwright::Actions", "Take a corner away…"), {},
          [](MainWindow& w) { w.takeCornerAway(); }, hasWalls),
      row("add-rectangle", "Wall", QT_TRANSLATE_NOOP("sillwright::Actions", "Add a rectangle of walls…"), {},
          [](MainWindow& w) { w.addRectangle(); }),
  };
}

} // namespace sillwright
