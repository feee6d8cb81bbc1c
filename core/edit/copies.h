// Copies of pieces at another place: on the same wall or on another, as they stand or turned round. Stations in the
// wall frame, in. What was read on the forms is not copied: grade shots, readings, ticks, and where a bar was found.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/model/lookup.h"

namespace sillwright {

// Pieces taken up to be copied: a value that the job they come from may change under.
struct Copied {
  WallList::Pointer wall; // as it stood; null where nothing was taken up
  double length = 0;      // of it
  Shared<HardwareTypes> types;
  std::vector<Id> pieces; // of that wall, in the order of its lists
  bool empty() const { return pieces.empty(); }
};

// Pieces of one wall; ids that it does not have are left aside. An opening brings the step that has its very ends.
Copied copyOf(const Job& job, Id wall, std::span<const Id> pieces);
// Stations that they take up; what runs along and grade shots only where there is nothing else. Not for nothing copied.
Interval stretchOf(const Copied& copied);
// A line a piece, from left to right: "strap S1 at 0'-2 3/4\"".
std::string textOf(const Copied& copied, LengthStyle units);

// Where a station goes.
struct Carry {
  double by = 0;       // to by + s …
  bool turned = false; // … or to by - s, left and right changed
  double operator()(double s) const { return turned ? by - s : by + s; }
  bool operator==(const Carry&) const = default;
};

enum class LeftOutWhy : std::uint8_t {
  StandsAlready, // the same piece is there
  InTheWay,      // another of its kind is
  PastTheEnd,    // of the wall
  TooDeep,       // the wall is too thin, or not high enough
  NoColumn,      // for a rod to hang on
  NoType,        // the job has no such hardware
  OnlyRead       // it was read on the forms, not planned
};
struct LeftOut {
  std::string mark; // of the piece to be copied
  LeftOutWhy why = LeftOutWhy::InTheWay;
  std::string other; // mark of what is in the way
  bool operator==(const LeftOut&) const = default;
};

struct Copies {
  Job job;
  Selection made; // from left to right, kind by kind
  std::vector<LeftOut> leftOut;
};

// Puts copies on a wall, once for each carry. Every copy has an id and a mark of its own. A strap or rod belongs to the
// copy of its column, or to what stands in that column's place, or to the column it then stands on (a rod: beside).
// Upright bars keep their ends' distance from the pour line and from the bottom of the concrete. Nothing that stands is
// moved or doubled; what cannot be put there is said. The job as it is where there is no such wall.
Copies putCopies(const Job& job, Id wall, const Copied& copied, std::span<const Carry> carries);

} // namespace sillwright
