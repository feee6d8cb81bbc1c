// The display list: what is drawn, in plain primitives, in paper points (1/72 in), x to the right, y DOWN the page.
// Everything the program shows on a canvas or a sheet is one of these; hatches, dashes and clips are already plain
// segments. Back ends (screen, PDF, SVG, text dump) only replay it in order.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/ids.h"
#include "core/geometry/outline.h"
#include "core/geometry/shapes.h"

namespace sillwright {

// A colour by what it is for; the theme (light, dark, print) says which colour that is. See drawing/theme.h.
enum class Ink : std::uint8_t {
  None,
  Paper, Panel, Chrome, Field, Rule, Rule2, Edge, Text, Text2,
  Wood, Wood2, WoodLine, WoodMark,
  Concrete, ConcreteLine, ConcreteMark, Earth, EarthLine,
  Steel, SteelSoft, SteelFace, Bar, BarFill, BarPlan,
  Form, FormLine,
  Blade, BladeInk, BladeEdge, BladeFoot, BladeFootInk,
  Fix, Ask, Watch, FixOn,
  Hand, HandSoft, HandOn, Hover, Select, Dim,
  Count
};

enum class Anchor : std::uint8_t { Start, Middle, End };
enum class Weight : std::uint8_t { Regular, Bold, Italic };
enum class Cap : std::uint8_t { Flat, Round };

// A sharper corner than this is cut off: length of the mitre by the width of the stroke, as in SVG.
inline constexpr double mitreLimit = 4;

struct TextStyle {
  double size = 10; // pt
  Weight weight = Weight::Regular;
  Anchor anchor = Anchor::Start;
  double turn = 0;        // degrees counterclockwise on the page about the anchor point
  Ink halo = Ink::None;   // ground painted around the letters
  double haloWidth = 2.5; // pt, whole width of the halo's stroke
  bool operator==(const TextStyle&) const = default;
};

struct Bounds {
  double x0 = 0, y0 = 0, x1 = 0, y1 = 0;

  bool empty() const { return x1 <= x0 || y1 <= y0; }
  bool overlaps(const Bounds& o, double slack = 0) const {
    return x0 < o.x1 - slack && o.x0 < x1 - slack && y0 < o.y1 - slack && o.y0 < y1 - slack;
  }
  bool contains(const Bounds& o) const { return o.x0 >= x0 && o.y0 >= y0 && o.x1 <= x1 && o.y1 <= y1; }
  bool contains(Point2 p) const { return p.x >= x0 && p.x <= x1 && p.y >= y0 && p.y <= y1; }
  Bounds grown(double by) const { return {x0 - by, y0 - by, x1 + by, y1 + by}; }
  Bounds moved(double dx, double dy) const { return {x0 + dx, y0 + dy, x1 + dx, y1 + dy}; }
  bool operator==(const Bounds&) const = default;
};
Bounds hull(const Bounds& a, const Bounds& b); // an empty one does not count

struct Prim {
  enum class Kind : std::uint8_t {
    Fill,     // closed polygon(s): rings of points, even-odd; see ringsOf
    Line,     // one open polyline, stroked, mitred
    Loop,     // one closed polyline, stroked, mitred
    Segments, // pairs of points, stroked
    Disc,     // every point is a centre; filled circles of radius `width`
    Ring,     // point 0 is the centre; point 1.x is the radius; stroked circle
    Text      // point 0 is the baseline anchor
  };
  Kind kind = Kind::Line;
  Ink ink = Ink::Text;
  Cap cap = Cap::Flat;
  float width = 1;        // stroke width or disc radius, pt
  float opacity = 1;      // 0 … 1; print never uses less than 1
  std::uint32_t first = 0; // into points
  std::uint32_t count = 0;
  std::uint32_t text = 0; // into texts, for Text
  Bounds box;             // of all the ink: with strokes, mitres, halo
};

struct TextPrim {
  std::string text; // one line; fractions "3/8" are drawn as built fractions, see text_metrics.h
  TextStyle style;
  bool operator==(const TextPrim&) const = default;
};

// A place on a drawing that answers the pointer: the piece, and where it is.
struct HitArea {
  enum class Part : std::uint8_t { Body, FromEnd, ToEnd, Corner, Label, Name }; // label of a flag, name of the piece
  PieceRef piece;
  Part part = Part::Body;
  Bounds box;
};

// A text or mark that others must keep off, and tests look at.
struct TakenBox {
  std::string name;
  Bounds box;
};

class Drawing {
public:
  void fill(std::span<const Point2> polygon, Ink ink, double opacity = 1);
  void fill(std::span<const Polygon2> rings, Ink ink, double opacity = 1);
  void fillRect(double x0, double y0, double x1, double y1, Ink ink, double opacity = 1);
  void line(Point2 a, Point2 b, Ink ink, double width, Cap cap = Cap::Flat);
  void polyline(std::span<const Point2> points, Ink ink, double width);
  void loop(std::span<const Point2> points, Ink ink, double width);
  void rect(double x0, double y0, double x1, double y1, Ink ink, double width);
  void segments(std::span<const Segment2> list, Ink ink, double width, double opacity = 1);
  // on and off in pt; begins with a dash at every corner of the polyline.
  void dashed(std::span<const Point2> points, double on, double off, Ink ink, double width, bool closed = false);
  void dashedRect(double x0, double y0, double x1, double y1, double on, double off, Ink ink, double width);
  void disc(Point2 centre, double radius, Ink ink, double opacity = 1);
  void discs(std::span<const Point2> centres, double radius, Ink ink);
  void ring(Point2 centre, double radius, Ink ink, double width);
  // Returns the box of the letters on the page, without the halo.
  Bounds text(Point2 at, std::string_view words, Ink ink, const TextStyle& style);

  // Adds everything of another drawing, moved.
  void add(const Drawing& other, double dx = 0, double dy = 0);

  void hit(PieceRef piece, const Bounds& box, HitArea::Part part = HitArea::Part::Body);
  void take(std::string name, const Bounds& box);

  std::span<const Prim> prims() const { return prims_; }
  std::span<const Point2> points() const { return points_; }
  std::span<const Point2> pointsOf(const Prim& p) const { return std::span(points_).subspan(p.first, p.count); }
  // For Fill: the points of each ring, in order.
  std::vector<std::span<const Point2>> ringsOf(const Prim& p) const;
  const TextPrim& textOf(const Prim& p) const { return texts_[p.text]; }
  std::span<const HitArea> hits() const { return hits_; }
  std::span<const TakenBox> taken() const { return taken_; }
  // Box of everything drawn, with stroke widths.
  Bounds bounds() const;
  bool empty() const { return prims_.empty(); }

private:
  // Null when there is nothing to draw: no ink, or no points.
  Prim* push(Prim::Kind kind, Ink ink, double width, std::span<const Point2> points);

  std::vector<Prim> prims_;
  std::vector<Point2> points_;
  std::vector<TextPrim> texts_;
  std::vector<std::vector<std::uint32_t>> rings_; // by Prim::text - 1, for Fill with more than one ring
  std::vector<HitArea> hits_;
  std::vector<TakenBox> taken_;
};

} // namespace sillwright
