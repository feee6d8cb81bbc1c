// A wall laid out: every piece with its real size, where it really is. Made from values, used by rules, drawings and
// gestures alike, so that all of them see the same geometry. Wall frame, inches.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/geometry/shapes.h"
#include "core/model/concrete.h"
#include "core/model/job.h"
#include "core/model/place.h"

namespace sillwright {

// A stretch of constant pour-line height.
struct PourRun {
  Interval s;
  double height = 0;
};

struct SillPiece {
  Id sill;
  int index = 0; // within its sill, from the left
  Box3 box;
  Nominal nominal;
};

struct ColumnBody {
  Id id;
  Box3 box;
  ColumnRole role = ColumnRole::Post;
  MakeUp makeUp;
  std::vector<double> seams; // stations of the ply seams
};

struct StudBody {
  Box3 box;
};

struct NailBody {
  double s = 0;
  double z = 0;
};

struct StrapBody {
  Id id;
  const Strap* strap = nullptr;
  const StrapType* type = nullptr;
  double joint = 0;  // height of the joint line
  Box3 plate;        // exposed part
  Ribbon embedded;   // profile in wall heights
  Box3 embeddedBox;  // around it
  std::vector<NailBody> nails;
  Interval depthOfHook; // z range of the embedded part
  double lean = 0;      // out of plumb in an inch of height as measured, + to the right going up; 0 until somebody has
  std::optional<std::size_t> column; // index into columns
};

// A bolt or a rod: a shank with something at its foot and a stack on top.
struct AnchorBody {
  Id id;
  bool isRod = false;
  const Bolt* bolt = nullptr; // one of the two
  const Rod* rod = nullptr;
  const BoltType* boltType = nullptr;
  const RodType* rodType = nullptr;
  double station = 0;
  double depth = 0;
  double diameter = 0;
  double pour = 0;       // pour line at its station
  double top = 0;        // height of the upper end
  double bottom = 0;     // lowest point of the steel
  double embedment = 0;  // pour line to the lowest point
  double lean = 0;       // as of a strap; rods only
  Capsule shank;
  std::vector<Capsule> foot; // hook, or head and foot plate as a short stout capsule
  Box3 steelBox;             // around shank and foot
  const WasherType* washer = nullptr;
  std::optional<Box3> washerBox; // on the sill, or on the concrete where there is none
  std::optional<std::size_t> sillPiece; // index of the piece it goes through
};

struct BarBody {
  Id id;
  const Bar* bar = nullptr;
  Capsule body;
  bool found = false;
  Box3 box; // around the body
};

struct WallLayout {
  std::shared_ptr<const WallLine> wall; // the values it was made from; all pointers above go into these
  std::shared_ptr<const HardwareTypes> types;
  std::shared_ptr<const JobLimits> limits;
  std::shared_ptr<const std::vector<WallEndMark>> marks;
  WallPlace place;

  double length = 0;
  Interval concrete;         // stations with concrete, neighbours' at inside corners included
  Interval across;           // depths of the stem: 0 … thickness
  double stemBottom = 0;     // top of the footing, negative
  double bottom = 0;         // lowest concrete
  Interval footingAcross;    // depths of the footing; empty without one
  Interval footingAlong;
  std::vector<PourRun> pour; // left to right, covers 0 … length without gaps
  std::vector<ConcreteFace> faces;      // ends of the stem and risers
  std::vector<ConcreteFace> footingEnds;
  std::vector<CornerConcrete> corners;  // of the neighbours
  std::vector<SillPiece> sills;
  std::vector<ColumnBody> columns;
  std::vector<StudBody> studs;
  std::vector<StrapBody> straps;
  std::vector<AnchorBody> anchors; // bolts, then rods
  std::vector<BarBody> bars;
};

// Pieces whose type is missing are left out of straps and anchors (reading a job file never lets that happen).
WallLayout layOut(const Job& job, const std::shared_ptr<const WallLine>& wall);
WallLayout layOut(std::shared_ptr<const WallLine> wall, std::shared_ptr<const HardwareTypes> types,
                  std::shared_ptr<const JobLimits> limits, std::shared_ptr<const std::vector<WallEndMark>> marks,
                  const WallPlace& place);

// Height of the pour line. At the riser of a step: the higher side.
double pourAt(const WallLayout& layout, double station);

// The sill piece over a station, or nothing. At a splice the left piece.
std::optional<std::size_t> sillAt(const WallLayout& layout, double station);

// Concrete as seen in elevation: x = s, y = z (up), stem and footing in one outline.
Polygon2 concreteOutline(const WallLayout& layout);

} // namespace sillwright
