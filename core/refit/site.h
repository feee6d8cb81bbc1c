// What all pieces of a wall have in common when their slots are made. Inches.
#pragma once

#include <optional>
#include <vector>

#include "core/refit/slots.h"

namespace sillwright {

// A stretch over which the pour line is level and one piece of sill, or none, lies on it.
struct Ground {
  Interval s;
  double pour = 0;
  std::optional<std::size_t> sill; // index into the layout's
};

struct Site {
  const WallLayout& layout;
  const ResolvedLimits& limits;
  Interval whole;              // 0 … length
  std::vector<Ground> grounds; // left to right, without gaps
};

Site siteOf(const WallLayout& layout, const ResolvedLimits& limits);

// Where the concrete of the wall ends, steps, or a neighbour's comes and goes: what is near to none of them finds the
// same concrete around it everywhere.
std::vector<Interval> concreteEnds(const WallLayout& layout);

// Collects what blocks one piece, as far as its rule counts as FIX in this job.
class Blocks {
public:
  explicit Blocks(const Site& site) : site_(site) { found_.reserve(128); }

  // All strictly between two stations; clipped to the wall. Nothing where that is empty.
  void open(RuleId rule, Interval stations, Id by = {});
  // With its ends: a hair more is blocked.
  void closed(RuleId rule, Interval stations, Id by = {});
  // Everything but a closed stretch; everything where that is empty. Within the bounds.
  void allBut(RuleId rule, Interval stations, Interval bounds, Id by = {});

  // What is still free of a stretch.
  std::vector<Interval> freeOf(Interval stretch) const;

  std::vector<Blocked> take() { return std::move(found_); }

private:
  const Site& site_;
  std::vector<Blocked> found_;
};

// Each files what blocks a piece of its kind.
void blockBolt(const Site& site, const AnchorBody& bolt, Blocks& blocks);
// The same but for what the bolts of its sill piece have to do together.
void blockBoltByItself(const Site& site, const AnchorBody& bolt, Blocks& blocks);
void blockStrap(const Site& site, const StrapBody& strap, Blocks& blocks);
// A strap that holds a panel end stays there.
void blockByPanelEnds(const Site& site, const StrapBody& strap, Blocks& blocks);
void blockBar(const Site& site, const BarBody& bar, Blocks& blocks);
void blockRod(const Site& site, const AnchorBody& rod, Blocks& blocks);
// Within its leeway.
void blockColumn(const Site& site, const Column& column, Blocks& blocks);
// The bolts of the sill pieces together: how many, how far from the ends and from each other.
void blockByTheOtherBolts(const Site& site, const AnchorBody& bolt, Blocks& blocks);

} // namespace sillwright
