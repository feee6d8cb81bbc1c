// The levels of preference as one number that adds and compares, with each level in a lane wide enough that none ever
// runs over (asks below 2^19, watches below 2^22, pieces and set pieces below 2^20, movement below 2^40).
#pragma once

#include <compare>
#include <cstdint>

#include "core/refit/sequence.h"

namespace sillwright::sequence {

__extension__ typedef __int128 Wide;

struct Weight {
  Wide value = 0;
  auto operator<=>(const Weight&) const = default;
};

inline constexpr Weight operator+(const Weight& a, const Weight& b) {
  return {a.value + b.value};
}
inline constexpr Weight operator-(const Weight& a, const Weight& b) {
  return {a.value - b.value};
}

// Not allowed at all. Sums of a few of them stay so and do not overflow.
inline constexpr Weight kNever{Wide{1} << 122};
inline constexpr bool isNever(const Weight& weight) {
  return weight.value >= kNever.value / 2;
}
// More than any layout costs.
inline constexpr Weight kAnything{kNever.value / 2 - 1};

// A sum of many, any of which may be never.
inline Weight plus(const Weight& a, const Weight& b) {
  return isNever(a) || isNever(b) ? kNever : a + b;
}

inline constexpr Weight weightOf(int ask, int pieces, int setMoved, int watch, std::int64_t movement) {
  return {(Wide{ask} << 102) + (Wide{pieces} << 82) + (Wide{setMoved} << 62) + (Wide{watch} << 40) + movement};
}

// Any watches and movement with the same asks, pieces and set pieces.
inline constexpr Weight withAnyLower(const Weight& weight) {
  return {((weight.value >> 62) << 62) + ((Wide{1} << 62) - 1)};
}

// Only of a whole layout, where no lane is negative.
inline Cost costOf(const Weight& weight) {
  const auto lane = [&](int from, int bits) {
    return static_cast<std::int64_t>((weight.value >> from) & ((Wide{1} << bits) - 1));
  };
  return {.ask = static_cast<int>(lane(102, 20)),
          .pieces = static_cast<int>(lane(82, 20)),
          .setMoved = static_cast<int>(lane(62, 20)),
          .watch = static_cast<int>(lane(40, 22)),
          .movement = lane(0, 40)};
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
