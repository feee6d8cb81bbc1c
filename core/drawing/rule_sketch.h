// The pencil of the rules' pictures: everything is said on a ground of 220 x 130, x to the right, y down, and drawn at
// the size of the picture, strokes and letters with it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/drawing/hatch.h"
#include "core/drawing/view.h"

namespace sillwright::sketch {

inline constexpr double groundWidth = 220, groundHeight = 130;
inline constexpr double right = groundWidth, foot = groundHeight; // the edges of the ground

enum class Side { Over, Under, Left, Right };

// Which sides of an area are real edges; it goes on past the others.
struct Edges {
  bool top = true, right = false, bottom = false, left = false;
};

class Sketch {
public:
  Sketch(Drawing& drawing, const Bounds& box, Medium medium);
  bool paper() const { return medium_ == Medium::Paper; }

  void fill(const Bounds& b, Ink ink);
  void fill(const Polygon2& outline, Ink ink);
  void rect(const Bounds& b, Ink ink, double width);
  void box(const Bounds& b, Ink ground, Ink line, double width); // fill and rect
  void loop(const Polygon2& outline, Ink ink, double width);
  void line(Point2 a, Point2 b, Ink ink, double width);
  void path(const Polygon2& points, Ink ink, double width);
  void dashed(const Polygon2& points, double on, double off, Ink ink, double width, bool closed = false);
  void disc(Point2 centre, double radius, Ink ink);
  void ring(Point2 centre, double radius, Ink ink, double width);

  void concreteMarks(const Polygon2& outline);
  void earthMarks(const Polygon2& outline);
  void woodRings(const Bounds& b);
  void hookEnd(Point2 at, double radius, bool away);
  void crowsFoot(Point2 at, Pointing pointing);

  // Where a wall falls short.
  void flag(Level level, const Bounds& region);

  // The base line of the words starts, centres or ends at the point. ground: what they stand on.
  void say(Point2 at, std::string_view words, Anchor anchor = Anchor::Middle, Ink ground = Ink::Paper,
           Weight weight = Weight::Bold);
  // The name of a piece.
  void name(Point2 at, std::string_view words, Anchor anchor = Anchor::Middle, Ink ground = Ink::Paper);

  // Dimension lines with crow's feet; from outside where the length is short. The words stand beside their middle on
  // the side given, or past the end of the line.
  void across(double y, double x0, double x1, std::string_view words, Side side = Side::Over, Ink ground = Ink::Paper);
  void upright(double x, double y0, double y1, std::string_view words, Side side = Side::Right,
               Ink ground = Ink::Paper);
  // From a piece to the dimension line that measures it.
  void witness(Point2 a, Point2 b);
  // From words to what they name; ends in a dot.
  void leader(Point2 from, Point2 to);
  // A force.
  void arrow(Point2 from, Point2 to, Ink ink = Ink::Text);

private:
  Point2 at(Point2 p) const { return {origin_.x + p.x * scale_, origin_.y + p.y * scale_}; }
  Bounds at(const Bounds& b) const;
  Polygon2 at(const Polygon2& points) const;

  Drawing& drawing_;
  Medium medium_;
  double scale_ = 1;
  Point2 origin_;
};

// The default of a limit by its name in the limits table, in words: 1/8", 7 diameters, 2 to 1, then the words after
// it. Where the table has no such row, the words otherwise.
std::string limitWords(std::string_view name, std::string_view after, std::string_view otherwise);

struct RulePicture {
  std::string_view rule;
  void (*draw)(Sketch&);
};
std::span<const RulePicture> strapPictures();
std::span<const RulePicture> strapCutPictures();
std::span<const RulePicture> boltPictures();
std::span<const RulePicture> boltClearPictures();
std::span<const RulePicture> washerPictures();
std::span<const RulePicture> rodPictures();
std::span<const RulePicture> framingPictures();
std::span<const RulePicture> panelPictures();
std::span<const RulePicture> concretePictures();

} // namespace sillwright::sketch
