// Folding the openings of the wall in view.
#include "ui/window/action_rows.h"

namespace sillwright {

std::vector<ActionRow> foldRows() {
  return {
      toggle(row(
                 "fold", "See", QT_TRANSLATE_NOOP("sillwright::Actions", "Fold the openings"), {Qt::CTRL | Qt::Key_8},
                 [](MainWindow& w) { w.elevation().foldOpenings(!w.elevation().isFolded()); },
                 [](const MainWindow& w) { return w.elevation().canFold(); }),
             [](const MainWindow& w) { return w.elevation().isFolded(); })};
}

} // namespace sillwright
