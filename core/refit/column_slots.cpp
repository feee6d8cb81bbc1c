// Where a column may shift within its leeway, with the straps and rods that hang on it. Studs come and go with it and
// the pieces of sill under it change, so that each stretch between two stations where anything can change is tried in
// whole.
#include <algorithm>
#include <map>
#include <tuple>

#include "core/base/tolerance.h"
#include "core/refit/site.h"
#include "core/rules/panel_ends.h"
#include "core/rules/proof.h"
#include "core/standards/fasteners.h"

namespace sillwright {

namespace {

using Matter = std::tuple<RuleId, std::uint8_t, std::vector<Id>>;

class ColumnBlocks {
public:
  ColumnBlocks(const Site& site, const Column& column, Blocks& blocks)
      : site_(site), layout_(site.layout), column_(column), blocks_(blocks),
        frame_(grown(around(column.station, 0), column.leeway)), before_(countOf(layout_)) {
    mine_.push_back(column.id);
    for (const Strap& strap : layout_.wall->straps)
      if (strap.column == column.id)
        mine_.push_back(strap.id);
    for (const Rod& rod : layout_.wall->rods)
      if (rod.column == column.id)
        mine_.push_back(rod.id);
  }

  void all() {
    std::vector<double> stations = changes();
    for (std::size_t i = 0; i < stations.size(); ++i) {
      if (const auto rule = against(stations[i]))
        blocks_.open(*rule, grown(around(stations[i], 0), tolerance::rounding));
      if (i + 1 == stations.size())
        break;
      if (const auto rule = against((stations[i] + stations[i + 1]) / 2))
        blocks_.open(*rule, {stations[i], stations[i + 1]});
    }
  }

private:
  // ---- trying
  std::map<Matter, int> countOf(const WallLayout& layout) const {
    std::map<Matter, int> fixes;
    for (const Draft& draft : draftsOf(layout, site_.limits))
      if (draft.finding.level == Level::Fix && isOfPosition(draft.finding.rule))
        ++fixes[{draft.finding.rule, draft.finding.variant, draft.finding.pieces}];
    return fixes;
  }

  std::optional<RuleId> against(double station) const {
    auto wall = std::make_shared<WallLine>(*layout_.wall);
    findIn(wall->columns, column_.id)->station = station;
    for (Strap& strap : wall->straps)
      if (strap.column == column_.id)
        strap.station += station - column_.station;
    const WallLayout there = layOut(std::move(wall), layout_.types, layout_.limits, layout_.marks, layout_.place);
    for (const auto& [matter, count] : countOf(there)) {
      const auto& [rule, variant, pieces] = matter;
      const bool own = std::any_of(pieces.begin(), pieces.end(), [&](Id piece) {
        return std::find(mine_.begin(), mine_.end(), piece) != mine_.end();
      });
      const auto was = before_.find(matter);
      if (own || was == before_.end() || was->second < count)
        return rule;
    }
    return std::nullopt;
  }

  // ---- where anything can change
  void change(double station) {
    if (station > frame_.from && station < frame_.to)
      changes_.push_back(station);
  }
  void faceAt(double station) { // a face of the column there
    const double half = alongWall(column_.makeUp) / 2;
    change(station - half);
    change(station + half);
  }
  void facesAt(Interval stations) {
    faceAt(stations.from);
    faceAt(stations.to);
  }
  void riderAt(Interval stations, double now) { // one that hangs on it there
    change(stations.from - now + column_.station);
    change(stations.to - now + column_.station);
  }

  std::vector<double> changes() {
    changes_ = {frame_.from, frame_.to};
    wood();
    anchors();
    riders();
    std::sort(changes_.begin(), changes_.end());
    changes_.erase(
        std::unique(changes_.begin(), changes_.end(), [](double a, double b) { return b - a < tolerance::rounding; }),
        changes_.end());
    return changes_;
  }

  void wood() {
    const double onSill = site_.limits[LimitKey::ColumnOnSill];
    for (const SillPiece& piece : layout_.sills) {
      facesAt(piece.box.s);
      facesAt(grown(piece.box.s, onSill));
      for (const SillPiece& other : layout_.sills) // as much on the one as on the other
        change((piece.box.s.to + other.box.s.from) / 2);
    }
    for (const Ground& ground : site_.grounds)
      change(ground.s.to);
    for (const Opening& opening : layout_.wall->openings)
      for (const double reach : {0.0, 1.0, -1.0}) // a trimmer stands within an inch of its opening
        facesAt(grown({opening.from, opening.to}, reach));
    for (const ColumnBody& other : layout_.columns)
      if (other.id != column_.id)
        facesAt(other.box.s);
    for (const Panel& panel : layout_.wall->panels)
      for (const double end : {panel.from, panel.to})
        facesAt(grown(around(end, 0), endReach));
    for (const StudBody& stud : studsWithoutColumns())
      facesAt(stud.box.s);
  }

  std::vector<StudBody> studsWithoutColumns() const {
    auto wall = std::make_shared<WallLine>(*layout_.wall);
    wall->columns.clear();
    wall->rods.clear();
    return layOut(std::move(wall), layout_.types, layout_.limits, layout_.marks, layout_.place).studs;
  }

  void anchors() {
    for (const AnchorBody& anchor : layout_.anchors) {
      if (anchor.isRod)
        continue;
      if (const auto nut = boltHardware(anchor.diameter))
        facesAt(around(anchor.station, nut->nutAcrossFlats));
      facesAt(around(anchor.station, anchor.diameter));
      if (anchor.washerBox)
        facesAt(anchor.washerBox->s);
    }
  }

  void riders() {
    for (const StrapBody& strap : layout_.straps) {
      if (strap.strap->column != column_.id)
        continue;
      StrapBody loose = strap; // its nails go with the column
      loose.nails.clear();
      Blocks blocks(site_);
      blockStrap(site_, loose, blocks);
      blockByPanelEnds(site_, loose, blocks);
      riderStretches(blocks.take(), strap.strap->station);
    }
    for (const AnchorBody& rod : layout_.anchors) {
      if (!rod.isRod || rod.rod->column != column_.id)
        continue;
      Blocks blocks(site_);
      blockRod(site_, rod, blocks);
      riderStretches(blocks.take(), rod.station);
    }
  }

  void riderStretches(const std::vector<Blocked>& blocked, double now) {
    for (const Blocked& each : blocked)
      riderAt(each.stations, now);
    for (const Ground& ground : site_.grounds)
      riderAt(ground.s, now);
    for (const Panel& panel : layout_.wall->panels) {
      riderAt({panel.from, panel.to}, now);
      riderAt({panel.from + endReach, panel.to - endReach}, now);
      riderAt(around((panel.from + panel.to) / 2, 0), now);
    }
  }

  const Site& site_;
  const WallLayout& layout_;
  const Column& column_;
  Blocks& blocks_;
  Interval frame_;
  std::map<Matter, int> before_;
  std::vector<Id> mine_;
  std::vector<double> changes_;
};

} // namespace

void blockColumn(const Site& site, const Column& column, Blocks& blocks) {
  ColumnBlocks(site, column, blocks).all();
}

} // namespace sillwright
