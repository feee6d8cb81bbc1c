// A new job with something on the shelf. All hardware here is invented and says so.
#include "core/edit/operations.h"
#include "core/standards/fasteners.h"
#include "core/standards/washers.h"

namespace sillwright {

namespace {

constexpr const char* inventedNote = "invented sample hardware";

StrapType sampleStrap(Job& job) {
  StrapType strap;
  strap.id = takeId(job);
  strap.name = "Strap 2 1/2 x 36 (sample)";
  strap.plateWidth = 2.5;
  strap.plateThickness = 0.105;
  strap.profile = {{0.05, 0}, {0.5, -2}, {3.75, -12}, {5.5, -14}, {5.5, -12.5}};
  strap.exposedLength = 22;
  const NailSize& nail = *commonNail("10d common");
  strap.nails = {{-0.5, 0.5}, 5, 1, 16, true, std::string(nail.name), nail.diameter, nail.length};
  strap.hangerReach = {0, 2};
  strap.note = inventedNote;
  return strap;
}

BoltType sampleBolt(Job& job, const char* name, double diameter, double length, BoltEnd end) {
  BoltType bolt;
  bolt.id = takeId(job);
  bolt.name = name;
  bolt.diameter = diameter;
  bolt.length = length;
  bolt.threadLength = 5;
  bolt.threadsPerInch = boltHardware(diameter)->threadsPerInch;
  bolt.end = end;
  bolt.hookLeg = diameter > 0.55 ? 2.5 : 2;
  bolt.hookReturn = end == BoltEnd::J ? 1.5 : 0;
  bolt.note = inventedNote;
  return bolt;
}

WasherType sampleWasher(Job& job, const char* name, double across, std::optional<WasherSlot> slot) {
  WasherType washer;
  washer.id = takeId(job);
  washer.name = name;
  washer.across = across;
  washer.hole = slot ? 0 : 0.6875;
  washer.slot = slot;
  washer.note = inventedNote;
  return washer;
}

RodType sampleRod(Job& job, Id washer) {
  RodType rod;
  rod.id = takeId(job);
  rod.name = "Rod 5/8 (sample)";
  rod.diameter = 0.625;
  rod.embedment = 12;
  rod.threadLength = 6;
  rod.threadsPerInch = boltHardware(rod.diameter)->threadsPerInch;
  rod.footWidth = 1.5;
  rod.footThickness = 0.5;
  rod.bracketOffset = 1.25;
  rod.washer = washer;
  rod.note = inventedNote;
  return rod;
}

} // namespace

Job newJob() {
  Job job;
  HardwareTypes types;
  types.straps.push_back(sampleStrap(job));
  types.bolts.push_back(sampleBolt(job, "5/8 x 12 J (sample)", 0.625, 12, BoltEnd::J));
  types.bolts.push_back(sampleBolt(job, "5/8 x 10 J (sample)", 0.625, 10, BoltEnd::J));
  types.bolts.push_back(sampleBolt(job, "1/2 x 10 L (sample)", 0.5, 10, BoltEnd::L));
  const WasherSlot slot{0.6875, washerSlotLength.value, SlotDirection::Across};
  types.washers.push_back(sampleWasher(job, "3 x 3 round hole (sample)", 3, std::nullopt));
  types.washers.push_back(sampleWasher(job, "3 x 3 slotted (sample)", 3, slot));
  types.washers.push_back(sampleWasher(job, "3 x 4 1/2 slotted (sample)", 4.5, slot));
  types.rods.push_back(sampleRod(job, types.washers.front().id));
  WallEndMark mark;
  mark.id = takeId(job);
  mark.mark = "HD1";
  mark.strapType = types.straps.front().id;
  job.types = Shared<HardwareTypes>(std::move(types));
  job.marks = Shared<std::vector<WallEndMark>>({mark});
  return job;
}

} // namespace sillwright
