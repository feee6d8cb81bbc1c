#include "tests/support/sample_jobs.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "tests/support/outlined_job.h"

namespace sillwright::support {

namespace {

constexpr const char* sampleNote = "sample job, invented";

void butt(std::vector<WallPlan>& plans) {
  for (std::size_t i = 1; i < plans.size(); i += 2)
    plans[i].inAtStart = plans[i].inAtEnd = 6;
}

void setStation(WallLine& wall, const std::string& mark, double station) {
  for (Strap& strap : wall.straps)
    if (strap.mark == mark)
      strap.station = station;
  for (Bolt& bolt : wall.bolts)
    if (bolt.mark == mark)
      bolt.station = station;
}

void findBars(WallLine& wall, const std::map<std::string, double>& stations) {
  for (Bar& bar : wall.bars)
    if (const auto at = stations.find(bar.mark); at != stations.end()) {
      bar.found = bar.planned;
      bar.found->a.s = bar.found->b.s = at->second;
    }
}

// Three bolts in each pier and uprights 16 in apart, as the plan of this front has them.
void asPlanned(Job& job) {
  WallLine front = job.walls[0];
  std::erase_if(front.bars, [](const Bar& bar) { return bar.run == BarRun::Upright; });
  for (int i = 0; i < 18; ++i) {
    const double s = 8.0 + 16.0 * i;
    const double top = s < 48 || s > 240 ? -2.0 : -10.0;
    front.bars.push_back({takeId(job), "V" + std::to_string(i + 1), BarRun::Upright, 4, {{s, 4, -28.5}, {s, 4, top}},
                          std::nullopt, ""});
  }
  const double stations[] = {10.5, 20, 38, 250, 268, 277.5};
  const Bolt like = front.bolts.front();
  front.bolts.clear();
  for (int i = 0; i < 6; ++i) {
    Bolt bolt = like;
    bolt.id = takeId(job);
    bolt.mark = "B" + std::to_string(i + 1);
    bolt.station = stations[i];
    front.bolts.push_back(bolt);
  }
  // Later walls number their bolts and uprights after these.
  job.walls.replace(front);
}

} // namespace

Job boatShedFront() {
  Job job;
  job.title.job = "Boat shed, Heron Slip";
  job.title.address = "Heron Slip (invented)";
  job.title.by = "lead framer";
  job.title.planSet = "set of 2 March 2031";
  job.title.note = sampleNote;
  const Hardware hardware = addHardware(job);
  const std::vector<Point2> points{{0, 0}, {288, 0}, {288, 336}, {0, 336}};
  std::vector<WallPlan> plans(4);
  plans[0].openings = {door(OpeningKind::GarageDoor, 48, 240, 0, 83.75)};
  plans[0].steps = {step(48, 240, -8)};
  plans[0].panels = {{0, 48}, {240, 288}};
  plans[0].sill = {3, 6};
  plans[0].unitShear = 520;
  plans[1].openings = {door(OpeningKind::Door, 150, 186, 0, 82.5)};
  plans[2].openings = {door(OpeningKind::Window, 96, 192, 36, 80)};
  butt(plans);
  auto walls = outline(job, points, plainWall());
  build(job, points, std::move(walls), plans, {"front", "right side", "back", "left side"}, hardware);
  asPlanned(job);
  return job;
}

Job boatShedFrontSteelMoved() {
  Job job = boatShedFront();
  WallLine front = job.walls[0];
  findBars(front, {{"V1", 4.25}, {"V2", 24.125}, {"V3", 40.25}, {"V16", 245.375}, {"V17", 264.25}, {"V18", 283.125}});
  setStation(front, "S1", 1.625);
  setStation(front, "S2", 44.5);
  setStation(front, "S3", 242.875);
  job.walls.replace(front);
  job.title.note = "sample job, invented: the steel turned out to be elsewhere";
  return job;
}

Job boatShedFrontNoRoom() {
  Job job = boatShedFront();
  WallLine front = job.walls[0];
  const auto like = std::find_if(front.bars.begin(), front.bars.end(), [](const Bar& bar) { return bar.mark == "V1"; });
  Bar second = *like; // of the neighbour's, bent round the corner
  second.id = takeId(job);
  second.mark = "V19";
  front.bars.push_back(second);
  findBars(front, {{"V1", 2.25}, {"V19", 4.75}});
  job.walls.replace(front);
  job.title.note = "sample job, invented: the steel leaves the strap at the corner no place";
  return job;
}

Job ridgeHouse() {
  Job job;
  job.title.job = "Ridge house";
  job.title.address = "Upper Ridge Road (invented)";
  job.title.by = "lead framer";
  job.title.planSet = "set of 9 April 2031";
  job.title.note = sampleNote;
  const Hardware hardware = addHardware(job);
  const std::vector<Point2> points{{0, 0},     {288, 0},   {288, 72},  {432, 72},  {432, 24},
                                   {576, 24},  {576, 312}, {384, 312}, {384, 384}, {0, 384}};
  std::vector<WallPlan> plans(points.size());
  plans[0].openings = {door(OpeningKind::GarageDoor, 48, 240, 0, 84)};
  plans[0].steps = {step(48, 240, -8)};
  plans[0].panels = {{6, 48}, {240, 288}};
  plans[0].sill = {3, 6};
  plans[1].panels = {{6, 66}};
  plans[2].openings = {door(OpeningKind::Door, 54, 92, 0, 82.5)};
  plans[2].panels = {{0, 54}, {92, 144}};
  plans[4].openings = {door(OpeningKind::Window, 50, 94, 30, 80)};
  plans[4].panels = {{0, 50}, {94, 144}};
  plans[5].openings = {door(OpeningKind::Window, 84, 132, 36, 80), door(OpeningKind::Window, 180, 216, 36, 80)};
  plans[5].panels = {{6, 66}, {216, 282}};
  plans[6].openings = {door(OpeningKind::Window, 78, 114, 36, 80)};
  plans[6].panels = {{0, 60}, {132, 192}};
  plans[7].panels = {{6, 66}};
  plans[8].openings = {door(OpeningKind::Window, 100, 148, 36, 80), door(OpeningKind::Door, 240, 276, -12, 70.5)};
  plans[8].openings[1].sillHeight = 0;
  plans[8].steps = {step(192, 384, -12)};
  plans[8].panels = {{0, 72}, {312, 378}};
  plans[9].openings = {door(OpeningKind::Window, 120, 168, 36, 80)};
  plans[9].panels = {{0, 72}, {312, 384}};
  plans[9].rods = true;
  butt(plans);
  // Rods stand beside their columns: the left side runs by at both its corners, and its neighbours butt there.
  plans[9].inAtStart = plans[9].inAtEnd = 0;
  plans[0].inAtStart = plans[8].inAtEnd = 6;
  // At the three inside corners sills lie on the neighbour's concrete: the one that butts reaches the other's outside edge,
  // 1/2 in in, the one that runs by its inside edge, 6 in in.
  plans[1].sillPastEnd = plans[3].sillPastStart = plans[7].sillPastStart = 6;
  plans[2].sillPastStart = plans[2].sillPastEnd = plans[6].sillPastEnd = 0.5;
  auto walls = outline(job, points, plainWall());
  walls[9].startFraming = walls[9].endFraming = EndFraming::RunsBy;
  walls[0].startFraming = walls[8].endFraming = EndFraming::Butts;
  walls[1].endFraming = walls[3].startFraming = walls[7].startFraming = EndFraming::RunsBy;
  walls[2].startFraming = walls[2].endFraming = walls[6].endFraming = EndFraming::Butts;
  build(job, points, std::move(walls), plans,
        {"garage front", "garage side", "porch back", "porch side", "living front", "right side", "kitchen back",
         "kitchen side", "back", "left side"},
        hardware);
  return job;
}

} // namespace sillwright::support
