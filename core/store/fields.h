// What a field may hold, said beside its name in the field lists (wall_fields, hardware_fields, job_fields). One list an
// entity serves for reading, writing, checking and the schema; each is a visitor f with
//   f(name, value, allowed)           a field that is always there
//   f.optional(name, value, allowed)  a field left out where it is empty (no text, no id, an empty list, nothing)
//   f.extra(text)                     fields this program does not know
#pragma once

#include <concepts>
#include <type_traits>

namespace sillwright {

// A number from low to high, both allowed. Lengths in inches.
struct Range {
  double low;
  double high;
};
// What a parsed length can hold: wider than any job.
inline constexpr Range anyLength{-1e6, 1e6};
inline constexpr Range positiveLength{1.0 / 1024, 1e6};
inline constexpr Range notNegative{0, 1e6};
// Lengths across a wall, of hardware and of lumber.
inline constexpr Range size{1.0 / 1024, 1200};
inline constexpr Range sizeOrNone{0, 1200};
inline constexpr Range offset{-1200, 1200};

// What an id refers to. OwnColumn: a column of the same wall.
enum class Refers { ToStrapType, ToBoltType, ToRodType, ToWasherType, ToCorner, ToOwnColumn, ToOwnPiece };

// YYYY-MM-DD, a day that exists.
struct Date {};
// Text that may not be empty.
struct NotEmpty {};
// The mark of a line of the wall-end schedule.
struct KnownMark {};
// A number of the list of bar sizes and the like: a whole number in range.
struct Whole {
  int low;
  int high;
};
struct Anything {};

// Of<Strap> takes a Strap or a const Strap.
template <class Value, class Entity>
concept Of = std::same_as<std::remove_const_t<Value>, Entity>;

// Entities written over several lines; all others stand on one line.
template <class Entity> inline constexpr bool overLines = false;

} // namespace sillwright
