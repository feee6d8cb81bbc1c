// The job's list of hardware types and marks: every field as typed, errors where they belong, uses, adding, removing.
#include "core/edit/types.h"

#include <gtest/gtest.h>

#include <functional>
#include <map>

#include "core/edit/session.h"
#include "core/edit/type_words.h"
#include "core/rules/checker.h"
#include "edit_jobs.h"

using namespace sillwright;
using namespace sillwright::testing_jobs;

namespace {

// The shed with both ends of its panel marked HD1.
Shed marked() {
  Shed s = shed();
  Panel panel = pieceOf<Panel>(s.job, s.wall, s.panel);
  panel.leftMark = panel.rightMark = "HD1";
  s.job = replacePiece(s.job, s.wall, panel);
  return s;
}

Id strapOf(const Job& job) { return job.types->straps.front().id; }
Id boltOf(const Job& job) { return job.types->bolts.front().id; }
Id rodOf(const Job& job) { return job.types->rods.front().id; }
Id washerOf(const Job& job) { return job.types->washers.front().id; }
Id markOfJob(const Job& job) { return job.marks->front().id; }

std::string textAt(const Job& job, Id id, const std::string& key) {
  for (const Field& field : listedFields(job, id))
    if (field.key == key)
      return field.text;
  ADD_FAILURE() << "no field " << key;
  return {};
}

std::string errorOf(const Result<Job>& result) { return result ? std::string("taken") : result.problem().text(); }

std::vector<std::string> keysOf(const Job& job, Id id) {
  std::vector<std::string> keys;
  for (const Field& field : listedFields(job, id))
    keys.push_back(field.key);
  return keys;
}

// Another value that each field can take, and what it then shows.
const std::map<std::string, std::string>& others() {
  static const std::map<std::string, std::string> values{
      {"name", "Other (sample)"}, {"note", "page 7"}, {"mark", "HD9"}, {"columns", "2-2x6, 4x6"}, {"column", "4x6"},
      {"sill", "3x6"}, {"threadsPerInch", "10"}, {"requiredCapacity", "4200"}, {"statedCapacity", "3150.5"},
      {"profile", "0.05, 0; 1/2, 1 1/2 down; 4, 11 3/8 down; 4, 10 down"}, {"nails.rows", "3/4 left, middle, 3/4 right"},
      {"nails.count", "12"}, {"across", "5 1/8\""}, {"nails.spacing", "7/8\""}, {"nails.nail", "a nail of its own"}, {"nails.nailDiameter", "0.162\""},
      {"slot", "3/4 x 1 1/2 along"}, {"hangerReach.from", "-1/4\""}, {"hole", "9/16\""}, {"length", "14\""},
      {"diameter", "0.4\""}, {"plateWidth", "2 3/4\""}, {"exposedLength", "23 1/16\""}, {"thickness", "0.236\""}};
  return values;
}

std::string otherValue(const Field& field) {
  if (const auto found = others().find(field.key); found != others().end() && found->second != field.text)
    return found->second;
  for (const std::string& choice : field.choices)
    if (choice != field.text)
      return choice;
  return "1 17/64\"";
}

} // namespace

TEST(Listed, everyFieldIsThere) {
  const Job job = marked().job;
  using Keys = std::vector<std::string>;
  EXPECT_EQ(keysOf(job, strapOf(job)),
            (Keys{"name", "plateWidth", "plateThickness", "exposedLength", "profile", "nails.nail", "nails.nailDiameter",
                  "nails.nailLength", "nails.rows", "nails.staggered", "nails.count", "nails.first", "nails.spacing",
                  "edgeMinimum", "edgeTarget", "jointTolerance", "hangerReach.from", "hangerReach.to", "columns",
                  "statedCapacity", "note"}));
  EXPECT_EQ(keysOf(job, boltOf(job)),
            (Keys{"name", "diameter", "length", "threadLength", "threadsPerInch", "end", "hookLeg", "hookReturn",
                  "headWidth", "headThickness", "minimumEmbedment", "note"}));
  EXPECT_EQ(keysOf(job, rodOf(job)), (Keys{"name", "diameter", "embedment", "threadLength", "threadsPerInch", "footWidth",
                                           "footThickness", "bracketOffset", "washer", "note"}));
  EXPECT_EQ(keysOf(job, washerOf(job)), (Keys{"name", "along", "across", "thickness", "hole", "slot", "note"}));
  EXPECT_EQ(keysOf(job, markOfJob(job)), (Keys{"mark", "hardware", "column", "requiredCapacity", "sill", "boltSpacing"}));
  EXPECT_TRUE(listedFields(job, Id{9999}).empty());
}

TEST(Listed, whatIsTypedIsShownAndNothingElseChanges) {
  for (const LengthStyle style : {LengthStyle::FeetInches, LengthStyle::Millimetres}) {
    Job job = marked().job;
    job.units = style;
    for (const Listed& each : listed(job))
      for (const Field& field : listedFields(job, each.id)) {
        std::string typed = otherValue(field);
        if (style == LengthStyle::Millimetres) {
          if (field.kind == FieldKind::Length)
            typed = exactMeasure(*parseLength(typed), style);
          else if (field.key == "profile" || field.key == "nails.rows" || field.key == "slot")
            continue; // said in their own tests
        }
        SCOPED_TRACE(field.key + " = " + typed);
        const auto set = setListedField(job, each.id, field.key, typed);
        ASSERT_TRUE(set) << errorOf(set);
        EXPECT_FALSE(*set == job);
        EXPECT_EQ(textAt(*set, each.id, field.key), typed);
        for (const Field& fellow : listedFields(job, each.id))
          if (fellow.key != field.key) {
            EXPECT_EQ(textAt(*set, each.id, fellow.key), fellow.text) << fellow.key;
          }
        const auto back = setListedField(*set, each.id, field.key, field.text);
        ASSERT_TRUE(back) << errorOf(back);
        EXPECT_EQ(textAt(*back, each.id, field.key), field.text);
        EXPECT_TRUE(*setListedField(job, each.id, field.key, field.text) == job) << "what is shown, typed again";
      }
  }
}

TEST(Listed, noFieldTakesNonsense) {
  const Job job = marked().job;
  for (const Listed& each : listed(job))
    for (const Field& field : listedFields(job, each.id)) {
      if (field.key == "name" || field.key == "note" || field.key == "nails.nail" || field.key == "mark")
        continue; // any words
      for (const char* typed : {"abc", "1 2 3 4", "--", "1e999"}) {
        const auto set = setListedField(job, each.id, field.key, typed);
        ASSERT_FALSE(set) << field.key << " = " << typed;
        EXPECT_EQ(set.problem().place, field.title);
        EXPECT_FALSE(set.problem().message.empty());
      }
    }
  EXPECT_FALSE(setListedField(job, boltOf(job), "colour", "blue"));
  EXPECT_FALSE(setListedField(job, Id{9999}, "length", "12"));
}

TEST(Listed, whatCannotBeMadeIsRefusedAtTheFieldTyped) {
  const Job job = marked().job; // bolt 12 long, 5 of thread; washer 3 x 3; strap 22 exposed, 16 nails, two rows
  const auto set = [&](Id id, const char* key, const char* typed) { return errorOf(setListedField(job, id, key, typed)); };
  EXPECT_EQ(set(boltOf(job), "threadLength", "12 1/64"), "thread: is longer than the bolt");
  EXPECT_EQ(set(boltOf(job), "threadLength", "12"), "taken");
  EXPECT_EQ(set(boltOf(job), "threadLength", "-1"), "thread: must not be less than nothing");
  EXPECT_EQ(set(boltOf(job), "length", "4 63/64"), "length: thread: is longer than the bolt");
  EXPECT_EQ(set(boltOf(job), "diameter", "0"), "diameter: must be more than nothing");
  EXPECT_EQ(set(boltOf(job), "hookLeg", "1/4"), "hook: does not stand out from the bolt");
  EXPECT_EQ(set(boltOf(job), "end", "headed"), "foot: head across: is no wider than the bolt");
  EXPECT_EQ(set(boltOf(job), "threadsPerInch", "0"), "threads: expected a number of threads from 1 to 80");
  EXPECT_EQ(set(rodOf(job), "footWidth", "1/2"), "foot across: is no wider than the rod");
  EXPECT_EQ(set(rodOf(job), "footWidth", "0"), "taken");
  EXPECT_EQ(set(washerOf(job), "hole", "3"), "round hole: is bigger than the washer");
  EXPECT_EQ(set(washerOf(job), "along", "5/8"), "along the wall: round hole: is bigger than the washer");
  EXPECT_EQ(set(washerOf(job), "slot", "11/16 x 3"), "slot: is longer than the washer");
  EXPECT_EQ(set(strapOf(job), "nails.spacing", "-1"), "nail spacing: must not be less than nothing");
  EXPECT_EQ(set(strapOf(job), "nails.spacing", "0"), "nail spacing: puts all nails at one height");
  EXPECT_EQ(set(strapOf(job), "nails.spacing", "2"), "nail spacing: nails: puts nails above the top of the plate");
  EXPECT_EQ(set(strapOf(job), "nails.rows", "1/2 left, 1 1/2 right"), "nail rows: row 2 is beside the plate");
  EXPECT_EQ(set(strapOf(job), "nails.rows", ""), "nail rows: has no row for the nails");
  EXPECT_EQ(set(strapOf(job), "nails.count", "2.5"), "nails: expected a whole number of nails from 0 to 1000");
  EXPECT_EQ(set(strapOf(job), "hangerReach.to", "-1"), "to: ends below where it begins");
  EXPECT_EQ(set(strapOf(job), "statedCapacity", "-5"), "stated capacity: must be from 0 to 1000000 lb");
  EXPECT_EQ(set(strapOf(job), "profile", "0, 0; 1, 4 down; 2, 3 down; 3, 8 down"),
            "in the concrete: point 3 goes up before the hook at the end");
  EXPECT_EQ(set(strapOf(job), "profile", "0, 1 down; 1, 4 down"),
            "in the concrete: point 1 does not start at the joint line, height 0");
  EXPECT_EQ(set(markOfJob(job), "requiredCapacity", "lots"),
            "required capacity: expected a number of lb, or nothing");
  for (const char* refused : {"3,80", "38,00", ",800", "3,8000", "3 800", "lb", "3800 kg"})
    EXPECT_NE(set(markOfJob(job), "requiredCapacity", refused), "taken") << refused;
  for (const char* understood : {"3800", "3,800", "3,800 lb", "3800lbs"})
    EXPECT_EQ(set(markOfJob(job), "requiredCapacity", understood), "taken") << understood;
  EXPECT_EQ(set(markOfJob(job), "boltSpacing", "-16"), "bolt spacing: must be more than nothing");
  EXPECT_EQ(set(markOfJob(job), "sill", "3x7"), "sill: expected a size such as 3x6, or nothing");
}

TEST(Listed, aBoltMustReachAsFarAsItsBoltsStandOut) {
  Shed s = marked();
  Bolt bolt = pieceOf<Bolt>(s.job, s.wall, s.bolt);
  bolt.type = boltOf(s.job);
  bolt.projection = 6;
  s.job = replacePiece(s.job, s.wall, bolt);
  const auto set = setListedField(s.job, boltOf(s.job), "length", "6");
  ASSERT_FALSE(set);
  EXPECT_EQ(set.problem().message, "is too short for bolt " + bolt.mark + " on wall A, which stands out 6\"");
  EXPECT_TRUE(setListedField(s.job, boltOf(s.job), "length", "6 1/64"));
}

TEST(Listed, namesAndMarksAreSaidOnce) {
  const Job job = marked().job;
  EXPECT_EQ(errorOf(setListedField(job, boltOf(job), "name", job.types->bolts[1].name)),
            "name: another type of this kind has this name");
  EXPECT_EQ(errorOf(setListedField(job, boltOf(job), "name", "  ")), "name: must not be empty");
  const auto [two, second] = addListed(job, ListedKind::Mark, {});
  EXPECT_EQ(errorOf(setListedField(two, second, "mark", "HD1")), "mark: another line of the schedule has this mark");
}

TEST(Listed, aMarksNewNameGoesToItsPanels) {
  const Shed s = marked();
  const auto set = setListedField(s.job, markOfJob(s.job), "mark", "T-4");
  ASSERT_TRUE(set);
  const Panel panel = pieceOf<Panel>(*set, s.wall, s.panel);
  EXPECT_EQ(panel.leftMark, "T-4");
  EXPECT_EQ(panel.rightMark, "T-4");
  EXPECT_EQ(findMark(*set, "HD1"), nullptr);
}

TEST(Listed, aMarkCallsForAStrapOrARodNeverBoth) {
  const Job job = marked().job;
  const auto rod = setListedField(job, markOfJob(job), "hardware", job.types->rods.front().name);
  ASSERT_TRUE(rod);
  EXPECT_EQ(rod->marks->front().rodType, rodOf(job));
  EXPECT_FALSE(rod->marks->front().strapType);
  const auto none = setListedField(*rod, markOfJob(job), "hardware", "none");
  ASSERT_TRUE(none);
  EXPECT_FALSE(none->marks->front().rodType);
}

TEST(Listed, aCommonNailBringsItsSize) {
  const Job job = marked().job;
  const auto set = setListedField(job, strapOf(job), "nails.nail", "16d common");
  ASSERT_TRUE(set);
  EXPECT_EQ(textAt(*set, strapOf(job), "nails.nailDiameter"), "0.162\""); // ASTM F1667
  EXPECT_EQ(textAt(*set, strapOf(job), "nails.nailLength"), "3 1/2\"");
}

// ---- what is typed in words -------------------------------------------------------------------------------------

TEST(TypeWords, profilesPointByPoint) {
  const std::vector<ProfilePoint> hook{{0.05, 0}, {0.5, -2}, {3.75, -12}, {5.5, -14}, {5.5, -12.5}};
  const std::string words = "0.05, 0; 1/2, 2 down; 3 3/4, 12 down; 5 1/2, 14 down; 5 1/2, 12 1/2 down";
  EXPECT_EQ(printProfile(hook, LengthStyle::FeetInches), words);
  EXPECT_EQ(*parseProfile(words, LengthStyle::FeetInches), hook);
  EXPECT_EQ(*parseProfile(" .05\",0 ;0.5 , 2down\n3-3/4\", 1' down;5 1/2,14;5.5,12½ down; ", LengthStyle::FeetInches), hook);
  EXPECT_EQ(printProfile({{0, 0}, {2, -4}}, LengthStyle::Millimetres), "0, 0; 50.8, 101.6 down");
  EXPECT_EQ(*parseProfile("0, 0; 50.8, 101.6 down", LengthStyle::Millimetres), (std::vector<ProfilePoint>{{0, 0}, {2, -4}}));
  const auto wrong = [](const char* typed) { return parseProfile(typed, LengthStyle::FeetInches).problem().message; };
  EXPECT_EQ(wrong("0, 0; 1/2; 3, 4"), "point 2: expected how far in, a comma, and how far down, such as 1/2, 2 down");
  EXPECT_EQ(wrong("0, 0; 1, -2"), "point 2: is above the joint line; depths are said down from it, without a sign");
  EXPECT_EQ(wrong("0, 0; 1, 2; x, 3").substr(0, 12), "point 3, in:");
  EXPECT_EQ(wrong("0, 0; 1, 2; 2, up").substr(0, 14), "point 3, down:");
  EXPECT_EQ(wrong("0, 0;; 1, 2").substr(0, 8), "point 2:");
  EXPECT_EQ(wrong("0, 0; 1, 101'"), "point 2, down: is too far out");
}

TEST(TypeWords, nailRows) {
  EXPECT_EQ(printNailRows({-0.5, 0, 0.5}, LengthStyle::FeetInches), "1/2 left, middle, 1/2 right");
  EXPECT_EQ(*parseNailRows("1/2 left, middle, 1/2 right", LengthStyle::FeetInches), (std::vector<double>{-0.5, 0, 0.5}));
  EXPECT_EQ(*parseNailRows("-1/2; 1/2", LengthStyle::FeetInches), (std::vector<double>{-0.5, 0.5}));
  EXPECT_TRUE(parseNailRows("", LengthStyle::FeetInches)->empty());
  EXPECT_EQ(parseNailRows("1/2 left, -1/2 right", LengthStyle::FeetInches).problem().message,
            "row 2: has a sign and a side; one of them will do");
}

TEST(TypeWords, slotsAndColumns) {
  const auto slot = parseSlot("11/16x1 3/4 along", LengthStyle::FeetInches);
  ASSERT_TRUE(slot && slot->has_value());
  EXPECT_EQ((*slot)->width, 0.6875);
  EXPECT_EQ((*slot)->length, 1.75);
  EXPECT_EQ((*slot)->direction, SlotDirection::Along);
  EXPECT_EQ(printSlot(*slot, LengthStyle::FeetInches), "11/16 x 1 3/4 along");
  EXPECT_FALSE(parseSlot("none", LengthStyle::FeetInches)->has_value());
  EXPECT_FALSE(parseSlot("11/16", LengthStyle::FeetInches));
  EXPECT_FALSE(parseSlot("0 x 2", LengthStyle::FeetInches));
  EXPECT_EQ(printColumns(*parseColumns("2-2x6,4x6")), "2-2x6, 4x6");
  EXPECT_EQ(printColumns({}), "any");
  EXPECT_EQ(parseColumns("2-2x6, 3x7").problem().message, "column 2: expected a make-up such as 2-2x6 or 4x6");
}

TEST(TypeWords, measuresAreShownAsFinelyAsTheyAre) {
  EXPECT_EQ(exactMeasure(0.105, LengthStyle::FeetInches), "0.105\"");
  EXPECT_EQ(exactMeasure(2.5, LengthStyle::FeetInches), "2 1/2\"");
  EXPECT_EQ(exactMeasure(0.105, LengthStyle::Millimetres), "2.667 mm");
  EXPECT_EQ(exactMeasure(-0.229, LengthStyle::FeetInches), "-0.229\"");
  EXPECT_NEAR(*parseLength("0.105\""), 0.105, 1e-12);
}

// ---- uses, adding, removing -------------------------------------------------------------------------------------

TEST(Listed, usesAreCounted) {
  const Shed s = marked();
  const auto uses = usesOfListed(s.job);
  const ListedUse& strap = uses.at(strapOf(s.job));
  EXPECT_EQ(strap.pieces, 2);
  EXPECT_EQ(strap.walls, (std::vector<std::string>{"A"}));
  EXPECT_EQ(strap.marks, (std::vector<std::string>{"HD1"}));
  EXPECT_EQ(useWords(strap, ListedKind::Strap), "2 straps on wall A, and mark HD1");
  EXPECT_EQ(useWords(uses.at(markOfJob(s.job)), ListedKind::Mark), "2 ends of panels on wall A");
  EXPECT_EQ(uses.at(washerOf(s.job)).rods, (std::vector<std::string>{s.job.types->rods.front().name}));
  EXPECT_EQ(uses.count(s.job.types->washers.back().id), 0u);
}

TEST(Listed, fieldsOfTheCardLeadToIt) {
  const Shed s = marked();
  EXPECT_EQ(listedAt(s.job, {s.wall, s.strapLeft}, "type"), strapOf(s.job));
  EXPECT_EQ(listedAt(s.job, {s.wall, s.bolt}, "washer"), pieceOf<Bolt>(s.job, s.wall, s.bolt).washer);
  EXPECT_EQ(listedAt(s.job, {s.wall, s.panel}, "leftMark"), markOfJob(s.job));
  EXPECT_EQ(listedAt(s.job, {s.wall, s.panel}, "height"), Id{});
  EXPECT_EQ(listedAt(s.job, {s.wall, {}}, "type"), Id{});
}

TEST(Listed, whatIsUsedStays) {
  const Shed s = marked();
  EXPECT_EQ(errorOf(removeListed(s.job, strapOf(s.job))),
            s.job.types->straps.front().name + ": stays: it is used by 2 straps on wall A, and mark HD1");
  EXPECT_FALSE(removeListed(s.job, markOfJob(s.job)));
  EXPECT_FALSE(removeListed(s.job, Id{9999}));
  const Id spare = s.job.types->washers.back().id;
  const auto removed = removeListed(s.job, spare);
  ASSERT_TRUE(removed);
  EXPECT_EQ(findWasherType(*removed->types, spare), nullptr);
  EXPECT_EQ(removed->types->washers.size() + 1, s.job.types->washers.size());
}

TEST(Listed, copiesAndBlanksHaveIdsAndNamesOfTheirOwn) {
  const Job job = marked().job;
  const auto [copied, copy] = addListed(job, ListedKind::Bolt, boltOf(job));
  BoltType expected = *findBoltType(*job.types, boltOf(job));
  expected.id = copy;
  expected.name += " copy";
  EXPECT_EQ(*findBoltType(*copied.types, copy), expected);
  const auto [twice, again] = addListed(copied, ListedKind::Bolt, boltOf(job));
  EXPECT_EQ(findBoltType(*twice.types, again)->name, expected.name + " 2");
  for (const ListedKind kind : {ListedKind::Strap, ListedKind::Bolt, ListedKind::Rod, ListedKind::Washer, ListedKind::Mark}) {
    const auto [more, blank] = addListed(twice, kind, {});
    const auto entry = findListed(more, blank);
    ASSERT_TRUE(entry);
    EXPECT_EQ(entry->kind, kind);
    EXPECT_EQ(blank.value + 1, more.nextId);
    if (kind != ListedKind::Mark) {
      EXPECT_NE(entry->name.find("to fill in"), std::string::npos);
      EXPECT_NE(textAt(more, blank, "note").find("the hardware's own instructions"), std::string::npos);
    }
    EXPECT_TRUE(*removeListed(more, blank)->types == *twice.types);
  }
}

TEST(Listed, oneEditIsOneStepAndUndoTakesItBack) {
  const Shed s = marked();
  Session session(s.job);
  session.apply(*setListedField(session.base(), markOfJob(s.job), "requiredCapacity", "4000"), "Change mark HD1");
  EXPECT_EQ(session.history().undoName(), "Change mark HD1");
  EXPECT_EQ(session.job().marks->front().requiredCapacity, 4000.0);
  EXPECT_TRUE(session.undo());
  EXPECT_TRUE(session.job() == s.job);
}

// The checker that follows a session finds after each edit what a check from nothing finds.
TEST(Listed, findingsAfterAnEditAreThoseOfAFullCheck) {
  const Shed s = marked();
  Checker checker;
  checker.update(s.job);
  int differing = 0;
  for (const Listed& each : listed(s.job))
    for (const Field& field : listedFields(s.job, each.id)) {
      const auto set = setListedField(s.job, each.id, field.key, otherValue(field));
      ASSERT_TRUE(set);
      const Counts before = checker.counts();
      checker.update(*set);
      differing += !(checker.counts() == before);
      const auto full = checkAll(*set);
      for (std::size_t i = 0; i < full.size(); ++i)
        EXPECT_EQ(checker.wall(set->walls[i].id)->findings, full[i]->findings) << field.key;
      checker.update(s.job);
    }
  EXPECT_GT(differing, 5);
}
