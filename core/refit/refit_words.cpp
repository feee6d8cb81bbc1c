// Moves of a refit in words.
#include "core/refit/refit_words.h"

#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"
#include "core/refit/question.h"
#include "core/refit/relaxation_words.h"

namespace sillwright {

namespace {

std::string kindName(PieceKind kind) {
  return kind == PieceKind::Bolt ? "bolt" : std::string(tradeName(kind));
}

// Marks may be missing in jobs made elsewhere.
std::string pieceName(const Piece& piece) {
  const std::string& mark = markOf(piece);
  return kindName(kindOf(piece)) + " " + (mark.empty() ? "#" + std::to_string(idOf(piece).value) : mark);
}

bool moves(double by) {
  return std::abs(by) > tolerance::same;
}

std::string countOf(std::size_t count, const char* one, const char* many) {
  return std::to_string(count) + " " + (count == 1 ? one : many);
}

// "2 bolts", "1 strap, 2 bolts"; empty for none.
std::string kindsOf(const std::vector<Change>& changes, bool added) {
  std::string words;
  for (const PieceKind kind : {PieceKind::Column, PieceKind::Strap, PieceKind::Bolt, PieceKind::Rod}) {
    const auto count = std::count_if(changes.begin(), changes.end(), [&](const Change& change) {
      return kindOf(change) == kind && (added ? !change.before : !change.after);
    });
    if (count > 0)
      words += (words.empty() ? "" : ", ") +
               countOf(static_cast<std::size_t>(count), kindName(kind).c_str(), (kindName(kind) + "s").c_str());
  }
  return words;
}

constexpr double noLimit = 64; // room that is no limit

} // namespace

std::string changeWords(const WallLine& wall, const Change& change, LengthStyle style) {
  const auto before = standBefore(wall, change), after = standAfter(wall, change);
  if (!change.before)
    return (markOf(*change.after).empty() ? kindName(kindOf(change)) : pieceName(*change.after)) + " added" +
           (after ? " at " + printLength(after->station, style) : std::string());
  const std::string name = pieceName(*change.before);
  if (!change.after)
    return name + ": taken out";
  if (!before || !after)
    return name + ": changed";
  const double along = after->station - before->station, across = after->depth - before->depth;
  std::string words;
  if (moves(along))
    words = printMeasure(std::abs(along), style) + (along > 0 ? " right" : " left");
  if (moves(across))
    words +=
        (words.empty() ? "" : ", ") + printMeasure(std::abs(across), style) + (across > 0 ? " inward" : " outward");
  return name + ": " + (words.empty() ? std::string("stays") : words);
}

std::string movesWords(const Proposal& proposal, LengthStyle style) {
  const auto moved = static_cast<std::size_t>(std::count_if(
      proposal.changes.begin(), proposal.changes.end(), [](const Change& each) { return each.before && each.after; }));
  std::string words;
  if (moved > 0)
    words = countOf(moved, "piece moves ", "pieces move ") + printMeasure(proposal.movement, style) +
            (moved > 1 ? " in all" : "");
  const auto add = [&](const std::string& kinds, const char* what) {
    if (!kinds.empty())
      words += (words.empty() ? "" : ", ") + kinds + what;
  };
  add(kindsOf(proposal.changes, true), " added");
  add(kindsOf(proposal.changes, false), " taken out");
  return words;
}

std::string targetsWords(const Proposal& proposal, LengthStyle style) {
  const int missed = proposal.cost.ask + proposal.cost.watch;
  const std::string words =
      missed == 0 ? "every target met" : countOf(static_cast<std::size_t>(missed), "target", "targets") + " missed";
  return proposal.room >= noLimit ? words : words + "; smallest slide room " + printMeasure(proposal.room, style);
}

std::string proposalWords(const WallLine&, const Proposal& proposal, LengthStyle style) {
  const std::string words = movesWords(proposal, style);
  return words.empty() ? "nothing to do" : words + "; " + targetsWords(proposal, style);
}

std::string relaxationWords(const WallLayout& layout, const Requirement& requirement, LengthStyle style) {
  const std::string giving = givingWords(layout, requirement, style);
  return giving.empty() ? giving : "would do alone: " + giving;
}

std::vector<std::string> questionLines(const Job& job, const WallLayout& layout, const ResolvedLimits& limits,
                                       const NoLayout& conflict) {
  return linesOf(questionOf(job, layout, limits, conflict));
}

} // namespace sillwright
