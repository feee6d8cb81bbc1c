#include "ui/window/arrangement.h"

#include <QHBoxLayout>
#include <QSplitter>
#include <QTabWidget>

#include <algorithm>

namespace sillwright {

namespace {

constexpr int shelfWidth = 176;
constexpr int sideWidth = 360;
constexpr int narrowSideWidth = 300;
constexpr int ruleBookWidth = 400;
constexpr int rowHeight = 311;
constexpr int tabRowHeight = 236;

QSplitter* makeSplit(Qt::Orientation orientation, QWidget* parent = nullptr) {
  auto* split = new QSplitter(orientation, parent);
  split->setHandleWidth(1);
  split->setChildrenCollapsible(false);
  return split;
}

} // namespace

Arrangement::Arrangement(const Places& places, QWidget* parent)
    : QWidget(parent), elevation_(places.elevation), plan_(places.plan), all_(places.all()), ruleBook_(places.ruleBook),
      refit_(places.refit), types_(places.types) {
  side_ = share(Qt::Vertical, {places.section, places.card}, {558, 337});
  row_ = share(Qt::Horizontal, {places.plan, places.punchList, places.schedule}, {232, 340, 488});
  middle_ = makeSplit(Qt::Vertical);
  middle_->addWidget(places.elevation);
  for (QWidget* widget : {static_cast<QWidget*>(row_.split), static_cast<QWidget*>(row_.tabs)})
    middle_->addWidget(widget);
  middle_->setStretchFactor(0, 1);
  columns_ = makeSplit(Qt::Horizontal);
  columns_->addWidget(places.shelf);
  columns_->addWidget(middle_);
  for (QWidget* widget : {static_cast<QWidget*>(side_.split), static_cast<QWidget*>(side_.tabs)})
    columns_->addWidget(widget);
  for (PanelFrame* panel : {ruleBook_, refit_, types_})
    columns_->addWidget(panel);
  columns_->setStretchFactor(1, 1);
  for (PanelFrame* panel : places.all())
    panel->setMinimumSize(120, 80);
  places.shelf->setMinimumWidth(shelfWidth);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(columns_);
  showAsTabs(side_, false);
  showAsTabs(row_, false);
  for (PanelFrame* panel : {ruleBook_, refit_, types_})
    panel->hide();
  arrange({1600, 1000});
}

Arrangement::Shared Arrangement::share(Qt::Orientation orientation, std::vector<PanelFrame*> panels,
                                       std::vector<int> sizes) {
  auto* tabs = new QTabWidget;
  tabs->setDocumentMode(true);
  return {makeSplit(orientation), tabs, std::move(panels), std::move(sizes)};
}

void Arrangement::showAsTabs(Shared& shared, bool tabs) {
  for (PanelFrame* panel : shared.panels) {
    if (tabs)
      shared.tabs->addTab(panel, panel->title());
    else
      shared.split->addWidget(panel);
    panel->show();
  }
  shared.split->setVisible(!tabs);
  shared.tabs->setVisible(tabs);
  if (!tabs)
    shared.split->setSizes(QList<int>(shared.sizes.begin(), shared.sizes.end()));
}

void Arrangement::arrange(QSize window) {
  window_ = window;
  const bool sideTabs = window.width() < narrow, rowTabs = window.height() < low;
  if (sideTabs != sideTabbed_)
    showAsTabs(side_, sideTabbed_ = sideTabs);
  if (rowTabs != rowTabbed_)
    showAsTabs(row_, rowTabbed_ = rowTabs);
  placeColumns();
  const int row = rowTabs ? tabRowHeight : rowHeight;
  const int high = std::max(window.height() - 76 - 28 - row - 1, 100);
  middle_->setSizes({high, rowTabs ? 0 : row, rowTabs ? row : 0});
  placeMiddle();
}

void Arrangement::placeMiddle() {
  elevation_->setVisible(!planLarge_);
  if (!rowTabbed_)
    for (PanelFrame* panel : row_.panels)
      panel->setVisible(!planLarge_ || panel == plan_);
}

void Arrangement::showPlanLarge(bool large) {
  if (planLarge_ == large)
    return;
  planLarge_ = large;
  if (large) {
    rowBefore_ = row_.split->sizes();
    middleBefore_ = middle_->sizes();
  }
  placeMiddle();
  if (!large) {
    row_.split->setSizes(rowBefore_);
    middle_->setSizes(middleBefore_);
  }
}

PanelFrame* Arrangement::aside() const {
  return ruleBookShown_ ? ruleBook_ : refitShown_ ? refit_ : nullptr;
}

void Arrangement::placeColumns() {
  PanelFrame* const shown = aside();
  middle_->setVisible(!typesShown_);
  types_->setVisible(typesShown_);
  side_.split->setVisible(!typesShown_ && !shown && !sideTabbed_);
  side_.tabs->setVisible(!typesShown_ && !shown && sideTabbed_);
  for (PanelFrame* panel : {ruleBook_, refit_})
    panel->setVisible(!typesShown_ && panel == shown);
  if (typesShown_)
    return columns_->setSizes({shelfWidth, 0, 0, 0, 0, 0, std::max(window_.width() - shelfWidth - 1, 100)});
  const int side = sideTabbed_                                 ? narrowSideWidth
                   : ruleBookShown_ && window_.width() >= 1500 ? ruleBookWidth
                                                               : sideWidth;
  const int wide = std::max(window_.width() - shelfWidth - side - 2, 100);
  const auto sized = [side](bool stands) { return stands ? side : 0; };
  columns_->setSizes({shelfWidth, wide, sized(!shown && !sideTabbed_), sized(!shown && sideTabbed_),
                      sized(shown == ruleBook_), sized(shown == refit_), 0});
}

void Arrangement::showRuleBook(bool shown) {
  ruleBookShown_ = shown;
  typesShown_ = false;
  placeColumns();
}

void Arrangement::showRefit(bool shown) {
  refitShown_ = shown;
  typesShown_ = typesShown_ && !shown;
  placeColumns();
}

void Arrangement::showTypes(bool shown) {
  typesShown_ = shown;
  placeColumns();
}

bool Arrangement::isOf(const Shared& shared, const PanelFrame* panel) {
  return std::find(shared.panels.begin(), shared.panels.end(), panel) != shared.panels.end();
}

std::vector<PanelFrame*> Arrangement::reachable() const {
  std::vector<PanelFrame*> panels = all_;
  std::erase_if(panels, [this](PanelFrame* panel) {
    if (typesShown_ || panel == types_)
      return !typesShown_ || (panel != types_ && panel != all_.front());
    if (planLarge_ && (panel == elevation_ || (!rowTabbed_ && panel != plan_ && isOf(row_, panel))))
      return true;
    if (panel == ruleBook_ || panel == refit_)
      return panel != aside();
    return aside() && std::find(side_.panels.begin(), side_.panels.end(), panel) != side_.panels.end();
  });
  return panels;
}

void Arrangement::raisePanel(PanelFrame& panel) {
  if (typesShown_ && &panel != types_ && &panel != all_.front())
    showTypes(false);
  if (aside() && std::find(side_.panels.begin(), side_.panels.end(), &panel) != side_.panels.end()) {
    refitShown_ = false;
    showRuleBook(false);
  }
  if (&panel == elevation_ || (&panel != plan_ && isOf(row_, &panel)))
    showPlanLarge(false);
  for (const Shared* shared : {&side_, &row_})
    if (shared->tabs->indexOf(&panel) >= 0)
      shared->tabs->setCurrentWidget(&panel);
}

} // namespace sillwright
