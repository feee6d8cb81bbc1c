#include "app/refit_files.h"

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <set>

#include "core/refit/lp_model.h"
#include "core/refit/refit_words.h"
#include "core/rules/rule_book.h"
#include "core/store/files.h"

namespace sillwright {

namespace {

std::optional<Problem> write(const std::string& path, const std::string& text) {
  const auto written = writeFile(path, text);
  return written ? std::nullopt : std::optional(written.problem());
}

std::string modelOf(const sequence::Problem& problem, const std::optional<Proposal>& proposal) {
  if (!proposal)
    return lpModel(problem, {sequence::CostLevel::Ask, {}, boltSlotsToLayAtAll(problem)});
  return lpModel(problem, {sequence::CostLevel::Movement, proposal->cost, boltSlots(problem, proposal->cost)});
}

} // namespace

std::vector<Requirement> smallestFirst(const std::vector<Requirement>& requirements) {
  std::vector<Requirement> giving;
  for (const Requirement& each : requirements)
    if (each.by)
      giving.push_back(each);
  std::stable_sort(giving.begin(), giving.end(),
                   [](const Requirement& a, const Requirement& b) { return *a.by < *b.by; });
  return giving;
}

std::optional<Problem> writeQuestion(const Job& job, const std::vector<RefitOfWall>& walls, const std::string& path) {
  std::string text;
  for (const RefitOfWall& wall : walls)
    for (const NoLayout& conflict : wall.conflicts) {
      text += text.empty() ? "" : "\n\n";
      for (const std::string& line : questionLines(job, wall.layout, resolve(*job.limits), conflict))
        text += line + "\n";
    }
  return write(path, text);
}

std::optional<Problem> writeModels(const std::vector<RefitOfWall>& walls, const ResolvedLimits& limits,
                                   const std::string& path) {
  std::set<std::string> taken;
  for (const RefitOfWall& wall : walls) {
    const auto problem = refitProblem(wall.layout, limits, wall.wishes);
    if (!problem)
      return problem.problem();
    std::string file = walls.size() == 1 ? path : besidePath(path, wall.layout.wall->mark);
    if (!taken.insert(file).second) // two walls of one mark
      file = besidePath(path, wall.layout.wall->mark + "-" + std::to_string(wall.layout.wall->id.value));
    if (const auto wrong = write(file, modelOf(*problem, wall.proposal)))
      return wrong;
  }
  return std::nullopt;
}

std::string besidePath(const std::string& path, const std::string& mark) {
  std::string safe;
  for (const char c : mark)
    safe += std::isalnum(static_cast<unsigned char>(c)) || c == '-' ? c : '_';
  const std::filesystem::path whole(path);
  const std::string extension = whole.extension().string();
  return path.substr(0, path.size() - extension.size()) + "-" + safe + extension;
}

} // namespace sillwright
