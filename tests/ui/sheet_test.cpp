// Layout sheets measured with tools of others: a rasteriser and a ruler.
#include <gtest/gtest.h>

#include <QProcess>
#include <QTemporaryDir>
#include <cmath>
#include <fstream>
#include <sstream>

#include "core/edit/limits.h"
#include "core/edit/operations.h"
#include "core/gesture/starters.h"
#include "core/rules/rule_book.h"
#include "tests/support/sample_jobs.h"
#include "ui/sheet/output.h"
#include "ui/sheet/pages.h"

namespace sillwright {
namespace {

SheetOptions on(const char* paper) {
  SheetOptions options;
  options.paper = *paperByKey(paper);
  options.date = "2031-05-14";
  return options;
}

struct Raster {
  int width = 0, height = 0;
  std::string grey;
  bool black(int x, int y) const {
    return static_cast<unsigned char>(grey[static_cast<std::size_t>(y) * width + x]) < 100;
  }
};

Raster rasterised(const QString& pdf, int page, int dpi, const QString& folder) {
  const QString root = folder + "/page";
  QProcess tool;
  tool.start("pdftoppm", {"-r", QString::number(dpi), "-gray", "-singlefile", "-f", QString::number(page), "-l",
                          QString::number(page), pdf, root});
  EXPECT_TRUE(tool.waitForFinished(60'000));
  std::ifstream in((root + ".pgm").toStdString(), std::ios::binary);
  Raster raster;
  std::string magic;
  int most = 0;
  in >> magic >> raster.width >> raster.height >> most;
  in.get();
  std::ostringstream rest;
  rest << in.rdbuf();
  raster.grey = rest.str();
  return raster;
}

// Middles of the black runs of a row that are about as wide as `width` pixels.
std::vector<double> middlesOfRuns(const Raster& raster, int y, double width) {
  std::vector<double> middles;
  for (int x = 0; x < raster.width;) {
    if (!raster.black(x, y)) {
      ++x;
      continue;
    }
    int end = x;
    while (end < raster.width && raster.black(end, y))
      ++end;
    if (std::abs(end - x - width) <= 4)
      middles.push_back((x + end) / 2.0);
    x = end;
  }
  return middles;
}

int timesSaid(const Page& page, const std::string& words) {
  int times = 0;
  for (const Prim& prim : page.drawing.prims())
    times += prim.kind == Prim::Kind::Text && page.drawing.textOf(prim).text == words;
  return times;
}

// Where a wall is broken over pages, a piece at the match line is on one of them: in the drawing, in the row of
// stations under it, and in the table.
TEST(Sheet, everyPieceIsDrawnAlthoughTheWallIsBroken) {
  int broken = 0;
  for (int feet = 24; feet <= 34; ++feet) {
    const double front = 12.0 * feet;
    const auto started =
        start(newJob(), starters().front(), std::vector<std::optional<double>>{front, front, 192, {}, 83});
    ASSERT_TRUE(started) << started.problem().text();
    for (const char* paper : {"tabloid", "letter"}) {
      SheetOptions options = on(paper);
      options.kinds = {PageKind::Elevation};
      const auto pages = composeSheets(started->job, options);
      broken += pages.size() > 4;
      for (std::size_t i = 0; i < started->job.walls.size(); ++i)
        for (const Bolt& bolt : started->job.walls[i].bolts) {
          int drawn = 0, said = 0;
          for (const Page& page : pages) {
            const int times = timesSaid(page, bolt.mark);
            said += times;
            drawn += times >= 3;
          }
          EXPECT_GE(drawn, 1) << feet << " ft, " << paper << ", " << bolt.mark << " said " << said << " times";
        }
    }
  }
  EXPECT_GT(broken, 3);
}

TEST(Sheet, aDrawnFootMeasuresWhatTheScaleSays) {
  const QTemporaryDir folder;
  const auto pages = composeSheets(support::boatShedFront(), on("tabloid"));
  ASSERT_EQ(pages[1].scale, "1/2\" = 1'-0\"");
  const QString pdf = folder.path() + "/sheet.pdf";
  ASSERT_TRUE(writePdf(pages, {"t", "s", "2031-05-14"}, pdf.toStdString()));
  constexpr int dpi = 300;
  const Raster raster = rasterised(pdf, 2, dpi, folder.path());
  ASSERT_EQ(raster.width, 17 * dpi);
  const double inch = 0.5 / 12 * dpi; // an inch of the wall at 1/2" = 1'-0", in pixels
  double measured = 0;
  for (int y = 0; y < raster.height && measured == 0; ++y) {
    const auto straps = middlesOfRuns(raster, y, 2.5 * inch);
    if (straps.size() == 4) // the four straps stand black above the pour line
      measured = straps.back() - straps.front();
  }
  ASSERT_GT(measured, 0);
  EXPECT_NEAR(measured / dpi, (285.25 - 2.75) * inch / dpi, 0.01); // in on paper
}

TEST(Sheet, everyTextStaysOnItsPageOnEveryPaper) {
  for (const Job& job : {support::boatShedFrontSteelMoved(), support::boatShedFrontNoRoom(), support::ridgeHouse(),
                         support::punchListPractice()})
    for (const Paper& paper : papers()) {
      const auto pages = composeSheets(job, on(std::string(paper.key).c_str()));
      EXPECT_GE(pages.size(), 3u);
      for (const Page& page : pages) {
        const Bounds sheet{0, 0, page.width, page.height};
        for (const Prim& prim : page.drawing.prims())
          if (prim.kind == Prim::Kind::Text) {
            EXPECT_TRUE(sheet.grown(-20).contains(prim.box))
                << paper.key << " " << page.title << ": " << page.drawing.textOf(prim).text;
          }
      }
    }
}

struct Written {
  Bounds box; // of the letters, without the halo
  const std::string* words;
};

std::vector<Written> textsOf(const Page& page) {
  std::vector<Written> texts;
  for (const Prim& prim : page.drawing.prims()) {
    if (prim.kind != Prim::Kind::Text)
      continue;
    const TextPrim& text = page.drawing.textOf(prim);
    TextStyle style = text.style;
    style.halo = Ink::None;
    Drawing scratch;
    texts.push_back({scratch.text(page.drawing.pointsOf(prim)[0], text.text, Ink::Text, style), &text.text});
  }
  return texts;
}

// Letters that touch by less than half a point read apart.
TEST(Sheet, noTextLiesOverAnotherOnAnyPaper) {
  constexpr double slack = 0.5; // pt
  for (const Job& job : {support::boatShedFront(), support::boatShedFrontSteelMoved(), support::boatShedFrontNoRoom(),
                         support::ridgeHouse(), support::punchListPractice()})
    for (const Paper& paper : papers())
      for (const Page& page : composeSheets(job, on(std::string(paper.key).c_str()))) {
        const std::vector<Written> texts = textsOf(page);
        for (std::size_t i = 0; i < texts.size(); ++i)
          for (std::size_t j = 0; j < i; ++j)
            EXPECT_FALSE(texts[i].box.overlaps(texts[j].box, slack))
                << paper.key << ", " << page.title << ": " << *texts[i].words << " over " << *texts[j].words;
      }
}

TEST(Sheet, everyPieceToSetIsInASettingTable) {
  const Job job = support::ridgeHouse();
  for (const char* paper : {"letter", "tabloid"}) {
    std::string all;
    for (const Page& page : composeSheets(job, on(paper)))
      for (const Prim& prim : page.drawing.prims())
        if (prim.kind == Prim::Kind::Text)
          all += page.drawing.textOf(prim).text + "\n";
    for (std::size_t i = 0; i < job.walls.size(); ++i) {
      for (const Strap& strap : job.walls[i].straps)
        EXPECT_NE(all.find("\n" + strap.mark + "\n"), std::string::npos) << strap.mark;
      for (const Bolt& bolt : job.walls[i].bolts)
        EXPECT_NE(all.find("\n" + bolt.mark + "\n"), std::string::npos) << bolt.mark;
    }
    EXPECT_NE(all.find("it approves nothing"), std::string::npos);
    for (std::size_t i = 0; i < job.walls.size(); ++i)
      for (const Bar& bar : job.walls[i].bars) // beside the drawing or in the notes, with where it is
        if (bar.run == BarRun::Upright) {
          EXPECT_NE(all.find("\n" + bar.mark), std::string::npos) << paper << " " << bar.mark;
          EXPECT_NE(all.find(printLength(placeOf(bar).a.s, job.units)), std::string::npos) << paper << " " << bar.mark;
        }
  }
}

TEST(Sheet, whatTheJobChangedInTheRuleBookIsPrintedOnEveryPaper) {
  Job job = support::boatShedFrontSteelMoved();
  const Grounds grounds{"letter of the engineer", "R. Alder", "2031-05-14"};
  job = *changeLimit(job, "strap.steel target", "1 1/2", grounds);
  job = *setRuleCounts(job, "strap.seam", RuleCounts::Watch, {"asked by phone", "M. Birch", ""});
  for (const Paper& paper : papers()) {
    std::string all;
    for (const Page& page : composeSheets(job, on(std::string(paper.key).c_str())))
      for (const Prim& prim : page.drawing.prims())
        if (prim.kind == Prim::Kind::Text)
          all += page.drawing.textOf(prim).text + " ";
    for (const char* printed : {"RULES CHANGED", "strap.steel target: 1 1/2\" (rule book 1\")",
                                "strap.seam: WATCH at most", "2031-05-14", "M. Birch"})
      EXPECT_NE(all.find(printed), std::string::npos) << paper.key << ": " << printed;
  }
}

TEST(Sheet, aJobThatChangedEveryRuleHasThemAllOnThePaper) {
  Job job = support::boatShedFront();
  for (const RuleRow& row : ruleBook()) {
    const Grounds grounds{"of a reason said at some length, so that it takes two lines or three", "R. Alder",
                          "2031-05-14"};
    const auto changed = setRuleCounts(job, row.name, RuleCounts::Watch, grounds);
    ASSERT_TRUE(changed) << row.name;
    job = *changed;
  }
  for (const char* paper : {"letter", "a4", "tabloid", "arch-d"}) {
    std::string all;
    for (const Page& page : composeSheets(job, on(paper)))
      for (const Prim& prim : page.drawing.prims())
        if (prim.kind == Prim::Kind::Text) {
          all += page.drawing.textOf(prim).text + " ";
          EXPECT_TRUE((Bounds{0, 0, page.width, page.height}).grown(-20).contains(prim.box))
              << paper << ": " << page.drawing.textOf(prim).text;
        }
    for (const RuleRow& row : ruleBook())
      EXPECT_NE(all.find(std::string(row.name) + ": WATCH at most"), std::string::npos) << paper << " " << row.name;
  }
}

TEST(Sheet, svgPagesHavePhysicalSizeAndNoRaster) {
  const QTemporaryDir folder;
  const auto pages = composeSheets(support::boatShedFront(), on("letter"));
  const auto files = writeSvg(pages, folder.path().toStdString(), "shed");
  ASSERT_TRUE(files);
  ASSERT_EQ(files->size(), pages.size());
  for (const std::string& file : *files) {
    std::ifstream in(file);
    std::ostringstream text;
    text << in.rdbuf();
    EXPECT_NE(text.str().find("width=\"11in\""), std::string::npos);
    for (const char* none : {"<image", "<pattern", "<mask", "clip-path"})
      EXPECT_EQ(text.str().find(none), std::string::npos) << none;
  }
}

TEST(Sheet, anUnwritablePlaceIsOneProblem) {
  const auto pages = composeSheets(support::boatShedFront(), on("letter"));
  EXPECT_FALSE(writePdf(pages, {"t", "s", "2031-05-14"}, "/nowhere/at/all.pdf"));
  EXPECT_FALSE(writeSvg(pages, "/proc/nowhere", "x"));
  EXPECT_TRUE(composeSheets(Job{}, on("letter")).empty());
}

TEST(Sheet, daysThatDoNotExistAreNoDates) {
  for (const char* good : {"2031-05-14", "2028-02-29", "2000-02-29"})
    EXPECT_TRUE(isDate(good)) << good;
  for (const char* bad :
       {"2031-02-29", "1900-02-29", "2031-13-01", "2031-00-10", "2031-1-01", "14-05-2031", "", "2031-05-1x"})
    EXPECT_FALSE(isDate(bad)) << bad;
}

} // namespace
} // namespace sillwright
