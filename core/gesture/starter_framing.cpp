#include "core/gesture/starter_framing.h"

#include <algorithm>
#include <cmath>

#include "core/edit/operations.h"
#include "core/model/place.h"
#include "core/standards/lumber.h"

namespace sillwright {

namespace {

constexpr Nominal sillSize{2, 6};
constexpr double longestSill = 240; // in: lumber comes up to 20 ft
constexpr double shortestSill = 6, shortestPiece = 48;
constexpr double besideSplice = 14; // in: the end bolt of a piece, its washer, a stud

// From the corner to the framing of this wall.
double framingStart(const std::optional<Neighbour>& neighbour, EndFraming own, const WallLine& wall) {
  if (!neighbour)
    return 0;
  const double width = neighbour->sillWidth > 0 ? neighbour->sillWidth : dressedWidth(sillSize);
  if (neighbour->insideCorner)
    return own == EndFraming::Butts ? -wall.sillInset : -(wall.sillInset + width);
  return own == EndFraming::Butts ? neighbour->sillInset + width : wall.sillInset;
}

class Framer {
public:
  Framer(const Job& given, Id givenWall, const FramedAs& givenAs)
      : job(given), wall(givenWall), as(givenAs), framing(framingOf(job, *job.walls.find(wall))) {
    if (!job.marks->empty())
      mark = job.marks->front();
  }

  Job frame() {
    for (const Opening& opening : as.openings)
      add(opening);
    columns();
    sills();
    panels();
    if (WallLine line = *job.walls.find(wall); !line.studs) {
      line.studs = StudLayout{};
      job = replaceWall(job, line);
    }
    return job;
  }

private:
  void add(Piece piece) { job = addPiece(job, wall, std::move(piece)).first; }

  void sills() {
    double from = framing.from;
    for (const Opening& opening : as.openings)
      if (opening.kind != OpeningKind::Window) {
        sill({from, opening.from});
        from = opening.to;
      }
    sill({from, framing.to});
  }

  void sill(Interval s) {
    if (s.length() < shortestSill)
      return;
    Sill sill;
    sill.from = s.from;
    sill.to = s.to;
    sill.nominal = mark && mark->sill ? *mark->sill : sillSize;
    for (double from = s.from; s.to - from > longestSill; from = sill.splices.back())
      sill.splices.push_back(spliceAfter(from, s.to));
    add(sill);
  }

  // As far on as lumber comes, where a bolt on each side of it finds room, with no short piece left at the end.
  double spliceAfter(double from, double end) const {
    const double last = std::min(from + longestSill, end - shortestPiece);
    for (double at = last; at > from + shortestPiece; at -= 1)
      if (hasRoom(at))
        return at;
    return last;
  }

  bool hasRoom(double splice) const {
    const std::vector<Column>& all = job.walls.find(wall)->columns;
    return std::none_of(all.begin(), all.end(), [&](const Column& each) {
      return std::abs(each.station - splice) < alongWall(each.makeUp) / 2 + besideSplice;
    });
  }

  void column(double centre, const MakeUp& makeUp, ColumnRole role) {
    Column column;
    column.station = centre;
    column.makeUp = makeUp;
    column.role = role;
    add(column);
  }

  void columns() {
    const MakeUp post = mark && mark->column ? *mark->column : MakeUp{1, {6, 6}};
    const MakeUp king = mark && mark->column ? *mark->column : MakeUp{2, {2, 6}};
    const MakeUp trimmer{1, {2, 6}};
    const double postHalf = alongWall(post) / 2, kingHalf = alongWall(king) / 2, trimmerWide = alongWall(trimmer);
    column(framing.from + postHalf, post, ColumnRole::Post);
    for (const Opening& opening : as.openings) {
      column(opening.from - trimmerWide - kingHalf, king, ColumnRole::King);
      column(opening.from - trimmerWide / 2, trimmer, ColumnRole::Trimmer);
      column(opening.to + trimmerWide / 2, trimmer, ColumnRole::Trimmer);
      column(opening.to + trimmerWide + kingHalf, king, ColumnRole::King);
    }
    column(framing.to - postHalf, post, ColumnRole::Post);
  }

  void panels() {
    for (const Interval s : as.panels) {
      Panel panel;
      panel.from = s.from;
      panel.to = s.to;
      panel.height = job.walls.find(wall)->wallHeight;
      if (mark)
        panel.leftMark = panel.rightMark = mark->mark;
      add(panel);
    }
  }

  Job job;
  Id wall;
  const FramedAs& as;
  Interval framing;
  std::optional<WallEndMark> mark;
};

} // namespace

Interval framingOf(const Job& job, const WallLine& wall) {
  const WallPlace place = placeOf(job, wall);
  return {framingStart(place.atStart, wall.startFraming, wall),
          place.length - framingStart(place.atEnd, wall.endFraming, wall)};
}

Job framed(const Job& job, Id wall, const FramedAs& as) {
  return Framer(job, wall, as).frame();
}

} // namespace sillwright
