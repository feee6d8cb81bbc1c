// A job to practise on: a small garage, laid out well, and then one or two things of every subject done wrong.
#include <algorithm>
#include <cmath>

#include "tests/support/outlined_job.h"
#include "tests/support/sample_jobs.h"

namespace sillwright::support {

namespace {

template <class List> auto& marked(List& list, const char* mark) {
  return *std::find_if(list.begin(), list.end(), [&](const auto& piece) { return piece.mark == mark; });
}

void readPlumb(WallLine& wall, Id piece, double plumb) {
  Reading reading;
  reading.piece = piece;
  reading.plumb = plumb;
  reading.set = true;
  reading.who = "setter";
  reading.when = "2031-04-21";
  wall.readings.push_back(reading);
}

GradeShot shot(Job& job, const char* mark, double station, double reading, double width) {
  GradeShot made;
  made.id = takeId(job);
  made.mark = mark;
  made.station = station;
  made.reading = reading;
  made.width = width;
  return made;
}

WasherType washer(Job& job, const char* name, double along, double across, bool slotted) {
  WasherType made;
  made.id = takeId(job);
  made.name = name;
  made.along = along;
  made.across = across;
  if (slotted)
    made.slot = WasherSlot{0.8125, 1.75, SlotDirection::Across, {}};
  else
    made.hole = 0.6875;
  made.note = "invented sample hardware";
  return made;
}

// A strap too near the step at the door, one out of plumb, a bolt with too little thread, a bar on a strap, the forms out.
void spoilFront(Job& job, WallLine& wall) {
  marked(wall.straps, "S2").station = 46.5;
  readPlumb(wall, marked(wall.straps, "S4").id, 0.375);
  readPlumb(wall, marked(wall.straps, "S3").id, 0.0625);
  wall.bolts.back().projection = 3.25;
  Bar& bar = wall.bars.front();
  bar.found = bar.planned;
  bar.found->a.s = bar.found->b.s = marked(wall.straps, "S1").station + 1;
  bar.found->a.d = bar.found->b.d = 2;
  wall.shots.push_back(shot(job, "G1", 24, 0, 8));
  wall.shots.push_back(shot(job, "G2", 264, 0.25, 8.5));
}

// A bolt in the middle of a 2x6 sill under a strong panel, and one under a stud.
void spoilRight(WallLine& wall) {
  const double middle = (wall.panels[0].from + wall.panels[0].to) / 2;
  std::min_element(wall.bolts.begin(), wall.bolts.end(), [&](const Bolt& a, const Bolt& b) {
    return std::abs(a.station - middle) < std::abs(b.station - middle);
  })->depth = 3.25;
  wall.bolts.back().station = std::round(wall.bolts.back().station / 16) * 16;
}

// A column past the end of its sill, which does not reach its corner, and a bar too near the form.
void spoilBack(WallLine& wall) {
  Bar& bar = wall.bars[4];
  bar.found = bar.planned;
  bar.found->a.d = bar.found->b.d = 1.25;
  wall.sills.front().from += 0.75;
  wall.columns[1].station -= 2;
}

// Rods: one off its bracket's line, one out of plumb; a panel that pulls harder than its hold-downs.
void spoilLeft(WallLine& wall) {
  marked(wall.rods, "R1").offset += 0.25;
  readPlumb(wall, marked(wall.rods, "R2").id, -0.25);
  wall.panels[0].designShear = 640;
}

} // namespace

Job punchListPractice() {
  Job job;
  job.title.job = "Practice punch list";
  job.title.address = "Plover Lane (invented)";
  job.title.by = "lead framer";
  job.title.planSet = "set of 14 April 2031";
  job.title.note = "sample job, invented: something of every subject is wrong";
  const Hardware hardware = addHardware(job);
  const std::vector<Point2> points{{0, 0}, {288, 0}, {288, 240}, {0, 240}};
  std::vector<WallPlan> plans(4);
  plans[0].openings = {door(OpeningKind::GarageDoor, 48, 240, 0, 83.75)};
  plans[0].steps = {step(48, 240, -8)};
  plans[0].panels = {{6, 48}, {240, 288}};
  plans[0].sill = {3, 6};
  plans[1].openings = {door(OpeningKind::Door, 150, 186, 0, 82.5)};
  plans[1].panels = {{6, 66}};
  plans[1].unitShear = 520;
  plans[2].openings = {door(OpeningKind::Window, 96, 192, 36, 80)};
  plans[3].panels = {{0, 72}, {168, 240}};
  plans[3].rods = true;
  // Rods stand beside their columns: the left side runs by at both its corners.
  plans[1].inAtStart = plans[1].inAtEnd = plans[0].inAtStart = plans[2].inAtEnd = 6;
  auto walls = outline(job, points, plainWall());
  walls[3].startFraming = walls[3].endFraming = EndFraming::RunsBy;
  walls[0].startFraming = walls[2].endFraming = EndFraming::Butts;
  build(job, points, std::move(walls), plans, {"garage front", "right side", "back", "left side"}, hardware);
  job.types.edit([&](HardwareTypes& types) {
    types.washers.push_back(washer(job, "Plate washer 3 x 3 1/2 slotted", 3, 3.5, true));
    types.washers.push_back(washer(job, "Plate washer 3 x 4 1/2", 3, 4.5, false));
  });
  std::vector<WallLine> spoilt;
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    spoilt.push_back(job.walls[i]);
  spoilFront(job, spoilt[0]);
  spoilRight(spoilt[1]);
  spoilBack(spoilt[2]);
  spoilLeft(spoilt[3]);
  for (WallLine& wall : spoilt)
    job.walls.replace(std::move(wall));
  Diagonal diagonal;
  diagonal.id = takeId(job);
  diagonal.from = (*job.corners)[0].id;
  diagonal.to = (*job.corners)[2].id;
  diagonal.measured = std::round(16 * std::hypot(288, 240)) / 16 + 0.75;
  job.diagonals.edit([&](std::vector<Diagonal>& all) { all.push_back(diagonal); });
  return job;
}

} // namespace sillwright::support
