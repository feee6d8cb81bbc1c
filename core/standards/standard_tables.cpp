#include "core/standards/standard_tables.h"

#include <array>
#include <charconv>
#include <cmath>

#include "core/base/length.h"
#include "core/standards/bar_ends.h"
#include "core/standards/bars.h"
#include "core/standards/bolt_value.h"
#include "core/standards/cast_in_anchors.h"
#include "core/standards/cover.h"
#include "core/standards/fasteners.h"
#include "core/standards/form_pressure.h"
#include "core/standards/lumber.h"
#include "core/standards/set_out.h"
#include "core/standards/shear_panels.h"
#include "core/standards/sill_bolts.h"
#include "core/standards/species.h"
#include "core/standards/washers.h"

namespace sillwright {

namespace {

using Cells = std::vector<std::string>;

std::string number(double value) {
  std::array<char, 32> text{};
  const auto end = std::to_chars(text.data(), text.data() + text.size(), value).ptr;
  return {text.data(), end};
}

// Sizes as the trade says them: 1/2, 7 1/4; as a decimal where they are no whole sixteenths.
std::string size(double value) {
  if (roundTo(value, 1.0 / 16) != value)
    return number(value);
  std::string text = inches(value);
  text.pop_back(); // the inch mark: the unit is in the title of the column
  return text;
}

std::string rounded(double value) {
  return number(std::round(value));
}

std::string barName(int numberOfEighths) {
  return "No. " + std::to_string(numberOfEighths);
}

std::string barRange(int smallest, int largest) {
  return barName(smallest) + " to " + std::to_string(largest);
}

StandardTable lumberTable() {
  StandardTable table{"Dressed lumber", lumberSource, {"nominal", "dressed, in"}, {}};
  for (const int nominal : nominalSizes())
    table.rows.push_back({Cells{number(nominal), size(dressed(nominal).value_or(0))}, lumberSource});
  return table;
}

StandardTable gravityTable() {
  StandardTable table{"Species", speciesSource, {"species", "specific gravity"}, {}};
  for (const Species& species : speciesTable())
    table.rows.push_back({Cells{std::string(species.name), number(species.specificGravity)}, speciesSource});
  return table;
}

StandardTable bearingTable() {
  StandardTable table{
      "Dowel bearing strength", dowelBearingSource, {"material", "dowel, in", "along, psi", "across, psi"}, {}};
  for (const Species& species : speciesTable())
    for (const BoltHardware& bolt : boltHardwareTable())
      table.rows.push_back({Cells{std::string(species.name), size(bolt.diameter),
                                  number(bearingAlong(species.specificGravity, bolt.diameter)),
                                  number(bearingAcross(species.specificGravity, bolt.diameter))},
                            dowelBearingSource});
  const std::string concrete = number(concreteBearing.value);
  table.rows.push_back({Cells{std::string(concreteBearing.name), "all", concrete, concrete}, concreteBearing.source});
  return table;
}

// In the concrete, as in NDS Table 12E; deeper bolts carry the same wherever III_s or IV governs.
constexpr double embedment = 6;

StandardRow boltValueRow(const BoltHardware& bolt, int nominal, const Species& species) {
  const auto along = sillBoltValue(bolt.diameter, dressed(nominal).value_or(0), species, embedment);
  const auto across = sillBoltValue(bolt.diameter, dressed(nominal).value_or(0), species, embedment, 90);
  Cells cells{size(bolt.diameter), std::to_string(nominal) + "x", std::string(species.name)};
  for (const auto& value : {along, across}) {
    cells.push_back(value ? rounded(value->reference()) : std::string());
    cells.emplace_back(value ? yieldModeNames[static_cast<std::size_t>(value->governing)] : "");
  }
  return {std::move(cells), boltValueSource};
}

StandardTable boltValueTable() {
  StandardTable table{"One bolt through a sill, " + number(embedment) + " in into concrete, by the six yield modes",
                      boltValueSource,
                      {"bolt, in", "sill", "species", "along, lb", "mode", "across, lb", "mode"},
                      {}};
  for (const BoltHardware& bolt : boltHardwareTable())
    for (const int nominal : {2, 3})
      for (const Species& species : speciesTable())
        table.rows.push_back(boltValueRow(bolt, nominal, species));
  return table;
}

StandardTable barTable() {
  StandardTable table{"Reinforcing bars", barSource, {"bar", "diameter, in", "weight, lb/ft"}, {}};
  for (const BarSize& bar : barSizes())
    table.rows.push_back({Cells{barName(bar.number), number(bar.diameter), number(bar.weight)}, barSource});
  return table;
}

StandardTable hookTable() {
  StandardTable table{
      "Standard 90° hooks", hookSource, {"bar", "inside bend diameter, in", "straight extension, in"}, {}};
  for (const BarSize& bar : barSizes())
    if (const auto hook = standardHook(bar.number))
      table.rows.push_back(
          {Cells{barName(bar.number), size(hook->insideBendDiameter), size(hook->extension)}, hookSource});
  return table;
}

StandardTable lapTable() {
  StandardTable table{"Laps in foundation walls", lapSource, {"bar", "lap, in"}, {}};
  for (const BarLap& lap : barLaps())
    table.rows.push_back({Cells{barName(lap.number), number(lap.length)}, lapSource});
  return table;
}

StandardTable coverRows() {
  StandardTable table{"Concrete cover", coverSource, {"concrete", "bars", "cover, in"}, {}};
  for (const CoverRow& row : coverTable())
    table.rows.push_back(
        {Cells{std::string(row.name), barRange(row.smallest, row.largest), size(row.cover)}, coverSource});
  return table;
}

StandardTable nutTable() {
  StandardTable table{"Hex nuts", nutSource, {"bolt, in", "thickness at most, in", "thickness at least, in"}, {}};
  for (const BoltHardware& row : boltHardwareTable())
    table.rows.push_back(
        {Cells{size(row.diameter), number(row.nutThickness), number(row.nutThicknessLeast)}, nutSource});
  return table;
}

StandardTable nutWidthTable() {
  StandardTable table{"Hex nuts, width", nutAcrossFlatsSource, {"bolt, in", "across flats, in"}, {}};
  for (const BoltHardware& row : boltHardwareTable())
    table.rows.push_back({Cells{size(row.diameter), number(row.nutAcrossFlats)}, nutAcrossFlatsSource});
  return table;
}

StandardTable cutWasherTable() {
  StandardTable table{
      "Cut washers, type A wide", cutWasherSource, {"bolt, in", "thickness at most, in", "outside diameter, in"}, {}};
  for (const BoltHardware& row : boltHardwareTable())
    if (row.cutWasherThickness > 0)
      table.rows.push_back(
          {Cells{size(row.diameter), number(row.cutWasherThickness), number(row.cutWasherOutsideDiameter)},
           cutWasherSource});
  return table;
}

StandardTable threadTable() {
  StandardTable table{"Threads, UNC", {threadDocument, Status::Published}, {"bolt, in", "threads per inch"}, {}};
  for (const BoltHardware& row : boltHardwareTable())
    table.rows.push_back({Cells{size(row.diameter), number(row.threadsPerInch)}, {threadDocument, row.threads}});
  return table;
}

StandardTable nailTable() {
  StandardTable table{"Common nails", {nailDocument, Status::Published}, {"nail", "diameter, in", "length, in"}, {}};
  for (const NailSize& nail : commonNails())
    table.rows.push_back(
        {Cells{std::string(nail.name), number(nail.diameter), number(nail.length)}, {nailDocument, nail.status}});
  return table;
}

StandardTable numbersTable(std::string title, Source source, std::span<const NamedNumber> numbers) {
  StandardTable table{std::move(title), source, {"what", "value", "unit"}, {}};
  for (const NamedNumber& row : numbers)
    table.rows.push_back(
        {Cells{std::string(row.name), row.unit == "in" ? size(row.value) : number(row.value), std::string(row.unit)},
         row.source});
  return table;
}

StandardTable plateWasherTable() {
  constexpr std::array numbers{plateWasherThickness, plateWasherSide, washerSlotOverBolt, washerSlotLength};
  return numbersTable("Plate washers on sills", plateWasherSource, numbers);
}

StandardTable sillBoltTable() {
  constexpr std::array numbers{boltsInPiece, oneBoltWall, noBoltWall,      boltEndFar,
                               boltEndNear,  boltSpacing, boltSpacingTall, boltEmbedment};
  return numbersTable("Anchor bolts through sills", sillBoltSource, numbers);
}

StandardTable castInAnchorTable() {
  constexpr std::array numbers{anchorSpacing, torquedSpacing, torquedEdge, hookLegLeast, hookLegMost};
  return numbersTable("Anchors cast into concrete", anchorSpacingSource, numbers);
}

StandardTable shearPanelTable() {
  constexpr std::array numbers{slenderFull, slenderMost, washerEdge, washerEdgeOver};
  return numbersTable("Shear panels", slenderPanelSource, numbers);
}

StandardTable nailDepthTable() {
  constexpr std::array numbers{nailDepthLeast, nailDepthFull, nailEdge};
  return numbersTable("Nails in wood", nailDepthSource, numbers);
}

StandardTable foundationBarTable() {
  constexpr std::array numbers{barClearance, topBarWithin, openingBarWithin};
  return numbersTable("Bars in foundations", topBarSource, numbers);
}

StandardTable boltStrengthTable() {
  constexpr std::array numbers{boltBendingYield, windOrSeismicDuration};
  return numbersTable("Bolts in wood", boltValueSource, numbers);
}

StandardTable formPressureTable() {
  constexpr std::array numbers{normalConcrete, slowRateBelow,     slowHeightMost,
                               fastRateMost,   formPressureLeast, usualCoefficient};
  return numbersTable("Pressure of fresh concrete on wall forms", formPressureSource, numbers);
}

std::vector<StandardTable> allTables() {
  return {lumberTable(),       gravityTable(),
          bearingTable(),      sillBoltTable(),
          castInAnchorTable(), shearPanelTable(),
          boltStrengthTable(), boltValueTable(),
          barTable(),          foundationBarTable(),
          hookTable(),         lapTable(),
          coverRows(),         nutTable(),
          nutWidthTable(),     cutWasherTable(),
          plateWasherTable(),  threadTable(),
          nailTable(),         nailDepthTable(),
          formPressureTable(), numbersTable("Setting out", concreteWorkSource, setOutTolerances())};
}

} // namespace

std::span<const StandardTable> standardTables() {
  static const std::vector<StandardTable> tables = allTables();
  return tables;
}

} // namespace sillwright
