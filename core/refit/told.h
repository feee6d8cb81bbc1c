// The pieces and numbers of one requirement, as words; used by requirement_words and relaxation_words only.
#pragma once

#include <string>
#include <string_view>

#include "core/base/length.h"
#include "core/refit/refit.h"

namespace sillwright {

struct Told {
  const WallLayout& layout;
  const Requirement& r;
  LengthStyle style = LengthStyle::FeetInches;

  std::string at(double station) const { return printLength(station, style); }
  std::string much(double length) const { return printMeasure(length, style); }
  std::string stretch(Interval s) const { return at(s.from) + " to " + at(s.to); }
  std::string by() const { return much(r.by.value_or(0)); }

  Id id(std::size_t i) const { return i < r.pieces.size() ? r.pieces[i] : Id{}; }
  std::optional<PieceKind> kind(std::size_t i) const;
  // S1; its number where it has no mark.
  std::string mark(std::size_t i) const;
  // "strap S1"
  std::string name(std::size_t i) const;
  // With where it is and of what size: "bar V3 (No. 5 at 1'-2 3/8\")", "opening O1 (4'-0\" to 20'-0\")".
  std::string placed(std::size_t i) const;
  // Of what the requirement is asked: "sill L1 (0'-0 1/2\" to 4'-0\")", "piece 2 of sill L1 (…)", or that one bolt.
  std::string sill() const;
  // "washers of sill L1 (…)"; "the washers" where no sill is named.
  std::string ofSill(std::string_view what) const {
    return id(0) ? std::string(what) + " of " + sill() : "the " + std::string(what);
  }
  // The second piece as placed; else the words given for it.
  std::string against(std::string_view unnamed) const { return id(1) ? placed(1) : std::string(unnamed); }
  // The column that a strap or rod hangs on; empty where there is none.
  Id column() const;
  // "bolts of sill L1 (…)", or the one bolt or rod.
  std::string bolts() const { return !id(0) || kind(0) == PieceKind::Sill ? ofSill("bolts") : placed(0); }
  // Of a strap that a panel end lacks there is only the column that it would hang on: "strap to be added on column C1".
  std::string strap(std::size_t i) const { return kind(i) == PieceKind::Column ? toBeAdded + name(i) : name(i); }
  std::string placedStrap(std::size_t i) const {
    return kind(i) == PieceKind::Column ? toBeAdded + placed(i) : placed(i);
  }
  static constexpr const char* toBeAdded = "strap to be added on ";

  // The piece of sill that is meant; null where it is not there.
  const SillPiece* sillPiece() const;
  // The face of the concrete that stands in the way: nearest to where that is, else to the first piece.
  const ConcreteFace* face() const;
  // What stands in the way beside the first piece: the second one, else the stud there.
  std::string obstacle() const;
};

// "left end of the concrete", "corner on the left", "step on the left"
std::string faceName(const ConcreteFace& face);
// One piece by its trade name and mark, its number where it has none.
std::string namedPiece(const WallLine& wall, Id piece);
// "No. 5 at 1'-2 3/8\"", "2-2x6 at 0'-3\"", "4'-0\" to 20'-0\"".
std::string placeOfPiece(const WallLine& wall, Id piece, LengthStyle style);

} // namespace sillwright
