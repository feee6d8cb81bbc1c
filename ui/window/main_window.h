// The window: puts canvases and panels in their places and passes on what the workbench tells. It decides nothing
// itself.
#pragma once

#include <QMainWindow>
#include <QPalette>
#include <QPointer>
#include <QStackedWidget>

#include <functional>

#include "ui/canvas/elevation_canvas.h"
#include "ui/canvas/plan_canvas.h"
#include "ui/canvas/section_canvas.h"
#include "ui/panels/card.h"
#include "ui/panels/job_refit_panel.h"
#include "ui/panels/job_refit_runner.h"
#include "ui/panels/panel_frame.h"
#include "ui/panels/punch_list.h"
#include "ui/panels/refit_panel.h"
#include "ui/panels/refit_runner.h"
#include "ui/panels/rule_book_panel.h"
#include "ui/panels/schedule.h"
#include "ui/panels/shelf.h"
#include "ui/panels/types_panel.h"
#include "ui/window/actions.h"
#include "ui/window/arrangement.h"
#include "ui/window/counts_bar.h"
#include "ui/window/files.h"
#include "ui/window/look_sheet.h"
#include "ui/window/status_line.h"

class QComboBox;
class QLineEdit;
class QMenu;
class QLabel;
class QToolButton;

namespace sillwright {

class MainWindow : public QMainWindow {
  Q_OBJECT

public:
  // The workbench outlives the window.
  MainWindow(Workbench& bench, Services services, QWidget* parent = nullptr);
  ~MainWindow() override;

  Workbench& bench() const { return bench_; }
  Files& files() { return *files_; }
  Actions& actions() { return *actions_; }
  ElevationCanvas& elevation() const { return *elevation_; }
  PlanCanvas& plan() const { return *plan_; }
  SectionCanvas& section() const { return *section_; }
  Shelf& shelf() const { return *shelf_; }
  PunchList& punchListView() const { return *punchList_; }
  PunchListModel& punchList() const { return punchList_->findings(); }
  Card& card() const { return *card_; }
  Schedule& schedule() const { return *schedule_; }
  RefitPanel& refitPanel() const { return *refit_; }
  JobRefitPanel& jobRefitPanel() const { return *jobRefit_; }
  RuleBookPanel& ruleBookPanel() const { return *ruleBook_; }
  TypesPanel& typesPanel() const { return *types_; }
  CountsBar& counts() const { return *counts_; }
  StatusLine& status() const { return *status_; }

  // ---- what the actions do
  void undo();
  void redo();
  Canvas& activeCanvas() const; // the one with the keyboard, or the elevation
  void zoom(double factor);
  void focusPanel(int step);
  void showWallBeside(int step);
  void drawWalls();   // takes the pen for the plan up, or puts it down
  void copyPieces();  // of the wall in view, for pastePieces and as text
  void pastePieces(); // at the column selected, under the pointer, or in the middle of the view
  void mirrorPieces();
  void repeatPieces(); // asks for a spacing
  void matchPair();
  void openStarter(std::string_view key); // asks for its lengths
  void splitWall();                       // the one in view; asks where
  void moveWall();                        // … parallel to itself; asks how far
  void takeCornerAway();                  // … asks which of its two
  void addRectangle();                    // four walls; asks for their lengths
  void tapeDiagonal();                    // between two corners, as measured on the forms
  void editTitleBlock();
  void editJobOptions();
  bool ruleBookShown() const { return arrangement_->ruleBookShown(); }
  void openRuleBook();  // with the keyboard in its search line
  void leaveRuleBook(); // back to where the keyboard was
  void showRule(RuleId id);
  bool typesShown() const { return arrangement_->typesShown(); }
  void openTypes(Id type = {});       // hardware and marks, at that one
  void leaveTypes();                  // back to where the keyboard was
  void refitWall(RefitDesk::Aim aim); // proposes for the wall in view, with the keyboard in the list of changes
  void refitAllWalls();               // proposes for all walls, with the keyboard in their list
  bool canAcceptRefit() const;
  void acceptRefit(); // of the wall that is looked at, or of all walls that are ticked
  bool refitShown() const { return arrangement_->refitShown(); }
  bool jobRefitShown() const { return refitShown() && refitPlace_->currentWidget() == jobRefit_; }
  void explainFinding(); // the rule of the current row of the punch list, or of its first
  void changeLimitOfJob(const QString& limit);
  void changeCountsOfRule(const QString& rule);
  void findInSchedule();
  void pasteIntoSchedule(); // the table on the clipboard
  void pasteBars();         // a column of stations, onto the wall in view
  void showOnlyThisRule();  // of the current finding in the punch list; or all rules again
  void showFindingBeside(int step);
  void putRight();
  void toggleLevel(Level level);
  void chooseTheme(ThemeChoice choice);
  ThemeChoice themeChoice() const { return themeChoice_; }
  ThemeName theme() const { return theme_; }
  bool canWriteSheet() const { return static_cast<bool>(services_.writeSheet); }
  void writeSheet();
  void choosePaper(const QString& key); // of the layout sheet; remembered
  const QString& paper() const { return paper_; }
  void showKeys();
  void explainWords(); // what FIX, ASK, WATCH and the like mean
  void showAbout();

protected:
  void closeEvent(QCloseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

private:
  void makePanels();
  void makeMenus();
  void makeToolbar();
  void makePlanHead();
  void showPlanMenu(QPoint at);
  void connectParts();
  void follow(const WorkNotice& notice);
  void showWords(); // heads, title, status, actions
  void listWalls();
  void fillPieceMenu(QMenu& menu);
  void fillRecentMenu(QMenu& menu);
  void alignSection();
  void raiseRuleBook();
  void connectSchedule();
  void connectRuleBook();
  void connectTypes();
  void connectRefit();
  void followRefit();
  void putRefitAway(); // what is in front of it: the wall that is looked at, or the list of all
  void tellHowRefitEnded();
  void startRefit(); // the keyboard goes to it, and comes back from it
  void applyTheme();

  Workbench& bench_;
  Services services_;
  QPalette desktop_;
  ThemeChoice themeChoice_ = ThemeChoice::System;
  QString paper_ = QStringLiteral("tabloid");
  ThemeName theme_ = ThemeName::Light;
  Files* files_ = nullptr;
  Actions* actions_ = nullptr;
  ElevationCanvas* elevation_ = nullptr;
  PlanCanvas* plan_ = nullptr;
  SectionCanvas* section_ = nullptr;
  Shelf* shelf_ = nullptr;
  PunchList* punchList_ = nullptr;
  Card* card_ = nullptr;
  Schedule* schedule_ = nullptr;
  QLineEdit* find_ = nullptr; // in the schedule
  RuleBookPanel* ruleBook_ = nullptr;
  RefitPanel* refit_ = nullptr;
  RefitRunner* refitRunner_ = nullptr;
  JobRefitPanel* jobRefit_ = nullptr;
  JobRefitRunner* jobRefitRunner_ = nullptr;
  QStackedWidget* refitPlace_ = nullptr; // the two of them
  WordButton* leaveRefit_ = nullptr;
  bool refitWasOpen_ = false;
  bool jobRefitWasOpen_ = false;
  TypesPanel* types_ = nullptr;
  QPointer<QWidget> beforeRuleBook_; // had the keyboard
  QPointer<QWidget> beforeTypes_;
  QPointer<QWidget> beforeRefit_;
  Places places_;
  Arrangement* arrangement_ = nullptr;
  CountsBar* counts_ = nullptr;
  StatusLine* status_ = nullptr;
  QComboBox* walls_ = nullptr;
  QLabel* jobWords_ = nullptr;
  QToolButton* undo_ = nullptr;
  WordButton* fromInside_ = nullptr;
  WordButton* folded_ = nullptr;
  bool listing_ = false;
};

} // namespace sillwright
