#include "app/command_parts.h"

#include <algorithm>
#include <array>
#include <iostream>
#include <optional>
#include <vector>

#include "core/base/on_all_cores.h"
#include "core/model/lookup.h"
#include "core/rules/checker.h"
#include "core/rules/wording.h"
#include "core/store/files.h"

namespace sillwright {

namespace {

struct CheckedJob {
  std::string path;
  std::optional<Problem> problem;
  Job job;
  Findings findings;
  Counts counts;
};

CheckedJob checkFile(const std::string& path) {
  CheckedJob checked;
  checked.path = path;
  auto job = loadJob(path);
  if (!job) {
    checked.problem = job.problem();
    return checked;
  }
  checked.job = std::move(job.value());
  for (const auto& wall : checkAll(checked.job)) {
    checked.findings.insert(checked.findings.end(), wall->findings.begin(), wall->findings.end());
    checked.counts += wall->counts;
  }
  std::stable_sort(checked.findings.begin(), checked.findings.end(),
                   [](const Finding& a, const Finding& b) { return a.level < b.level; });
  return checked;
}

std::vector<CheckedJob> checkFiles(const std::vector<std::string>& paths) {
  std::vector<CheckedJob> results(paths.size());
  onAllCores(paths.size(), [&](std::size_t i) { results[i] = checkFile(paths[i]); });
  return results;
}

// An object on one line; its fields are a promise to other programs.
std::string findingJson(const Job& job, const Finding& f) {
  std::string pieces;
  for (const Id piece : f.pieces) {
    const std::string mark = markOf(job, {f.wall, piece});
    pieces += (pieces.empty() ? "" : ", ") + jsonText(mark.empty() ? "#" + std::to_string(piece.value) : mark);
  }
  constexpr std::array units{"in", "count", "ratio", "%", "lb"}; // as Unit has them
  const Point3 at = middleOf(f.region);
  return "{\"rule\": " + jsonText(rule(f.rule).name) + ", \"level\": " + jsonText(word(f.level)) +
         ", \"wall\": " + jsonText(markOf(job, {f.wall, {}})) + ", \"pieces\": [" + pieces +
         "], \"measured\": " + shortest(f.measured) + ", \"limit\": " + shortest(f.limit) + ", \"unit\": " +
         jsonText(units[static_cast<std::size_t>(f.unit)]) + ", \"label\": " + jsonText(label(job, f)) +
         ", \"message\": " + jsonText(message(job, f)) + ", \"source\": " + jsonText(sourceWords(job, f)) +
         ", \"at\": {\"s\": " + shortest(at.s) + ", \"d\": " + shortest(at.d) + ", \"z\": " + shortest(at.z) + "}}";
}

std::string checkJson(const CheckedJob& checked) {
  std::string out = "{\"job\": " + jsonText(checked.path) + ", \"findings\": [";
  for (std::size_t i = 0; i < checked.findings.size(); ++i)
    out += (i == 0 ? "\n  " : ",\n  ") + findingJson(checked.job, checked.findings[i]);
  return out + (checked.findings.empty() ? "]" : "\n]") + ", \"counts\": {\"FIX\": " +
         std::to_string(checked.counts.fix) + ", \"ASK\": " + std::to_string(checked.counts.ask) +
         ", \"WATCH\": " + std::to_string(checked.counts.watch) + "}}";
}

void printFindings(const CheckedJob& checked) {
  std::cout << checked.path << ": " << checked.counts.fix << " FIX, " << checked.counts.ask << " ASK, "
            << checked.counts.watch << " WATCH\n";
  for (const Finding& finding : checked.findings) {
    const WallLine* wall = checked.job.walls.find(finding.wall);
    std::cout << "  " << word(finding.level) << "  wall " << (wall ? wall->mark : "?") << "  "
              << markedLabel(checked.job, finding) << "\n      " << message(checked.job, finding) << "\n      "
              << rule(finding.rule).name << ", " << sourceWords(checked.job, finding);
    const std::string cure = correctionWords(checked.job, finding);
    std::cout << (cure.empty() ? "" : "; " + cure) << '\n';
  }
}

} // namespace

int check(const Call& call, int&, char**) {
  if (call.words.empty())
    return refuse({"check", "needs at least one job file"});
  const auto results = checkFiles(call.words);
  for (const CheckedJob& checked : results)
    if (checked.problem)
      return refuse(*checked.problem);
  bool fix = false;
  std::string all;
  for (const CheckedJob& checked : results) {
    fix = fix || checked.counts.fix > 0;
    if (call.has("--json"))
      all += (all.empty() ? "" : ",\n") + checkJson(checked);
    else
      printFindings(checked);
  }
  if (call.has("--json"))
    std::cout << (results.size() > 1 ? "[" + all + "]" : all) << '\n';
  return fix ? somethingToFix : nothingToFix;
}

} // namespace sillwright
