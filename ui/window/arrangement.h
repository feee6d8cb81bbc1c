// Where the panels stand: shelf left, elevation in the middle with plan, punch list and schedule in a row below it,
// section and card on the right. In a narrow window section and card become tabs, in a low one the row does. While the
// rule book or a refit is open it stands in the place of section and card, the rule book before the refit. Hardware and
// marks, while they are open, stand in the place of everything but the shelf.
#pragma once

#include <QWidget>

#include <vector>

#include "ui/panels/panel_frame.h"

class QSplitter;
class QTabWidget;

namespace sillwright {

struct Places {
  PanelFrame* shelf = nullptr;
  PanelFrame* elevation = nullptr;
  PanelFrame* section = nullptr;
  PanelFrame* card = nullptr;
  PanelFrame* plan = nullptr;
  PanelFrame* punchList = nullptr;
  PanelFrame* schedule = nullptr;
  PanelFrame* ruleBook = nullptr;
  PanelFrame* refit = nullptr;
  PanelFrame* types = nullptr;
  std::vector<PanelFrame*> all() const {
    return {shelf, elevation, section, card, ruleBook, refit, plan, punchList, schedule, types};
  }
};

class Arrangement : public QWidget {
  Q_OBJECT

public:
  static constexpr int narrow = 1280; // px: below, section and card are tabs
  static constexpr int low = 800;     // px: below, the row of three is tabs

  Arrangement(const Places& places, QWidget* parent = nullptr);

  // For a window of that size.
  void arrange(QSize window);
  bool sideAsTabs() const { return sideTabbed_; }
  bool rowAsTabs() const { return rowTabbed_; }
  // Brings a panel to the front where it stands behind a tab, or behind the rule book, a refit or the types.
  void raisePanel(PanelFrame& panel);
  void showRuleBook(bool shown);
  bool ruleBookShown() const { return ruleBookShown_ && !typesShown_; }
  // The plan alone in the place of elevation and row, as while walls are drawn on it; then as it was before.
  void showPlanLarge(bool large);
  void showRefit(bool shown);
  bool refitShown() const { return refitShown_ && !ruleBookShown_ && !typesShown_; }
  bool refitOpen() const { return refitShown_; } // shown, or behind the rule book or the types
  void showTypes(bool shown);
  bool typesShown() const { return typesShown_; }
  // In the order the keyboard goes through them: those that are shown or stand behind a tab.
  std::vector<PanelFrame*> reachable() const;

private:
  // Two ways for the same panels to share a place: side by side, or behind tabs.
  struct Shared {
    QSplitter* split = nullptr;
    QTabWidget* tabs = nullptr;
    std::vector<PanelFrame*> panels;
    std::vector<int> sizes;
  };
  static bool isOf(const Shared& shared, const PanelFrame* panel);
  Shared share(Qt::Orientation orientation, std::vector<PanelFrame*> panels, std::vector<int> sizes);
  void showAsTabs(Shared& shared, bool tabs);
  void placeColumns();
  void placeMiddle();
  PanelFrame* aside() const; // what stands in the place of section and card; null where they do

  Shared side_;
  Shared row_;
  PanelFrame* elevation_;
  PanelFrame* plan_;
  bool planLarge_ = false;
  QList<int> rowBefore_, middleBefore_; // sizes, while the plan is large
  QSplitter* columns_;
  QSplitter* middle_;
  std::vector<PanelFrame*> all_;
  PanelFrame* ruleBook_;
  PanelFrame* refit_;
  PanelFrame* types_;
  bool ruleBookShown_ = false;
  bool refitShown_ = false;
  bool typesShown_ = false;
  QSize window_;
  bool sideTabbed_ = false;
  bool rowTabbed_ = false;
};

} // namespace sillwright
