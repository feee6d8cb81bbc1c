#include "core/refit/relaxation_words.h"

#include "core/refit/told.h"

namespace sillwright {

namespace {

using R = RuleId;

// Asked of one bolt; of a sill, or of all, it is asked of any.
bool isOfOne(const Told& t) {
  return t.id(0) && t.kind(0) != PieceKind::Sill;
}

// "a bolt", or the one that it is asked of.
std::string aBolt(const Told& t) {
  return isOfOne(t) ? t.mark(0) : "a bolt";
}
std::string aWasher(const Told& t) {
  return isOfOne(t) ? "the washer of " + t.mark(0) : "a washer";
}
// What would have to be farther away: of a bar along the wall, its end.
std::string wayOf(const Told& t, const char* unnamed) {
  const Bar* bar = findIn(t.layout.wall->bars, t.id(1));
  const std::string name = t.id(1) ? t.strap(1) : std::string(unnamed);
  return bar && bar->run == BarRun::Along ? "the end of " + name : name;
}
std::string other(const Told& t, const char* unnamed) {
  return t.id(1) ? t.name(1) : std::string(unnamed);
}

// S1, or what would be one.
std::string aStrap(const Told& t) {
  return t.kind(0) == PieceKind::Column ? t.strap(0) : t.mark(0);
}

std::string strapGiving(const Told& t) {
  const ConcreteFace* face = t.face();
  switch (t.r.rule) {
  case R::StrapEdge:
    return aStrap(t) + " " + t.by() + " nearer to the " +
           (face ? faceName(*face) : std::string("end of the concrete")) + " than its type says";
  case R::StrapLean:
  case R::StrapColumn:
    return aStrap(t) + " " + t.by() + " farther off the middle of " +
           (t.kind(0) == PieceKind::Column ? "its column" : other(t, "its column")) + " than its nails allow";
  case R::StrapLeanOpening:
    return aStrap(t) + " " + t.by() + " inside " + other(t, "the opening");
  case R::StrapSteel:
    return wayOf(t, "the bar") + " " + t.by() + " farther from " + aStrap(t);
  case R::StrapMissing:
    return "a strap " + t.by() + " farther from the end of the panel";
  default:
    return aStrap(t) + " " + t.by() + " past where its hook is inside the concrete";
  }
}

std::string boltGiving(const Told& t) {
  switch (t.r.rule) {
  case R::BoltCount:
    return aBolt(t) + " " + t.by() + " outside the middle third of its piece of sill";
  case R::BoltEndFar:
    return "the end bolt " + t.by() + " farther from the end of the sill";
  case R::BoltEndNear:
    return aBolt(t) + " " + t.by() + " nearer to the end of the sill";
  case R::BoltSpacing:
    return "two neighbouring bolts " + t.by() + " farther apart";
  case R::BoltOpening:
    return aBolt(t) + " " + t.by() + " inside " + other(t, "the opening");
  case R::BoltStud:
    return aBolt(t) + " or its washer " + t.by() + " under " + other(t, "the stud");
  case R::BoltSteel:
  case R::BoltStrap:
    return wayOf(t, "what is in the way") + " " + t.by() + " farther from " + (isOfOne(t) ? t.mark(0) : "the bolt");
  case R::BoltSplice:
    return aWasher(t) + " " + t.by() + " over the splice";
  case R::BoltGap:
    return aBolt(t) + " " + t.by() + " nearer to " + other(t, "its neighbour");
  case R::BoltHook:
    return "the hook of " + aBolt(t) + " " + t.by() + " out of the concrete";
  case R::WasherSill:
    return aWasher(t) + " " + t.by() + " over the edge of the sill";
  case R::WasherSheathing:
    return aWasher(t) + " " + t.by() + " along under the panel without reaching its sheathed edge";
  case R::WasherColumn:
    return aWasher(t) + " " + t.by() + " under " + other(t, "the stud");
  case R::WasherWasher:
    return "two washers " + t.by() + " over one another";
  default:
    return aBolt(t) + " " + t.by() + " into where that keeps it out";
  }
}

std::string otherGiving(const Told& t) {
  switch (t.r.rule) {
  case R::RodOffset:
    return t.mark(0) + " " + t.by() + " farther off the line of its bracket";
  case R::RodSteel:
    return wayOf(t, "the bar") + " " + t.by() + " farther from " + t.mark(0);
  case R::RodOpening:
  case R::ColumnOpening:
    return t.mark(0) + " " + t.by() + " inside " + other(t, "the opening");
  case R::ColumnSill:
    return t.mark(0) + " " + t.by() + " off its piece of sill";
  case R::ColumnOverlap:
    return other(t, "the stud") + " " + t.by() + " farther from " + t.mark(0);
  case R::PanelEnds:
    return "a column " + t.by() + " farther from the end of the panel";
  case R::BarCover:
    return t.mark(0) + " " + t.by() + " less covered";
  default:
    return t.by() + " less than is asked for";
  }
}

} // namespace

std::string givingWords(const WallLayout& layout, const Requirement& requirement, LengthStyle style) {
  const Told told{layout, requirement, style};
  if (!requirement.by || requirement.kind == Requirement::Kind::Stays)
    return {};
  if (requirement.kind == Requirement::Kind::Leeway)
    return told.name(0) + " " + told.by() + " beyond its leeway";
  if (requirement.rule <= R::StrapCapacity)
    return strapGiving(told);
  return requirement.rule <= R::WasherWasher ? boltGiving(told) : otherGiving(told);
}

} // namespace sillwright
