// The commands as a user calls them: the real program, its output and its exit status.
#include <map>
#include <vector>

#include "tests/app/command_line.h"

namespace {

using namespace sillwright::testing_support;

TEST_F(CommandLine, checkSaysNothingToFixOnTheSample) {
  const Outcome outcome = run("check " + sample("boat-shed-front"));
  EXPECT_EQ(outcome.status, 0) << outcome.out;
  EXPECT_NE(outcome.out.find("0 FIX"), std::string::npos);
  EXPECT_EQ(outcome.err, "");
}

TEST_F(CommandLine, checkFindsTheConflictsOfMovedSteel) {
  const Outcome outcome = run("check --json " + sample("boat-shed-front-steel-moved"));
  EXPECT_EQ(outcome.status, 1);
  const QJsonObject object = parsed(outcome.out).object();
  EXPECT_EQ(object["counts"].toObject()["FIX"].toInt(), 1);
  bool edge = false;
  for (const auto& value : object["findings"].toArray()) {
    const QJsonObject finding = value.toObject();
    for (const char* key : {"rule", "level", "wall", "pieces", "measured", "limit", "unit", "label", "message", "source", "at"})
      EXPECT_TRUE(finding.contains(key)) << key;
    if (finding["rule"].toString() == "strap.edge" && finding["level"].toString() == "FIX") {
      edge = true;
      EXPECT_EQ(finding["wall"].toString(), "A");
      EXPECT_EQ(finding["pieces"].toArray()[0].toString(), "S1");
      EXPECT_DOUBLE_EQ(finding["measured"].toDouble(), 0.375);
      EXPECT_DOUBLE_EQ(finding["limit"].toDouble(), 0.5);
    }
  }
  EXPECT_TRUE(edge);
}

TEST_F(CommandLine, checkNamesTheUnitOfEveryFinding) {
  const QJsonObject object = parsed(run("check --json " + sample("punch-list-practice")).out).object();
  std::map<std::string, int> units;
  for (const auto& value : object["findings"].toArray()) {
    const QJsonObject finding = value.toObject();
    const std::string unit = finding["unit"].toString().toStdString();
    const bool forces = finding["rule"].toString() == "bolt.shear" || finding["rule"].toString() == "panel.tie" ||
                        finding["rule"].toString() == "strap.capacity";
    EXPECT_EQ(unit == "lb", forces) << finding["rule"].toString().toStdString();
    EXPECT_EQ(unit == "%", finding["rule"].toString() == "panel.lever");
    ++units[unit];
  }
  EXPECT_EQ(units.size(), 4u); // nothing there is measured in per cent
  for (const char* unit : {"in", "count", "ratio", "lb"})
    EXPECT_GT(units[unit], 0) << unit;
}

TEST_F(CommandLine, slotsTellWhereEachPieceMayStand) {
  const Outcome sound = run("slots --json " + sample("boat-shed-front"));
  EXPECT_EQ(sound.status, 0);
  const QJsonArray pieces = parsed(sound.out).object()["pieces"].toArray();
  ASSERT_GT(pieces.size(), 10);
  for (const auto& value : pieces) {
    const QJsonObject piece = value.toObject();
    const double at = piece["at"].toDouble(), left = piece["room"].toObject()["left"].toDouble(-1),
                 right = piece["room"].toObject()["right"].toDouble(-1);
    EXPECT_TRUE(left >= 0 && right >= 0) << piece["piece"].toString().toStdString();
    bool inOne = false;
    for (const auto& slot : piece["slots"].toArray())
      inOne = inOne || (std::abs(at - left - slot.toArray()[0].toDouble()) < 1e-6 &&
                        std::abs(at + right - slot.toArray()[1].toDouble()) < 1e-6);
    EXPECT_TRUE(inOne) << piece["piece"].toString().toStdString();
  }
  const Outcome moved = run("slots " + sample("boat-shed-front-steel-moved"));
  EXPECT_EQ(moved.status, 1);
  EXPECT_NE(moved.out.find("none here"), std::string::npos) << moved.out;
}

TEST_F(CommandLine, manyJobsGiveAListInTheirOrder) {
  const Outcome outcome = run("check --json " + sample("boat-shed-front") + " " + sample("ridge-house") + " " +
                              sample("boat-shed-front-steel-moved"));
  EXPECT_EQ(outcome.status, 1);
  const QJsonArray list = parsed(outcome.out).array();
  ASSERT_EQ(list.size(), 3);
  EXPECT_EQ(list[0].toObject()["job"].toString().toStdString(), sample("boat-shed-front"));
  EXPECT_EQ(list[2].toObject()["job"].toString().toStdString(), sample("boat-shed-front-steel-moved"));
}

TEST_F(CommandLine, rulesListsEveryRuleWithItsSource) {
  const Outcome outcome = run("rules --json");
  EXPECT_EQ(outcome.status, 0);
  const QJsonArray list = parsed(outcome.out).array();
  EXPECT_GE(list.size(), 32);
  for (const auto& value : list) {
    const QJsonObject rule = value.toObject();
    for (const char* key : {"name", "subject", "meaning", "measure", "levels", "source", "status"})
      EXPECT_FALSE(rule[key].isUndefined()) << key;
    EXPECT_TRUE(rule["name"].toString().startsWith(rule["subject"].toString() + ".")) << rule["name"].toString().toStdString();
  }
}

QJsonObject named(const QJsonArray& list, const QString& name) {
  for (const auto& value : list)
    if (value.toObject()["name"].toString() == name)
      return value.toObject();
  ADD_FAILURE() << "no " << name.toStdString();
  return {};
}

TEST_F(CommandLine, rulesTellEveryLimitWithUnitLevelAndSource) {
  const QJsonArray list = parsed(run("rules --json").out).array();
  const QJsonObject spacing = named(named(list, "bolt.spacing")["limits"].toArray(), "bolt.spacing");
  EXPECT_EQ(spacing["limit"].toDouble(), 72); // IRC R403.1.6: six feet
  EXPECT_EQ(spacing["unit"].toString(), "in");
  EXPECT_EQ(spacing["side"].toString(), "at most");
  EXPECT_EQ(spacing["level"].toString(), "FIX");
  EXPECT_EQ(spacing["status"].toString(), "published");
  EXPECT_TRUE(spacing["source"].toString().contains("R403.1.6"));
  EXPECT_FALSE(spacing.contains("here"));
  EXPECT_EQ(named(list, "strap.column")["limits"].toArray().size(), 0);
}

TEST_F(CommandLine, rulesOfAJobTellWhatItChanged) {
  QJsonObject job = parsed(readAll(sample("boat-shed-front"))).object();
  QJsonObject limits = job["limits"].toObject();
  limits["overrides"] = QJsonArray{QJsonObject{{"key", "bolt.spacing"}, {"value", 60}, {"reason", "letter of the engineer"},
                                               {"who", "R. Alder"}, {"date", "2031-05-14"}}};
  limits["rules"] = QJsonArray{QJsonObject{{"rule", "strap.seam"}, {"counts", "watch"}, {"reason", "asked, by phone"}}};
  job["limits"] = limits;
  const fs::path path = folder_ / "changed.sillwright";
  std::ofstream(path) << QJsonDocument(job).toJson().toStdString();
  const Outcome outcome = run("rules --json " + path.string());
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  const QJsonArray list = parsed(outcome.out).array();
  const QJsonArray ofSpacing = named(list, "bolt.spacing")["limits"].toArray();
  const QJsonObject spacing = named(ofSpacing, "bolt.spacing");
  EXPECT_EQ(spacing["limit"].toDouble(), 72);
  EXPECT_EQ(spacing["here"].toDouble(), 60);
  EXPECT_EQ(spacing["changed"].toObject()["reason"].toString(), "letter of the engineer");
  EXPECT_EQ(spacing["changed"].toObject()["who"].toString(), "R. Alder");
  EXPECT_EQ(spacing["changed"].toObject()["date"].toString(), "2031-05-14");
  EXPECT_TRUE(named(ofSpacing, "bolt.spacing over two storeys")["changed"].isNull());
  const QJsonObject counts = named(list, "strap.seam")["counts"].toObject();
  EXPECT_EQ(counts["as"].toString(), "WATCH at most");
  EXPECT_EQ(counts["reason"].toString(), "asked, by phone");
  EXPECT_TRUE(named(list, "strap.edge")["counts"].isNull());
  const std::string words = run("rules " + path.string()).out;
  EXPECT_NE(words.find("changed for this job from 72\": letter of the engineer (R. Alder, 2031-05-14)"), std::string::npos)
      << words;
}

TEST_F(CommandLine, sheetWritesAPdfAndTheSameBytesAgain) {
  const std::string first = (folder_ / "a.pdf").string(), second = (folder_ / "b.pdf").string();
  const std::string job = sample("boat-shed-front");
  EXPECT_EQ(run("sheet " + job + " --date 2031-05-14 -o " + first).status, 0);
  EXPECT_EQ(run("sheet " + job + " --date 2031-05-14 -o " + second).status, 0);
  const std::string bytes = readAll(first);
  EXPECT_TRUE(bytes.starts_with("%PDF"));
  EXPECT_EQ(bytes, readAll(second));
  EXPECT_NE(bytes.find("/CreationDate (D:20310514000000"), std::string::npos);
}

TEST_F(CommandLine, sheetWritesAnSvgFileAPage) {
  const std::string out = (folder_ / "pages").string();
  const Outcome outcome = run("sheet " + sample("boat-shed-front") + " --format svg --paper letter -o " + out);
  EXPECT_EQ(outcome.status, 0) << outcome.err;
  const std::string svg = readAll(fs::path(out) / "boat-shed-front-1.svg");
  EXPECT_NE(svg.find("<svg"), std::string::npos);
  EXPECT_NE(svg.find("width=\"11in\""), std::string::npos);
}

TEST_F(CommandLine, wrongCallsSayWhatAndWhereInOneLine) {
  struct Case {
    std::string arguments;
    std::string says;
  };
  const std::string job = sample("boat-shed-front");
  const std::vector<Case> cases{
      {"check", "check: needs at least one job file"},
      {"check --jason " + job, "--jason: there is no such option"},
      {"check /nowhere/at-all.sillwright", "/nowhere/at-all.sillwright"},
      {"sheet " + job, "-o: needs the file or folder to write"},
      {"sheet " + job + " -o", "-o: needs a value"},
      {"sheet " + job + " -o x.pdf --paper foolscap", "--paper: \"foolscap\" is none of"},
      {"sheet " + job + " -o x.pdf --date 2031-02-30", "--date: \"2031-02-30\" is not a day"},
      {"sheet " + job + " -o x.pdf --pages plan,roof", "--pages: \"roof\" is none of"},
      {"sheet " + job + " -o x.pdf --format dots", "--format: \"dots\" is neither"},
      {"sheet " + job + " -o /nowhere/at/all.pdf", "/nowhere/at/all.pdf"},
      {"refit -o out.sillwright", "refit: needs one job file"},
      {"refit " + job, "-o: needs the job file to write"},
      {"refit " + job + " -o out.sillwright --wall Q", "--wall: \"Q\" is no wall of this job; it has A, B, C, D"},
      {"refit " + job + " -o out.sillwright --model /nowhere/at/all.lp", "/nowhere/at/all-A.lp"},
      {"rules now", "now: "},
      {"rules " + job + " now", "now: rules takes one job file, or none"},
      {"--frobnicate", "--frobnicate: there is no such command or option"},
      {"bogus", "bogus: there is no such file or command"},
      {"nowhere/lost.sillwright", "nowhere/lost.sillwright: there is no such file or command"},
  };
  for (const Case& each : cases) {
    const Outcome outcome = run(each.arguments);
    EXPECT_EQ(outcome.status, 2) << each.arguments;
    expectOneLine(outcome.err);
    EXPECT_NE(outcome.err.find(each.says), std::string::npos) << each.arguments << "\n" << outcome.err;
    EXPECT_EQ(outcome.out, "") << each.arguments;
  }
}

TEST_F(CommandLine, aWrongJobNamesThePlace) {
  std::string text = readAll(sample("boat-shed-front"));
  const auto at = text.find("\"station\"");
  ASSERT_NE(at, std::string::npos);
  const auto colon = text.find(':', at);
  const auto end = text.find_first_of(",}", colon);
  text.replace(colon + 1, end - colon - 1, " -3000");
  const fs::path job = folder_ / "wrong.sillwright";
  std::ofstream(job) << text;
  const Outcome outcome = run("check " + job.string());
  EXPECT_EQ(outcome.status, 2);
  expectOneLine(outcome.err);
  EXPECT_NE(outcome.err.find("walls["), std::string::npos) << outcome.err;
  EXPECT_NE(outcome.err.find("station"), std::string::npos) << outcome.err;
  EXPECT_NE(outcome.err.find("-3000"), std::string::npos) << outcome.err;
}

TEST_F(CommandLine, helpIsCompleteForEveryCommand) {
  const Outcome general = run("--help");
  EXPECT_EQ(general.status, 0);
  for (const char* command : {"check", "refit", "slots", "sheet", "rules"}) {
    EXPECT_NE(general.out.find(command), std::string::npos);
    const Outcome one = run(std::string(command) + " --help");
    EXPECT_EQ(one.status, 0);
    EXPECT_NE(one.out.find("Exit status"), std::string::npos);
  }
}

TEST_F(CommandLine, withoutADisplayTheEditorSaysSo) {
  const Outcome outcome = run(sample("boat-shed-front"));
  EXPECT_EQ(outcome.status, 2);
  expectOneLine(outcome.err);
  EXPECT_NE(outcome.err.find("no display"), std::string::npos) << outcome.err;
}

} // namespace
