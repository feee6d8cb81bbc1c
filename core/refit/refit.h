// A wall laid out again with the least movement, or the smallest set of requirements that cannot hold together.
// Lengths in inches, stations on tape marks (1/16 in). Exact: the very problem is solved, and the rules have the last
// word about what is proposed.
//
// What may move: straps, on their column; rods, beside theirs; bolts, along their piece of sill and across it where the
// washer or the middle third needs it, more or fewer of them; columns within their leeway, with what hangs on them. A
// panel end whose mark calls for a strap that it does not have gets one. Nothing else moves: bars stay where they are.
// Order of preference: no FIX of position; fewest ASK of position; fewest pieces added or removed; fewest moved that
// are set already; fewest targets missed; least movement; largest smallest slide room; leftmost.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/base/result.h"
#include "core/model/layout.h"
#include "core/model/lookup.h"
#include "core/refit/sequence.h"
#include "core/rules/limits.h"

namespace sillwright {

struct RefitWishes {
  std::vector<Id> staying;            // refused moves: these pieces stay where they are
  bool targets = true;                // false: targets missed do not count
  std::optional<Bolt> boltToAdd = {}; // as it would be in a sill piece that has none to go by; its station says nothing
  // The same wall as it was approved, to move least from; none: as it is. Pieces that it does not have count from where
  // they are.
  std::shared_ptr<const WallLine> reference = {};
};

// A piece moved (before and after), added (after only, without id and mark) or removed (before only).
struct Change {
  std::optional<Piece> before;
  std::optional<Piece> after;
  bool operator==(const Change&) const = default;
};

PieceKind kindOf(const Change& change);
Id pieceOf(const Change& change); // empty for an added one
// Station and depth (0 for a piece without one) before and after; those that there are.
struct Stand {
  double station = 0;
  double depth = 0;
};
std::optional<Stand> standBefore(const WallLine& wall, const Change& change);
std::optional<Stand> standAfter(const WallLine& wall, const Change& change);

struct Proposal {
  Id wall;
  std::vector<Change> changes; // left to right by where the piece goes; none: nothing to do
  double movement = 0;         // of all pieces, along and across
  double room = 0;             // the smallest slide room of a piece that can slide; 64 in is no limit
  sequence::Cost cost = {};    // against the reference
  bool operator==(const Proposal&) const = default;
};

// One thing that has to hold, as data; words are made in refit_words.
struct Requirement {
  enum class Kind : std::uint8_t {
    Rule,   // a rule of the rule book, between or about these pieces
    Leeway, // a column stays within its leeway
    Stays,  // a piece stays where it is
  };
  Kind kind = Kind::Rule;
  RuleId rule = RuleId::StrapEdge;
  // First the one it is asked of, then what it is asked against. Of bolts: their sill, or an empty id for the bolts of any
  // sill; empty for two bolts side by side. A strap that is still to be added goes by its column.
  std::vector<Id> pieces;
  std::optional<int> sillPiece = {}; // of bolts: which piece of that sill, from the left, 0 the first
  std::optional<Interval> at = {};   // what stands in the way, where that is no piece: a stud, an end
  // The least amount, in tape marks' length, by which this alone must give that there is a layout; none: no amount is
  // enough, or it is not one of length.
  std::optional<double> by = {};
  bool operator==(const Requirement&) const = default;
};

// All of them together cannot hold; without any one of them they can.
struct NoLayout {
  Id wall;
  std::vector<Requirement> requirements;
  std::vector<Change> elsewhere = {}; // of parts of the wall that have nothing to do with it, and a layout of their own
  bool operator==(const NoLayout&) const = default;
};

using Refit = std::variant<Proposal, NoLayout>;

// Problem: what keeps the wall from being laid out at all, in a sentence: no sill, a panel without a column, more
// straps than columns, a wish that names another wall or a piece that is not there.
Result<Refit> refit(const WallLayout& layout, const ResolvedLimits& limits, const RefitWishes& wishes = {});

// What else collides on a wall that has no layout, in parts of it that have nothing to do with what refit tells: a
// question each. None where there is a layout, or a problem.
std::vector<NoLayout> furtherConflicts(const WallLayout& layout, const ResolvedLimits& limits,
                                       const RefitWishes& wishes = {});

// The problem that is solved, for other solvers; see lp_model.
Result<sequence::Problem> refitProblem(const WallLayout& layout, const ResolvedLimits& limits,
                                       const RefitWishes& wishes = {});

// The wall with a change made. Added pieces keep the empty id: core/edit gives ids and marks.
WallLine withChange(const WallLine& wall, const Change& change);

} // namespace sillwright
