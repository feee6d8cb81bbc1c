// A cut across the wall through one piece, looking left: outside on the left, inside on the right.
#pragma once

#include "core/drawing/view.h"
#include "core/rules/checker.h"

namespace sillwright {

struct SectionInput {
  const Job* job = nullptr;
  const CheckedWall* wall = nullptr;
  double station = 0; // where it is cut
  Id piece;           // the strap, bolt or rod it is about; may be empty
  SectionView view;
  Medium medium = Medium::Screen;
  Bounds window;
  bool title = true;  // the line that says what is cut
  bool labels = true; // of the flags
};

Drawing drawSection(const SectionInput& input);
// The heights that a cut through a piece has to show.
Interval heightsOfCut(const CheckedWall& wall, Id piece);
SectionView fitSection(const CheckedWall& wall, Id piece, const Bounds& window);

} // namespace sillwright
