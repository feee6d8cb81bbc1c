#include "ui/window/arrangement.h"

#include <gtest/gtest.h>

#include <QLineEdit>

namespace sillwright {
namespace {

TEST(Arrangement, NarrowAndLowWindowsPutPanelsBehindTabs) {
  Places places;
  PanelFrame** all[] = {&places.shelf, &places.elevation, &places.section, &places.card,
                        &places.plan,  &places.punchList, &places.schedule};
  for (PanelFrame** panel : all)
    *panel = new PanelFrame(QStringLiteral("panel"), new QLineEdit);
  places.ruleBook = new PanelFrame(QStringLiteral("panel"), new QLineEdit);
  places.refit = new PanelFrame(QStringLiteral("panel"), new QLineEdit);
  places.types = new PanelFrame(QStringLiteral("panel"), new QLineEdit);
  Arrangement arrangement(places);
  arrangement.resize(1600, 900);
  arrangement.show();
  arrangement.arrange({1600, 1000});
  EXPECT_FALSE(arrangement.sideAsTabs() || arrangement.rowAsTabs());
  for (PanelFrame** panel : all)
    EXPECT_TRUE((*panel)->isVisible());
  arrangement.arrange({1279, 1000});
  EXPECT_TRUE(arrangement.sideAsTabs());
  EXPECT_FALSE(arrangement.rowAsTabs());
  arrangement.raisePanel(*places.card);
  EXPECT_TRUE(places.card->isVisible());
  EXPECT_FALSE(places.section->isVisible());
  arrangement.arrange({1280, 799});
  EXPECT_FALSE(arrangement.sideAsTabs());
  EXPECT_TRUE(arrangement.rowAsTabs());
  arrangement.raisePanel(*places.schedule);
  EXPECT_TRUE(places.schedule->isVisible());
  arrangement.arrange({1600, 1000});
  for (PanelFrame** panel : all)
    EXPECT_TRUE((*panel)->isVisible());
  EXPECT_FALSE(places.ruleBook->isVisible());
  for (const QSize size : {QSize(1600, 1000), QSize(1024, 700)}) {
    arrangement.arrange(size);
    arrangement.showRuleBook(true);
    EXPECT_TRUE(places.ruleBook->isVisible());
    EXPECT_FALSE(places.card->isVisible() || places.section->isVisible());
    EXPECT_EQ(arrangement.reachable().size(), 6u);
    arrangement.raisePanel(*places.card);
    EXPECT_TRUE(places.card->isVisible());
    EXPECT_FALSE(places.ruleBook->isVisible());
    EXPECT_EQ(arrangement.reachable().size(), 7u);
    arrangement.showRefit(true);
    EXPECT_TRUE(places.refit->isVisible());
    EXPECT_FALSE(places.card->isVisible() || places.section->isVisible());
    EXPECT_EQ(arrangement.reachable().size(), 6u);
    arrangement.showRuleBook(true); // before the refit
    EXPECT_FALSE(places.refit->isVisible());
    EXPECT_TRUE(arrangement.refitOpen());
    EXPECT_EQ(arrangement.reachable().size(), 6u);
    arrangement.showRuleBook(false);
    EXPECT_TRUE(places.refit->isVisible());
    arrangement.showRefit(false);
    EXPECT_TRUE(places.refit->isHidden());
    EXPECT_EQ(arrangement.reachable().size(), 7u);
    arrangement.showTypes(true);
    EXPECT_TRUE(places.types->isVisible() && places.shelf->isVisible());
    EXPECT_FALSE(places.elevation->isVisible() || places.card->isVisible() || places.plan->isVisible());
    EXPECT_EQ(arrangement.reachable(), (std::vector<PanelFrame*>{places.shelf, places.types}));
    arrangement.raisePanel(*places.punchList);
    EXPECT_FALSE(places.types->isVisible());
    EXPECT_TRUE(places.punchList->isVisible() && places.elevation->isVisible());
    arrangement.showTypes(true);
    arrangement.showRuleBook(true); // takes its place
    EXPECT_FALSE(places.types->isVisible());
    EXPECT_TRUE(places.ruleBook->isVisible());
    arrangement.showRuleBook(false);
  }
}

} // namespace
} // namespace sillwright
