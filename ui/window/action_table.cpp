#include "ui/window/action_rows.h"

#include <QCoreApplication>

#include <array>
#include <utility>

namespace sillwright {

namespace {

bool canAccept(const MainWindow& window) {
  return window.canAcceptRefit();
}
bool hasFindings(const MainWindow& window) { return window.punchList().rowCount() > 0; }

QString shown(const char* text) { return QCoreApplication::translate("sillwright::Actions", text); }

bool drawing(const MainWindow& window) {
  return window.bench().pen() && !window.bench().pen()->corners.empty();
}

bool canUndo(const MainWindow& window) {
  return drawing(window) || window.bench().session().previewing() || window.bench().session().history().canUndo();
}
bool canRedo(const MainWindow& window) { return window.bench().session().history().canRedo(); }

QString undoWords(const MainWindow& window) {
  if (drawing(window))
    return shown("Undo: the last corner");
  const History& history = window.bench().session().history();
  return history.canUndo() ? shown("Undo: %1").arg(QString::fromStdString(history.undoName())) : shown("Undo");
}
QString redoWords(const MainWindow& window) {
  const History& history = window.bench().session().history();
  return history.canRedo() ? shown("Redo: %1").arg(QString::fromStdString(history.redoName())) : shown("Redo");
}

auto theme(ThemeChoice choice) {
  return [choice](MainWindow& window) { window.chooseTheme(choice); };
}
auto themeIs(ThemeChoice choice) {
  return [choice](const MainWindow& window) { return window.themeChoice() == choice; };
}
auto level(Level which) {
  return [which](MainWindow& window) { window.toggleLevel(which); };
}
auto levelShown(Level which) {
  return [which](const MainWindow& window) { return window.punchList().levels()[static_cast<std::size_t>(which)]; };
}

std::vector<ActionRow> jobRows() {
  return {
      row("new", "Job", QT_TRANSLATE_NOOP("sillwright::Actions", "New"), QKeySequence::keyBindings(QKeySequence::New),
          [](MainWindow& w) { w.files().newJob(); }),
      row("open", "Job", QT_TRANSLATE_NOOP("sillwright::Actions", "Open…"),
          QKeySequence::keyBindings(QKeySequence::Open), [](MainWindow& w) { w.files().open(); }),
      row("save", "Job", QT_TRANSLATE_NOOP("sillwright::Actions", "Save"),
          QKeySequence::keyBindings(QKeySequence::Save), [](MainWindow& w) { w.files().save(); }),
      last(row("save-as", "Job", QT_TRANSLATE_NOOP("sillwright::Actions", "Save as…"), {Qt::CTRL | Qt::SHIFT | Qt::Key_S},
               [](MainWindow& w) { w.files().saveAs(); })),
      row("title-block", "Job", QT_TRANSLATE_NOOP("sillwright::Actions", "Title block…"), {},
          [](MainWindow& w) { w.editTitleBlock(); }),
      toggle(row("types", "Job", QT_TRANSLATE_NOOP("sillwright::Actions", "Hardware and marks…"), {Qt::Key_F7},
                 [](MainWindow& w) { w.typesShown() ? w.leaveTypes() : w.openTypes(); }),
             [](const MainWindow& w) { return w.typesShown(); }),
      last(row("job-options", "Job", QT_TRANSLATE_NOOP("sillwright::Actions", "Options from the plans…"), {},
               [](MainWindow& w) { w.editJobOptions(); })),
      row("quit", "Job", QT_TRANSLATE_NOOP("sillwright::Actions", "Quit"), {Qt::CTRL | Qt::Key_Q},
          [](MainWindow& w) { w.close(); }),
  };
}

std::vector<ActionRow> editRows() {
  return {
      worded(inToolbar(row("undo", "Edit", QT_TRANSLATE_NOOP("sillwright::Actions", "Undo"),
                           QKeySequence::keyBindings(QKeySequence::Undo), [](MainWindow& w) { w.undo(); }, canUndo),
                       "undo"),
             undoWords),
      last(worded(inToolbar(row("redo", "Edit", QT_TRANSLATE_NOOP("sillwright::Actions", "Redo"),
                                {Qt::CTRL | Qt::SHIFT | Qt::Key_Z, Qt::CTRL | Qt::Key_Y},
                                [](MainWindow& w) { w.redo(); }, canRedo),
                            "redo"),
                  redoWords)),
      row("select-kind", "Edit", QT_TRANSLATE_NOOP("sillwright::Actions", "Select all of this kind"),
          QKeySequence::keyBindings(QKeySequence::SelectAll), [](MainWindow& w) { w.bench().selectAllOfKind(); },
          hasSelection),
      row("select-next", "Edit", QT_TRANSLATE_NOOP("sillwright::Actions", "Select the next piece"), {},
          [](MainWindow& w) { w.bench().selectNext(false); }, hasWall),
      last(row("select-previous", "Edit", QT_TRANSLATE_NOOP("sillwright::Actions", "Select the piece before"), {},
               [](MainWindow& w) { w.bench().selectNext(true); }, hasWall)),
      last(row("remove", "Edit", QT_TRANSLATE_NOOP("sillwright::Actions", "Remove"), {Qt::Key_Delete},
               [](MainWindow& w) { w.bench().removeSelected(); }, hasSelection)),
  };
}

std::vector<ActionRow> seeRows() {
  return {
      row("fit", "See", QT_TRANSLATE_NOOP("sillwright::Actions", "Whole wall"), {Qt::CTRL | Qt::Key_0},
          [](MainWindow& w) { w.activeCanvas().zoomToFit(); }, hasWall),
      row("fit-selection", "See", QT_TRANSLATE_NOOP("sillwright::Actions", "What is selected"),
          {Qt::CTRL | Qt::Key_9}, [](MainWindow& w) { w.activeCanvas().zoomToSelection(); }, hasWall),
      row("nearer", "See", QT_TRANSLATE_NOOP("sillwright::Actions", "Nearer"),
          {Qt::CTRL | Qt::Key_Plus, Qt::CTRL | Qt::Key_Equal}, [](MainWindow& w) { w.zoom(1.25); }, hasWall),
      row("farther", "See", QT_TRANSLATE_NOOP("sillwright::Actions", "Farther"), {Qt::CTRL | Qt::Key_Minus},
          [](MainWindow& w) { w.zoom(0.8); }, hasWall),
      last(toggle(row("from-inside", "See", QT_TRANSLATE_NOOP("sillwright::Actions", "From inside"),
                      {Qt::CTRL | Qt::Key_I},
                      [](MainWindow& w) { w.elevation().setFromInside(!w.elevation().fromInside()); }, hasWall),
                  [](const MainWindow& w) { return w.elevation().fromInside(); })),
      last(toggle(row("rule-book", "See", QT_TRANSLATE_NOOP("sillwright::Actions", "Rule book"), {Qt::Key_F9},
                      [](MainWindow& w) { w.ruleBookShown() ? w.leaveRuleBook() : w.openRuleBook(); }),
                  [](const MainWindow& w) { return w.ruleBookShown(); })),
      row("next-panel", "See", QT_TRANSLATE_NOOP("sillwright::Actions", "Next panel"), {Qt::Key_F6},
          [](MainWindow& w) { w.focusPanel(1); }),
      last(row("previous-panel", "See", QT_TRANSLATE_NOOP("sillwright::Actions", "Panel before"),
               {Qt::SHIFT | Qt::Key_F6}, [](MainWindow& w) { w.focusPanel(-1); })),
      toggle(row("light", "See", QT_TRANSLATE_NOOP("sillwright::Actions", "Light"), {}, theme(ThemeChoice::Light)),
             themeIs(ThemeChoice::Light)),
      toggle(row("dark", "See", QT_TRANSLATE_NOOP("sillwright::Actions", "Dark"), {}, theme(ThemeChoice::Dark)),
             themeIs(ThemeChoice::Dark)),
      toggle(row("system", "See", QT_TRANSLATE_NOOP("sillwright::Actions", "As the desktop"), {},
                 theme(ThemeChoice::System)),
             themeIs(ThemeChoice::System)),
  };
}

std::vector<ActionRow> wallRows() {
  return {
      row(
          "next-wall", "Wall", QT_TRANSLATE_NOOP("sillwright::Actions", "Next wall"), {Qt::CTRL | Qt::Key_PageDown},
          [](MainWindow& w) { w.showWallBeside(1); }, hasWalls),
      last(row(
          "previous-wall", "Wall", QT_TRANSLATE_NOOP("sillwright::Actions", "Wall before"), {Qt::CTRL | Qt::Key_PageUp},
          [](MainWindow& w) { w.showWallBeside(-1); }, hasWalls)),
      inToolbar(row(
                    "refit", "Wall", QT_TRANSLATE_NOOP("sillwright::Actions", "Refit"), {Qt::Key_F5},
                    [](MainWindow& w) { w.refitWall(RefitDesk::Aim::LeastMoved); }, hasWall),
                "refit"),
      row(
          "refit-all", "Wall", QT_TRANSLATE_NOOP("sillwright::Actions", "Refit all walls"),
          {Qt::CTRL | Qt::SHIFT | Qt::Key_F5}, [](MainWindow& w) { w.refitAllWalls(); }, hasWall),
      row(
          "lay-out", "Wall", QT_TRANSLATE_NOOP("sillwright::Actions", "Lay out wall"), {Qt::SHIFT | Qt::Key_F5},
          [](MainWindow& w) { w.refitWall(RefitDesk::Aim::LayOut); }, hasWall),
      last(row(
          "accept-refit", "Wall", QT_TRANSLATE_NOOP("sillwright::Actions", "Accept the refit"), {Qt::CTRL | Qt::Key_F5},
          [](MainWindow& w) { w.acceptRefit(); }, canAccept)),
      row(
          "tape-diagonal", "Wall", QT_TRANSLATE_NOOP("sillwright::Actions", "Diagonal as taped…"), {},
          [](MainWindow& w) { w.tapeDiagonal(); }, hasWalls),
      last(row(
          "wall-fields", "Wall", QT_TRANSLATE_NOOP("sillwright::Actions", "Card of the wall"), {},
          [](MainWindow& w) { w.bench().session().select({}); }, hasWall)),
  };
}

std::vector<ActionRow> checkRows() {
  return {
      inToolbar(row("next-finding", "Check", QT_TRANSLATE_NOOP("sillwright::Actions", "Next finding"), {Qt::Key_F8},
                    [](MainWindow& w) { w.showFindingBeside(1); }, hasFindings),
                "punch-list"),
      row("previous-finding", "Check", QT_TRANSLATE_NOOP("sillwright::Actions", "Finding before"),
          {Qt::SHIFT | Qt::Key_F8}, [](MainWindow& w) { w.showFindingBeside(-1); }, hasFindings),
      row("put-right", "Check", QT_TRANSLATE_NOOP("sillwright::Actions", "Put it right"),
          {Qt::CTRL | Qt::Key_Return}, [](MainWindow& w) { w.putRight(); }, hasFindings),
      last(row("why", "Check", QT_TRANSLATE_NOOP("sillwright::Actions", "Why: the rule of this finding"),
               {Qt::SHIFT | Qt::Key_F9}, [](MainWindow& w) { w.explainFinding(); },
               hasFindings)),
      toggle(row("show-fix", "Check", QT_TRANSLATE_NOOP("sillwright::Actions", "Show FIX"), {}, level(Level::Fix)),
             levelShown(Level::Fix)),
      toggle(row("show-ask", "Check", QT_TRANSLATE_NOOP("sillwright::Actions", "Show ASK"), {}, level(Level::Ask)),
             levelShown(Level::Ask)),
      toggle(row("show-watch", "Check", QT_TRANSLATE_NOOP("sillwright::Actions", "Show WATCH"), {},
                 level(Level::Watch)),
             levelShown(Level::Watch)),
  };
}

ActionRow paperRow(const char* id, const char* name) {
  return toggle(row(id, "Sheet", name, {}, [id](MainWindow& w) { w.choosePaper(QLatin1String(id)); }),
                [id](const MainWindow& w) { return w.paper() == QLatin1String(id); });
}

// The ids of papers are the names that the command line takes.
std::vector<ActionRow> sheetRows() {
  return {
      last(inToolbar(row("sheet", "Sheet", QT_TRANSLATE_NOOP("sillwright::Actions", "Layout sheet…"),
                         QKeySequence::keyBindings(QKeySequence::Print), [](MainWindow& w) { w.writeSheet(); },
                         [](const MainWindow& w) { return w.canWriteSheet() && hasWall(w); }),
                     "sheet")),
      paperRow("letter", QT_TRANSLATE_NOOP("sillwright::Actions", "On Letter")),
      paperRow("tabloid", QT_TRANSLATE_NOOP("sillwright::Actions", "On Tabloid")),
      paperRow("arch-b", QT_TRANSLATE_NOOP("sillwright::Actions", "On ARCH B")),
      paperRow("arch-c", QT_TRANSLATE_NOOP("sillwright::Actions", "On ARCH C")),
      paperRow("arch-d", QT_TRANSLATE_NOOP("sillwright::Actions", "On ARCH D")),
      paperRow("a4", QT_TRANSLATE_NOOP("sillwright::Actions", "On A4")),
      paperRow("a3", QT_TRANSLATE_NOOP("sillwright::Actions", "On A3")),
  };
}

std::vector<ActionRow> helpRows() {
  return {
      row("keys", "Help", QT_TRANSLATE_NOOP("sillwright::Actions", "Keys"), {Qt::Key_F1},
          [](MainWindow& w) { w.showKeys(); }),
      row("levels", "Help", QT_TRANSLATE_NOOP("sillwright::Actions", "FIX, ASK, WATCH and other words"), {},
          [](MainWindow& w) { w.explainWords(); }),
      row("about", "Help", QT_TRANSLATE_NOOP("sillwright::Actions", "About Sillwright"), {},
          [](MainWindow& w) { w.showAbout(); }),
  };
}

} // namespace

std::span<const ActionRow> actionTable() {
  static const std::vector<ActionRow> table = [] {
    std::vector<ActionRow> rows;
    for (std::vector<ActionRow> part :
         {jobRows(), editRows(), copyRows(), scheduleRows(), foldRows(), seeRows(), wallRows(), planRows(), starterRows(), checkRows(),
          punchFilterRows(), sheetRows(), helpRows()})
      for (ActionRow& made : part)
        rows.push_back(std::move(made));
    return rows;
  }();
  return table;
}

std::span<const char* const> menuNames() {
  static constexpr std::array<const char*, 8> names{
      QT_TRANSLATE_NOOP("sillwright::Actions", "&Job"),   QT_TRANSLATE_NOOP("sillwright::Actions", "&Edit"),
      QT_TRANSLATE_NOOP("sillwright::Actions", "&See"),   QT_TRANSLATE_NOOP("sillwright::Actions", "&Wall"),
      QT_TRANSLATE_NOOP("sillwright::Actions", "&Pieces"), QT_TRANSLATE_NOOP("sillwright::Actions", "&Check"),
      QT_TRANSLATE_NOOP("sillwright::Actions", "Shee&t"), QT_TRANSLATE_NOOP("sillwright::Actions", "&Help")};
  return names;
}

} // namespace sillwright
