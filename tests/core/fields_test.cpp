#include "core/edit/fields.h"

#include <gtest/gtest.h>

#include <map>
#include <set>

#include "edit_jobs.h"

using namespace sillwright;
using namespace sillwright::testing_jobs;

namespace {

// The shed with everything a piece can hold: a window, a splice, a shear, a found bar.
struct FullShed : Shed {
  Id window, foundUpright, foundAlong;
};

FullShed fullShed() {
  FullShed s{shed(), {}, {}, {}};
  Sill sill = pieceOf<Sill>(s.job, s.wall, s.sill);
  sill.splices = {100.5, 200};
  sill.species = "hem-fir";
  s.job = replacePiece(s.job, s.wall, sill);
  Panel panel = pieceOf<Panel>(s.job, s.wall, s.panel);
  panel.unitShear = 490;
  s.job = replacePiece(s.job, s.wall, panel);
  HardwareTypes types = *s.job.types; // a second one of each, to choose from
  types.straps.push_back(types.straps.front());
  types.straps.back().id = takeId(s.job);
  types.straps.back().name = "another strap (sample)";
  types.rods.push_back(types.rods.front());
  types.rods.back().id = takeId(s.job);
  types.rods.back().name = "another rod (sample)";
  s.job = setTypes(s.job, types);
  Rod rod = pieceOf<Rod>(s.job, s.wall, s.rod);
  rod.column = s.kingLeft; // room on both sides
  s.job = replacePiece(s.job, s.wall, rod);
  Opening window;
  window.kind = OpeningKind::Window;
  window.from = 245;
  window.to = 280.1; // shown rounded
  window.sillHeight = 40;
  window.headHeight = 80;
  s.window = put(s.job, s.wall, window);
  Bar upright = uprightAt(30);
  upright.found = BarPlace{{30.3, 4.1, -21}, {30.4, 4.2, -3}};
  s.foundUpright = put(s.job, s.wall, upright);
  Bar along;
  along.run = BarRun::Along;
  along.planned = {{2, 4.5, -4}, {46, 4.5, -4}};
  along.found = BarPlace{{2.2, 4.3, -4}, {46.1, 4.5, -4.1}};
  s.foundAlong = put(s.job, s.wall, along);
  return s;
}

std::vector<Id> allOf(const Job& job, Id wall) {
  std::vector<Id> all = piecesOf(*job.walls.find(wall));
  all.push_back({});
  return all;
}

std::vector<std::string> keysOf(const Job& job, PieceRef ref) {
  std::vector<std::string> keys;
  for (const Field& field : fieldsOf(job, ref))
    keys.push_back(field.key);
  return keys;
}

const Field* fieldOf(const std::vector<Field>& fields, std::string_view key) {
  for (const Field& field : fields)
    if (field.key == key)
      return &field;
  return nullptr;
}

// Another value the field can take.
std::string otherValue(const Field& field) {
  static const std::map<std::string, std::string> special{
      {"splices", "10'-0\", 11'-6\""}, {"nominal", "2x8"}, {"makeUp", "2-2x8"}, {"studSize", "2x4"},
      {"unitShear", "350.5"}, {"designShear", "210"}, {"deadLoad", "95"},
      {"from", "1'-0\""},          {"to", "20'-9\""},  {"width", "2'-6\""}, {"stem", "30\""},    {"head", "70\""},
      {"plannedTo", "3'-1\""},     {"foundTo", "3'-1\""}, {"plannedBottom", "-30\""}, {"foundBottom", "-30\""},
      {"plannedTop", "-1\""},      {"foundTop", "-1\""},  {"plannedStation", "1'-2\""}, {"foundStation", "1'-2\""},
      {"station", "3'-0 1/4\""},   {"fromColumn", "1 1/4\""}, {"thickness", "10\""}};
  if (const auto found = special.find(field.key); found != special.end())
    return found->second;
  if (field.kind == FieldKind::Choice || field.kind == FieldKind::Toggle) {
    for (const std::string& choice : field.choices)
      if (choice != field.text)
        return choice;
    return {};
  }
  return field.kind == FieldKind::Text ? "Z9" : "3 3/8\"";
}

// Fields that show the same stored value in another way, or come and go with it.
const std::set<std::string>& fellowsOf(const std::string& key) {
  static const std::map<std::string, std::set<std::string>> fellows{
      {"station", {"fromColumn"}}, {"fromColumn", {"station"}}, {"column", {"fromColumn"}},
      {"from", {"width"}},         {"to", {"width"}},           {"width", {"to"}},
  };
  static const std::set<std::string> none;
  const auto found = fellows.find(key);
  return found == fellows.end() ? none : found->second;
}

} // namespace

TEST(Fields, everyFieldOfEveryKindIsThere) {
  const FullShed s = fullShed();
  using Keys = std::vector<std::string>;
  const auto keys = [&](Id piece) { return keysOf(s.job, {s.wall, piece}); };
  EXPECT_EQ(keys(s.step), (Keys{"mark", "from", "to", "height"}));
  EXPECT_EQ(keys(s.sill), (Keys{"mark", "from", "to", "splices", "nominal", "species"}));
  EXPECT_EQ(keys(s.opening), (Keys{"mark", "kind", "from", "to", "width", "head", "header"}));
  EXPECT_EQ(keys(s.window), (Keys{"mark", "kind", "from", "to", "width", "sill", "head", "header"}));
  EXPECT_EQ(keys(s.post), (Keys{"mark", "station", "makeUp", "role", "leeway"}));
  EXPECT_EQ(keys(s.panel),
            (Keys{"mark", "from", "to", "height", "unitShear", "designShear", "deadLoad", "lever", "sheathing", "leftMark", "rightMark"}));
  EXPECT_EQ(keys(s.strapLeft), (Keys{"mark", "station", "fromColumn", "joint", "type", "column"}));
  EXPECT_EQ(keys(s.bolt), (Keys{"mark", "station", "depth", "projection", "hook", "washer", "washerShift", "cutWasher", "type"}));
  EXPECT_EQ(keys(s.rod), (Keys{"mark", "column", "side", "offset", "depth", "projection", "type"}));
  EXPECT_EQ(keys(s.upright),
            (Keys{"mark", "size", "run", "plannedStation", "plannedDepth", "plannedBottom", "plannedTop",
                  "plannedLeanAlong", "plannedLeanIn", "foundStation", "foundDepth", "foundBottom", "foundTop",
                  "foundLeanAlong", "foundLeanIn"}));
  EXPECT_EQ(keys(s.along), (Keys{"mark", "size", "run", "plannedStation", "plannedTo", "plannedDepth", "plannedHeight",
                                 "plannedRunIn", "plannedRise", "foundStation", "foundTo", "foundDepth", "foundHeight",
                                 "foundRunIn", "foundRise"}));
  EXPECT_EQ(keys(s.shot), (Keys{"mark", "station", "reading", "formWidth"}));
  EXPECT_EQ(keys({}), (Keys{"mark", "title", "kind", "thickness", "stem", "footingWidth", "footingDepth",
                            "footingProjection", "formOutside", "formInside", "formTop", "inset", "height", "start",
                            "end", "studs", "studSpacing", "studFrom", "studFirst", "studSize"}));
}

TEST(Fields, typingWhatAFieldShowsChangesNothing) {
  const FullShed s = fullShed();
  for (const LengthStyle units : {LengthStyle::FeetInches, LengthStyle::Millimetres}) {
    const Job job = setUnits(s.job, units);
    for (const Id piece : allOf(job, s.wall))
      for (const Field& field : fieldsOf(job, {s.wall, piece})) {
        const auto set = setField(job, {s.wall, piece}, field.key, field.text);
        ASSERT_TRUE(set.ok()) << field.key << ": " << set.problem().text();
        EXPECT_EQ(*set, job) << field.key;
      }
  }
}

TEST(Fields, anotherValueChangesThatFieldAlone) {
  const FullShed s = fullShed();
  const std::set<Id> withoutFound{s.upright, s.along};
  for (const Id piece : allOf(s.job, s.wall)) {
    const PieceRef ref{s.wall, piece};
    for (const Field& field : fieldsOf(s.job, ref)) {
      if (field.key == "run" || (withoutFound.contains(piece) && field.key.starts_with("found")))
        continue; // the way a bar runs is fixed; found places have a test of their own
      std::string typed = otherValue(field);
      if (piece == s.window && field.key == "from")
        typed = "20'-1\"";
      if (piece == s.window && field.key == "to")
        typed = "23'-1\"";
      if ((piece == s.panel || piece == s.step || piece == s.opening) && field.key == "to")
        typed = "5'-0\"";
      if (!piece && field.key == "start")
        typed = field.text == "butts" ? "runs by" : "butts";
      const auto set = setField(s.job, ref, field.key, typed);
      ASSERT_TRUE(set.ok()) << field.key << " " << typed << ": " << set.problem().text();
      EXPECT_NE(*set, s.job) << field.key;
      const std::vector<Field> after = fieldsOf(*set, ref);
      ASSERT_NE(fieldOf(after, field.key), nullptr);
      EXPECT_EQ(fieldOf(after, field.key)->text, typed) << field.key;
      for (const Field& before : fieldsOf(s.job, ref)) {
        const Field* now = fieldOf(after, before.key);
        if (before.key == field.key || fellowsOf(field.key).contains(before.key) ||
            (field.key == "studs" && before.key.starts_with("stud")) || (field.key == "kind" && before.key == "sill"))
          continue;
        ASSERT_NE(now, nullptr) << field.key << " took away " << before.key;
        EXPECT_EQ(now->text, before.text) << field.key << " changed " << before.key;
      }
      if (piece == s.opening) // it takes the step at its ends along
        continue;
      for (const Id other : piecesOf(*s.job.walls.find(s.wall))) {
        if (other == piece)
          continue;
        EXPECT_EQ(findPiece(*set, {s.wall, other}), findPiece(s.job, {s.wall, other})) << field.key;
      }
    }
  }
}

TEST(Fields, nonsenseIsRefusedAtTheFieldsTitle) {
  const FullShed s = fullShed();
  for (const Id piece : allOf(s.job, s.wall))
    for (const Field& field : fieldsOf(s.job, {s.wall, piece})) {
      if (field.key == "title" || field.key == "species") // any text will do
        continue;
      const auto set = setField(s.job, {s.wall, piece}, field.key, field.key == "mark" ? "" : "a bit of both?");
      ASSERT_FALSE(set.ok()) << field.key;
      EXPECT_EQ(set.problem().place, field.title);
      EXPECT_FALSE(set.problem().message.empty());
    }
  EXPECT_EQ(s.job, fullShed().job);
}

TEST(Fields, whatAJobFileMayNotHoldIsRefused) {
  const FullShed s = fullShed();
  const auto refused = [&](Id piece, std::string_view key, std::string_view typed) {
    const auto set = setField(s.job, {s.wall, piece}, key, typed);
    return set.ok() ? "taken" : set.problem().text();
  };
  EXPECT_EQ(refused(s.strapLeft, "station", "30'"), "at: is outside the wall");
  EXPECT_EQ(refused(s.strapLeft, "fromColumn", "-3\""), "from column: is outside the wall");
  EXPECT_EQ(refused(s.strapLeft, "mark", "S2"), "mark: another piece of this kind has this mark");
  EXPECT_EQ(refused(s.bolt, "depth", "8 1/64\""), "in: is outside the concrete");
  EXPECT_EQ(refused(s.bolt, "projection", "12\""), "projection: the bolt is not long enough to stand out so far");
  EXPECT_EQ(refused(s.rod, "depth", "-1/64\""), "in: is outside the concrete");
  EXPECT_EQ(setField(shed().job, {s.wall, s.rod}, "side", "left").problem().text(),
            "side: puts the rod outside the wall");
  EXPECT_EQ(refused(s.rod, "offset", "260\""), "off the column: puts the rod outside the wall");
  EXPECT_EQ(refused(s.panel, "from", "5'"), "from: the left end must stay left of the right end");
  EXPECT_EQ(refused(s.sill, "splices", "25'"), "splices: a splice would stand outside the sill");
  EXPECT_EQ(refused(s.sill, "splices", "10', 10'"), "splices: two splices would stand at one station");
  EXPECT_EQ(refused(s.sill, "to", "16'"), "to: a splice would stand outside the sill");
  EXPECT_EQ(refused(s.window, "width", "9'"), "width: takes the right end outside the wall");
  EXPECT_EQ(refused(s.window, "sill", "80\""), "sill height: the head must stay above the sill");
  EXPECT_EQ(refused(s.upright, "plannedBottom", "0"), "planned bottom: the bottom must stay below the top");
  EXPECT_EQ(refused({}, "thickness", "0"), "thickness: must be more than nothing");
  EXPECT_EQ(refused({}, "thickness", "3\""), "thickness: leaves rod R1 outside the concrete");
  EXPECT_EQ(refused({}, "stem", "8\""), "stem height: step D1 would go down to the bottom of the wall");
  EXPECT_EQ(refused({}, "mark", "B"), "mark: another wall has this mark");
  EXPECT_EQ(refused({}, "studSpacing", "1/2\""), "stud spacing: must be one inch or more");
  EXPECT_EQ(refused(s.strapLeft, "nothing", "1"), "nothing: there is no such field here");
}

TEST(Fields, aMarkIsUniqueOnAllWalls) {
  Shed s = shed();
  const Id other = s.job.walls[1].id;
  const Id strap = put(s.job, other, strapAt(s.job, 20, {}));
  EXPECT_FALSE(setField(s.job, {other, strap}, "mark", "S1").ok());
  EXPECT_TRUE(setField(s.job, {other, strap}, "mark", "B1").ok()); // of another kind
}

TEST(Fields, aFoundStationIsSetAndTakenAway) {
  const Shed s = shed();
  const PieceRef bar{s.wall, s.upright};
  const Bar before = pieceOf<Bar>(s.job, s.wall, s.upright);
  const Job found = setField(s.job, bar, "foundStation", "9 1/4\"").value();
  EXPECT_EQ(pieceOf<Bar>(found, s.wall, s.upright).found, (BarPlace{{9.25, 4, -21}, {9.25, 4, -2}}));
  EXPECT_EQ(pieceOf<Bar>(found, s.wall, s.upright).planned, before.planned);
  EXPECT_EQ(setField(found, bar, "foundStation", "").value(), s.job);
  EXPECT_FALSE(setField(found, bar, "foundDepth", "").ok());
}

TEST(Fields, aShearIsTakenAwayAndASpliceToo) {
  const FullShed s = fullShed();
  const Job bare = setField(s.job, {s.wall, s.panel}, "unitShear", "").value();
  EXPECT_EQ(pieceOf<Panel>(bare, s.wall, s.panel).unitShear, std::nullopt);
  const Job whole = setField(s.job, {s.wall, s.sill}, "splices", "").value();
  EXPECT_TRUE(pieceOf<Sill>(whole, s.wall, s.sill).splices.empty());
}

TEST(Fields, aTypedWidthOfAnOpeningTakesItsStepAlong) {
  const Shed s = shed();
  for (const auto& [key, typed] : {std::pair{"to", "19'-6\""}, std::pair{"width", "15'-6\""}}) {
    const Job job = setField(s.job, {s.wall, s.opening}, key, typed).value();
    EXPECT_EQ(pieceOf<Opening>(job, s.wall, s.opening).from, 48);
    EXPECT_EQ(pieceOf<Opening>(job, s.wall, s.opening).to, 234);
    EXPECT_EQ(pieceOf<PourStep>(job, s.wall, s.step).to, 234);
  }
}
