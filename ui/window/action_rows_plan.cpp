// Drawing the plan.
#include "ui/window/action_rows.h"

namespace sillwright {

std::vector<ActionRow> planRows() {
  return {
      toggle(row("draw-walls", "Wall", QT_TRANSLATE_NOOP("sillwright::Actions", "Draw walls"), {Qt::Key_F3},
                 [](MainWindow& w) { w.drawWalls(); }),
             [](const MainWindow& w) { return w.bench().pen().has_value(); }),
      row("add-rectangle", "Wall", QT_TRANSLATE_NOOP("sillwright::Actions", "Add a rectangle of walls…"), {},
          [](MainWindow& w) { w.addRectangle(); }),
  };
}

} // namespace sillwright
