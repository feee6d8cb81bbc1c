// The layout in order as a mixed-integer programme that any general solver can read and check.
//
// Variables (piece and bolt numbers from 0; all stations in marks):
//   x_P          station of the anchored piece P
//   y_S_K        station of bolt K of sill piece S from the left end of that sill piece; 0 where there is no such bolt
//   u_S_K        1: there is a bolt K in sill piece S. Bolts are numbered from left to right, without holes
//   f_…          1: the piece, bolt or difference lies in that free run of marks; every run has one number of asks and
//                watches, so the cost of a run is a constant
//   m_S_K_J      1: bolt K is the reference bolt J of that sill piece
//   v_…, z_…     movement, and 1: a set piece moves
//   ask pieces set_moved watch movement   the levels of preference
// All binaries are at 0 or 1; then what is left are differences of stations with whole limits, so stations come out
// whole by themselves.
//
// The levels are an order, not a sum: a solver checks them one after another. For each level, first to last, ask for
// the programme that minimises it with all levels before held at the values found.
#pragma once

#include <string>

#include "core/refit/sequence.h"

namespace sillwright::sequence {

enum class CostLevel : std::uint8_t { Ask, Pieces, SetMoved, Watch, Movement };

struct LpQuestion {
  CostLevel minimise = CostLevel::Movement;
  Cost earlier = {};               // levels before it are held at most at these
  std::vector<int> boltSlots = {}; // by sill piece: most bolts it may have
};

// How many bolts a sill piece need be allowed for the programme to have the same optimum, by sill piece.
// Where a layout without asks is known, none that is better or as good has more bolts in a sill piece than its
// reference and the bolts added and removed in the known one. Otherwise so many as fit at the least gaps.
std::vector<int> boltSlots(const Problem& problem, const std::optional<Cost>& known);

// How many bolts a sill piece need be allowed for the programme to have any layout where the problem has one: of three
// bolts in a row the middle one can be left out, unless the outer two would then be too far apart for the smallest most
// gap; so no two gaps in a row need together be smaller than that. Needs least gaps of which none is larger than two
// others in a row (as many as fit otherwise) and counts bolts that must stay.
std::vector<int> boltSlotsToLayAtAll(const Problem& problem);

std::string lpModel(const Problem& problem, const LpQuestion& question);

} // namespace sillwright::sequence
