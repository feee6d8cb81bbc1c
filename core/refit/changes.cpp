#include <algorithm>

#include "core/refit/refit.h"

namespace sillwright {

namespace {

const Piece& pieceIn(const Change& change) {
  return change.after ? *change.after : *change.before;
}

double depthOf(const Piece& piece) {
  if (const Bolt* bolt = std::get_if<Bolt>(&piece))
    return bolt->depth;
  const Rod* rod = std::get_if<Rod>(&piece);
  return rod ? rod->depth : 0;
}

// A rod hangs on its column in that wall.
Stand standOf(const WallLine& wall, const Piece& piece) {
  WallLine with;
  with.columns = wall.columns;
  std::visit(
      [&](const auto& own) {
        forEachList(with, [&](auto& list) {
          using Item = typename std::decay_t<decltype(list)>::value_type;
          if constexpr (std::is_same_v<Item, std::decay_t<decltype(own)>>)
            list = {own};
        });
      },
      piece);
  return {stationOf(with, idOf(piece)).value_or(0), depthOf(piece)};
}

} // namespace

PieceKind kindOf(const Change& change) {
  return kindOf(pieceIn(change));
}

Id pieceOf(const Change& change) {
  return idOf(pieceIn(change));
}

std::optional<Stand> standBefore(const WallLine& wall, const Change& change) {
  return change.before ? std::optional(standOf(wall, *change.before)) : std::nullopt;
}

std::optional<Stand> standAfter(const WallLine& wall, const Change& change) {
  return change.after ? std::optional(standOf(wall, *change.after)) : std::nullopt;
}

WallLine withChange(const WallLine& wall, const Change& change) {
  WallLine changed = wall;
  std::visit(
      [&](const auto& piece) {
        forEachList(changed, [&](auto& list) {
          using Item = typename std::decay_t<decltype(list)>::value_type;
          if constexpr (std::is_same_v<Item, std::decay_t<decltype(piece)>>) {
            if (!change.after)
              list.erase(
                  std::remove_if(list.begin(), list.end(), [&](const Item& item) { return item.id == piece.id; }),
                  list.end());
            else if (change.before)
              std::replace_if(
                  list.begin(), list.end(), [&](const Item& item) { return item.id == piece.id; }, piece);
            else
              list.push_back(piece);
          }
        });
      },
      pieceIn(change));
  return changed;
}

} // namespace sillwright
