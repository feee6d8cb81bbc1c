// The whole document: a plain value. Copying a job is cheap: walls and tables are shared between copies until changed.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/base/ids.h"
#include "core/base/length.h"
#include "core/base/shared.h"
#include "core/model/hardware.h"
#include "core/model/wall.h"

namespace sillwright {

struct TitleBlock {
  std::string job;
  std::string address;
  std::string by;
  std::string planSet; // the approved plans: number or date
  std::string note;    // "sample job, invented"
  std::string extra;
  bool operator==(const TitleBlock&) const = default;
};

struct Corner {
  Id id;
  Point2 at; // plan, of the outside faces of the concrete
  std::string extra;
  bool operator==(const Corner&) const = default;
};

// A limit of the rule book changed for this job. key as in the rule book ("strap.edge target"). Never without a reason.
struct LimitOverride {
  std::string key;
  double value = 0;
  std::string reason;
  std::string who;
  std::string date; // YYYY-MM-DD
  std::string extra;
  bool operator==(const LimitOverride&) const = default;
};

// How far what a rule finds may count in this job at most; None: it is not looked at. Never without a reason.
enum class RuleCounts : std::uint8_t { Ask, Watch, None };
struct RuleOverride {
  std::string rule; // "strap.seam"
  RuleCounts counts = RuleCounts::Watch;
  std::string reason;
  std::string who;
  std::string date; // YYYY-MM-DD
  std::string extra;
  bool operator==(const RuleOverride&) const = default;
};

struct JobLimits {
  int storeys = 1;
  std::string seismicCategory;     // "D1"; empty: not said
  bool plateWashers = true;        // the job's options call for plate washers
  bool topBar = false;             // … for a horizontal bar near the top of the concrete
  bool openingBars = false;        // … for an upright bar beside each opening
  std::optional<double> planBoltSpacing; // in, from the plans
  double sillOverhang = 0;         // sill off the concrete allowed by the plans
  double sheathingThickness = 0.5; // between column and strap plate
  double concreteStrength = 2500;  // psi
  std::vector<LimitOverride> overrides;
  std::vector<RuleOverride> rules;
  std::string extra;
  bool operator==(const JobLimits&) const = default;
};

// One line of the plan's wall-end schedule: what a mark at a panel's end calls for.
struct WallEndMark {
  Id id;
  std::string mark; // "HD1"
  Id strapType;     // one of the two, or neither
  Id rodType;
  std::optional<MakeUp> column;
  std::optional<double> requiredCapacity; // lb
  std::optional<Nominal> sill;
  std::optional<double> boltSpacing; // in
  std::string extra;
  bool operator==(const WallEndMark&) const = default;
};

// A picture of the plan under the plan canvas.
struct Underlay {
  std::string path; // relative to the job file
  std::uint64_t size = 0;
  std::string hash;
  Point2 origin;          // plan point of the picture's lower left corner
  double inchesPerPixel = 1;
  double turn = 0;        // degrees
  double dim = 0.5;       // 0 … 1
  bool locked = false;
  std::string extra;
  bool operator==(const Underlay&) const = default;
};

// The distance between two corners as taped on the forms, outside face to outside face.
struct Diagonal {
  Id id;
  Id from; // corners
  Id to;
  double measured = 0;
  std::string extra;
  bool operator==(const Diagonal&) const = default;
};

struct Job;
struct Revision {
  int number = 1;
  std::string date; // YYYY-MM-DD
  std::string reason;
  std::string by;
  std::shared_ptr<const Job> job; // never null
  std::string extra;
  bool operator==(const Revision& other) const;
};

// The walls of a job in order, shared in blocks: copying, changing one wall and finding what differs do not grow with
// the number of walls (but for one pointer a block).
class WallList {
public:
  using Pointer = std::shared_ptr<const WallLine>;

  WallList() = default;
  explicit WallList(std::vector<WallLine> walls); // all at once: adding one by one grows with the square

  std::size_t size() const { return size_; }
  bool empty() const { return size_ == 0; }
  const WallLine& operator[](std::size_t i) const { return *pointer(i); }
  const Pointer& pointer(std::size_t i) const { return (*blocks_[i / blockSize])[i % blockSize]; }
  std::optional<std::size_t> indexOf(Id wall) const;
  const WallLine* find(Id wall) const; // null where there is none
  Pointer findPointer(Id wall) const;
  // Walls that start or end at a corner, in order of the list.
  std::vector<Id> atCorner(Id corner) const;

  // Precondition of replace: a wall with that id is in the list. Precondition of add: none is.
  void replace(WallLine wall);
  void add(WallLine wall);
  void remove(Id wall);

  // Calls changed(id) for every wall that is not the same stored value in both, or is in one only.
  void difference(const WallList& other, const std::function<void(Id)>& changed) const;

  bool operator==(const WallList& other) const;

private:
  static constexpr std::size_t blockSize = 64;
  using Block = std::vector<Pointer>;
  struct Index {
    std::unordered_map<Id, std::size_t> at;
    std::unordered_map<Id, std::vector<Id>> corners;
  };
  void rebuild(std::vector<Pointer> walls);
  std::vector<Pointer> all() const;

  std::vector<std::shared_ptr<const Block>> blocks_;
  std::size_t size_ = 0;
  std::shared_ptr<const Index> index_ = std::make_shared<const Index>();
};

struct Job {
  TitleBlock title;
  LengthStyle units = LengthStyle::FeetInches;
  Shared<HardwareTypes> types;
  Shared<JobLimits> limits;
  Shared<std::vector<WallEndMark>> marks;
  Shared<std::vector<Corner>> corners; // rising ids
  WallList walls;
  std::optional<Underlay> underlay;
  Shared<std::vector<Diagonal>> diagonals;
  Shared<std::vector<Revision>> revisions;
  std::uint32_t nextId = 1; // greater than every id ever given in this job
  std::string extra;
  bool operator==(const Job&) const = default;
};

// Hands out the next id of the job.
inline Id takeId(Job& job) { return Id{job.nextId++}; }

} // namespace sillwright
