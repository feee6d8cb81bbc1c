// Identity of everything in a job. One number space a job; a number is never used again, also after a deletion.
#pragma once

#include <compare>
#include <cstdint>
#include <functional>
#include <vector>

namespace sillwright {

struct Id {
  std::uint32_t value = 0; // 0: nothing

  explicit operator bool() const { return value != 0; }
  auto operator<=>(const Id&) const = default;
};

// A piece of a wall. piece is empty for the wall itself. Everything that outlives a call refers to pieces by this.
struct PieceRef {
  Id wall;
  Id piece;

  explicit operator bool() const { return static_cast<bool>(wall); }
  auto operator<=>(const PieceRef&) const = default;
};

// What is selected, in the order it was selected.
using Selection = std::vector<PieceRef>;

} // namespace sillwright

template <> struct std::hash<sillwright::Id> {
  std::size_t operator()(sillwright::Id id) const noexcept { return std::hash<std::uint32_t>{}(id.value); }
};
