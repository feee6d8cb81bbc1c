// Where flag labels go: never over one another, a number, a mark, hardware or a flag, never off the drawing.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/drawing/hatch.h"

namespace sillwright {

struct LabelRequest {
  LabelText text;
  Bounds flag;          // box of the hatch on the page
  std::string key;      // the same finding has the same key in the next frame
  PieceRef piece;
};

struct Ground {
  Bounds box;
  double cost = 0; // extra cost of a label over it: 0 margin or opening, then field, stud, earth
};

struct PlacedLabel {
  LabelRequest request;
  LabelForm form = LabelForm::OneLine;
  Bounds box;
  std::vector<Point2> leader; // from the label to the flag; at most one bend
  double cost = 0;            // of this place, for comparing
  int number = 0;             // > 0: no place was found; the flag carries this number and a list says the rest
};

struct PlacementInput {
  Bounds window;
  std::vector<LabelRequest> requests; // any order; placed worst first, then left to right
  std::vector<Bounds> taken;          // nothing may touch these
  std::vector<Bounds> outlines;       // leaders may cross, at a cost
  std::vector<Ground> grounds;
  std::vector<PlacedLabel> last;
  double k = 1;
};

// Deterministic: equal input, equal places.
std::vector<PlacedLabel> placeLabels(const PlacementInput& input);
void drawPlacedLabels(Drawing& drawing, const std::vector<PlacedLabel>& labels, double k = 1);

} // namespace sillwright
