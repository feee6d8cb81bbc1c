// What a refit says: moves, requirements with their numbers, and the question to the engineer.
#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <map>
#include <set>

#include "core/refit/question.h"
#include "core/refit/refit_words.h"
#include "core/refit/slots.h"
#include "core/rules/rule_book.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

using R = RuleId;
using Kind = Requirement::Kind;
constexpr auto style = LengthStyle::FeetInches;

// The house has pieces of every kind; its left side has rods.
struct Wall {
  Job job;
  WallLayout layout;
  ResolvedLimits limits;

  Wall(Job of, std::size_t wall)
      : job(std::move(of)), layout(layOut(job, job.walls.pointer(wall))), limits(resolve(*job.limits)) {}
  const WallLine& line() const { return *layout.wall; }
  std::string told(const Requirement& requirement) const {
    return requirementWords(layout, limits, requirement, style);
  }
};

// As refit names the pieces of each rule: what it is asked of, then what it is asked against.
Requirement requirementOf(const Wall& front, const Wall& rods, RuleId rule) {
  const WallLine& wall = front.line();
  const Id strap = wall.straps[0].id, column = wall.columns[0].id, sill = wall.sills[0].id, bar = wall.bars[2].id,
           opening = wall.openings[0].id, panel = wall.panels[0].id, rod = rods.line().rods[0].id;
  const std::map<RuleId, std::vector<Id>> pieces{{R::StrapEdge, {strap}},
                                                 {R::StrapLean, {strap, column}},
                                                 {R::StrapLeanOpening, {strap, opening}},
                                                 {R::StrapColumn, {strap, column}},
                                                 {R::StrapSteel, {strap, bar}},
                                                 {R::StrapDepth, {strap}},
                                                 {R::StrapBack, {strap}},
                                                 {R::StrapMissing, {strap, panel}},
                                                 {R::BoltOpening, {sill, opening}},
                                                 {R::BoltSteel, {sill, bar}},
                                                 {R::BoltStrap, {sill, strap}},
                                                 {R::WasherSheathing, {sill, panel}},
                                                 {R::WasherColumn, {sill, column}},
                                                 {R::ColumnSill, {column}},
                                                 {R::ColumnOpening, {column, opening}},
                                                 {R::ColumnOverlap, {column, wall.columns[1].id}},
                                                 {R::PanelEnds, {column, panel}},
                                                 {R::BarCover, {bar}},
                                                 {R::RodOffset, {rod, rods.line().rods[0].column}},
                                                 {R::RodSteel, {rod, rods.line().bars[0].id}},
                                                 {R::RodOpening, {rod, rods.line().openings[0].id}}};
  Requirement requirement;
  requirement.rule = rule;
  const auto found = pieces.find(rule);
  requirement.pieces = found == pieces.end() ? std::vector<Id>{sill} : found->second;
  if (rule == R::BoltStud || rule == R::BoltSplice)
    requirement.at = Interval{15.25, 16.75};
  return requirement;
}

std::vector<RuleId> rulesOfPosition() {
  std::vector<RuleId> rules;
  for (std::uint8_t i = 0; i < static_cast<std::uint8_t>(R::Count); ++i)
    if (isOfPosition(static_cast<RuleId>(i)))
      rules.push_back(static_cast<RuleId>(i));
  return rules;
}

bool hasDigit(const std::string& words) {
  return std::any_of(words.begin(), words.end(), [](unsigned char c) { return std::isdigit(c) != 0; });
}

bool isOfRods(RuleId rule) {
  return rule == R::RodOffset || rule == R::RodSteel || rule == R::RodOpening;
}

TEST(RequirementWords, everyRuleOfPositionHasWordsOfItsOwnWithANumber) {
  const Wall front(support::boatShedFront(), 0), rods(support::ridgeHouse(), 9);
  std::set<std::string> seen;
  for (const RuleId rule : rulesOfPosition()) {
    const std::string words = (isOfRods(rule) ? rods : front).told(requirementOf(front, rods, rule));
    SCOPED_TRACE(std::string(sillwright::rule(rule).name) + ": " + words);
    EXPECT_FALSE(words.empty());
    EXPECT_TRUE(seen.insert(words).second);
    // A measure, not only the number in a mark.
    EXPECT_NE(words.find('"'), std::string::npos);
    EXPECT_TRUE(hasDigit(words.substr(0, words.find('"'))));
    EXPECT_EQ(words.find("piece #"), std::string::npos);
    EXPECT_EQ(words.find('?'), std::string::npos);
    EXPECT_LT(words.size(), 160u);
  }
  EXPECT_GE(seen.size(), 32u);
}

TEST(RequirementWords, everyRuleOfPositionSaysWhatItAloneWouldHaveToGive) {
  const Wall front(support::boatShedFront(), 0), rods(support::ridgeHouse(), 9);
  for (const RuleId rule : rulesOfPosition()) {
    Requirement requirement = requirementOf(front, rods, rule);
    const WallLayout& layout = isOfRods(rule) ? rods.layout : front.layout;
    SCOPED_TRACE(sillwright::rule(rule).name);
    EXPECT_EQ(relaxationWords(layout, requirement, style), ""); // no amount is enough
    requirement.by = 0.4375;
    const std::string words = relaxationWords(layout, requirement, style);
    EXPECT_TRUE(words.starts_with("would do alone: ")) << words;
    EXPECT_NE(words.find("7/16\""), std::string::npos) << words;
    EXPECT_EQ(words.find("piece #"), std::string::npos) << words;
  }
}

// It says what it would take. What may be done, somebody else says.
TEST(RequirementWords, neverSayThatSomethingMayBeDone) {
  const Wall front(support::boatShedFront(), 0), rods(support::ridgeHouse(), 9);
  for (const RuleId rule : rulesOfPosition()) {
    Requirement requirement = requirementOf(front, rods, rule);
    requirement.by = 0.4375;
    const Wall& wall = isOfRods(rule) ? rods : front;
    const std::string words = wall.told(requirement) + relaxationWords(wall.layout, requirement, style);
    for (const char* promise : {"approve", "compl", "allowed", "permitted", "OK", " may ", "acceptable", "move it"})
      EXPECT_EQ(words.find(promise), std::string::npos) << promise << ": " << words;
  }
}

TEST(RequirementWords, numbersAreThoseOfTheWall) {
  const Wall front(support::boatShedFront(), 0);
  const WallLine& wall = front.line();
  const Id strap = wall.straps[0].id, sill = wall.sills[0].id;
  EXPECT_EQ(front.told({Kind::Rule, R::StrapEdge, {strap}}),
            "plate of strap S1 at least 1/2\" (its type's minimum) from the corner on the left, at 0'-0\"");
  EXPECT_EQ(front.told({Kind::Rule, R::StrapSteel, {strap, wall.bars[1].id}}),
            "strap S1 clear of " +
                front.told({Kind::Rule, R::BoltSteel, {sill, wall.bars[1].id}})
                    .substr(front.told({Kind::Rule, R::BoltSteel, {sill, wall.bars[1].id}}).find("bar ")));
  EXPECT_EQ(front.told({Kind::Rule, R::BoltEndFar, {sill}, 0, Interval{0, 0}}),
            "first bolt of sill L1 (0'-0\" to 4'-0\") at most 12\" from its left end (IRC 2024 R403.1.6)");
  EXPECT_EQ(front.told({Kind::Rule, R::BoltSpacing, {sill}, 0}),
            "neighbouring bolts of sill L1 (0'-0\" to 4'-0\") at most 72\" apart (IRC 2024 R403.1.6)");
}

TEST(RequirementWords, theSpacingSaysWhereItComesFrom) {
  Job job = support::boatShedFront();
  const auto told = [&] {
    const Wall front(job, 0);
    return front.told({Kind::Rule, R::BoltSpacing, {front.line().sills[0].id}, 0});
  };
  job.limits.edit([](JobLimits& limits) { limits.planBoltSpacing = 32; });
  EXPECT_NE(told().find("at most 32\" apart (plans)"), std::string::npos) << told();
  job.limits.edit([](JobLimits& limits) {
    limits.planBoltSpacing.reset();
    limits.overrides.push_back({"bolt.spacing", 60, "letter of the engineer", "", "", ""});
  });
  EXPECT_NE(told().find("at most 60\" apart (changed for this job: letter of the engineer)"), std::string::npos)
      << told();
  job.limits.edit([](JobLimits& limits) { limits.overrides.clear(); });
  job.marks.edit([](std::vector<WallEndMark>& marks) { marks[0].boltSpacing = 24; });
  const Wall front(job, 0);
  const std::string marked =
      front.told({Kind::Rule, R::BoltSpacing, {front.line().sills[0].id, front.line().panels[0].id}, 0});
  EXPECT_NE(marked.find("at most 24\" apart under panel P1"), std::string::npos) << marked;
}

TEST(RequirementWords, leewayAndWhatStays) {
  Job job = support::boatShedFront();
  WallLine line = job.walls[0];
  const Id column = line.columns[0].id, strap = line.straps[0].id;
  Requirement leeway{Kind::Leeway, R::ColumnSill, {column}};
  leeway.by = 0.4375;
  const std::string at = print(line.columns[0].makeUp) + " at " + printLength(line.columns[0].station, style);
  {
    const Wall front(job, 0);
    EXPECT_EQ(front.told(leeway), "column C1 (" + at + ") where it is: its leeway is 0\"");
    EXPECT_EQ(relaxationWords(front.layout, leeway, style), "would do alone: column C1 7/16\" beyond its leeway");
    const Requirement stays{Kind::Stays, R::StrapColumn, {strap}};
    EXPECT_EQ(front.told(stays), "strap S1 stays where it is, at " + printLength(line.straps[0].station, style));
    EXPECT_EQ(relaxationWords(front.layout, stays, style), "");
  }
  line.columns[0].leeway = 0.125;
  job.walls.replace(line);
  EXPECT_EQ(Wall(job, 0).told(leeway), "column C1 (" + at + ") within its leeway of 1/8\" either way");
}

TEST(RequirementWords, bolts) {
  const Wall front(support::boatShedFront(), 0);
  const Id sill = front.line().sills[0].id;
  EXPECT_EQ(front.told({Kind::Rule, R::BoltCount, {sill}, 0}),
            "2 bolts or more in sill L1 (0'-0\" to 4'-0\") (IRC 2024 R403.1.6)");
  EXPECT_EQ(front.told({Kind::Rule, R::BoltStud, {sill}, 0, Interval{31.25, 32.75}}),
            "bolts and washers of sill L1 (0'-0\" to 4'-0\") not under the stud at 2'-8\"");
}

// Of bolts wherever they stand, no sill is named; of a strap that a panel end lacks there is only its column.
TEST(RequirementWords, whatHasNoNameYet) {
  const Wall front(support::boatShedFront(), 0);
  const WallLine& wall = front.line();
  const std::string column = "column C1 (" + print(wall.columns[0].makeUp) + " at 0'-2 3/4\")";
  EXPECT_EQ(front.told({Kind::Rule, R::BoltStrap, {Id{}, wall.straps[0].id}}),
            "the bolts clear of strap S1 (at 0'-2 3/4\")");
  EXPECT_EQ(front.told({Kind::Rule, R::WasherColumn, {Id{}, wall.columns[0].id}}), "the washers not under " + column);
  EXPECT_EQ(front.told({Kind::Rule, R::BoltGap, {}}),
            "the bolts at least 2 1/2\" (4 diameters, ACI 318-19 Table 17.9.2(a)) apart");
  EXPECT_EQ(front.told({Kind::Rule, R::WasherWasher, {}}), "the washers (3\" wide) side by side, none over another");
  Requirement steel{Kind::Rule, R::StrapSteel, {wall.columns[0].id, wall.bars[1].id}};
  EXPECT_TRUE(front.told(steel).starts_with("strap to be added on column C1 clear of bar ")) << front.told(steel);
  EXPECT_EQ(front.told({Kind::Rule, R::StrapColumn, {wall.columns[0].id}}),
            "every nail of a strap to be added on " + column);
  EXPECT_EQ(
      front.told({Kind::Rule, R::StrapEdge, {wall.columns[0].id}}),
      "plate of strap to be added on column C1 at least 1/2\" (its type's minimum) from the corner on the left, at "
      "0'-0\"");
  EXPECT_EQ(front.told({Kind::Rule, R::BoltStrap, {Id{}, wall.columns[0].id}}),
            "the bolts clear of strap to be added on " + column);
}

// Nothing would be won by a bar along the wall as a whole: it is its end that is in the way.
TEST(RequirementWords, ofABarAlongTheWallTheEndGives) {
  const Wall front(support::boatShedFront(), 0);
  for (const Bar& bar : front.line().bars) {
    const Requirement requirement{Kind::Rule, R::BoltSteel, {front.line().sills[0].id, bar.id}, 0, {}, 0.5};
    EXPECT_EQ(relaxationWords(front.layout, requirement, style),
              std::string("would do alone: ") + (bar.run == BarRun::Along ? "the end of bar " : "bar ") + bar.mark +
                  " 1/2\" farther from the bolt");
  }
}

Job withColumnShifted(Job job) {
  WallLine line = job.walls[0];
  line.columns[0].leeway = 1;
  job.walls.replace(line);
  return job;
}

TEST(ChangeWords, sayWhatMovesAndHowFar) {
  const Wall front(withColumnShifted(support::boatShedFront()), 0);
  const WallLine& wall = front.line();
  Strap strap = wall.straps[0];
  strap.station -= 0.75;
  EXPECT_EQ(changeWords(wall, {wall.straps[0], strap}, style), "strap S1: 3/4\" left");
  Bolt bolt = wall.bolts[2];
  bolt.station += 1.5;
  bolt.depth += 0.5;
  EXPECT_EQ(changeWords(wall, {wall.bolts[2], bolt}, style), "bolt B3: 1 1/2\" right, 1/2\" inward");
  bolt.station = wall.bolts[2].station;
  bolt.depth = wall.bolts[2].depth - 0.25;
  EXPECT_EQ(changeWords(wall, {wall.bolts[2], bolt}, style), "bolt B3: 1/4\" outward");
  EXPECT_EQ(changeWords(wall, {wall.bolts[4], std::nullopt}, style), "bolt B5: taken out");
  Bolt added = wall.bolts[0];
  added.id = {};
  added.mark = "";
  added.station = 50;
  EXPECT_EQ(changeWords(wall, {std::nullopt, added}, style), "bolt added at 4'-2\"");
  Column column = wall.columns[0];
  column.station += 0.125;
  EXPECT_EQ(changeWords(wall, {wall.columns[0], column}, style), "column C1: 1/8\" right");
}

TEST(ChangeWords, aProposalInOneLine) {
  const Wall front(support::boatShedFront(), 0);
  const WallLine& wall = front.line();
  Proposal proposal;
  EXPECT_EQ(proposalWords(wall, proposal, style), "nothing to do");
  Strap strap = wall.straps[0];
  strap.station += 1;
  proposal.changes.push_back({wall.straps[0], strap});
  proposal.movement = 1;
  proposal.room = 0.25;
  EXPECT_EQ(proposalWords(wall, proposal, style), "1 piece moves 1\"; every target met; smallest slide room 1/4\"");
  proposal.changes.push_back({wall.bolts[0], wall.bolts[1]});
  proposal.changes.push_back({std::nullopt, wall.bolts[0]});
  proposal.changes.push_back({wall.bolts[2], std::nullopt});
  proposal.changes.push_back({wall.bolts[3], std::nullopt});
  proposal.movement = 1.375;
  EXPECT_EQ(
      proposalWords(wall, proposal, style),
      "2 pieces move 1 3/8\" in all, 1 bolt added, 2 bolts taken out; every target met; smallest slide room 1/4\"");
  proposal.room = 64; // no limit
  proposal.cost.ask = 1;
  EXPECT_EQ(proposalWords(wall, proposal, style),
            "2 pieces move 1 3/8\" in all, 1 bolt added, 2 bolts taken out; 1 target missed");
  proposal.cost.watch = 2;
  EXPECT_EQ(proposalWords(wall, proposal, style),
            "2 pieces move 1 3/8\" in all, 1 bolt added, 2 bolts taken out; 3 targets missed");
}

// ---- the question -----------------------------------------------------------------------------------------------

NoLayout noRoomFor(const Wall& front) {
  const WallLine& wall = front.line();
  const Id strap = wall.straps[0].id, column = wall.columns[0].id;
  NoLayout conflict{wall.id, {}};
  conflict.requirements.push_back({Kind::Rule, R::StrapEdge, {strap}, {}, {}, 0.625});
  conflict.requirements.push_back({Kind::Rule, R::StrapSteel, {strap, wall.bars[1].id}, {}, {}, 0.4375});
  conflict.requirements.push_back({Kind::Rule, R::StrapColumn, {strap, column}, {}, {}, {}});
  conflict.requirements.push_back({Kind::Leeway, R::ColumnSill, {column}, {}, {}, 1.125});
  return conflict;
}

TEST(Question, hasItsPartsInOrder) {
  const Wall front(support::boatShedFront(), 0);
  const Question question = questionOf(front.job, front.layout, front.limits, noRoomFor(front));
  EXPECT_EQ(question.about, (std::vector<std::string>{"Job: Boat shed, Heron Slip, Heron Slip (invented)",
                                                      "Plans: set of 2 March 2031", "Wall: A, front"}));
  EXPECT_NE(question.toBeSet.find("strap S1"), std::string::npos) << question.toBeSet;
  EXPECT_NE(question.toBeSet.find("on column C1"), std::string::npos) << question.toBeSet;
  EXPECT_NE(question.toBeSet.find("at the left end of panel P1"), std::string::npos) << question.toBeSet;
  EXPECT_EQ(question.toBeSet.find("column C1", question.toBeSet.find("column C1") + 1), std::string::npos); // told once
  EXPECT_EQ(question.requirements.size(), 4u);
  EXPECT_EQ(question.shortBy, "Short by 7/16\" at the least.");
  ASSERT_EQ(question.giving.size(), 3u); // the smallest first
  EXPECT_EQ(question.giving[0].requirement, 2);
  EXPECT_EQ(question.giving[1].requirement, 1);
  EXPECT_EQ(question.giving[1].words, "S1 5/8\" nearer to the corner on the left than its type says");
  EXPECT_EQ(question.giving[2].requirement, 4);
  EXPECT_EQ(question.notByAmount, "3 gives by no amount: it would have to go altogether.");
  EXPECT_EQ(question.asked, "Which of these may give, and by how much?");
  EXPECT_NE(question.caution.find("approves nothing"), std::string::npos);
}

TEST(Question, asTextIsWhatThePartsSay) {
  const Wall front(support::boatShedFront(), 0);
  const NoLayout conflict = noRoomFor(front);
  const Question question = questionOf(front.job, front.layout, front.limits, conflict);
  const std::vector<std::string> lines = questionLines(front.job, front.layout, front.limits, conflict);
  EXPECT_EQ(lines.front(), "Question to the engineer");
  const auto has = [&](const std::string& line) { return std::find(lines.begin(), lines.end(), line) != lines.end(); };
  for (std::size_t i = 0; i < question.requirements.size(); ++i)
    EXPECT_TRUE(has(std::to_string(i + 1) + ". " + question.requirements[i]));
  EXPECT_TRUE(has("- 2: " + question.giving[0].words));
  EXPECT_TRUE(has(question.asked));
  EXPECT_EQ(lines.back(), question.caution);
}

TEST(Question, ofOneRequirementAlone) {
  const Wall front(support::boatShedFront(), 0);
  NoLayout conflict{front.line().id, {{Kind::Rule, R::BoltCount, {front.line().sills[0].id}, 0}}};
  const Question kept = questionOf(front.job, front.layout, front.limits, conflict);
  EXPECT_TRUE(kept.collide.ends_with("this cannot hold:")) << kept.collide;
  EXPECT_EQ(kept.shortBy, "It gives by no amount: it would have to go altogether.");
  EXPECT_EQ(kept.notByAmount, "");
  conflict.requirements[0] = {Kind::Rule, R::BoltEndFar, {front.line().sills[0].id}, 0, {}, 0.5};
  const Question giving = questionOf(front.job, front.layout, front.limits, conflict);
  EXPECT_EQ(giving.givingHead, "What it would have to give, all else kept:");
  EXPECT_EQ(giving.shortBy, "Short by 1/2\" at the least.");
}

// A strap that a panel end lacks is not on the wall yet: it is told by its column.
TEST(Question, ofAStrapThatIsToBeAdded) {
  Job job = support::boatShedFrontNoRoom();
  WallLine line = job.walls[0];
  line.straps.erase(line.straps.begin());
  job.walls.replace(line);
  const Wall front(job, 0);
  const auto answer = refit(front.layout, front.limits);
  ASSERT_TRUE(answer);
  const NoLayout& conflict = std::get<NoLayout>(*answer);
  ASSERT_FALSE(conflict.requirements.empty());
  for (const Requirement& requirement : conflict.requirements)
    for (const Id piece : requirement.pieces)
      EXPECT_TRUE(!piece || findPiece(front.line(), piece)) << front.told(requirement);
  const Question question = questionOf(job, front.layout, front.limits, conflict);
  EXPECT_EQ(question.toBeSet, "a strap (Strap 2 1/2 x 36), to be added on column C1 (6x6), for mark HD1 at the "
                              "left end of panel P1.");
  std::string text;
  for (const std::string& words : linesOf(question))
    text += words + "\n";
  EXPECT_NE(text.find("strap to be added on column C1 clear of bar V1"), std::string::npos) << text;
  EXPECT_EQ(text.find('#'), std::string::npos) << text;
}

TEST(Question, whereNothingGivesByAnAmount) {
  const Wall front(support::boatShedFront(), 0);
  NoLayout conflict{front.line().id, {}};
  conflict.requirements.push_back({Kind::Rule, R::BoltCount, {front.line().sills[0].id}, 0});
  conflict.requirements.push_back({Kind::Stays, R::BoltCount, {front.line().bolts[0].id}});
  const Question question = questionOf(front.job, front.layout, front.limits, conflict);
  EXPECT_TRUE(question.giving.empty());
  EXPECT_EQ(question.givingHead, "");
  EXPECT_EQ(question.shortBy, "No one of them gives by an amount: one of them would have to go altogether.");
  for (const std::string& line : linesOf(question))
    EXPECT_EQ(line.find("Short by"), std::string::npos) << line;
}

} // namespace
} // namespace sillwright
