// The layout in order that moves least: an exact optimiser for pieces that stand one after another along a wall line.
// It knows marks, gaps and needs, nothing of walls or rules; whoever calls it translates.
//
// Units. Every station is a Mark, a whole number of tape marks (1/16 in) from the left end of the wall; every
// difference, gap and amount is in marks too. To the right is more. Stations lie between -kFar / 4 and kFar / 4.
//
// Intervals. A Stretch is closed: both ends belong to it. A Blocked interval is open: both ends may be used, so the two
// blocked intervals 3..5 and 5..8 leave mark 5 free. One whose `from` is not below its `to` holds nothing. A Toll says
// itself whether its ends belong to it. kFar and -kFar stand for "without end"; such an end
// never gives. What is blocked up to the end of a sill piece or wall should be blocked without end there: else relaxing
// it would open the outermost marks first.
//
// Needs. A need is a hard requirement that a conflict can name: any whole number of the caller's choice. Several
// requirements may carry the same need; they are then dropped and relaxed together. A negative one is no need: what
// carries it always holds, and no conflict names it. A toll carries one for the caller's words only.
//
// Required of a Problem: indices point at what exists; every sill piece has `depthOptions` ground entries, so has every
// Beside, every reference bolt `depthOptions` shifts; sill pieces are given left to right and share no mark; references
// of a sill piece are given left to right; a `set` or `fixed` piece has a reference; counts and amounts are not
// negative; a MostGap holds from < to.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <variant>
#include <vector>

namespace sillwright::sequence {

using Mark = int;
using Need = int;

inline constexpr Mark kFar = 1 << 24;

struct Stretch {
  Mark from = 0;
  Mark to = 0;
  bool operator==(const Stretch&) const = default;
};

struct Blocked {
  Mark from = 0;
  Mark to = 0;
  Need need = 0;
};

// Ask: a question to the engineer (level 2). Watch: a target missed (level 5).
enum class Kind : std::uint8_t { Ask, Watch };

// Standing in it costs one count of its kind.
struct Toll {
  Mark from = 0;
  Mark to = 0;
  Kind kind = Kind::Ask;
  bool closed = true;
  Need need = 0;
};

// What is blocked and what costs: of stations, or of differences of two stations, as told where it is used.
struct Ground {
  std::vector<Blocked> blocked = {};
  std::vector<Toll> tolls = {};
};

// A column, strap or rod: always there, never more than one.
struct Anchored {
  Stretch own = {};       // where it may stand: its leeway. Often a single mark. from > to: nowhere
  Need ownNeed = 0;       // the leeway as a need
  Stretch outermost = {}; // frame that `own` never leaves when it is relaxed or dropped; not a need. Holds a mark
  Ground ground = {};     // of its station
  std::optional<Mark> reference = {}; // where it stood; none: nothing to move from
  bool set = false;                   // moving it counts at level 4
  std::optional<Need> fixed = {};     // must stand at its reference
};

// The difference station(right) - station(left) must lie in one of the allowed stretches. A strap and its column:
// their union; a least gap g of two clusters: {g, kFar}. Tolls of the difference beside. `left` and `right` are indices
// of two different anchored pieces and say nothing of the order they stand in.
struct Distance {
  int left = 0;
  int right = 0;
  std::vector<Stretch> allowed = {};
  std::vector<Toll> tolls = {};
  Need need = 0;
};

// Every bolt against one anchored piece: ground of the difference station(bolt) - station(piece), by depth option.
struct Beside {
  int anchored = 0;
  std::vector<Ground> options = {};
};

struct ReferenceBolt {
  Mark station = 0;
  // By depth option: marks of movement that standing in this option costs. 0: as it was. kFar: this bolt cannot stand
  // in that option, being of another make; what stands there is another bolt.
  std::vector<Mark> shift = {};
  bool set = false;               // moving or removing it counts at level 4
  std::optional<Need> fixed = {}; // must stay: same station, an option with shift 0
};

// Two neighbouring bolts a < b of one sill piece that overlap from..to in more than a point (a < to, b > from) are at
// most `most` apart. A limit for the whole sill piece has its stretch.
struct MostGap {
  Mark from = 0;
  Mark to = 0;
  Mark most = 0;
  Need need = 0;
};

struct Window {
  Mark farthest = 0;
  Need need = 0;
};

struct SillPiece {
  Stretch stretch = {}; // bolts stand in it; not a need. Holds a mark
  int least = 0;        // fewest bolts; 0 lets the piece have none, then nothing below asks anything of it
  Need leastNeed = 0;
  std::optional<Window> first = {}; // first bolt - stretch.from <= farthest
  std::optional<Window> last = {};  // stretch.to - last bolt <= farthest
  std::vector<MostGap> most = {};
  std::vector<Toll> gapTolls = {};  // of the difference of two neighbouring bolts of this sill piece
  std::vector<Ground> options = {}; // of the station of a bolt, by depth option
  std::vector<ReferenceBolt> reference = {};
};

// Two consecutive bolts, of one sill piece or of two, in these depth options (left one, right one) are at least this
// far apart. Without any of them, consecutive bolts stand at least one mark apart.
struct LeastGap {
  int left = 0;
  int right = 0;
  Mark least = 0;
  Need need = 0;
};

struct Problem {
  std::vector<Anchored> anchored = {};
  std::vector<Distance> distances = {};
  int depthOptions = 1;
  std::vector<SillPiece> sillPieces = {};
  std::vector<LeastGap> leastGaps = {};
  std::vector<Beside> besides = {};
  bool countWatch = true; // false leaves level 5 out: watch tolls cost nothing
};

// The levels of preference below the hard requirements, in order.
struct Cost {
  int ask = 0;               // 2. asks paid
  int pieces = 0;            // 3. bolts added and removed
  int setMoved = 0;          // 4. set pieces moved or removed
  int watch = 0;             // 5. targets missed
  std::int64_t movement = 0; // 6. marks moved along, and depth shifts
  auto operator<=>(const Cost&) const = default;
};

struct PlacedBolt {
  int sillPiece = 0;
  Mark station = 0;
  int option = 0;
  std::optional<int> reference = {}; // index in the sill piece's reference; none: added
  bool operator==(const PlacedBolt&) const = default;
};

struct RemovedBolt {
  int sillPiece = 0;
  int reference = 0;
  bool operator==(const RemovedBolt&) const = default;
};

// Bolts of a sill piece are matched to its reference in order, at the least cost.
// Level 7: of all layouts of the same Cost, one with the most room (see tightened). Level 8, among those: leftmost.
// Leftmost compares the bolts first, from left to right, each by station, then by option (fewer bolts before more where
// all of the fewer agree); then the stations of the anchored pieces in the order given. At last each bolt in order
// takes the lowest reference it can.
struct Layout {
  std::vector<Mark> anchored = {};
  std::vector<PlacedBolt> bolts = {};
  std::vector<RemovedBolt> removed = {};
  Cost cost = {};
  Mark room = 0; // 0 … kMostRoom
};

// 64 in: more room than that is no better.
inline constexpr Mark kMostRoom = 1024;

struct Relaxation {
  Need need = 0;
  // The least number of marks by which this need alone must give (see relaxed) so that the whole problem has a layout.
  // None: no amount is enough, or the need is not one of marks.
  std::optional<Mark> by = {};
};

// A minimal set of needs that cannot hold together: with all other needs dropped there is still no layout, and there is
// one as soon as any one of these is dropped too. Found by trying to drop each need in ascending order, so of several
// minimal sets it is the one that keeps the high numbers. Ascending. Empty only where a frame itself holds no mark.
struct Conflict {
  std::vector<Relaxation> needs = {};
};

// The best layout, exactly, or why there is none. Time grows linearly with marks, bolts of the reference and pieces
// where the pieces with more than one mark do not meet. Pieces that restrict one another, or the same bolts, are tried
// in their combinations, except where another combination does as well whatever the rest does; distances between pieces
// that reach different bolts cost a state for the bolts between them, not a combination.
std::variant<Layout, Conflict> layInOrder(const Problem& problem);

// Whether any layout holds all needs.
bool canBeLaid(const Problem& problem);

// For a problem that cannot be laid: see Relaxation::by.
std::optional<Mark> leastGiving(const Problem& problem, Need need);

// The same problem with room `by` (>= 0) asked of it: blocked intervals (of stations and of differences) grow by it at
// both ends, `own` stretches lose it at both ends, allowed differences too, bolts keep it from the ends of their sill
// piece, least gaps grow, most gaps and windows shrink by it. Left alone are counts, tolls, fixed, the own stretch and
// ground of an anchored piece that has a single mark (own.from == own.to, or fixed), and distances of two such pieces:
// they cannot slide anyway. The room of a layout is the largest `by` for which it still is one.
Problem tightened(const Problem& problem, Mark by);

// The same problem where one need gives by so many marks: its blocked intervals shrink at both ends, its own stretch
// grows at both ends inside the frame, allowed differences grow at both ends, least gaps shrink (never below one mark
// between two bolts), most gaps and windows grow. A count or a fixed piece does not give.
Problem relaxed(const Problem& problem, Need need, Mark by);

// The same problem without these needs: nothing blocked by them, own stretch the frame, any difference, no gap, no
// window, no bolt asked for, not fixed.
Problem without(const Problem& problem, Need need);

// Every need that some requirement carries (not those of tolls, nor negative ones), ascending.
std::vector<Need> needsOf(const Problem& problem);

} // namespace sillwright::sequence
