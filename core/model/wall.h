// A wall line and everything that stands on it or hangs in its forms. Stations, depths and heights in the wall frame
// (see geometry/shapes.h), inches. Plain values: an edit makes a new wall.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/base/ids.h"
#include "core/geometry/shapes.h"
#include "core/model/hardware.h"
#include "core/standards/lumber.h"

namespace sillwright {

enum class EdgeKind : std::uint8_t { StemWall, ThickenedEdge };
// At a corner the framing of one wall runs by, the other butts against it (its sill starts one sill width in).
enum class EndFraming : std::uint8_t { RunsBy, Butts };
enum class Side : std::uint8_t { Left, Right };

struct Footing {
  double width = 0; // 0: none
  double depth = 0;
  double projection = 0; // of its outside face beyond the outside face of the wall
  std::string extra{};
  bool operator==(const Footing&) const = default;
};

struct FormBoards {
  double outside = 1.5; // thickness
  double inside = 1.5;
  std::string extra{};
  bool operator==(const FormBoards&) const = default;
};

// A stretch of the wall where the pour line is not at 0 (stepped down at a door, stepped with the ground).
struct PourStep {
  Id id;
  std::string mark;
  double from = 0;
  double to = 0;
  double height = 0; // of the pour line there; negative is down
  std::string extra;
  bool operator==(const PourStep&) const = default;
};

// Cut out at door openings, continuous under windows.
struct Sill {
  Id id;
  std::string mark;
  double from = 0;
  double to = 0;
  Nominal nominal{2, 6};
  std::string species;
  std::vector<double> splices; // stations, rising
  std::string extra;
  bool operator==(const Sill&) const = default;
};

enum class OpeningKind : std::uint8_t { Door, GarageDoor, Window };
struct Opening {
  Id id;
  std::string mark;
  OpeningKind kind = OpeningKind::Door;
  double from = 0; // rough opening
  double to = 0;
  double sillHeight = 0; // of a window, above the planned pour line
  double headHeight = 0; // underside of the header, above the planned pour line
  double headerDepth = 9.25;
  std::string extra;
  bool operator==(const Opening&) const = default;
};

enum class ColumnRole : std::uint8_t { King, Trimmer, Post };
struct Column {
  Id id;
  std::string mark;
  double station = 0; // centre
  MakeUp makeUp;
  ColumnRole role = ColumnRole::Post;
  double leeway = 0; // how far framing may shift it, either way
  std::string extra;
  bool operator==(const Column&) const = default;
};

// Studs between columns and openings: marks at first, first + spacing … from the layout end.
struct StudLayout {
  Side from = Side::Left;
  double spacing = 16;
  double first = 16; // centre of the first stud from the layout end
  Nominal nominal{2, 6};
  std::string extra{};
  bool operator==(const StudLayout&) const = default;
};

enum class Sheathing : std::uint8_t { Outside, Inside, Both };
struct Panel {
  Id id;
  std::string mark;
  double from = 0;
  double to = 0;
  double height = 96;
  std::optional<double> unitShear; // nominal unit shear capacity, plf, from the plans
  std::optional<double> designShear; // unit shear the panel has to carry, allowable stress level, plf, from the plans
  std::optional<double> deadLoad;    // on the panel, as reduced for uplift, plf, from the plans
  std::optional<double> lever;       // between its two hold-downs on the plans, in
  Sheathing sheathing = Sheathing::Outside;
  std::string leftMark;  // plan's wall-end mark at each end; empty: the plan calls for nothing
  std::string rightMark;
  std::string extra;
  bool operator==(const Panel&) const = default;
};

struct Strap {
  Id id;
  std::string mark;
  Id type;
  double station = 0;      // centre line of its plate
  double heightOffset = 0; // joint line above (+) or below (-) the pour line at its station
  Id column;               // the column it belongs to; may be empty
  std::string extra;
  bool operator==(const Strap&) const = default;
};

enum class HookDirection : std::uint8_t { Inward, Outward, Left, Right };
struct Bolt {
  Id id;
  std::string mark;
  Id type;
  double station = 0;
  double depth = 0;      // of its axis from the outside face
  double projection = 0; // above the pour line at its station
  HookDirection hook = HookDirection::Inward;
  Id washer;             // may be empty
  bool cutWasher = true; // a cut washer between plate washer and nut
  double washerShift = 0; // of the plate washer's middle from the bolt, along its slot: + inward or right
  std::string extra;
  bool operator==(const Bolt&) const = default;
};

struct Rod {
  Id id;
  std::string mark;
  Id type;
  Id column;
  Side side = Side::Right; // of the column
  double offset = 0;       // axis from that face of the column
  double depth = 0;
  double projection = 0;
  std::string extra;
  bool operator==(const Rod&) const = default;
};

enum class BarRun : std::uint8_t { Upright, Along };
struct BarPlace {
  Point3 a; // upright: lower end; along: left end
  Point3 b;
  bool operator==(const BarPlace&) const = default;
};
struct Bar {
  Id id;
  std::string mark;
  BarRun run = BarRun::Upright;
  int size = 4; // No. 3 … 8
  BarPlace planned;
  std::optional<BarPlace> found; // once somebody has measured it
  std::string extra;
  bool operator==(const Bar&) const = default;
};
inline const BarPlace& placeOf(const Bar& bar) { return bar.found ? *bar.found : bar.planned; }

// A top-of-concrete mark on the form.
struct GradeShot {
  Id id;
  std::string mark;
  double station = 0;
  double reading = 0; // height above the planned pour line
  std::optional<double> width; // between the form boards there, as taped
  std::string extra;
  bool operator==(const GradeShot&) const = default;
};

// What was measured on a piece as set in the form. Everything optional was not measured.
struct Reading {
  Id piece; // of the same wall
  std::optional<double> along;      // station
  std::optional<double> inOut;      // depth
  std::optional<double> pourOffset; // joint line above the pour line
  std::optional<double> plumb;      // out of plumb over gauge, + to the right
  double gauge = 24;
  std::optional<double> projection;
  bool set = false; // ticked as set
  std::string who;
  std::string when; // YYYY-MM-DD
  std::string extra;
  bool operator==(const Reading&) const = default;
};

struct WallLine {
  Id id;
  std::string mark;  // "A"
  std::string title; // "front"
  Id startCorner;    // left end seen from outside
  Id endCorner;
  EndFraming startFraming = EndFraming::RunsBy;
  EndFraming endFraming = EndFraming::RunsBy;
  EdgeKind kind = EdgeKind::StemWall;
  double thickness = 8;
  double stemHeight = 24; // pour line to the top of the footing (thickened edge: to its bottom)
  Footing footing;
  FormBoards forms;
  double formTop = 0;   // above the pour line
  double sillInset = 0; // sill's outside edge inward from the outside face
  double wallHeight = 96; // top of plates above the pour line
  std::optional<StudLayout> studs;
  std::vector<PourStep> steps;
  std::vector<Sill> sills;
  std::vector<Opening> openings;
  std::vector<Column> columns;
  std::vector<Panel> panels;
  std::vector<Strap> straps;
  std::vector<Bolt> bolts;
  std::vector<Rod> rods;
  std::vector<Bar> bars;
  std::vector<GradeShot> shots;
  std::vector<Reading> readings;
  std::string extra;
  bool operator==(const WallLine&) const = default;
};

} // namespace sillwright
