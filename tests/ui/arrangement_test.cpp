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
}

} // namespace
} // namespace sillwright
