#include <QApplication>
#include <QHashSeed>

#include <gtest/gtest.h>

#include "ui/paint/fonts.h"

// The seed before anything hashes: the order of fonts in a PDF follows it.
int main(int count, char** words) {
  ::testing::InitGoogleTest(&count, words);
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
    qputenv("QT_QPA_PLATFORM", "offscreen");
  sillwright::leaveOutMonospacedNamesake();
  QHashSeed::setDeterministicGlobalSeed();
  QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
  QApplication application(count, words);
  return RUN_ALL_TESTS();
}
