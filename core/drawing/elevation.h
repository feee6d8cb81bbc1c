// The elevation of one wall as a display list.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/drawing/close_look.h"
#include "core/drawing/in_hand.h"
#include "core/drawing/label_placement.h"
#include "core/drawing/shown_proposal.h"
#include "core/drawing/view.h"
#include "core/rules/checker.h"

namespace sillwright {

struct ElevationInput {
  const Job* job = nullptr;            // for marks and words
  const CheckedWall* wall = nullptr;
  ElevationView view;
  Medium medium = Medium::Screen;
  Bounds window;                       // page; nothing is drawn outside, labels stay inside
  Interval stations{-1e9, 1e9};        // paper: only this stretch, with break lines at its ends
  Selection selection;
  const InHand* inHand = nullptr;
  const ShownProposal* proposal = nullptr; // screen only
  bool runningDimensions = true;
  bool labels = true;
  // What a flag's label says (drawing/flag_words); flags have no labels without it.
  std::function<LabelText(const Job&, const Finding&)> words;
  std::vector<PlacedLabel> lastLabels; // where they were in the frame before, so that they stay while they may
  std::optional<CloseLook> lastLook;   // the same
  bool magnified = false;              // this is what a close look shows: a deeper tape, and no look of its own
};

struct ElevationDrawing {
  Drawing drawing;                 // hit areas of pieces, taken boxes of texts
  std::vector<PlacedLabel> labels;
  std::vector<std::string> bars;   // "V3 · 3'-4 1/4\"" of bars whose row of running dimensions found no room on paper
  std::vector<std::string> listed; // labels that found no place: numbered in the drawing, said beside it
  std::optional<CloseLook> look;   // where one is open
};

ElevationDrawing drawElevation(const ElevationInput& input);

// Which finding a label is of: the key of its request.
std::string flagKey(const Finding& finding);

// A view that fits the whole wall, dimensions and margins into a window; heights above `upTo` (in) need not be seen.
// With folds one row of running dimensions is enough.
ElevationView fitElevation(const WallLayout& layout, const Bounds& window, bool fromInside, double upTo,
                           std::vector<Interval> folds = {});

// What of an opening can be folded away, a foot within its sides: nothing where it is narrow, or where something is set
// there, found there, or selected. Upright bars, studs and what goes on past both ends fold with it.
std::optional<Interval> foldOf(const CheckedWall& wall, const Opening& opening, const Selection& selection = {});
// Where a fold is on the page, from zigzag to zigzag; empty where it is not in the window.
Bounds foldBox(const ElevationView& view, const WallLayout& layout, const Bounds& window, Interval fold);

} // namespace sillwright
