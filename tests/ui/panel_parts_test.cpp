#include "ui/panels/finding_rows.h"
#include "ui/window/look_sheet.h"

#include <map>
#include <random>

#include <gtest/gtest.h>

#include "core/edit/operations.h"
#include "ui/panels/look.h"
#include "ui/panels/panel_frame.h"

namespace sillwright {
namespace {

TEST(RunningCounts, AgreeWithAddingUp) {
  std::mt19937 random(3);
  RunningCounts counts(37);
  std::vector<int> plain(37, 0);
  for (int round = 0; round < 500; ++round) {
    const std::size_t at = random() % plain.size();
    plain[at] = static_cast<int>(random() % 4);
    counts.set(at, plain[at]);
    int sum = 0;
    for (std::size_t i = 0; i < plain.size(); ++i) {
      ASSERT_EQ(counts.before(i), sum);
      for (int k = 0; k < plain[i]; ++k)
        ASSERT_EQ(counts.placeOf(sum + k), i);
      sum += plain[i];
    }
    ASSERT_EQ(counts.total(), sum);
  }
}

// Walls with findings made up here: only levels matter to the order of rows.
std::shared_ptr<const CheckedWall> wallWith(Id wall, std::array<int, 3> levels) {
  auto made = std::make_shared<CheckedWall>();
  for (std::size_t level = 0; level < 3; ++level)
    for (int i = 0; i < levels[level]; ++i) {
      Finding finding;
      finding.level = static_cast<Level>(level);
      finding.wall = wall;
      made->findings.push_back(finding);
    }
  made->counts = {levels[0], levels[1], levels[2]};
  return made;
}

Job squareJob() {
  WallLine like;
  const std::vector<Point2> corners{{0, 0}, {288, 0}, {288, 240}, {0, 240}};
  const Result<Job> job = addOutline(newJob(), corners, like);
  return job ? *job : Job{};
}

using Seen = std::vector<std::pair<Level, Id>>;

Seen seen(const FindingRows& rows) {
  Seen all;
  for (int i = 0; i < rows.size(); ++i)
    all.emplace_back(rows.row(i)->finding().level, rows.row(i)->finding().wall);
  return all;
}

Seen wanted(const Job& job, const std::map<Id, std::array<int, 3>>& levels, LevelSet shown) {
  Seen all;
  for (std::size_t level = 0; level < 3; ++level)
    for (std::size_t w = 0; w < job.walls.size() && shown[level]; ++w)
      for (int i = 0; levels.contains(job.walls[w].id) && i < levels.at(job.walls[w].id)[level]; ++i)
        all.emplace_back(static_cast<Level>(level), job.walls[w].id);
  return all;
}

TEST(FindingRows, StayInOrderWhileWallsChange) {
  const Job job = squareJob();
  ASSERT_EQ(job.walls.size(), 4u);
  for (const LevelSet shown : {LevelSet{true, true, true}, LevelSet{true, false, true}}) {
    std::mt19937 random(11);
    FindingRows rows;
    rows.reset(job, Checker{}, {shown, {}, {}}); // nothing checked yet
    std::map<Id, std::array<int, 3>> levels;
    for (int round = 0; round < 200; ++round) {
      const Id wall = job.walls[random() % 4].id;
      levels[wall] = {static_cast<int>(random() % 3), static_cast<int>(random() % 3), static_cast<int>(random() % 3)};
      int size = rows.size();
      int announced = 0;
      rows.update(
          wall, wallWith(wall, levels[wall]), [&](const FindingRows::Change&) { ++announced; },
          [&](const FindingRows::Change& change) {
            if (change.kind == FindingRows::Change::Kind::Removed)
              size -= change.count;
            if (change.kind == FindingRows::Change::Kind::Inserted)
              size += change.count;
            for (int i = 0; i < rows.size(); ++i) // a view may ask for any row in between
              EXPECT_TRUE(rows.row(i).has_value());
          });
      ASSERT_EQ(rows.size(), size);
      ASSERT_EQ(seen(rows), wanted(job, levels, shown));
    }
  }
}

TEST(FindingRows, FindTheRowOfAFinding) {
  const Job job = squareJob();
  FindingRows rows;
  rows.reset(job, Checker{}, {});
  const auto quiet = [](const FindingRows::Change&) {};
  for (std::size_t w = 0; w < 4; ++w)
    rows.update(job.walls[w].id, wallWith(job.walls[w].id, {1, 2, 1}), quiet, quiet);
  for (int at = 0; at < rows.size(); ++at)
    EXPECT_EQ(rows.rowOf(rows.row(at)->finding().wall, rows.row(at)->index), at);
  EXPECT_EQ(rows.rowOf(job.walls[0].id, 99), -1);
  EXPECT_FALSE(rows.row(rows.size()).has_value());
}

TEST(Look, EveryColourOfTheStyleSheetIsFilledIn) {
  for (const ThemeName theme : {ThemeName::Light, ThemeName::Dark})
    EXPECT_FALSE(styleSheetOf(theme).contains(QLatin1Char('$')));
  QPalette dark;
  dark.setColor(QPalette::Window, Qt::black);
  EXPECT_EQ(themeFor(ThemeChoice::System, dark), ThemeName::Dark);
  EXPECT_EQ(themeFor(ThemeChoice::Light, dark), ThemeName::Light);
}

TEST(Look, IconsArePaintedInTheColourAsked) {
  for (const char* name : {"undo", "redo", "sheet", "punch-list", "strap"}) {
    const QImage image = themedIcon(QString::fromLatin1(name), Qt::red).pixmap(24, 24).toImage();
    int red = 0;
    for (int x = 0; x < image.width(); ++x)
      for (int y = 0; y < image.height(); ++y)
        red += image.pixelColor(x, y).alpha() > 200 && image.pixelColor(x, y).red() > 200;
    EXPECT_GT(red, 10) << name;
  }
}

TEST(Look, WordsAreCutToFitWithAnEllipsis) {
  const QString words = QStringLiteral("plate to the left end, at 0'-1 5/8\"");
  EXPECT_EQ(elided(words, 12, 1000), words);
  const QString cut = elided(words, 12, 80);
  EXPECT_LE(wordsWidth(cut, 12), 80);
  EXPECT_TRUE(cut.endsWith(QChar(0x2026)));
}

TEST(Look, ALengthIsNotBrokenBeforeItsFraction) {
  const QString words = QStringLiteral("clear of bar V1 (No. 4 found at 0'-2 1/4\"), 12 1/2\" on");
  for (double wide = 60; wide < 400; wide += 3)
    for (const QString& line : brokenToFit(words, 12.5, wide))
      EXPECT_FALSE(line.startsWith(QLatin1Char('1')) && line.contains(QLatin1Char('/')) &&
                   !line.startsWith(QStringLiteral("12")))
          << line.toStdString();
}

TEST(Look, AButtonGoesOnInFurtherLinesWhereItIsNarrow) {
  const QString words = QStringLiteral("or put on Plate washer 3 x 3 1/2 slotted slid out 1/2\" with a cut washer");
  WordButton button(words);
  button.setWraps(true);
  const int wide = static_cast<int>(buttonWidth(words, 12.5));
  const int oneLine = button.heightForWidth(wide);
  EXPECT_EQ(oneLine, button.sizeHint().height());
  const QStringList lines = brokenToFit(words, 12.5, wide / 2.0);
  EXPECT_GE(lines.size(), 2);
  EXPECT_EQ(lines.join(QLatin1Char(' ')), words);
  for (const QString& line : lines)
    EXPECT_LE(wordsWidth(line, 12.5), wide / 2.0);
  EXPECT_GT(button.heightForWidth(wide / 2), oneLine);
  EXPECT_LE(button.minimumSizeHint().width(), 60);
}

} // namespace
} // namespace sillwright
