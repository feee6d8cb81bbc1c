// Copies of pieces: turned round, pasted, mirrored, repeated.
//
// Worked by hand on the front of the boat shed (24'-0", opening 4'-0" to 20'-0"), in inches: left pier 0 … 48 with the
// post C1 at 2 3/4, straps S1 at 2 3/4 and S2, bolts at 10 1/2, 20, 38, upright bars at 8, 24, 40. About the middle of
// the opening, 144, a station s goes to 288 - s: post 285 1/4, bolts 277 1/2, 268, 250, bars 280, 264, 248.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "core/edit/copy_places.h"
#include "core/edit/copy_words.h"
#include "core/edit/operations.h"
#include "core/edit/repeat.h"
#include "core/edit/turned.h"
#include "core/rules/checker.h"
#include "core/rules/rule_book.h"
#include "tests/support/generate_job.h"
#include "tests/support/mirror_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

const WallLine& front(const Job& job) {
  return job.walls[0];
}

Id named(const WallLine& wall, const std::string& mark) {
  for (const Id id : piecesOf(wall))
    if (markOf(*findPiece(wall, id)) == mark)
      return id;
  ADD_FAILURE() << "there is no " << mark;
  return {};
}

std::vector<Id> allNamed(const WallLine& wall, const std::vector<std::string>& marks) {
  std::vector<Id> ids;
  for (const std::string& mark : marks)
    ids.push_back(named(wall, mark));
  return ids;
}

template <class List> std::vector<double> stations(const WallLine& wall, const List& list, Interval within) {
  std::vector<double> all;
  for (const auto& item : list)
    if (const double at = *stationOf(wall, item.id); within.contains(at))
      all.push_back(at);
  std::sort(all.begin(), all.end());
  return all;
}

std::vector<double> uprights(const WallLine& wall, Interval within) {
  std::vector<double> all;
  for (const Bar& bar : wall.bars)
    if (bar.run == BarRun::Upright && within.contains(bar.planned.a.s))
      all.push_back(bar.planned.a.s);
  std::sort(all.begin(), all.end());
  return all;
}

using Stations = std::vector<double>;

constexpr Interval leftPier{0, 48}, rightPier{240, 288};

// Everything that lies wholly in a stretch of the front taken away.
Job without(const Job& job, Interval stretch) {
  std::vector<PieceRef> gone;
  for (const Id id : piecesOf(front(job)))
    if (const auto own = stationsOf(job, front(job), id); own && own->from >= stretch.from && own->to <= stretch.to)
      gone.push_back({front(job).id, id});
  return removePieces(job, gone);
}

Copies mirror(const Job& job, const std::vector<Id>& selected) {
  const auto place = mirrorPlace(job, front(job).id, selected);
  if (!place)
    return {job, {}, {}};
  return putCopies(job, front(job).id, copyOf(job, front(job).id, place->pieces), std::span(&place->carry, 1));
}

Copies paste(const Job& job, Id wall, const Copied& copied, std::optional<Id> column, double station) {
  const PastePlace place = pastePlace(job, wall, copied, column, station);
  return putCopies(job, wall, copied, std::span(&place.carry, 1));
}

std::vector<LeftOutWhy> whys(const Copies& copies) {
  std::vector<LeftOutWhy> all;
  for (const LeftOut& left : copies.leftOut)
    all.push_back(left.why);
  return all;
}

// ---- turned -----------------------------------------------------------------------------------------------------

Job withSlottedWashers(Job job) {
  job.types.edit([](HardwareTypes& types) {
    for (WasherType& washer : types.washers)
      washer.slot = WasherSlot{0.75, 1.5, SlotDirection::Along, {}};
  });
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    WallLine wall = job.walls[i];
    double shift = -0.25;
    for (Bolt& bolt : wall.bolts) {
      bolt.hook = shift < 0 ? HookDirection::Left : HookDirection::Inward;
      bolt.washerShift = shift = -shift;
    }
    job.walls.replace(std::move(wall));
  }
  return job;
}

std::vector<Job> jobsToTurn() {
  std::vector<Job> jobs{support::ridgeHouse(), support::boatShedFrontSteelMoved(), support::punchListPractice(),
                        withSlottedWashers(support::boatShedFront())};
  for (std::uint64_t seed = 1; seed <= 20; ++seed)
    jobs.push_back(generateJob(seed, 150));
  return jobs;
}

TEST(Turned, eachPieceIsAsTheWholeJobInAMirrorHasIt) {
  std::set<std::size_t> kinds;
  for (const Job& job : jobsToTurn()) {
    const Job image = mirrored(job);
    for (std::size_t i = 0; i < job.walls.size(); ++i)
      for (const Id id : piecesOf(job.walls[i])) {
        const Piece piece = *findPiece(job.walls[i], id);
        kinds.insert(piece.index());
        EXPECT_TRUE(turned(piece, wallLength(job, job.walls[i]), *job.types) == *findPiece(image.walls[i], id))
            << job.walls[i].mark << " " << markOf(piece);
      }
  }
  EXPECT_EQ(kinds.size(), 10u) << "every kind";
}

TEST(Turned, twiceIsTheSame) {
  for (const Job& job : jobsToTurn())
    for (std::size_t i = 0; i < job.walls.size(); ++i)
      for (const Id id : piecesOf(job.walls[i])) {
        const Piece piece = *findPiece(job.walls[i], id);
        for (const double sum : {0.0, 96.0, 287.9375})
          EXPECT_TRUE(turned(turned(piece, sum, *job.types), sum, *job.types) == piece) << markOf(piece);
      }
}

// ---- mirrored ---------------------------------------------------------------------------------------------------

TEST(Mirror, anOpeningMakesTheOtherPier) {
  const Job whole = support::boatShedFront();
  const Job half = without(whole, rightPier);
  ASSERT_TRUE(stations(front(half), front(half).straps, rightPier).empty());
  const Copies made = mirror(half, {named(front(half), "O1")});
  const WallLine& wall = front(made.job);
  EXPECT_TRUE(made.leftOut.empty()) << leftOutWords(made.leftOut);
  EXPECT_EQ(stations(wall, wall.bolts, rightPier), (Stations{250, 268, 277.5}));
  EXPECT_EQ(uprights(wall, rightPier), (Stations{248, 264, 280}));
  const WallLine& asPlanned = front(whole);
  EXPECT_EQ(stations(wall, wall.straps, rightPier), stations(asPlanned, asPlanned.straps, rightPier));
  EXPECT_EQ(stations(wall, wall.columns, rightPier), stations(asPlanned, asPlanned.columns, rightPier));
  EXPECT_EQ(stations(wall, wall.sills, rightPier), (Stations{264}));
  EXPECT_EQ(stations(wall, wall.panels, rightPier), (Stations{264}));
  EXPECT_EQ(pieceCount(wall), pieceCount(asPlanned));
  for (const Strap& strap : wall.straps) {
    const Column* column = findIn(wall.columns, strap.column);
    ASSERT_NE(column, nullptr) << strap.mark;
    EXPECT_TRUE(around(column->station, alongWall(column->makeUp)).contains(strap.station)) << strap.mark;
  }
  std::set<std::string> marks;
  for (const Id id : piecesOf(wall))
    EXPECT_TRUE(marks.insert(markOf(*findPiece(wall, id))).second) << "twice: " << markOf(*findPiece(wall, id));
}

TEST(Mirror, theSideThatHasPiecesIsMadeAgainAtTheOther) {
  const Job half = without(support::boatShedFront(), leftPier);
  const Copies made = mirror(half, {named(front(half), "O1")});
  EXPECT_EQ(stations(front(made.job), front(made.job).bolts, leftPier), (Stations{10.5, 20, 38}));
}

TEST(Mirror, aPanelBringsItsPierAboutTheOnlyOpening) {
  const Job half = without(support::boatShedFront(), rightPier);
  const Copies byPanel = mirror(half, {named(front(half), "P1")});
  const Copies byOpening = mirror(half, {named(front(half), "O1")});
  EXPECT_TRUE(byPanel.job == byOpening.job);
}

TEST(Mirror, piecesGoAboutTheMiddleOfTheWall) {
  Job job = support::boatShedFront();
  const Id bolt = named(front(job), "B2");
  const Copies made = mirror(setStation(job, {front(job).id, bolt}, 22.0625), {bolt});
  ASSERT_EQ(made.made.size(), 1u);
  EXPECT_EQ(stationOf(front(made.job), made.made[0].piece), 288 - 22.0625);
}

TEST(Mirror, piecesWithOneOpeningGoAboutThatOpening) {
  Job job = support::boatShedFront();
  const WallLine wall = front(job);
  const Id opening = named(wall, "O1");
  job = moveEnd(job, {wall.id, opening}, Side::Right, 200);
  const Id bolt = named(wall, "B2");
  const Copies made = mirror(job, {bolt, opening});
  ASSERT_EQ(made.made.size(), 1u);
  EXPECT_EQ(stationOf(front(made.job), made.made[0].piece), 228); // 48 + 200 - 20
}

TEST(Mirror, whatStandsThereIsNotDoubled) {
  const Job job = support::boatShedFront();
  const Copies made = mirror(job, {named(front(job), "O1")});
  EXPECT_TRUE(made.made.empty());
  EXPECT_TRUE(front(made.job) == front(job));
  for (const LeftOut& left : made.leftOut)
    EXPECT_EQ(left.why, LeftOutWhy::StandsAlready) << left.mark;
  EXPECT_NE(leftOutWords(made.leftOut).find("stand there already"), std::string::npos);
}

TEST(Mirror, aStrapInTheWayStaysAndIsSaid) {
  Job job = support::boatShedFront();
  const Id other = named(front(job), "S4");
  job = setStation(job, {front(job).id, other}, 284.5);
  const Copies made = mirror(job, {named(front(job), "S1")});
  EXPECT_TRUE(made.made.empty());
  ASSERT_EQ(made.leftOut.size(), 1u);
  EXPECT_EQ(made.leftOut[0], (LeftOut{"S1", LeftOutWhy::InTheWay, "S4"}));
  EXPECT_EQ(leftOutWords(made.leftOut), "S4 is in the way");
  EXPECT_EQ(stationOf(front(made.job), other), 284.5);
}

TEST(Mirror, nothingSelectedIsNothingMirrored) {
  const Job job = support::boatShedFront();
  EXPECT_FALSE(mirrorPlace(job, front(job).id, {}));
  const std::vector<Id> one{named(front(job), "S1")};
  EXPECT_FALSE(mirrorPlace(job, Id{99999}, one));
}

TEST(Mirror, whatWasReadOnTheFormsIsNotCopied) {
  Job job = support::boatShedFrontSteelMoved();
  WallLine wall = front(job);
  wall.shots.push_back({takeId(job), "G1", 12, 0.0625, {}, {}});
  Reading reading;
  reading.piece = named(wall, "S1");
  reading.along = 1.75;
  reading.set = true;
  wall.readings.push_back(reading);
  job.walls.replace(wall);
  const Job half = without(job, rightPier);
  const Copies made = mirror(half, {named(front(half), "O1")});
  EXPECT_EQ(front(made.job).readings, front(half).readings);
  EXPECT_EQ(front(made.job).shots, front(half).shots);
  EXPECT_EQ(uprights(front(made.job), {276, 288}), (Stations{280}));
  for (const PieceRef& ref : made.made) {
    const Bar* bar = findIn(front(made.job).bars, ref.piece);
    EXPECT_FALSE(bar && bar->found) << markOf(made.job, ref);
  }
  EXPECT_EQ(whys(mirror(half, {named(front(half), "G1")})), (std::vector<LeftOutWhy>{LeftOutWhy::OnlyRead}));
}

// ---- what the rules say of a mirrored pier ----------------------------------------------------------------------

struct Said {
  RuleId rule;
  Level level;
  double measured, from, to;
};

std::vector<Said> saidOf(const Job& job, Interval pier) {
  const Findings findings = checkWall(layOut(job, job.walls.pointer(0)), resolve(*job.limits));
  std::vector<Said> said;
  for (const Finding& finding : findings)
    if (pier.contains(finding.region.s.from) && pier.contains(finding.region.s.to))
      said.push_back({finding.rule, finding.level, finding.measured, finding.region.s.from, finding.region.s.to});
  return said;
}

// Every finding of the left pier has its image in the right one, and the other way round.
void expectImages(const Job& job) {
  const auto left = saidOf(job, grown(leftPier, -1e-9)), right = saidOf(job, grown(rightPier, -1e-9));
  EXPECT_EQ(left.size(), right.size());
  for (const Said& one : left)
    EXPECT_TRUE(std::any_of(right.begin(), right.end(),
                            [&](const Said& other) {
                              return one.rule == other.rule && one.level == other.level &&
                                     std::abs(one.measured - other.measured) < 1e-7 &&
                                     std::abs(288 - one.from - other.to) < 1e-7 &&
                                     std::abs(288 - one.to - other.from) < 1e-7;
                            }))
        << rule(one.rule).name << " " << one.from << " … " << one.to;
}

int fixes(const std::vector<Said>& said) {
  return static_cast<int>(std::count_if(said.begin(), said.end(), [](const Said& s) { return s.level == Level::Fix; }));
}

TEST(MirroredPier, withoutAFixItHasNoneEither) {
  const Job half = without(support::boatShedFront(), rightPier);
  ASSERT_EQ(fixes(saidOf(half, leftPier)), 0);
  const Copies made = mirror(half, {named(front(half), "O1")});
  EXPECT_EQ(fixes(saidOf(made.job, {0, 288})), 0);
  expectImages(made.job);
}

TEST(MirroredPier, hasTheSameFindingsInAMirror) {
  std::size_t findings = 0;
  for (const double station : {1.625, 2.25, 4.5}) {
    Job job = support::boatShedFront();
    job = setStation(job, {front(job).id, named(front(job), "S1")}, station);
    job = setStation(job, {front(job).id, named(front(job), "B2")}, 16.5);
    job = setStation(job, {front(job).id, named(front(job), "B3")}, 40.25);
    const Job half = without(job, rightPier);
    const Copies made = mirror(half, {named(front(half), "O1")});
    expectImages(made.job);
    findings += saidOf(made.job, rightPier).size();
  }
  EXPECT_GT(findings, 6u);
}

// ---- pasted -----------------------------------------------------------------------------------------------------

TEST(Paste, atTheColumnOfTheOtherEndItIsTurnedRound) {
  Job job = support::boatShedFront();
  WallLine wall = front(job);
  Bolt& bolt = *findIn(wall.bolts, named(wall, "B1"));
  bolt.hook = HookDirection::Left;
  job.walls.replace(wall);
  const Copied copied = copyOf(job, wall.id, allNamed(wall, {"S1", "B1"}));
  const std::vector<PieceRef> gone{{wall.id, named(wall, "S4")}, {wall.id, named(wall, "B6")}};
  job = removePieces(job, gone);
  const Id post = named(wall, "C4");
  const Copies made = paste(job, wall.id, copied, post, 100);
  ASSERT_EQ(made.made.size(), 2u) << leftOutWords(made.leftOut);
  const Strap& strap = *findIn(front(made.job).straps, made.made[0].piece);
  EXPECT_EQ(strap.station, 285.25);
  EXPECT_EQ(strap.column, post);
  const Bolt& pasted = *findIn(front(made.job).bolts, made.made[1].piece);
  EXPECT_EQ(pasted.station, 277.5);
  EXPECT_EQ(pasted.hook, HookDirection::Right);
  EXPECT_EQ(strap.mark, "S4") << "the lowest number that is free";
}

// C1 is 5 1/2 wide: S1 is 2 3/4 from its outer face, and as far from that of a column 3 wide at the other end.
TEST(Paste, theDistanceFromTheOuterFaceIsKept) {
  Job job = support::boatShedFront();
  WallLine wall = front(job);
  Column& post = *findIn(wall.columns, named(wall, "C4"));
  post.makeUp = {2, {2, 6}};
  post.station = 288 - 1.5;
  const Copied copied = copyOf(job, wall.id, allNamed(wall, {"S1"}));
  std::erase_if(wall.straps, [&](const Strap& strap) { return strap.column == post.id; });
  job.walls.replace(wall);
  const Copies made = paste(job, wall.id, copied, post.id, 0);
  ASSERT_EQ(made.made.size(), 1u);
  EXPECT_EQ(stationOf(front(made.job), made.made[0].piece), 285.25);
}

TEST(Paste, atAnEndThatLooksTheSameWayItIsNotTurned) {
  const Job job = support::ridgeHouse();
  const WallLine& from = job.walls[4]; // panels 0 … 50 and 94 … 144 beside a window
  const Column* first = nullptr;
  const Column* second = nullptr;
  for (const Column& column : from.columns) {
    if (std::abs(column.station) < 6 && !first)
      first = &column;
    if (column.station > 94 && column.role != ColumnRole::Trimmer && (!second || column.station < second->station))
      second = &column;
  }
  ASSERT_TRUE(first && second);
  const std::vector<Id> one{first->id};
  const PastePlace place = pastePlace(job, from.id, copyOf(job, from.id, one), second->id, 0);
  EXPECT_FALSE(place.carry.turned);
  EXPECT_EQ(place.carry(first->station - alongWall(first->makeUp) / 2),
            second->station - alongWall(second->makeUp) / 2);
}

TEST(Paste, ontoAnotherWall) {
  const Job job = support::boatShedFront();
  const WallLine& back = job.walls[2];
  const Copied copied = copyOf(job, front(job).id, allNamed(front(job), {"B1", "V1"}));
  const Copies made = paste(job, back.id, copied, std::nullopt, 60);
  ASSERT_EQ(made.made.size(), 2u) << leftOutWords(made.leftOut);
  const WallLine& wall = *made.job.walls.find(back.id);
  // From 8 to 10 13/16 they take up, middle 9 13/32: 60 - 9 13/32 is 50 19/32, rounded up to 50 5/8.
  EXPECT_EQ(stationOf(wall, made.made[0].piece), 61.125);
  EXPECT_EQ(stationOf(wall, made.made[1].piece), 58.625);
  EXPECT_TRUE(made.job.walls[0] == job.walls[0]);
}

TEST(Paste, nearAnEndItGoesThereTurnedRound) {
  const Job job = without(support::boatShedFront(), rightPier);
  const Copied copied = copyOf(job, front(job).id, allNamed(front(job), {"C1", "S1"}));
  const Copies made = paste(job, front(job).id, copied, std::nullopt, 280);
  ASSERT_EQ(made.made.size(), 2u);
  EXPECT_EQ(stationOf(front(made.job), made.made[0].piece), 285.25);
  EXPECT_EQ(stationOf(front(made.job), made.made[1].piece), 285.25);
  EXPECT_EQ(findIn(front(made.job).straps, made.made[1].piece)->column, made.made[0].piece);
}

TEST(Paste, itIsKeptOnTheWall) {
  const Job job = support::boatShedFront();
  const Copied copied = copyOf(job, front(job).id, allNamed(front(job), {"B2", "V2"}));
  for (const double station : {-50.0, 500.0}) {
    const Copies made = paste(job, job.walls[2].id, copied, std::nullopt, station);
    EXPECT_EQ(made.made.size(), 2u);
    for (const PieceRef& ref : made.made)
      EXPECT_TRUE((Interval{0, 288}).contains(*stationOf(made.job.walls[2], ref.piece)));
  }
}

TEST(Paste, whatDoesNotFitIsLeftOut) {
  const Job job = support::boatShedFront();
  const std::vector<Id> all = allNamed(front(job), {"O1"});
  const Copied opening = copyOf(job, front(job).id, all);
  EXPECT_EQ(opening.pieces.size(), 2u) << "it brings its step";
  Job narrow = job;
  WallLine wall = narrow.walls[2];
  wall.openings.clear();
  wall.thickness = 2;
  narrow.walls.replace(wall);
  const Carry far{100, false};
  EXPECT_EQ(whys(putCopies(narrow, wall.id, opening, std::span(&far, 1))),
            (std::vector<LeftOutWhy>{LeftOutWhy::PastTheEnd, LeftOutWhy::PastTheEnd}));
  const Copied bolt = copyOf(job, front(job).id, allNamed(front(job), {"B2", "V1"}));
  EXPECT_EQ(whys(putCopies(narrow, wall.id, bolt, std::span(&far, 1))),
            (std::vector<LeftOutWhy>{LeftOutWhy::TooDeep, LeftOutWhy::TooDeep}));
}

TEST(Paste, aRodNeedsAColumn) {
  const Job job = support::ridgeHouse();
  const WallLine& from = job.walls[9];
  ASSERT_FALSE(from.rods.empty());
  const std::vector<Id> rod{from.rods.front().id};
  const std::vector<Id> both{from.rods.front().id, from.rods.front().column};
  const Carry away{40, false};
  Job bare = job;
  WallLine wall = job.walls[7];
  wall.columns.clear();
  wall.rods.clear();
  bare.walls.replace(wall);
  EXPECT_EQ(whys(putCopies(bare, wall.id, copyOf(job, from.id, rod), std::span(&away, 1))),
            (std::vector<LeftOutWhy>{LeftOutWhy::NoColumn}));
  const Copies made = putCopies(bare, wall.id, copyOf(job, from.id, both), std::span(&away, 1));
  ASSERT_EQ(made.made.size(), 2u);
  const WallLine& now = *made.job.walls.find(wall.id);
  EXPECT_EQ(now.rods.front().column, now.columns.front().id);
  EXPECT_NEAR(*stationOf(now, now.rods.front().id), *stationOf(from, rod.front()) + 40, 1e-9);
}

TEST(Paste, intoAnotherJobHardwareIsKnownByWhatItIs) {
  const Job job = support::boatShedFront();
  const Copied copied = copyOf(job, front(job).id, allNamed(front(job), {"S1"}));
  Job other = support::boatShedFront();
  const Id old = other.types->straps.front().id;
  other.types.edit([&](HardwareTypes& types) { types.straps.front().id = Id{70000}; });
  other.nextId = 80000;
  const Carry there{60, false};
  const Copies made = putCopies(other, other.walls[2].id, copied, std::span(&there, 1));
  ASSERT_EQ(made.made.size(), 1u);
  EXPECT_NE(old, Id{70000});
  EXPECT_EQ(findIn(made.job.walls[2].straps, made.made[0].piece)->type, Id{70000});
  other.types.edit([&](HardwareTypes& types) { types.straps.front().name = "another"; });
  EXPECT_EQ(whys(putCopies(other, other.walls[2].id, copied, std::span(&there, 1))),
            (std::vector<LeftOutWhy>{LeftOutWhy::NoType}));
}

TEST(Paste, theTextIsALineAPieceFromTheLeft) {
  const Job job = support::boatShedFront();
  const Copied copied = copyOf(job, front(job).id, allNamed(front(job), {"B1", "S1", "P1"}));
  EXPECT_EQ(textOf(copied, LengthStyle::FeetInches), "strap S1 at 0'-2 3/4\"\n"
                                                     "anchor bolt B1 at 0'-10 1/2\"\n"
                                                     "panel P1 from 0'-0\" to 4'-0\"\n");
}

// A sill put down at the left is the first of the wall: the neighbour asks for it.
TEST(Paste, sillsStayInOrder) {
  const Job half = without(support::boatShedFront(), leftPier);
  const Copies made = mirror(half, {named(front(half), "O1")});
  const auto& sills = front(made.job).sills;
  EXPECT_TRUE(std::is_sorted(sills.begin(), sills.end(), [](const Sill& a, const Sill& b) { return a.from < b.from; }));
  EXPECT_EQ(sills.front().from, 0);
}

// ---- repeated ---------------------------------------------------------------------------------------------------

// The sill piece is 48 long and a 5/8 in bolt keeps 7 x 5/8 = 4 3/8 from its ends: from 4 3/8 to 43 5/8.
TEST(Repeat, boltsGoToTheEndOfTheirSillPiece) {
  const Job job = support::boatShedFront();
  const PieceRef first{front(job).id, named(front(job), "B1")}, last{front(job).id, named(front(job), "B3")};
  EXPECT_EQ(repeatStations(job, first, {12, std::nullopt, Side::Right}), (Stations{22.5, 34.5}));
  EXPECT_EQ(repeatStations(job, first, {12, 1, Side::Right}), (Stations{22.5}));
  EXPECT_EQ(repeatStations(job, first, {33.125, std::nullopt, Side::Right}), (Stations{43.625}));
  EXPECT_EQ(repeatStations(job, first, {33.1875, std::nullopt, Side::Right}), (Stations{}));
  EXPECT_EQ(repeatStations(job, last, {12, std::nullopt, Side::Left}), (Stations{26, 14}));
  EXPECT_EQ(repeatStations(job, first, {0, std::nullopt, Side::Right}), (Stations{}));
  EXPECT_EQ(repeatStations(job, first, {-5, std::nullopt, Side::Right}), (Stations{}));
}

TEST(Repeat, aSpliceEndsAPieceOfSill) {
  Job job = support::boatShedFront();
  WallLine wall = front(job);
  wall.sills.front().splices = {30};
  job.walls.replace(wall);
  EXPECT_EQ(repeatStations(job, {wall.id, named(wall, "B1")}, {12, std::nullopt, Side::Right}), (Stations{22.5}));
}

TEST(Repeat, copiesAreLikeTheFirstAndWhatStandsThereIsNotDoubled) {
  const Job job = support::boatShedFront();
  const std::vector<Id> bolt = allNamed(front(job), {"B1"});
  const Copies made = repeated(job, front(job).id, bolt, {9.5, std::nullopt, Side::Right});
  EXPECT_EQ(stations(front(made.job), front(made.job).bolts, leftPier), (Stations{10.5, 20, 29.5, 38, 39}));
  EXPECT_EQ(made.leftOut, (std::vector<LeftOut>{{"B1", LeftOutWhy::StandsAlready, "B2"}}));
  const Bolt& like = *findIn(front(job).bolts, bolt.front());
  for (const PieceRef& ref : made.made) {
    Bolt copy = *findIn(front(made.job).bolts, ref.piece);
    copy.id = like.id;
    copy.mark = like.mark;
    copy.station = like.station;
    EXPECT_EQ(copy, like);
  }
}

// Uprights end 2 in under the pour line; in the opening that is 8 lower.
TEST(Repeat, barsKeepTheirDistanceFromThePourLine) {
  Job job = support::boatShedFront();
  WallLine wall = front(job);
  const Id first = named(wall, "V1");
  std::erase_if(wall.bars, [&](const Bar& bar) { return bar.run == BarRun::Upright && bar.id != first; });
  job.walls.replace(wall);
  const Copies made = repeated(job, wall.id, std::vector<Id>{first}, {16, std::nullopt, Side::Right});
  const WallLine& now = front(made.job);
  Stations expected;
  for (int i = 0; i < 18; ++i)
    expected.push_back(8 + 16 * i);
  EXPECT_EQ(uprights(now, {0, 288}), expected);
  for (const Bar& bar : now.bars)
    if (bar.run == BarRun::Upright) {
      EXPECT_EQ(bar.planned.b.z, bar.planned.b.s > 48 && bar.planned.b.s < 240 ? -10 : -2) << bar.mark;
      EXPECT_EQ(bar.planned.a.z, -28.5) << bar.mark;
    }
}

TEST(Repeat, twoOfAKindGoOnAsTheyStandApart) {
  Job job = support::boatShedFront();
  WallLine wall = front(job);
  std::erase_if(wall.bars,
                [&](const Bar& bar) { return bar.run == BarRun::Upright && bar.mark != "V1" && bar.mark != "V2"; });
  job.walls.replace(wall);
  const Copies made = repeated(job, wall.id, allNamed(wall, {"V1", "V2"}), {16, 3, Side::Right});
  EXPECT_EQ(uprights(front(made.job), {0, 288}), (Stations{8, 24, 40, 56, 72}));
}

TEST(Repeat, whatRunsAlongIsLeftAside) {
  const Job job = support::boatShedFront();
  for (const Id id : piecesOf(front(job))) {
    const Piece piece = *findPiece(front(job), id);
    const Bar* bar = std::get_if<Bar>(&piece);
    const bool able = std::holds_alternative<Bolt>(piece) || std::holds_alternative<Strap>(piece) ||
                      (bar && bar->run == BarRun::Upright);
    EXPECT_EQ(repeatRoom(job, {front(job).id, id}).has_value(), able) << markOf(piece);
  }
}

// ---- words ------------------------------------------------------------------------------------------------------

TEST(CopyWords, nameAFewAndCountTheRest) {
  const std::vector<std::string> marks{"S1", "S2", "S3", "S4", "S5"};
  const auto first = [&](std::size_t count) { return marksInWords(std::span(marks.data(), count)); };
  EXPECT_EQ(first(1), "S1");
  EXPECT_EQ(first(2), "S1 and S2");
  EXPECT_EQ(first(4), "S1, S2, S3 and S4");
  EXPECT_EQ(first(5), "S1, S2, S3 and 2 more");
  EXPECT_EQ(leftOutWords({}), "");
}

} // namespace
} // namespace sillwright
