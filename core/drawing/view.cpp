#include "core/drawing/view.h"

#include <algorithm>

namespace sillwright {

double ElevationView::along(double s) const {
  double pt = s * scale;
  for (const Interval fold : folds)
    pt -= std::clamp(s - fold.from, 0.0, fold.length()) * (scale - foldGap / fold.length());
  return pt;
}

double ElevationView::stationAlong(double pt) const {
  double gone = 0; // pt that the folds before it take away
  for (const Interval fold : folds) {
    const double start = fold.from * scale - gone;
    if (pt <= start)
      break;
    if (pt < start + foldGap)
      return fold.from + (pt - start) * fold.length() / foldGap;
    gone += fold.length() * scale - foldGap;
  }
  return (pt + gone) / scale;
}

bool ElevationView::hides(Interval stretch) const {
  return std::any_of(folds.begin(), folds.end(),
                     [&](Interval fold) { return stretch.from > fold.from && stretch.to < fold.to; });
}

double ElevationView::shown(double s) const {
  for (const Interval fold : folds)
    if (s > fold.from && s < fold.to)
      return s < fold.middle() ? fold.from : fold.to;
  return s;
}

std::vector<Interval> ElevationView::shownParts(Interval stretch) const {
  std::vector<Interval> parts;
  for (const Interval fold : folds) {
    if (fold.to <= stretch.from || fold.from >= stretch.to)
      continue;
    if (fold.from > stretch.from)
      parts.push_back({stretch.from, fold.from});
    stretch.from = fold.to;
  }
  if (stretch.to >= stretch.from)
    parts.push_back(stretch);
  return parts;
}

} // namespace sillwright
