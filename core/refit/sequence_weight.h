// The levels of preference as one value that adds and compares: two numbers with the levels in lanes wide enough that
// none ever runs over (asks and watches below 2^22, pieces and set pieces below 2^20, movement below 2^40).
#pragma once

#include <compare>
#include <cstdint>

#include "core/refit/sequence.h"

namespace sillwright::sequence {

struct Weight {
  std::int64_t upper = 0; // asks, pieces, set pieces
  std::int64_t lower = 0; // watches, movement
  auto operator<=>(const Weight&) const = default;
};

inline Weight operator+(const Weight& a, const Weight& b) {
  return {a.upper + b.upper, a.lower + b.lower};
}
inline Weight operator-(const Weight& a, const Weight& b) {
  return {a.upper - b.upper, a.lower - b.lower};
}

// Not allowed at all. Sums of a few of them stay so and do not overflow.
inline constexpr Weight kNever{std::int64_t{1} << 60, 0};
inline bool isNever(const Weight& weight) {
  return weight.upper >= kNever.upper / 2;
}

// A sum of many, any of which may be never.
inline Weight plus(const Weight& a, const Weight& b) {
  return isNever(a) || isNever(b) ? kNever : a + b;
}

inline constexpr Weight weightOf(int ask, int pieces, int setMoved, int watch, std::int64_t movement) {
  return {(std::int64_t{ask} << 40) + (std::int64_t{pieces} << 20) + setMoved, (std::int64_t{watch} << 40) + movement};
}

// Only of a whole layout, where no lane is negative.
inline Cost costOf(const Weight& weight) {
  const std::int64_t lane = (std::int64_t{1} << 20) - 1;
  return {.ask = static_cast<int>(weight.upper >> 40),
          .pieces = static_cast<int>((weight.upper >> 20) & lane),
          .setMoved = static_cast<int>(weight.upper & lane),
          .watch = static_cast<int>(weight.lower >> 40),
          .movement = weight.lower & ((std::int64_t{1} << 40) - 1)};
}

// Asks and watches paid at one place, or blocked; small, so that whole rows of them can be kept and compared.
using Effect = std::uint32_t;
inline constexpr Effect kBlocked = 0xFFFFFFFF;
inline constexpr Effect kAsk = 1u << 16;
inline constexpr Effect kWatch = 1;

inline Effect sum(Effect a, Effect b) {
  return a == kBlocked || b == kBlocked ? kBlocked : a + b;
}

inline Weight weightOf(Effect effect) {
  if (effect == kBlocked)
    return kNever;
  return weightOf(static_cast<int>(effect >> 16), 0, 0, static_cast<int>(effect & 0xFFFF), 0);
}

} // namespace sillwright::sequence
