// Laying out again from the command line: what is printed, what is written, and what is not.
#include <algorithm>
#include <cmath>
#include <functional>
#include <vector>

#include "tests/app/command_line.h"

namespace {

using namespace sillwright::testing_support;

class RefitCommand : public CommandLine {
protected:
  std::string at(const std::string& name) const { return (folder_ / name).string(); }
  bool isThere(const std::string& name) const { return fs::exists(folder_ / name); }
  // A sample with its first wall changed.
  template <class Change> std::string changed(const std::string& name, const Change& change) const {
    QJsonObject job = parsed(readAll(sample(name))).object();
    QJsonArray walls = job["walls"].toArray();
    QJsonObject wall = walls[0].toObject();
    change(wall);
    walls[0] = wall;
    job["walls"] = walls;
    job["nextId"] = 1000000;
    std::ofstream(at("changed.sillwright")) << QJsonDocument(job).toJson().toStdString();
    return at("changed.sillwright");
  }
};

TEST_F(RefitCommand, movedSteelIsLaidOutAndTheResultHasNothingToDo) {
  const std::string job = sample("boat-shed-front-steel-moved"), before = readAll(job);
  const Outcome outcome = run("refit --json " + job + " -o " + at("out.sillwright"));
  ASSERT_EQ(outcome.status, 0) << outcome.err;
  EXPECT_EQ(outcome.err, "");
  const QJsonObject object = parsed(outcome.out).object();
  EXPECT_EQ(object["status"].toString(), "laid-out");
  for (const char* key : {"moves", "added", "removed", "total_move", "smallest_room", "conflicts"})
    EXPECT_TRUE(object.contains(key)) << key;
  ASSERT_GT(object["moves"].toArray().size(), 0);
  double total = 0;
  for (const auto& value : object["moves"].toArray()) {
    const QJsonObject move = value.toObject();
    for (const char* key : {"wall", "piece", "from", "to", "depth_from", "depth_to"})
      EXPECT_TRUE(move.contains(key)) << key;
    total += std::abs(move["to"].toDouble() - move["from"].toDouble()) +
             std::abs(move["depth_to"].toDouble() - move["depth_from"].toDouble());
  }
  EXPECT_NEAR(object["total_move"].toDouble(), total, 1e-6);
  EXPECT_EQ(object["conflicts"].toArray().size(), 0);
  EXPECT_EQ(readAll(job), before);
  const Outcome checked = run("check --json " + at("out.sillwright"));
  EXPECT_EQ(checked.status, 0) << checked.out;
  const Outcome again = run("refit --json " + at("out.sillwright") + " -o " + at("again.sillwright"));
  EXPECT_EQ(again.status, 0);
  EXPECT_EQ(parsed(again.out).object()["status"].toString(), "nothing-to-do") << again.out;
  EXPECT_FALSE(isThere("again.sillwright"));
}

TEST_F(RefitCommand, wordsSayWhatMovesAndWhatWasWritten) {
  const Outcome moved = run("refit " + sample("boat-shed-front-steel-moved") + " -o " + at("out.sillwright"));
  EXPECT_EQ(moved.status, 0);
  EXPECT_NE(moved.out.find("strap S1: "), std::string::npos) << moved.out;
  EXPECT_NE(moved.out.find(at("out.sillwright") + ": written"), std::string::npos) << moved.out;
  const Outcome sound = run("refit " + sample("boat-shed-front") + " -o " + at("other.sillwright"));
  EXPECT_EQ(sound.status, 0);
  EXPECT_NE(sound.out.find("other.sillwright is not written: nothing to do"), std::string::npos) << sound.out;
  EXPECT_FALSE(isThere("other.sillwright"));
}

TEST_F(RefitCommand, mayWriteOverTheJobItself) {
  const std::string job = at("job.sillwright");
  fs::copy_file(sample("boat-shed-front-steel-moved"), job);
  EXPECT_EQ(run("refit " + job + " -o " + job).status, 0);
  EXPECT_EQ(run("check " + job).status, 0);
}

TEST_F(RefitCommand, noRoomIsAConflictWithNumbersAndNothingIsWritten) {
  const std::string job = sample("boat-shed-front-no-room");
  const Outcome outcome =
      run("refit --json " + job + " -o " + at("out.sillwright") + " --question " + at("question.txt"));
  EXPECT_EQ(outcome.status, 1);
  EXPECT_EQ(outcome.err, "");
  EXPECT_FALSE(isThere("out.sillwright"));
  const QJsonObject object = parsed(outcome.out).object();
  EXPECT_EQ(object["status"].toString(), "conflict");
  ASSERT_EQ(object["conflicts"].toArray().size(), 1);
  const QJsonObject conflict = object["conflicts"].toArray()[0].toObject();
  EXPECT_EQ(conflict["wall"].toString(), "A");
  std::vector<std::string> rules;
  for (const auto& value : conflict["requirements"].toArray()) {
    const QJsonObject requirement = value.toObject();
    rules.push_back(requirement["rule"].toString().toStdString());
    EXPECT_FALSE(requirement["text"].toString().isEmpty());
    EXPECT_GT(requirement["pieces"].toArray().size(), 0);
  }
  EXPECT_EQ(std::count(rules.begin(), rules.end(), "strap.steel"), 2) << outcome.out; // both bars
  EXPECT_EQ(std::count(rules.begin(), rules.end(), "strap.edge"), 1) << outcome.out;
  double least = 0;
  ASSERT_GT(conflict["relaxations"].toArray().size(), 0);
  for (const auto& value : conflict["relaxations"].toArray()) {
    const QJsonObject relaxation = value.toObject();
    EXPECT_GE(relaxation["by"].toDouble(), std::max(least, 0.0625)); // the smallest first
    least = relaxation["by"].toDouble();
    EXPECT_EQ(relaxation["unit"].toString(), "in");
    EXPECT_NE(std::find(rules.begin(), rules.end(), relaxation["rule"].toString().toStdString()), rules.end());
  }
  const std::string question = readAll(at("question.txt"));
  for (const char* part : {"Question to the engineer", "strap S1", "V1", "V19", "Short by ", "Which of these may give"})
    EXPECT_NE(question.find(part), std::string::npos) << part << "\n" << question;
  const Outcome words = run("refit " + job + " -o " + at("out.sillwright"));
  EXPECT_EQ(words.status, 1);
  EXPECT_NE(words.out.find("wall A: no layout"), std::string::npos) << words.out;
  EXPECT_NE(words.out.find("is not written"), std::string::npos) << words.out;
}

TEST_F(RefitCommand, allThatCollidesOnAWallIsAQuestionEach) {
  const std::string job = changed("boat-shed-front-no-room", [](QJsonObject& wall) {
    QJsonArray bars = wall["bars"].toArray();
    for (qsizetype i = bars.size() - 1; i >= 0; --i) { // the bars found at the left end, at the right end, too
      QJsonObject bar = bars[i].toObject();
      if (!bar.contains("found"))
        continue;
      QJsonArray found = bar["found"].toArray();
      for (auto&& end : found) {
        QJsonArray at = end.toArray();
        at[0] = 288 - at[0].toDouble();
        end = at;
      }
      bar["found"] = found;
      bar["id"] = 900000 + static_cast<int>(i);
      bar["mark"] = "W" + bar["mark"].toString();
      bars.append(bar);
    }
    wall["bars"] = bars;
  });
  const Outcome outcome =
      run("refit --json " + job + " -o " + at("out.sillwright") + " --question " + at("question.txt"));
  ASSERT_EQ(outcome.status, 1) << outcome.err;
  const QJsonArray conflicts = parsed(outcome.out).object()["conflicts"].toArray();
  ASSERT_EQ(conflicts.size(), 2) << outcome.out;
  for (const auto& conflict : conflicts)
    EXPECT_EQ(conflict.toObject()["wall"].toString(), "A");
  const std::string question = readAll(at("question.txt")), title = "Question to the engineer";
  const auto first = question.find(title);
  ASSERT_NE(first, std::string::npos);
  EXPECT_NE(question.find(title, first + 1), std::string::npos) << question;
}

TEST_F(RefitCommand, oneWallIsAskedForByItsMark) {
  const std::string job = sample("boat-shed-front-no-room");
  const Outcome other = run("refit --json " + job + " --wall B -o " + at("out.sillwright"));
  EXPECT_EQ(other.status, 0) << other.out << other.err;
  EXPECT_EQ(parsed(other.out).object()["status"].toString(), "nothing-to-do");
  EXPECT_EQ(run("refit " + job + " --wall A -o " + at("out.sillwright")).status, 1);
}

TEST_F(RefitCommand, theProblemIsWrittenAsOneFileAWall) {
  const std::string job = sample("boat-shed-front-steel-moved");
  ASSERT_EQ(run("refit " + job + " --wall A -o " + at("a.sillwright") + " --model " + at("one.lp")).status, 0);
  const std::string one = readAll(at("one.lp"));
  EXPECT_NE(one.find("Minimize"), std::string::npos);
  ASSERT_EQ(run("refit " + job + " -o " + at("b.sillwright") + " --model " + at("all.lp")).status, 0);
  EXPECT_FALSE(isThere("all.lp"));
  EXPECT_EQ(readAll(at("all-A.lp")), one);
  EXPECT_TRUE(isThere("all-B.lp"));
}

TEST_F(RefitCommand, aWallThatCannotBeLaidOutIsSaidInOneSentence) {
  struct Case {
    const char* what;
    std::function<void(QJsonObject&)> change;
    const char* says;
  };
  const std::vector<Case> cases{{"no sill", [](QJsonObject& wall) { wall["sills"] = QJsonArray(); }, "sill"},
                                {"no columns",
                                 [](QJsonObject& wall) {
                                   wall["columns"] = QJsonArray();
                                   QJsonArray straps = wall["straps"].toArray();
                                   for (auto&& each : straps) {
                                     QJsonObject strap = each.toObject();
                                     strap.remove("column");
                                     each = strap;
                                   }
                                   wall["straps"] = straps;
                                 },
                                 "column"}};
  for (const Case& each : cases) {
    const std::string job = changed("boat-shed-front", each.change), before = readAll(job);
    const Outcome outcome = run("refit --json " + job + " -o " + at("out.sillwright"));
    EXPECT_EQ(outcome.status, 2) << each.what << outcome.out;
    expectOneLine(outcome.err);
    EXPECT_NE(outcome.err.find(each.says), std::string::npos) << outcome.err;
    EXPECT_EQ(outcome.out, "") << each.what;
    EXPECT_FALSE(isThere("out.sillwright")) << each.what;
    EXPECT_EQ(readAll(job), before);
  }
}

TEST_F(RefitCommand, aDamagedFileIsNotReplaced) {
  std::ofstream(at("out.sillwright")) << "not a job";
  const Outcome outcome = run("refit " + sample("boat-shed-front-steel-moved") + " -o " + at("out.sillwright"));
  EXPECT_EQ(outcome.status, 2);
  expectOneLine(outcome.err);
  EXPECT_EQ(readAll(at("out.sillwright")), "not a job");
}

TEST_F(RefitCommand, helpSaysWhatIsWrittenAndWhen) {
  const Outcome help = run("refit --help");
  EXPECT_EQ(help.status, 0);
  for (const char* part : {"-o OUT", "--wall NAME", "--least", "--question", "--model", "1 a wall has no layout"})
    EXPECT_NE(help.out.find(part), std::string::npos) << part << help.out;
}

} // namespace
