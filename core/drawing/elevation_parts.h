// What the parts of the elevation share; for the elevation's own files only. Page points unless a name says inches.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/drawing/elevation.h"

namespace sillwright::elevation {

// A piece as it is seen: where it answers the pointer, is selected and leaves its ghost.
struct Seen {
  Id id;
  PieceKind kind = PieceKind::Strap;
  Interval s; // in
  Interval z; // in
};

struct Scene {
  const ElevationInput& input;
  const WallLayout& wall;
  const ElevationView& view;
  Drawing& drawing;
  Bounds frame;              // nothing outside: the window, on paper also the ends of the stretch
  Interval stations;         // in, what of the wall is within the frame
  bool paper = false;
  double blade = 17;         // height of the tape
  std::vector<Seen> pieces;  // visible ones, lowest first
  std::unordered_map<Id, Level> worst;
  std::vector<Bounds> keepOff; // hardware, tapes and flags: no label there
  std::vector<LabelRequest> requests;
  std::vector<Bounds> flags{};           // where the hatches are
  std::optional<Bounds> silent{};        // nothing is said there: the close look that was open says it
  std::vector<std::string> unsaidBars{}; // marks and stations that found no room under the wall
  std::vector<std::pair<Id, Bounds>> named{}; // names written beside pieces: they answer the pointer for them

  double x(double s) const { return view.x(s); }
  double y(double z) const { return view.y(z); }
  bool sees(Interval s) const { return s.to >= stations.from && s.from <= stations.to && !view.hides(s); }
  bool sees(double s) const { return sees(Interval{s, s}); }
  Bounds box(Interval s, Interval z) const;
  Bounds within(const Bounds& box) const; // cut off a little outside the frame, so that cut edges do not show
};

Ink inkOf(const Scene& scene, Id piece, Ink otherwise);
bool isInHand(const Scene& scene, Id piece);

void fillBox(Scene& scene, const Bounds& box, Ink fill, Ink edge, double width);
// Writes where nothing else is written; false where it is not free or leaves the frame.
bool say(Scene& scene, std::string name, Point2 at, std::string_view words, Ink ink, const TextStyle& style);
// The same in other room than the frame: beside a stretch that is cut out of a wall.
bool sayWithin(Scene& scene, const Bounds& room, std::string name, Point2 at, std::string_view words, Ink ink,
               const TextStyle& style);
Bounds textBox(Point2 at, std::string_view words, const TextStyle& style);

inline TextStyle styled(double size, Weight weight, Anchor anchor, Ink halo = Ink::None, double turn = 0) {
  return {size, weight, anchor, turn, halo, 4};
}
inline std::string lengthOf(const Scene& scene, double inches) {
  return printLength(inches, scene.input.job->units);
}

void collectPieces(Scene& scene);
void addHits(Scene& scene);

void drawGround(Scene& scene);
void drawConcreteBody(Scene& scene);
void drawForms(Scene& scene);
void drawBars(Scene& scene);
void drawFraming(Scene& scene);
void drawEmbedded(Scene& scene);
void drawPourLine(Scene& scene);
void drawFormTop(Scene& scene);
void drawAbove(Scene& scene);
void drawPairLinks(Scene& scene);
void drawFlags(Scene& scene);
void drawInHand(Scene& scene);
void drawSlots(Scene& scene, const InHand& hand);
void drawEdgesInHand(Scene& scene); // in a close look only
void nameBars(Scene& scene);        // the same
void drawMarks(Scene& scene);
void drawSelection(Scene& scene);
void drawDimensions(Scene& scene);
void drawRunningRows(Scene& scene); // running dimensions from the hook, under the wall
void drawBreaks(Scene& scene);
void keepOffFolds(Scene& scene); // before anything is written
void drawFolds(Scene& scene);
void placeFlagLabels(Scene& scene, ElevationDrawing& result);
void drawCloseLook(Scene& scene, ElevationDrawing& result); // last: it keeps off what is there

} // namespace sillwright::elevation
