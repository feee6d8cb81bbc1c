// Edits: free functions from a job to a job. None of them looks at rules. Lengths in inches, wall frame.
// A reference to something that is not there leaves the job as it is. Stations are not rounded here: rounding happens
// once, where a gesture or a typed value is committed.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "core/base/result.h"
#include "core/model/lookup.h"

namespace sillwright {

// ---- pieces -----------------------------------------------------------------------------------------------------
// Adds a piece; its id is given here (whatever it held), and a mark too where it has none or one that another piece of
// its kind has. Second: the new id; empty where there is no such wall.
std::pair<Job, Id> addPiece(const Job& job, Id wall, Piece piece);
// Replaces the piece with the same id and kind.
Job replacePiece(const Job& job, Id wall, const Piece& piece);
// Removes pieces and what cannot stand without them: a rod goes with its column, a reading with its piece; a strap
// stays, without a column.
// A wall reference (empty piece) removes the wall, and corners that nothing uses any more.
Job removePieces(const Job& job, std::span<const PieceRef> pieces);
// A piece made other (both; the same id and kind), added (after only) or taken out (before only).
struct PieceChange {
  std::optional<Piece> before;
  std::optional<Piece> after;
};
// All of them in one go. Added pieces get ids, and marks that no piece taken out here had, as of addPiece; what is
// taken out goes as of removePieces, with its reading. What is no more there is left as it is.
Job changePieces(const Job& job, Id wall, std::span<const PieceChange> changes);
// Moves pieces along the wall by `along`, across it (bolts, rods, bars) by `across`, up by `up` (strap joints,
// projections of bolts and rods, bars, window sills and heads). A bar is moved where it was found, if it was. A column
// takes its rods along (they hang on it), not its straps. Stretches move whole; a moved opening takes along the step
// that has its very ends.
Job movePieces(const Job& job, std::span<const PieceRef> pieces, double along, double across = 0, double up = 0);
// Moves one end of a stretch (sill, opening, panel, step, bar along); the other stays. Never turns it inside out: at
// least 1/16 stays. An opening takes the step with the same end along.
Job moveEnd(const Job& job, PieceRef piece, Side end, double station);
Job setStation(const Job& job, PieceRef piece, double station);
// A mark nobody on the wall list uses yet: prefix of the kind and the next free number.
std::string freshMark(const Job& job, PieceKind kind);

// ---- taped on the forms -----------------------------------------------------------------------------------------
// The distance between two corners as taped; nothing takes the measure away. Corners that are not there, or one and the
// same: the job stays as it is.
Job tapeDiagonal(const Job& job, Id from, Id to, std::optional<double> measured);

// ---- walls and corners ------------------------------------------------------------------------------------------
// A corner never comes onto the other end of its wall: at least 1/16 of the wall stays, or the job stays as it is.
Job moveCorner(const Job& job, Id corner, Point2 to);
Job replaceWall(const Job& job, WallLine wall);
// A closed outline of walls, counterclockwise, each like `like` without its pieces; marks go on from the last used
// letter. Error: fewer than three points, a side of no length, or an outline that crosses itself.
Result<Job> addOutline(const Job& job, std::span<const Point2> corners, const WallLine& like);

// ---- job --------------------------------------------------------------------------------------------------------
Job setTitle(const Job& job, TitleBlock title);
Job setUnits(const Job& job, LengthStyle units);
Job setLimits(const Job& job, JobLimits limits);
Job setTypes(const Job& job, HardwareTypes types);
// A job without walls, with sample hardware types for the shelf (invented, and saying so in their notes).
Job newJob();

} // namespace sillwright
