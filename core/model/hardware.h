// Hardware types: plain data, entered by the user from the hardware's own instructions. In samples all invented.
// All lengths in inches, forces in pounds.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/ids.h"
#include "core/geometry/shapes.h"
#include "core/standards/lumber.h"
#include "core/standards/sill_bolts.h"
#include "core/standards/washers.h"

namespace sillwright {

// What a column is made of. Built-up: plies set side by side along the wall (2-2x6 is 3 along, 5 1/2 deep). Solid: one
// post, its thickness along the wall (4x6 is 3 1/2 along, 5 1/2 deep).
struct MakeUp {
  int plies = 1;
  Nominal nominal{6, 6};
  bool operator==(const MakeUp&) const = default;
};
double alongWall(const MakeUp& makeUp);
double acrossWall(const MakeUp& makeUp);
std::string print(const MakeUp& makeUp);                    // "2-2x6", "4x6"
std::optional<MakeUp> parseMakeUp(std::string_view written); // the same forms

// Nails of a strap, seen from outside. Staggered: nail i sits in row i mod rows, every nail `spacing` above the one
// before. Not staggered: every row has a nail at each of the heights.
struct NailPattern {
  std::vector<double> rows;   // offsets of the rows from the centre line of the plate, + to the right
  double first = 0;           // lowest nail above the joint line
  double spacing = 0;         // between heights
  int count = 0;              // nails in all when staggered, nails a row otherwise
  bool staggered = false;
  std::string nail;           // name as in standards/fasteners, or free
  double nailDiameter = 0;
  double nailLength = 0;
  std::string extra{};
  bool operator==(const NailPattern&) const = default;
};

struct StrapType {
  Id id;
  std::string name;
  double plateWidth = 0;
  double plateThickness = 0;
  std::vector<ProfilePoint> profile; // embedded part: (d, z) from the joint line (z 0) down to the tip of the hook
  double exposedLength = 0;          // above the joint line
  NailPattern nails;
  double edgeMinimum = 0.5;   // plate edge to a concrete end or corner
  double edgeTarget = 1.0;
  double jointTolerance = 0.125; // joint line above or below the pour line
  Interval hangerReach{0, 0}; // form tops above the pour line that the hanger can be nailed to
  std::vector<MakeUp> columns;       // it may be nailed to these; empty: any
  std::optional<double> statedCapacity; // from the plans, never ours
  std::string note;                  // "invented sample hardware"
  std::string extra;                 // fields a newer program wrote, kept as they were (a JSON object, or empty)
  bool operator==(const StrapType&) const = default;
};

enum class BoltEnd { L, J, Headed };

struct BoltType {
  Id id;
  std::string name;
  double diameter = 0;
  double length = 0;        // over all, along the shank, hook included as its own thickness
  double threadLength = 0;  // from the upper end
  double threadsPerInch = 0;
  BoltEnd end = BoltEnd::L;
  double hookLeg = 0;       // L and J: from the axis of the shank to the outside of the leg's tip
  double hookReturn = 0;    // J: how far the tip turns up again
  double headWidth = 0;     // headed: across, square or hexagon
  double headThickness = 0;
  double minimumEmbedment = boltEmbedment.value;
  std::string note;
  std::string extra;
  bool operator==(const BoltType&) const = default;
};

struct RodType {
  Id id;
  std::string name;
  double diameter = 0;
  double embedment = 0;     // below the pour line to the bearing of the foot
  double threadLength = 0;
  double threadsPerInch = 0;
  double footWidth = 0;     // square foot plate or nut
  double footThickness = 0;
  double bracketOffset = 0; // axis from the face of the column
  Id washer;                // may be empty
  std::string note;
  std::string extra;
  bool operator==(const RodType&) const = default;
};

enum class SlotDirection { Along, Across };
struct WasherSlot {
  double width = 0;
  double length = 0;
  SlotDirection direction = SlotDirection::Across;
  std::string extra{};
  bool operator==(const WasherSlot&) const = default;
};

struct WasherType {
  Id id;
  std::string name;
  double along = plateWasherSide.value; // along the wall
  double across = plateWasherSide.value;
  double thickness = plateWasherThickness.value;
  double hole = 0;    // diameter of the round hole
  std::optional<WasherSlot> slot;
  std::string note;
  std::string extra;
  bool operator==(const WasherType&) const = default;
};

struct HardwareTypes {
  std::vector<StrapType> straps;
  std::vector<BoltType> bolts;
  std::vector<RodType> rods;
  std::vector<WasherType> washers;
  std::string extra{};
  bool operator==(const HardwareTypes&) const = default;
};

const StrapType* findStrapType(const HardwareTypes& types, Id id);
const BoltType* findBoltType(const HardwareTypes& types, Id id);
const RodType* findRodType(const HardwareTypes& types, Id id);
const WasherType* findWasherType(const HardwareTypes& types, Id id);

struct NailAt {
  double offset = 0; // from the centre line of the plate
  double height = 0; // above the joint line
};
std::vector<NailAt> nailsOf(const NailPattern& pattern);

} // namespace sillwright
