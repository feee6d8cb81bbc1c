#include "core/gesture/snap.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/rules/panel_ends.h"

namespace sillwright {

namespace {

// The nearest of the places offered, within reach; of equally near ones the first.
class Nearest {
public:
  Nearest(double value, double reach) : value_(value), best_(reach + tolerance::same) {}

  void offer(double place, SnapReason reason, Id to = {}) {
    const double off = std::abs(place - value_);
    if (off < best_ - tolerance::same) {
      best_ = off;
      found_ = {place, reason, to};
    }
  }
  Snapped result() const {
    if (found_.reason != SnapReason::None)
      return found_;
    return {roundTo(value_, tolerance::tapeMark), SnapReason::TapeMark, {}};
  }

private:
  double value_;
  double best_;
  Snapped found_;
};

void offerMiddles(Nearest& nearest, std::vector<double> stations, SnapReason reason) {
  std::sort(stations.begin(), stations.end());
  for (std::size_t i = 0; i + 1 < stations.size(); ++i)
    nearest.offer((stations[i] + stations[i + 1]) / 2, reason);
}

void offerBoltMiddles(Nearest& nearest, const WallLayout& layout) {
  std::vector<double> bars;
  for (const BarBody& bar : layout.bars)
    if (bar.bar->run == BarRun::Upright)
      bars.push_back(bar.body.a.s);
  std::vector<double> studs;
  for (const StudBody& stud : layout.studs)
    studs.push_back(stud.box.s.middle());
  offerMiddles(nearest, std::move(bars), SnapReason::BarMiddle);
  offerMiddles(nearest, std::move(studs), SnapReason::StudMiddle);
}

// Faces that a stretch or a column may stand against. A piece never snaps to itself.
void offerFaces(Nearest& nearest, const WallLayout& layout, Id self, double shift) {
  nearest.offer(0 + shift, SnapReason::WallEnd);
  nearest.offer(layout.length + shift, SnapReason::WallEnd);
  for (const Opening& opening : layout.wall->openings)
    if (opening.id != self)
      for (const double edge : {opening.from, opening.to})
        nearest.offer(edge + shift, SnapReason::OpeningEdge, opening.id);
  for (const Panel& panel : layout.wall->panels)
    if (panel.id != self)
      for (const double edge : {panel.from, panel.to})
        nearest.offer(edge + shift, SnapReason::WallEnd, panel.id);
}

} // namespace

Snapped snapStation(const WallLayout& layout, const Piece& piece, double station, double reach) {
  Nearest nearest(station, reach);
  if (std::holds_alternative<Strap>(piece))
    for (const ColumnBody& column : layout.columns)
      nearest.offer(column.box.s.middle(), SnapReason::ColumnCentre, column.id);
  if (std::holds_alternative<Bolt>(piece))
    offerBoltMiddles(nearest, layout);
  if (const Column* column = std::get_if<Column>(&piece))
    for (const double half : {-alongWall(column->makeUp) / 2, alongWall(column->makeUp) / 2})
      offerFaces(nearest, layout, column->id, half);
  return nearest.result();
}

Snapped snapEnd(const WallLayout& layout, const Piece& piece, double station, double reach) {
  Nearest nearest(station, reach);
  offerFaces(nearest, layout, idOf(piece), 0);
  return nearest.result();
}

Snapped snapHeight(const WallLayout& layout, const Strap& strap, double offset, double reach) {
  Nearest nearest(offset, reach);
  nearest.offer(0, SnapReason::PourLine);
  for (const StrapPair& pair : strapPairs(layout))
    if (pair.left->id == strap.id || pair.right->id == strap.id) {
      const StrapBody& partner = pair.left->id == strap.id ? *pair.right : *pair.left;
      nearest.offer(partner.strap->heightOffset, SnapReason::PairHeight, partner.id);
    }
  return nearest.result();
}

} // namespace sillwright
