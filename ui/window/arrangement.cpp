#include "ui/window/arrangement.h"

#include <QHBoxLayout>
#include <QSplitter>
#include <QTabWidget>

#include <numeric>

namespace sillwright {

namespace {

constexpr int shelfWidth = 176;
constexpr int sideWidth = 360;
constexpr int narrowSideWidth = 300;
constexpr int rowHeight = 311;
constexpr int tabRowHeight = 236;

QSplitter* makeSplit(Qt::Orientation orientation, QWidget* parent = nullptr) {
  auto* split = new QSplitter(orientation, parent);
  split->setHandleWidth(1);
  split->setChildrenCollapsible(false);
  return split;
}

} // namespace

Arrangement::Arrangement(const Places& places, QWidget* parent) : QWidget(parent) {
  side_ = share(Qt::Vertical, {places.section, places.card}, {558, 337});
  row_ = share(Qt::Horizontal, {places.plan, places.punchList, places.schedule}, {260, 362, 438});
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
  columns_->setStretchFactor(1, 1);
  for (PanelFrame* panel : places.all())
    panel->setMinimumSize(120, 80);
  places.shelf->setMinimumWidth(shelfWidth);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(columns_);
  showAsTabs(side_, false);
  showAsTabs(row_, false);
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
  const bool sideTabs = window.width() < narrow, rowTabs = window.height() < low;
  if (sideTabs != sideTabbed_)
    showAsTabs(side_, sideTabbed_ = sideTabs);
  if (rowTabs != rowTabbed_)
    showAsTabs(row_, rowTabbed_ = rowTabs);
  const int side = sideTabs ? narrowSideWidth : sideWidth;
  const int row = rowTabs ? tabRowHeight : rowHeight;
  const int wide = std::max(window.width() - shelfWidth - side - 2, 100);
  columns_->setSizes({shelfWidth, wide, sideTabs ? 0 : side, sideTabs ? side : 0});
  const int high = std::max(window.height() - 76 - 28 - row - 1, 100);
  middle_->setSizes({high, rowTabs ? 0 : row, rowTabs ? row : 0});
}

void Arrangement::raisePanel(PanelFrame& panel) {
  for (const Shared* shared : {&side_, &row_})
    if (shared->tabs->indexOf(&panel) >= 0)
      shared->tabs->setCurrentWidget(&panel);
}

} // namespace sillwright
