// Rows of the action table about the wall-end schedule, the filters of the punch list, and what is pasted.
#include "ui/window/action_rows.h"

#include <QCoreApplication>

namespace sillwright {

std::vector<ActionRow> scheduleRows() {
  return {
      toggle(row(
                 "schedule-this-wall", "See", QT_TRANSLATE_NOOP("sillwright::Actions", "Schedule of this wall alone"),
                 {}, [](MainWindow& w) { w.schedule().showThisWall(!w.schedule().ends().thisWall()); }, hasWall),
             [](const MainWindow& w) { return w.schedule().ends().thisWall(); }),
      last(row("filter-schedule", "See", QT_TRANSLATE_NOOP("sillwright::Actions", "Find in the schedule"),
               {Qt::CTRL | Qt::Key_F}, [](MainWindow& w) { w.findInSchedule(); })),
      row(
          "copy-ends", "Edit", QT_TRANSLATE_NOOP("sillwright::Actions", "Copy the schedule's rows"), {},
          [](MainWindow& w) { w.schedule().copyRows(); },
          [](const MainWindow& w) { return w.schedule().ends().rowCount() > 0; }),
      row(
          "paste-ends", "Edit", QT_TRANSLATE_NOOP("sillwright::Actions", "Paste into the schedule"), {},
          [](MainWindow& w) { w.pasteIntoSchedule(); }, hasWall),
      row(
          "paste-bars", "Pieces", QT_TRANSLATE_NOOP("sillwright::Actions", "Bars from a pasted column…"), {},
          [](MainWindow& w) { w.pasteBars(); }, hasWall),
  };
}

std::vector<ActionRow> punchFilterRows() {
  return {
      toggle(row(
                 "punch-this-wall", "Check", QT_TRANSLATE_NOOP("sillwright::Actions", "Only this wall"), {},
                 [](MainWindow& w) { w.punchListView().showThisWall(!w.punchList().thisWall()); }, hasWall),
             [](const MainWindow& w) { return w.punchList().thisWall(); }),
      toggle(row(
                 "punch-this-rule", "Check", QT_TRANSLATE_NOOP("sillwright::Actions", "Only the rule of this finding"),
                 {}, [](MainWindow& w) { w.showOnlyThisRule(); },
                 [](const MainWindow& w) { return w.punchList().shownRule() || w.punchList().rowCount() > 0; }),
             [](const MainWindow& w) { return w.punchList().shownRule().has_value(); }),
  };
}

} // namespace sillwright
