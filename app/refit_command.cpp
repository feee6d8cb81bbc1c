#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <iostream>

#include "app/command_parts.h"
#include "app/refit_files.h"
#include "core/edit/operations.h"
#include "core/refit/question.h"
#include "core/refit/refit_job.h"
#include "core/refit/refit_words.h"
#include "core/rules/rule_book.h"
#include "core/store/files.h"

namespace sillwright {

namespace {

constexpr double noLimit = 64; // in: room that is no limit

// A wall asked for by name is laid out whatever is on it; of all others those that have something to set.
Result<std::vector<WallLayout>> wallsToLayOut(const Job& job, const Call& call) {
  std::vector<WallLayout> walls;
  std::string names;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const WallLine& wall = job.walls[i];
    names += (names.empty() ? "" : ", ") + wall.mark;
    if (call.has("--wall") ? wall.mark == call.get("--wall") : hasSomethingToSet(wall))
      walls.push_back(layOut(job, job.walls.pointer(i)));
  }
  if (call.has("--wall") && walls.empty())
    return Problem{"--wall", "\"" + call.get("--wall") + "\" is no wall of this job; it has " +
                                 (names.empty() ? std::string("none") : names)};
  return walls;
}

void showProgress(std::size_t done, std::size_t of) {
  std::cerr << "\rwall " << done << " of " << of << (done == of ? "\r\033[K" : "") << std::flush;
}

// ---- what came of it --------------------------------------------------------------------------------------------

struct Outcome {
  RefitOfWall asked;
  std::vector<Change> changes; // with the ids and marks that added pieces were given
};

// Added pieces get their ids one after another, in the order of the changes.
std::vector<Change> withIds(const std::vector<Change>& changes, const Job& before, const Job& after, Id wall) {
  std::vector<Change> named = changes;
  std::uint32_t next = before.nextId;
  for (Change& change : named)
    if (!change.before)
      while (next < after.nextId) {
        const auto piece = findPiece(after, {wall, Id{next++}});
        if (piece && kindOf(*piece) == kindOf(change)) {
          change.after = piece;
          break;
        }
      }
  return named;
}

struct Whole {
  Job job;
  std::vector<Outcome> walls;
  bool conflict = false;
  bool changed = false;
  double movement = 0;
  double room = noLimit;
};

Whole applied(const Job& job, std::vector<RefitOfWall> walls) {
  Whole whole;
  whole.job = job;
  for (RefitOfWall& wall : walls) {
    Outcome outcome{std::move(wall), {}};
    if (const auto& proposal = outcome.asked.proposal) {
      std::vector<PieceChange> changes;
      for (const Change& change : proposal->changes)
        changes.push_back({change.before, change.after});
      const Job before = whole.job;
      whole.job = changePieces(before, proposal->wall, changes);
      outcome.changes = withIds(proposal->changes, before, whole.job, proposal->wall);
      whole.changed = whole.changed || !changes.empty();
      whole.movement += proposal->movement;
      whole.room = std::min(whole.room, proposal->room);
    }
    whole.conflict = whole.conflict || !outcome.asked.conflicts.empty();
    whole.walls.push_back(std::move(outcome));
  }
  return whole;
}

// ---- JSON: its fields are a promise to other programs -----------------------------------------------------------

std::string joined(const std::vector<std::string>& items) {
  std::string list;
  for (const std::string& item : items)
    list += (list.empty() ? "\n  " : ",\n  ") + item;
  return "[" + list + (list.empty() ? "]" : "\n ]");
}

bool hasDepth(const Change& change) {
  return kindOf(change) == PieceKind::Bolt || kindOf(change) == PieceKind::Rod;
}

std::string nameOf(const Piece& piece) {
  return markOf(piece).empty() ? "#" + std::to_string(idOf(piece).value) : markOf(piece);
}

std::string moveJson(const WallLine& wall, const Change& change) {
  const Stand from = *standBefore(wall, change), to = *standAfter(wall, change);
  const auto depth = [&](double value) { return hasDepth(change) ? shortest(value) : std::string("null"); };
  return "{\"wall\": " + jsonText(wall.mark) + ", \"piece\": " + jsonText(nameOf(*change.before)) +
         ", \"from\": " + shortest(from.station) + ", \"to\": " + shortest(to.station) +
         ", \"depth_from\": " + depth(from.depth) + ", \"depth_to\": " + depth(to.depth) + "}";
}

std::string standJson(const WallLine& wall, const Change& change) {
  const Piece& piece = change.after ? *change.after : *change.before;
  const Stand at = change.after ? *standAfter(wall, change) : *standBefore(wall, change);
  return "{\"wall\": " + jsonText(wall.mark) + ", \"piece\": " + jsonText(nameOf(piece)) +
         ", \"kind\": " + jsonText(tradeName(kindOf(piece))) + ", \"at\": " + shortest(at.station) +
         ", \"depth\": " + (hasDepth(change) ? shortest(at.depth) : "null") + "}";
}

std::string ruleName(const Requirement& requirement) {
  switch (requirement.kind) {
  case Requirement::Kind::Leeway:
    return "leeway";
  case Requirement::Kind::Stays:
    return "stays";
  case Requirement::Kind::Rule:
    break;
  }
  return std::string(rule(requirement.rule).name);
}

std::string requirementHead(const WallLine& wall, const Requirement& requirement) {
  std::string pieces;
  for (const Id piece : requirement.pieces)
    pieces += (pieces.empty() ? "" : ", ") + jsonText(markOrNumber(wall, piece));
  return "{\"rule\": " + jsonText(ruleName(requirement)) + ", \"pieces\": [" + pieces + "], ";
}

std::string conflictJson(const Job& job, const WallLayout& layout, const NoLayout& conflict) {
  const ResolvedLimits limits = resolve(*job.limits);
  std::string requirements, relaxations;
  for (const Requirement& each : conflict.requirements)
    requirements += (requirements.empty() ? "" : ",\n   ") + requirementHead(*layout.wall, each) +
                    "\"text\": " + jsonText(requirementWords(layout, limits, each, job.units)) + "}";
  for (const Requirement& each : smallestFirst(conflict.requirements))
    relaxations += (relaxations.empty() ? "" : ",\n   ") + requirementHead(*layout.wall, each) +
                   "\"by\": " + shortest(*each.by) + ", \"unit\": \"in\"}";
  return "{\"wall\": " + jsonText(layout.wall->mark) + ", \"requirements\": [\n   " + requirements +
         "], \"relaxations\": [" + (relaxations.empty() ? "" : "\n   ") + relaxations + "]}";
}

void printJson(const Whole& whole) {
  std::vector<std::string> moves, added, removed, conflicts;
  for (const Outcome& outcome : whole.walls) {
    const WallLine& wall = *outcome.asked.layout.wall;
    for (const Change& change : outcome.changes)
      if (!change.before)
        added.push_back(standJson(wall, change));
      else if (!change.after)
        removed.push_back(standJson(wall, change));
      else
        moves.push_back(moveJson(wall, change));
    for (const NoLayout& conflict : outcome.asked.conflicts)
      conflicts.push_back(conflictJson(whole.job, outcome.asked.layout, conflict));
  }
  const char* status = whole.conflict ? "conflict" : whole.changed ? "laid-out" : "nothing-to-do";
  std::cout << "{\"status\": " << jsonText(status) << ",\n \"moves\": " << joined(moves)
            << ",\n \"added\": " << joined(added) << ",\n \"removed\": " << joined(removed)
            << ",\n \"total_move\": " << shortest(whole.movement)
            << ", \"smallest_room\": " << (whole.room < noLimit ? shortest(whole.room) : std::string("null"))
            << ",\n \"conflicts\": " << joined(conflicts) << "}\n";
}

// ---- words ------------------------------------------------------------------------------------------------------

void printWall(const Job& job, const Outcome& outcome) {
  const WallLayout& layout = outcome.asked.layout;
  const WallLine& wall = *layout.wall;
  for (const NoLayout& conflict : outcome.asked.conflicts) {
    std::cout << "wall " << wall.mark << ": no layout\n";
    for (const std::string& line : conflictLines(questionOf(job, layout, resolve(*job.limits), conflict)))
      std::cout << (line.empty() ? "" : "  ") << line << '\n';
  }
  if (!outcome.asked.proposal)
    return;
  std::cout << "wall " << wall.mark << ": " << proposalWords(wall, *outcome.asked.proposal, job.units) << '\n';
  for (const Change& change : outcome.changes) {
    std::cout << "  " << changeWords(wall, change, job.units);
    if (change.before && change.after)
      std::cout << ", to " << printLength(standAfter(wall, change)->station, job.units);
    std::cout << '\n';
  }
}

void printWords(const Whole& whole, const std::string& out) {
  for (const Outcome& outcome : whole.walls)
    printWall(whole.job, outcome);
  if (whole.conflict)
    std::cout << out << " is not written: a wall has no layout\n";
  else if (!whole.changed)
    std::cout << out << " is not written: nothing to do\n";
  else
    std::cout << out << ": written\n";
}

std::optional<Problem> writeAll(const Call& call, const Whole& whole) {
  std::vector<RefitOfWall> walls;
  for (const Outcome& outcome : whole.walls)
    walls.push_back(outcome.asked);
  if (call.has("--model"))
    if (const auto wrong = writeModels(walls, resolve(*whole.job.limits), call.get("--model")))
      return wrong;
  if (call.has("--question") && whole.conflict)
    if (const auto wrong = writeQuestion(whole.job, walls, call.get("--question")))
      return wrong;
  if (whole.conflict || !whole.changed)
    return std::nullopt;
  const auto saved = saveJob(whole.job, call.get("-o"));
  return saved ? std::nullopt : std::optional(saved.problem());
}

} // namespace

int refitOfJob(const Call& call, int&, char**) {
  if (call.words.size() != 1)
    return refuse({"refit", "needs one job file"});
  if (call.get("-o").empty())
    return refuse({"-o", "needs the job file to write"});
  const auto job = loadJob(call.words.front());
  if (!job)
    return refuse(job.problem());
  const auto layouts = wallsToLayOut(*job, call);
  if (!layouts)
    return refuse(layouts.problem());
  RefitWishes wishes;
  wishes.targets = !call.has("--least");
  std::map<Id, RefitWishes> byWall;
  for (const WallLayout& layout : *layouts)
    byWall[layout.wall->id] = wishes;
  const std::atomic<bool> cancelled = false;
  const bool seen = ::isatty(STDERR_FILENO) != 0;
  std::vector<WallRefit> refits =
      refitJob(*layouts, resolve(*job->limits), byWall, seen ? Progress(showProgress) : Progress(), cancelled);
  std::vector<RefitOfWall> walls;
  for (std::size_t i = 0; i < refits.size(); ++i) {
    if (!refits[i].refit->ok())
      return refuse(refits[i].refit->problem());
    const Proposal* proposal = std::get_if<Proposal>(&refits[i].refit->value());
    walls.push_back({(*layouts)[i], wishes, proposal ? std::optional(*proposal) : std::nullopt, refits[i].conflicts()});
  }
  const Whole whole = applied(*job, std::move(walls));
  if (const auto wrong = writeAll(call, whole))
    return refuse(*wrong);
  if (call.has("--json"))
    printJson(whole);
  else
    printWords(whole, call.get("-o"));
  return whole.conflict ? somethingToFix : nothingToFix;
}

} // namespace sillwright
