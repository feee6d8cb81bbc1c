// The page "question to the engineer": there where a wall has no layout, and only there.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <sstream>

#include "core/refit/question.h"
#include "core/rules/rule_book.h"
#include "tests/support/sample_jobs.h"
#include "ui/sheet/pages.h"
#include "ui/sheet/question_drawing.h"
#include "ui/sheet/question_pages.h"

namespace sillwright {
namespace {

SheetOptions on(const char* paper) {
  SheetOptions options;
  options.paper = *paperByKey(paper);
  options.date = "2031-05-14";
  return options;
}

bool isQuestion(const Page& page) {
  return page.title.starts_with("QUESTION");
}

std::vector<Page> questionsIn(const Job& job, const char* paper) {
  std::vector<Page> questions;
  for (Page& page : composeSheets(job, on(paper)))
    if (isQuestion(page))
      questions.push_back(std::move(page));
  return questions;
}

// All that is written on pages, word by word: lines are broken where they must.
std::multiset<std::string> wordsOn(const std::vector<Page>& pages) {
  std::multiset<std::string> words;
  for (const Page& page : pages)
    for (const Prim& prim : page.drawing.prims())
      if (prim.kind == Prim::Kind::Text) {
        std::istringstream text(page.drawing.textOf(prim).text);
        for (std::string word; text >> word;)
          words.insert(word);
      }
  return words;
}

void expectWritten(const std::multiset<std::string>& words, const std::string& sentence) {
  std::istringstream text(sentence);
  for (std::string word; text >> word;)
    EXPECT_TRUE(words.contains(word)) << word << " of: " << sentence;
}

TEST(QuestionPages, areThereOnlyWhereAWallHasNoLayout) {
  for (const Job& job : {support::boatShedFront(), support::boatShedFrontSteelMoved(), support::ridgeHouse()})
    EXPECT_TRUE(questionsIn(job, "tabloid").empty());
  EXPECT_EQ(questionsIn(support::boatShedFrontNoRoom(), "tabloid").size(), 1u);
  SheetOptions without = on("tabloid");
  without.kinds = {PageKind::Plan, PageKind::Elevation, PageKind::Section};
  const auto pages = composeSheets(support::boatShedFrontNoRoom(), without);
  EXPECT_TRUE(std::none_of(pages.begin(), pages.end(), isQuestion));
}

TEST(QuestionPages, sayAllOfTheQuestionOnEveryPaper) {
  const Job job = support::boatShedFrontNoRoom();
  const WallLayout layout = layOut(job, job.walls.pointer(0));
  const ResolvedLimits limits = resolve(*job.limits);
  const auto answer = refit(layout, limits);
  ASSERT_TRUE(answer);
  const Question question = questionOf(job, layout, limits, std::get<NoLayout>(*answer));
  for (const Paper& paper : papers()) {
    SCOPED_TRACE(paper.key);
    const auto words = wordsOn(questionsIn(job, std::string(paper.key).c_str()));
    for (const std::string& sentence : {question.toBeSet.substr(question.toBeSet.find(' ')), question.collide,
                                        question.shortBy, question.asked, question.untilAnswered})
      expectWritten(words, sentence);
    for (const std::string& requirement : question.requirements)
      expectWritten(words, requirement);
    for (const QuestionGiving& giving : question.giving)
      expectWritten(words, giving.words);
    expectWritten(words, "approves nothing."); // the cautions of every page
  }
}

// A conflict that fills more than a page is not cut short.
TEST(QuestionPages, aLongQuestionGoesOnOnTheNextPage) {
  const Job job = support::boatShedFrontNoRoom();
  const auto checked = checkAll(job);
  NoLayout conflict{job.walls[0].id, {}};
  for (int i = 0; i < 60; ++i)
    for (const Bar& bar : {job.walls[0].bars[0], job.walls[0].bars[1]})
      conflict.requirements.push_back(
          {Requirement::Kind::Rule, RuleId::StrapSteel, {job.walls[0].straps[0].id, bar.id}, {}, {}, 0.0625 * (i + 1)});
  std::vector<sheet::Draft> drafts;
  const sheet::PageFrame frame = sheet::pageFrame(*paperByKey("letter"));
  sheet::addQuestionPages(drafts, job, {{checked[0], conflict}}, frame);
  EXPECT_GT(drafts.size(), 2u);
  std::size_t numbers = 0;
  for (const sheet::Draft& draft : drafts)
    for (const Prim& prim : draft.drawing.prims())
      if (prim.kind == Prim::Kind::Text) {
        EXPECT_LE(prim.box.y1, frame.content.y1 + 8) << draft.drawing.textOf(prim).text;
        const std::string& text = draft.drawing.textOf(prim).text;
        numbers += text.size() > 1 && text.back() == '.' &&
                   std::all_of(text.begin(), text.end() - 1, [](unsigned char c) { return std::isdigit(c) != 0; });
      }
  EXPECT_EQ(numbers, 240u); // every requirement, and what it would have to give
}

TEST(QuestionPages, theDrawingShowsWhatCollides) {
  const Job job = support::boatShedFrontNoRoom();
  const WallLayout layout = layOut(job, job.walls.pointer(0));
  const auto answer = refit(layout, resolve(*job.limits));
  ASSERT_TRUE(answer);
  const NoLayout& conflict = std::get<NoLayout>(*answer);
  const Interval place = sheet::placeOf(layout, conflict, 30);
  EXPECT_GE(place.from, 0);
  EXPECT_LE(place.to, layout.length);
  EXPECT_LT(place.length(), 40);
  EXPECT_NEAR(sheet::placeOf(layout, conflict, 50).length(), 50, 1e-9);
  for (const Requirement& requirement : conflict.requirements)
    for (const Id piece : requirement.pieces)
      EXPECT_TRUE(place.contains(*stationOf(*layout.wall, piece)));
}

// A requirement points at what is in the way, not at what would be set; what runs along the wall it does not point at.
TEST(QuestionPages, numbersPointAtWhatIsInTheWay) {
  const Job job = support::boatShedFrontNoRoom();
  const WallLayout layout = layOut(job, job.walls.pointer(0));
  const WallLine& wall = *layout.wall;
  const Id strap = wall.straps[0].id, column = wall.columns[0].id, sill = wall.sills[0].id;
  const auto at = [&](const Requirement& requirement) { return sheet::pointedAt(layout, requirement); };
  using Kind = Requirement::Kind;
  for (const Bar& bar : wall.bars)
    if (bar.found) {
      const auto pointed = at({Kind::Rule, RuleId::StrapSteel, {strap, bar.id}});
      ASSERT_TRUE(pointed);
      EXPECT_NEAR(pointed->at.x, bar.found->a.s, 1e-9);
      EXPECT_FALSE(pointed->above); // bars come up from the footing
    }
  EXPECT_NEAR(at({Kind::Rule, RuleId::StrapEdge, {strap}})->at.x, 0, 1e-9); // the corner
  EXPECT_NEAR(at({Kind::Rule, RuleId::StrapColumn, {strap, column}})->at.x, wall.columns[0].station, 1e-9);
  EXPECT_NEAR(at({Kind::Leeway, RuleId::ColumnSill, {column}})->at.x, wall.columns[0].station, 1e-9);
  EXPECT_NEAR(at({Kind::Rule, RuleId::BoltStud, {sill}, 0, Interval{31.25, 32.75}})->at.x, 32, 1e-9);
  EXPECT_FALSE(at({Kind::Rule, RuleId::BoltCount, {sill}, 0}));
}

// Each number once in the list, once where it says what it would have to give, and once in the drawing.
TEST(QuestionPages, everyNumberIsInTheDrawing) {
  const Job job = support::boatShedFrontNoRoom();
  const auto answer = refit(layOut(job, job.walls.pointer(0)), resolve(*job.limits));
  ASSERT_TRUE(answer && std::holds_alternative<NoLayout>(*answer));
  const std::vector<Requirement>& asked = std::get<NoLayout>(*answer).requirements;
  const std::size_t requirements = asked.size();
  ASSERT_GE(requirements, 2u);
  for (const char* paper : {"letter", "tabloid"}) {
    const auto pages = questionsIn(job, paper);
    const auto words = wordsOn(pages);
    EXPECT_EQ(words.count(std::to_string(requirements + 1) + "."), 0u);
    for (std::size_t number = 1; number <= requirements; ++number) {
      // once among what collides, once more where it could give by an amount
      EXPECT_EQ(words.count(std::to_string(number) + "."), asked[number - 1].by ? 2u : 1u) << number;
      EXPECT_GE(words.count(std::to_string(number)), 1u) << number;
    }
  }
}

} // namespace
} // namespace sillwright
