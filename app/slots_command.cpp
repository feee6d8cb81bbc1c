#include <iostream>

#include "app/command_parts.h"
#include "core/model/lookup.h"
#include "core/refit/slot_words.h"
#include "core/rules/rule_book.h"
#include "core/store/files.h"

namespace sillwright {

namespace {

struct WallSlots {
  const WallLine* wall = nullptr;
  std::vector<PieceSlots> pieces;
};

std::vector<WallSlots> slotsOfWalls(const Job& job) {
  const ResolvedLimits limits = resolve(*job.limits);
  std::vector<WallSlots> walls;
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    walls.push_back({&job.walls[i], slotsOf(layOut(job, job.walls.pointer(i)), limits)});
  return walls;
}

// An object on one line; its fields are a promise to other programs.
std::string pieceJson(const WallLine& wall, const PieceSlots& piece) {
  std::string slots;
  for (const Interval slot : piece.slots)
    slots += (slots.empty() ? "[" : ", [") + shortest(slot.from) + ", " + shortest(slot.to) + "]";
  const std::string room =
      piece.room ? "{\"left\": " + shortest(piece.room->left) + ", \"right\": " + shortest(piece.room->right) + "}"
                 : "null";
  return "{\"wall\": " + jsonText(wall.mark) + ", \"piece\": " + jsonText(markOrNumber(wall, piece.piece)) +
         ", \"kind\": " + jsonText(tradeName(piece.kind)) + ", \"at\": " + shortest(piece.at) + ", \"slots\": [" +
         slots + "], \"room\": " + room + "}";
}

void printJson(const std::string& path, const std::vector<WallSlots>& walls) {
  std::string pieces;
  for (const WallSlots& wall : walls)
    for (const PieceSlots& piece : wall.pieces)
      pieces += (pieces.empty() ? "\n  " : ",\n  ") + pieceJson(*wall.wall, piece);
  std::cout << "{\"job\": " << jsonText(path) << ", \"pieces\": [" << pieces << (pieces.empty() ? "]}" : "\n]}")
            << '\n';
}

void printWords(const Job& job, const std::vector<WallSlots>& walls) {
  for (const WallSlots& wall : walls) {
    if (wall.pieces.empty())
      continue;
    std::cout << "wall " << wall.wall->mark << '\n';
    for (const PieceSlots& piece : wall.pieces)
      std::cout << "  " << markOrNumber(*wall.wall, piece.piece) << ", " << tradeName(piece.kind) << " at "
                << printLength(piece.at, job.units) << "\n      room: " << roomWords(piece, job.units)
                << "\n      slots: " << slotWords(piece, job.units) << '\n';
  }
}

} // namespace

int slotsOfJob(const Call& call, int&, char**) {
  if (call.words.size() != 1)
    return refuse({"slots", "needs one job file"});
  const auto job = loadJob(call.words.front());
  if (!job)
    return refuse(job.problem());
  const std::vector<WallSlots> walls = slotsOfWalls(*job);
  if (call.has("--json"))
    printJson(call.words.front(), walls);
  else
    printWords(*job, walls);
  bool out = false; // a piece that stands in no slot
  for (const WallSlots& wall : walls)
    for (const PieceSlots& piece : wall.pieces)
      out = out || !piece.room;
  return out ? somethingToFix : nothingToFix;
}

} // namespace sillwright
