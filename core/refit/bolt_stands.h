// The bolts that a sill piece may have: makes, depths, and each as a body to measure with.
#pragma once

#include "core/refit/wall_problem.h"

namespace sillwright {

// A bolt of a wall as it counts for the problem, and where it is counted from.
struct BoltBefore {
  Id id;
  std::size_t make = 0;
  double station = 0;
  double depth = 0;
  bool isFixed = false;
};

struct SillToLay {
  std::size_t piece = 0; // index into the layout's
  sequence::Stretch marks;
  std::vector<BoltBefore> bolts;   // left to right
  std::vector<std::size_t> stands; // depth options it may have
};

struct BoltsToLay {
  std::vector<SillToLay> sills;
  std::vector<AnchorBody> bodies; // by depth option, over a sill piece that has it; they point into the makes
};

bool sameMake(const Bolt& a, const Bolt& b);

// Fills makes and stands of the problem. Problem: sills lie over each other, or there is no bolt to go by.
Result<BoltsToLay> boltsToLay(Translation& t);

// Takes bolts as they stand and files them as sill pieces, gaps, and what they have to do with everything else.
void addSillPieces(Translation& t, const BoltsToLay& lay);
void addLeastGaps(Translation& t, const BoltsToLay& lay);
void addBesides(Translation& t, const BoltsToLay& lay);

} // namespace sillwright
