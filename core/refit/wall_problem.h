// A wall put as a problem of the layout in order: what may move, what keeps it where, and the way back.
//
// Where a wall is more than the problem can say, the problem asks a little more than the rules do, never less:
//  - a stud that comes or goes with a column that has leeway is always there for the bolts;
//  - a strap stays on its column, and at the panel end that it holds although another might hold it too;
//  - two bolts at different depths stand as far apart for the question of bolt.gap as if they were at the same one;
//  - bolts alike but for how far they stand up keep clear of bars as if each had the steel of all of them.
// Over a step in the pour line a sill lies level all the same, and the cover of its bolts counts as at its middle.
// Where one bolt is enough for a piece of sill, two that it has stay two.
#pragma once

#include <map>
#include <tuple>

#include "core/refit/refit.h"
#include "core/refit/slots.h"

namespace sillwright {

// A bolt of a make, across the wall, over a height of the pour line: what the problem calls a depth option.
struct BoltStand {
  std::size_t make = 0;
  double depth = 0;
  double pour = 0;
  bool operator==(const BoltStand&) const = default;
};

struct WallProblem {
  WallLine wall;         // as given, every strap on a column, with the straps that panel ends lack
  std::vector<Id> added; // those; their ids are only for the time being
  sequence::Problem problem;
  std::vector<Requirement> needs;          // by need
  std::vector<Id> anchored;                // columns, straps, rods, as in the problem
  std::vector<Bolt> makes;                 // without station and depth
  std::vector<BoltStand> stands;           // by depth option
  std::vector<std::vector<Id>> references; // bolts, by sill piece
};

// How far the framing of a column that has no leeway might give, at most, when it is asked what would help.
inline constexpr double framingGives = 1.5;

// givers: columns that have no leeway, of which the problem is to know as a need what it would help if they gave.
Result<WallProblem> wallProblem(const WallLayout& layout, const ResolvedLimits& limits, const RefitWishes& wishes,
                                const std::vector<Id>& givers = {});

// ---- parts of it, each in a file
// The needs, each given its number when first asked for, and stretches of inches as ground of marks.
class Needs {
public:
  Needs(const ResolvedLimits& limits, std::vector<Requirement>& all) : limits_(limits), all_(all) {}

  sequence::Need of(const Requirement& requirement);
  // Blocked where its rule counts as FIX in the job, else a toll as it counts, or nothing. Frame: marks outside need
  // not be spoken of.
  void block(sequence::Ground& ground, const Requirement& requirement, Interval open, sequence::Stretch frame);
  void toll(sequence::Ground& ground, RuleId rule, Level level, sequence::Stretch closed);

private:
  const ResolvedLimits& limits_;
  std::vector<Requirement>& all_;
  std::map<std::tuple<Requirement::Kind, RuleId, std::vector<Id>, int, double>, sequence::Need> known_;
};

// What is being made, and from what.
struct Translation {
  const WallLayout& layout; // of the wall of the problem
  const ResolvedLimits& limits;
  const ResolvedLimits& all; // every rule counts
  const RefitWishes& wishes;
  const WallLine& reference;
  const std::vector<Id>& givers;
  WallProblem& out;
  Needs& needs;
};

std::optional<Problem> addColumns(Translation& t);
void addStraps(Translation& t);
void addRods(Translation& t);
void addPanelLevers(Translation& t);
std::optional<Problem> addBolts(Translation& t);

bool isSet(const WallLine& wall, Id piece);
bool stays(const RefitWishes& wishes, Id piece);
// Along the wall, all of it, over ground of the same height.
void slide(AnchorBody& body, double by);
// The same; the body then points to the strap given, which goes along.
void slide(StrapBody& body, Strap& strap, double by);
std::optional<std::size_t> anchoredIndex(const WallProblem& problem, Id piece);

} // namespace sillwright
