#include "ui/window/main_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QComboBox>
#include <QFileInfo>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QMimeData>
#include <QPointer>
#include <QScreen>
#include <QSettings>
#include <QToolBar>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/canvas/accessible_canvas.h"
#include "ui/panels/look.h"
#include "ui/sheet/pages.h"

namespace sillwright {

namespace {

constexpr const char* themeSetting = "theme";
constexpr const char* paperSetting = "paper";
constexpr int menuHeight = 30;
constexpr int toolbarHeight = 46;

QString text(const std::string& words) { return QString::fromStdString(words); }

// Undo says what it undoes, as far as it fits beside the counts at the other end of the bar; redo says it in its tip.
int undoWidth(int window) {
  constexpr int wide = 210, narrow = 96, wholeBar = 1180;
  return window < wholeBar ? narrow : wide;
}

// As large as wanted, but with its frame inside the screen.
QSize fittingSize(QSize wanted) {
  constexpr QSize frame{16, 48};
  const QScreen* screen = QGuiApplication::primaryScreen();
  return screen ? wanted.boundedTo(screen->availableSize() - frame) : wanted;
}

QString wallWords(const WallLine& wall) {
  const QString mark = text(wall.mark), title = text(wall.title);
  return title.isEmpty() ? MainWindow::tr("wall %1").arg(mark) : MainWindow::tr("wall %1, %2").arg(mark, title);
}

} // namespace

MainWindow::MainWindow(Workbench& bench, Services services, QWidget* parent)
    : QMainWindow(parent), bench_(bench), services_(std::move(services)), desktop_(QApplication::palette()) {
  installAccessibleCanvas();
  setFont(uiFont(12.5));
  setAcceptDrops(true);
  files_ = new Files(bench, *this, services_);
  makePanels();
  actions_ = new Actions(*this);
  makeMenus();
  makeToolbar();
  connectParts();
  setMinimumSize(900, 560);
  resize(fittingSize(QSize(1600, 1000)));
  const QString paper = QSettings().value(paperSetting).toString();
  if (paperByKey(paper.toStdString()))
    paper_ = paper;
  const QString kept = QSettings().value(themeSetting).toString();
  chooseTheme(kept == QLatin1String("light")  ? ThemeChoice::Light
              : kept == QLatin1String("dark") ? ThemeChoice::Dark
                                              : ThemeChoice::System);
  WorkNotice all;
  all.session = {true, true, true, true, true};
  follow(all);
  elevation_->setFocus();
}

void MainWindow::makePanels() {
  elevation_ = new ElevationCanvas(bench_);
  plan_ = new PlanCanvas(bench_);
  section_ = new SectionCanvas(bench_);
  shelf_ = new Shelf(bench_);
  punchList_ = new PunchList(bench_);
  card_ = new Card(bench_);
  schedule_ = new Schedule(bench_);
  ruleBook_ = new RuleBookPanel(bench_);
  refit_ = new RefitPanel(bench_);
  jobRefit_ = new JobRefitPanel(bench_);
  refitPlace_ = new QStackedWidget;
  refitPlace_->addWidget(refit_);
  refitPlace_->addWidget(jobRefit_);
  types_ = new TypesPanel(bench_);
  status_ = new StatusLine(bench_);
  places_.shelf = new PanelFrame(tr("Shelf"), shelf_);
  places_.elevation = new PanelFrame(tr("Elevation"), elevation_);
  places_.section = new PanelFrame(tr("Section"), section_);
  places_.card = new PanelFrame(tr("Card"), card_);
  places_.plan = new PanelFrame(tr("Plan"), plan_);
  places_.punchList = new PanelFrame(tr("Punch list"), punchList_);
  places_.schedule = new PanelFrame(tr("Wall-end schedule"), schedule_);
  places_.ruleBook = new PanelFrame(tr("Rule book"), ruleBook_);
  places_.refit = new PanelFrame(tr("Refit"), refitPlace_);
  places_.types = new PanelFrame(tr("Hardware and marks"), types_);
  places_.shelf->setNote(tr("drag onto a canvas"));
  arrangement_ = new Arrangement(places_);
  auto* central = new QWidget;
  auto* column = new QVBoxLayout(central);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(arrangement_, 1);
  column->addWidget(status_);
  setCentralWidget(central);
}

// ---- menus and toolbar ------------------------------------------------------------------------------------------

void MainWindow::makeMenus() {
  menuBar()->setFont(uiFont(13));
  menuBar()->setFixedHeight(menuHeight);
  for (const char* title : menuNames()) {
    const std::string name = QString::fromLatin1(title).remove(QLatin1Char('&')).toStdString();
    QMenu* menu = menuBar()->addMenu(Actions::tr(title));
    menu->setFont(uiFont(12.5));
    menu->setObjectName(text(name));
    for (const ActionRow& row : actionTable()) {
      if (std::string_view(row.menu) != name)
        continue;
      menu->addAction((*actions_)[row.id]);
      if (row.separatorAfter)
        menu->addSeparator();
      if (std::string_view(row.id) == "open") {
        QMenu* recent = menu->addMenu(tr("Recent"));
        connect(recent, &QMenu::aboutToShow, this, [this, recent] { fillRecentMenu(*recent); });
      }
    }
    if (name == "Pieces")
      connect(menu, &QMenu::aboutToShow, this, [this, menu] { fillPieceMenu(*menu); });
  }
  jobWords_ = new QLabel;
  jobWords_->setFont(uiFont(12.5));
  jobWords_->setProperty("second", true);
  jobWords_->setContentsMargins(0, 0, 14, 0);
  jobWords_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  jobWords_->setMinimumHeight(menuHeight - 8);
  menuBar()->setCornerWidget(jobWords_);
  for (Canvas* canvas : {static_cast<Canvas*>(elevation_), static_cast<Canvas*>(plan_)}) {
    canvas->setContextMenuPolicy(Qt::ActionsContextMenu);
    for (const char* id : {"copy", "paste", "mirror", "match-pair", "select-kind", "remove", "fit-selection", "fit"})
      canvas->addAction((*actions_)[id]);
  }
  elevation_->addAction((*actions_)["fold"]);
}

void MainWindow::fillPieceMenu(QMenu& menu) {
  menu.clear();
  for (const ShelfItem& item : bench_.shelf()) {
    QAction* action = menu.addAction(tr("Place %1").arg(text(item.title)));
    action->setEnabled(bench_.wall() != nullptr);
    connect(action, &QAction::triggered, this,
            [this, key = item.key] { bench_.placeAt(key, elevation_->middleStation()); });
  }
  menu.addSeparator();
  for (const ActionRow& row : actionTable())
    if (std::string_view(row.menu) == "Pieces")
      menu.addAction((*actions_)[row.id]);
}

void MainWindow::fillRecentMenu(QMenu& menu) {
  menu.clear();
  for (const QString& path : files_->recent())
    connect(menu.addAction(QFileInfo(path).fileName()), &QAction::triggered, this,
            [this, path] { files_->openPath(path); });
  if (menu.isEmpty())
    menu.addAction(tr("none yet"))->setEnabled(false);
}

void MainWindow::makeToolbar() {
  QToolBar* bar = addToolBar(tr("Tools"));
  bar->setObjectName(QStringLiteral("tools"));
  bar->setMovable(false);
  bar->setFloatable(false);
  bar->setContextMenuPolicy(Qt::PreventContextMenu);
  bar->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  bar->setIconSize({20, 20});
  bar->setFixedHeight(toolbarHeight);
  bar->setFont(uiFont(12.5));
  for (const ActionRow& row : actionTable())
    if (row.toolbar) {
      bar->addAction((*actions_)[row.id]);
      auto* button = qobject_cast<QToolButton*>(bar->widgetForAction((*actions_)[row.id]));
      button->setFont(uiFont(12.5));
      if (std::string_view(row.id) == "undo") {
        undo_ = button;
        undo_->setFixedWidth(undoWidth(width())); // a bar whose buttons move under the hand is no bar
      } else if (std::string_view(row.id) == "redo") {
        button->setToolButtonStyle(Qt::ToolButtonIconOnly);
      }
      if (std::string_view(row.id) == "redo" || std::string_view(row.id) == "sheet")
        bar->addSeparator();
    }
  walls_ = new QComboBox;
  walls_->setFont(uiFont(12.5));
  walls_->setAccessibleName(tr("Wall in view"));
  walls_->setMinimumWidth(150);
  walls_->setFixedHeight(26);
  bar->addWidget(walls_);
  auto* stretch = new QWidget;
  stretch->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  bar->addWidget(stretch);
  counts_ = new CountsBar;
  bar->addWidget(counts_);
  auto* whole = new WordButton(tr("whole wall"), nullptr, 12);
  fromInside_ = new WordButton(tr("from inside"), nullptr, 12);
  fromInside_->setCheckable(true);
  connect(whole, &QPushButton::clicked, elevation_, &ElevationCanvas::zoomToFit);
  connect(fromInside_, &QPushButton::clicked, this, [this](bool on) { elevation_->setFromInside(on); });
  folded_ = new WordButton(tr("openings folded"), nullptr, 12);
  folded_->setCheckable(true);
  connect(folded_, &QPushButton::clicked, this, [this](bool on) { elevation_->foldOpenings(on); });
  places_.elevation->addToHead(fromInside_);
  places_.elevation->addToHead(folded_);
  places_.elevation->addToHead(whole);
  makePlanHead();
}

void MainWindow::connectParts() {
  bench_.listen([this, alive = QPointer<MainWindow>(this)](const WorkNotice& notice) {
    if (alive)
      follow(notice);
  });
  for (Canvas* canvas : {static_cast<Canvas*>(elevation_), static_cast<Canvas*>(plan_), static_cast<Canvas*>(section_)})
    connect(canvas, &Canvas::pointed, status_, &StatusLine::setPointer);
  connect(elevation_, &Canvas::viewChanged, this, [this] {
    alignSection();
    showWords();
  });
  connect(shelf_, &Shelf::wanted, this, [this](const QString& key) {
    if (key.startsWith(QLatin1String(starterPrefix)))
      openStarter(key.toStdString().substr(std::string_view(starterPrefix).size()));
    else
      bench_.placeAt(key.toStdString(), elevation_->middleStation());
  });
  connect(counts_, &CountsBar::shownChanged, this, [this] {
    punchList().showLevels(counts_->shown());
    actions_->update();
  });
  connect(walls_, &QComboBox::activated, this, [this](int at) {
    if (at >= 0 && static_cast<std::size_t>(at) < bench_.job().walls.size())
      bench_.session().show(bench_.job().walls[static_cast<std::size_t>(at)].id);
  });
  connect(files_, &Files::changed, this, &MainWindow::showWords);
  connectSchedule();
  connectRuleBook();
  connectTypes();
  connectRefit();
}

// ---- following the work -----------------------------------------------------------------------------------------

void MainWindow::follow(const WorkNotice& notice) {
  elevation_->follow(notice);
  if (notice.refit) { // nothing of the job has changed
    status_->follow();
    jobRefit_->follow(); // only here: as long as it is, its rows grow with the job
    followRefit();
    return showWords();
  }
  arrangement_->showPlanLarge(bench_.pen().has_value());
  plan_->follow(notice);
  section_->follow(notice);
  punchList_->follow(notice);
  card_->follow(notice);
  schedule_->follow(notice);
  ruleBook_->follow();
  types_->follow();
  shelf_->follow(notice);
  status_->follow();
  followRefit();
  counts_->setCounts(bench_.checker().counts());
  const WallList& walls = bench_.job().walls;
  if (notice.session.file || static_cast<std::size_t>(walls_->count()) != walls.size())
    listWalls();
  for (const Id wall : notice.checked)
    if (const auto at = walls.indexOf(wall))
      walls_->setItemText(static_cast<int>(*at), wallWords(walls[*at]));
  if (const auto at = walls.indexOf(bench_.session().wall()))
    walls_->setCurrentIndex(static_cast<int>(*at));
  showWords();
}

void MainWindow::listWalls() {
  walls_->clear();
  const WallList& walls = bench_.job().walls;
  for (std::size_t i = 0; i < walls.size(); ++i)
    walls_->addItem(wallWords(walls[i]));
}

void MainWindow::showWords() {
  const auto wall = bench_.wall();
  places_.elevation->setNote(!wall                     ? tr("no wall yet")
                             : elevation_->fromInside() ? tr("%1, seen from inside").arg(wallWords(*wall->layout.wall))
                                                        : tr("%1, seen from outside").arg(wallWords(*wall->layout.wall)));
  places_.section->setNote(section_->cutWords());
  places_.card->setNote(card_->note());
  if (!bench_.session().previewing())
    places_.plan->setNote(plan_->sizeWords());
  places_.punchList->setNote(punchList_->note());
  places_.schedule->setNote(schedule_->note());
  places_.ruleBook->setNote(ruleBook_->note());
  places_.refit->setNote(refitPlace_->currentWidget() == jobRefit_ ? jobRefit_->note() : refit_->note());
  places_.types->setNote(types_->note());
  fromInside_->setChecked(elevation_->fromInside());
  folded_->setChecked(elevation_->isFolded());
  folded_->setEnabled(elevation_->canFold());
  const QString state = files_->unsaved() ? tr("not saved") : files_->path().isEmpty() ? tr("new") : tr("saved");
  jobWords_->setText(tr("%1 · %2").arg(files_->shortName(), state));
  menuBar()->setCornerWidget(jobWords_); // lays the corner out again for the new words
  jobWords_->show();
  setWindowTitle(tr("%1[*] - Sillwright").arg(files_->shortName()));
  setWindowModified(files_->unsaved());
  actions_->update();
}

void MainWindow::alignSection() {
  const bool beside = !arrangement_->sideAsTabs();
  section_->alignPourLine(beside ? std::optional(elevation_->pourLinePixel()) : std::nullopt);
}

void MainWindow::resizeEvent(QResizeEvent* event) {
  QMainWindow::resizeEvent(event);
  undo_->setFixedWidth(undoWidth(event->size().width()));
  arrangement_->arrange(event->size());
  alignSection();
}

// ---- what the actions do ----------------------------------------------------------------------------------------

void MainWindow::undo() {
  if (bench_.takePenBack())
    return;
  if (bench_.inHand())
    bench_.cancel();
  else
    bench_.session().undo();
}

void MainWindow::redo() {
  bench_.cancel();
  bench_.session().redo();
}

Canvas& MainWindow::activeCanvas() const {
  if (auto* canvas = qobject_cast<Canvas*>(focusWidget()))
    return *canvas;
  return *elevation_;
}

void MainWindow::zoom(double factor) {
  Canvas& canvas = activeCanvas();
  canvas.zoomBy(factor, QRectF(canvas.rect()).center());
}

void MainWindow::focusPanel(int step) {
  const std::vector<PanelFrame*> panels = arrangement_->reachable();
  const auto count = static_cast<int>(panels.size());
  int at = 0;
  for (int i = 0; i < count; ++i)
    if (focusWidget() && panels[static_cast<std::size_t>(i)]->isAncestorOf(focusWidget()))
      at = i;
  PanelFrame& panel = *panels[static_cast<std::size_t>((at + step + count) % count)];
  arrangement_->raisePanel(panel);
  QWidget* target = panel.body()->focusProxy() ? panel.body()->focusProxy() : panel.body();
  if (target->focusPolicy() == Qt::NoFocus) // a scroll area: its first control takes the keyboard
    for (QWidget* child : target->findChildren<QWidget*>())
      if ((child->focusPolicy() & Qt::TabFocus) && child->isVisibleTo(&panel)) {
        target = child;
        break;
      }
  target->setFocus(Qt::TabFocusReason);
}

void MainWindow::showWallBeside(int step) {
  const WallList& walls = bench_.job().walls;
  const auto at = walls.indexOf(bench_.session().wall());
  if (!at)
    return;
  const auto count = static_cast<int>(walls.size());
  const int next = (static_cast<int>(*at) + step + count) % count;
  bench_.session().show(walls[static_cast<std::size_t>(next)].id);
}

void MainWindow::showFindingBeside(int step) {
  const int count = punchList().rowCount();
  if (count == 0)
    return;
  const int now = punchList_->currentIndex().row();
  const int next = now < 0 ? (step > 0 ? 0 : count - 1) : (now + step + count) % count;
  arrangement_->raisePanel(*places_.punchList);
  punchList_->setCurrentIndex(punchList().index(next));
  punchList_->goToRow(next);
}

void MainWindow::putRight() { punchList_->fixRow(std::max(punchList_->currentIndex().row(), 0)); }

void MainWindow::toggleLevel(Level level) {
  counts_->setShown(level, !counts_->shown()[static_cast<std::size_t>(level)]);
}

void MainWindow::choosePaper(const QString& key) {
  paper_ = key;
  QSettings().setValue(paperSetting, key);
}

// ---- theme ------------------------------------------------------------------------------------------------------

void MainWindow::chooseTheme(ThemeChoice choice) {
  themeChoice_ = choice;
  QSettings().setValue(themeSetting, choice == ThemeChoice::Light  ? QStringLiteral("light")
                                     : choice == ThemeChoice::Dark ? QStringLiteral("dark")
                                                                   : QStringLiteral("system"));
  theme_ = themeFor(choice, desktop_);
  applyTheme();
}

void MainWindow::applyTheme() {
  QApplication::setPalette(paletteOf(theme_));
  setStyleSheet(styleSheetOf(theme_));
  for (PanelFrame* panel : places_.all())
    panel->setTheme(theme_);
  elevation_->setTheme(theme_);
  plan_->setTheme(theme_);
  section_->setTheme(theme_);
  shelf_->setTheme(theme_);
  punchList_->setTheme(theme_);
  card_->setTheme(theme_);
  schedule_->setTheme(theme_);
  ruleBook_->setTheme(theme_);
  refit_->setTheme(theme_);
  jobRefit_->setTheme(theme_);
  types_->setTheme(theme_);
  counts_->setTheme(theme_);
  status_->setTheme(theme_);
  actions_->setTheme(theme_);
  actions_->update();
}

// ---- closing and files dropped on the window --------------------------------------------------------------------

// What is in hand is let go of while everything that shows it still stands.
MainWindow::~MainWindow() {
  bench_.cancel();
  bench_.refitDesk().close();
  bench_.jobRefitDesk().close();
  bench_.refitDesk().solveBy({});
  bench_.jobRefitDesk().solveBy({});
}

void MainWindow::closeEvent(QCloseEvent* event) {
  bench_.cancel();
  event->setAccepted(files_->mayLeave());
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  if (event->mimeData()->hasUrls())
    event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  const QList<QUrl> urls = event->mimeData()->urls();
  if (!urls.isEmpty() && urls.first().isLocalFile())
    files_->openPath(urls.first().toLocalFile());
}

} // namespace sillwright
