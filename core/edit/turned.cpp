#include "core/edit/turned.h"

#include <algorithm>
#include <utility>

namespace sillwright {

namespace {

class Turn {
public:
  Turn(double sum, const HardwareTypes& types) : sum_(sum), types_(types) {}

  void operator()(PourStep& step) const { ends(step.from, step.to); }
  void operator()(Opening& opening) const { ends(opening.from, opening.to); }
  void operator()(Column& column) const { station(column.station); }
  void operator()(Strap& strap) const { station(strap.station); }
  void operator()(Rod& rod) const { rod.side = other(rod.side); }
  void operator()(GradeShot& shot) const { station(shot.station); }

  void operator()(Sill& sill) const {
    ends(sill.from, sill.to);
    std::for_each(sill.splices.begin(), sill.splices.end(), [this](double& splice) { station(splice); });
    std::reverse(sill.splices.begin(), sill.splices.end());
  }

  void operator()(Panel& panel) const {
    ends(panel.from, panel.to);
    std::swap(panel.leftMark, panel.rightMark);
  }

  void operator()(Bolt& bolt) const {
    station(bolt.station);
    if (bolt.hook == HookDirection::Left)
      bolt.hook = HookDirection::Right;
    else if (bolt.hook == HookDirection::Right)
      bolt.hook = HookDirection::Left;
    const WasherType* washer = findWasherType(types_, bolt.washer);
    if (washer && washer->slot && washer->slot->direction == SlotDirection::Along)
      bolt.washerShift = -bolt.washerShift;
  }

  void operator()(Bar& bar) const {
    place(bar.run, bar.planned);
    if (bar.found)
      place(bar.run, *bar.found);
  }

private:
  void station(double& s) const { s = sum_ - s; }
  void ends(double& from, double& to) const {
    station(from);
    station(to);
    std::swap(from, to);
  }
  // One that runs along still goes from left to right; an upright one still from below to above, leaning the other way.
  void place(BarRun run, BarPlace& at) const {
    station(at.a.s);
    station(at.b.s);
    if (run == BarRun::Along)
      std::swap(at.a, at.b);
  }

  double sum_;
  const HardwareTypes& types_;
};

} // namespace

Piece turned(const Piece& piece, double sum, const HardwareTypes& types) {
  Piece image = piece;
  std::visit([&](auto& item) { Turn{sum, types}(item); }, image);
  return image;
}

} // namespace sillwright
