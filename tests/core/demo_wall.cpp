#include "demo_wall.h"

#include <string>

namespace sillwright::test {

namespace {

HardwareTypes demoTypes(Job& job) {
  HardwareTypes types;
  StrapType strap;
  strap.id = takeId(job);
  strap.name = "Strap 2 1/2 x 36";
  strap.plateWidth = 2.5;
  strap.plateThickness = 0.105;
  strap.profile = {{0.05, 0}, {0.5, -2}, {3.75, -12}, {5.5, -14}, {5.5, -12.5}};
  strap.exposedLength = 22;
  strap.nails = {{-0.5, 0.5}, 5, 1, 16, true, "10d common", 0.148, 3};
  strap.note = "invented sample hardware";
  types.straps.push_back(strap);
  BoltType bolt;
  bolt.id = takeId(job);
  bolt.name = "J-bolt 5/8 x 12";
  bolt.diameter = 0.625;
  bolt.length = 12;
  bolt.threadLength = 5;
  bolt.threadsPerInch = 11;
  bolt.end = BoltEnd::J;
  bolt.hookLeg = 2.5;
  types.bolts.push_back(bolt);
  WasherType washer;
  washer.id = takeId(job);
  washer.name = "3 x 3 washer";
  types.washers.push_back(washer);
  return types;
}

void addBars(Job& job, WallLine& wall) {
  const double found[] = {4.25, 24.125, 40.25};
  const double foundRight[] = {245.375, 264.25, 283.125};
  for (int k = 0; k < 18; ++k) {
    const double s = 8 + 16 * k;
    const double top = s > 48 && s < 240 ? -10 : -2;
    Bar bar;
    bar.id = takeId(job);
    bar.mark = std::string("V").append(std::to_string(k + 1));
    bar.planned = {{s, 4, -28.5}, {s, 4, top}};
    if (k < 3 || k > 14) {
      const double at = k < 3 ? found[k] : foundRight[k - 15];
      bar.found = BarPlace{{at, 4, -28.5}, {at, 4, top}};
    }
    wall.bars.push_back(bar);
  }
  const struct {
    double z, from, to;
  } along[] = {{-4, 2, 46}, {-4, 242, 286}, {-17, 2, 286}, {-28.5, 2, 286}};
  int number = 1;
  for (const auto& each : along) {
    Bar bar;
    bar.id = takeId(job);
    bar.mark = std::string("H").append(std::to_string(number++));
    bar.run = BarRun::Along;
    bar.planned = {{each.from, 4.5, each.z}, {each.to, 4.5, each.z}};
    wall.bars.push_back(bar);
  }
}

void addFraming(Job& job, WallLine& wall) {
  wall.studs = StudLayout{};
  const struct {
    const char* mark;
    double station;
    MakeUp makeUp;
    ColumnRole role;
  } columns[] = {{"C1", 2.75, {1, {6, 6}}, ColumnRole::Post},    {"C2", 45, {2, {2, 6}}, ColumnRole::King},
                 {"T2", 47.25, {1, {2, 6}}, ColumnRole::Trimmer}, {"T3", 240.75, {1, {2, 6}}, ColumnRole::Trimmer},
                 {"C3", 243, {2, {2, 6}}, ColumnRole::King},     {"C4", 285.25, {1, {6, 6}}, ColumnRole::Post}};
  for (const auto& each : columns) {
    Column column;
    column.id = takeId(job);
    column.mark = each.mark;
    column.station = each.station;
    column.makeUp = each.makeUp;
    column.role = each.role;
    wall.columns.push_back(column);
  }
  Opening opening;
  opening.id = takeId(job);
  opening.mark = "O1";
  opening.kind = OpeningKind::GarageDoor;
  opening.from = 48;
  opening.to = 240;
  opening.headHeight = 83.75;
  wall.openings.push_back(opening);
  for (const double from : {0.0, 240.0}) {
    Panel panel;
    panel.id = takeId(job);
    panel.mark = from == 0 ? "P1" : "P2";
    panel.from = from;
    panel.to = from + 48;
    panel.unitShear = 520;
    wall.panels.push_back(panel);
    Sill sill;
    sill.id = takeId(job);
    sill.mark = from == 0 ? "L1" : "L2";
    sill.from = from;
    sill.to = from + 48;
    sill.nominal = {3, 6};
    wall.sills.push_back(sill);
  }
}

void addHardware(Job& job, WallLine& wall, const HardwareTypes& types) {
  const double straps[] = {1.625, 44.5, 242.875, 285.25};
  const double bolts[] = {7.75, 20, 38, 250, 268, 280.25};
  const std::size_t columns[] = {0, 1, 4, 5};
  for (std::size_t i = 0; i < 4; ++i) {
    Strap strap;
    strap.id = takeId(job);
    strap.mark = std::string("S").append(std::to_string(i + 1));
    strap.type = types.straps[0].id;
    strap.station = straps[i];
    strap.column = wall.columns[columns[i]].id;
    wall.straps.push_back(strap);
  }
  for (std::size_t i = 0; i < 6; ++i) {
    Bolt bolt;
    bolt.id = takeId(job);
    bolt.mark = std::string("B").append(std::to_string(i + 1));
    bolt.type = types.bolts[0].id;
    bolt.station = bolts[i];
    bolt.depth = 2.4375;
    bolt.projection = 4;
    bolt.washer = types.washers[0].id;
    wall.bolts.push_back(bolt);
  }
}

Finding finding(const WallLine& wall, RuleId rule, Level level, std::vector<Id> pieces, Box3 region) {
  Finding made;
  made.rule = rule;
  made.level = level;
  made.wall = wall.id;
  made.pieces = std::move(pieces);
  made.region = region;
  return made;
}

} // namespace

Job demoJob() {
  Job job;
  job.title.job = "Boat shed, Heron Slip";
  job.title.note = "sample job, invented";
  const HardwareTypes types = demoTypes(job);
  job.types = types;
  const Corner from{takeId(job), {0, 0}, ""};
  const Corner to{takeId(job), {288, 0}, ""};
  job.corners = std::vector<Corner>{from, to};
  WallLine wall;
  wall.id = takeId(job);
  wall.mark = "A";
  wall.title = "front";
  wall.startCorner = from.id;
  wall.endCorner = to.id;
  wall.footing = {16, 8, 4};
  wall.formTop = 1.5;
  wall.sillInset = 0.5;
  PourStep step;
  step.id = takeId(job);
  step.mark = "D1";
  step.from = 48;
  step.to = 240;
  step.height = -8;
  wall.steps.push_back(step);
  addFraming(job, wall);
  addHardware(job, wall, types);
  addBars(job, wall);
  job.walls.add(wall);
  return job;
}

std::shared_ptr<const CheckedWall> demoWall(const Job& job) {
  auto checked = std::make_shared<CheckedWall>();
  checked->layout = layOut(job, job.walls.pointer(0));
  const WallLine& wall = *checked->layout.wall;
  Finding edge = finding(wall, RuleId::StrapEdge, Level::Fix, {wall.straps[0].id}, {{0, 0.375}, {0, 6}, {-14, 0}});
  edge.measured = 0.375;
  edge.limit = 0.5;
  edge.correction = Correction{Correction::Field::Station, wall.straps[0].id, 0.125};
  checked->findings.push_back(edge);
  checked->findings.push_back(finding(wall, RuleId::StrapSeam, Level::Ask, {wall.straps[1].id},
                                      {{44.85, 45.15}, {0, 1}, {4.7, 20.5}}));
  Finding steel = finding(wall, RuleId::StrapSteel, Level::Watch, {wall.straps[3].id, wall.bars[17].id},
                          {{283.375, 284}, {3, 5}, {-13, -10}});
  steel.measured = 0.625;
  steel.limit = 1;
  checked->findings.push_back(steel);
  return checked;
}

LabelText demoWords(const Job&, const Finding& finding) {
  switch (finding.level) {
  case Level::Fix:
    return {Level::Fix, "FIX", "S1 · EDGE 3/8\" < 1/2\"", "move it right 1/8\""};
  case Level::Ask:
    return {Level::Ask, "ASK", "S2 · 8 NAILS ON THE SEAM", "right 1/2\" clears it"};
  case Level::Watch:
    break;
  }
  return {Level::Watch, "WATCH", "S4 · BAR V18 · 5/8\" < 1\"", "left of the strap, 10\" to 13\" down"};
}

} // namespace sillwright::test
