// Requirements of bolts and washers in words.
#include "core/refit/asked.h"
#include "core/refit/slot_words.h"
#include "core/rules/bolts_in_sill.h"
#include "core/rules/word_parts.h"

namespace sillwright {

namespace {

using R = RuleId;

std::string countWords(const Asked& a) {
  const double least = boltsNeeded(a.layout, a.limits);
  return numberWords(least) + (least == 1 ? " bolt" : " bolts") + " or more in " + a.sill() +
         a.source(LimitKey::BoltCount);
}

// Which end of its piece of sill; both where none is named.
std::string sillEnd(const Asked& a) {
  const SillPiece* piece = a.sillPiece();
  if (!piece || !a.r.at)
    return {};
  return a.r.at->middle() < piece->box.s.middle() ? "left" : "right";
}

std::string farWords(const Asked& a) {
  const std::string end = sillEnd(a);
  const std::string which = end.empty() ? "first and last bolt" : end == "left" ? "first bolt" : "last bolt";
  return a.ofSill(which) + " at most " + a.much(a.limits[LimitKey::BoltEndFar]) + " from " +
         (end.empty() ? "its ends" : "its " + end + " end") + a.source(LimitKey::BoltEndFar);
}

std::string spacingWords(const Asked& a) {
  const Panel* panel = findIn(a.layout.wall->panels, a.id(1));
  const auto marked = panel ? markedSpacing(a.layout, *panel) : std::nullopt;
  if (marked)
    return a.ofSill("neighbouring bolts") + " at most " + a.much(*marked) + " apart under " + a.placed(1) +
           " (plans, its wall-end mark)";
  const SpacingLimit limit = spacingLimit(a.layout, a.limits, {});
  const bool tall = a.layout.limits->storeys > 2;
  return a.ofSill("neighbouring bolts") + " at most " + a.much(limit.inches) + " apart" +
         (limit.fromPlans ? " (plans)" : a.source(tall ? LimitKey::BoltSpacingTall : LimitKey::BoltSpacing));
}

std::string thirdWords(const Asked& a) {
  const SillPiece* piece = a.sillPiece();
  if (!piece)
    return a.bolts() + " in the middle third of its width";
  const double third = piece->box.d.length() / 3;
  const Interval marks = toMarks({third, 2 * third});
  return a.bolts() + " in the middle third of its width (" + a.much(marks.from) + " to " + a.much(marks.to) +
         " from its edges)" + a.source(LimitKey::BoltCount);
}

std::string sheathingWords(const Asked& a) {
  const Panel* panel = findIn(a.layout.wall->panels, a.id(1));
  const std::string strength =
      panel && panel->unitShear ? ", over " + numberWords(a.limits[LimitKey::WasherSheathingFrom]) + " plf" : "";
  return a.ofSill("washers") + " within " + a.much(a.limits[LimitKey::WasherSheathing]) +
         " of the sheathed edge under " + (a.id(1) ? a.placed(1) : std::string("a panel this strong")) + strength +
         a.source(LimitKey::WasherSheathing);
}

std::string washerWidths(const Asked& a) {
  for (const AnchorBody& anchor : a.layout.anchors)
    if (!anchor.isRod && anchor.washer)
      return " (" + a.much(anchor.washer->along) + " wide)";
  return {};
}

std::string gapWords(const Asked& a) {
  const std::string least = " at least " + a.diameters(LimitKey::BoltGap);
  return a.id(1) && a.kind(1) != PieceKind::Sill ? a.bolts() + least + " from " + a.placed(1)
                                                 : a.bolts() + least + " apart";
}

} // namespace

std::string boltRequirement(const Asked& a) {
  switch (a.r.rule) {
  case R::BoltCount:
    return countWords(a);
  case R::BoltEndFar:
    return farWords(a);
  case R::BoltEndNear:
    return a.bolts() + " from its ends at least " + a.diameters(LimitKey::BoltEndNearDiameters);
  case R::BoltSpacing:
    return spacingWords(a);
  case R::BoltThird:
    return thirdWords(a);
  case R::BoltOpening:
    return a.bolts() + " out of " + a.against("the openings");
  case R::BoltStud:
    return (a.id(1) ? a.ofSill("nuts") + " not under " : a.ofSill("bolts and washers") + " not under ") + a.obstacle();
  case R::BoltStrap:
    return a.bolts() + " clear of " + (a.id(1) ? a.placedStrap(1) : std::string("the straps"));
  case R::BoltSteel:
    return a.bolts() + " clear of " + a.against("what is cast in beside them");
  case R::BoltSplice:
    return a.ofSill("washers") + " not over the splice" + (a.r.at ? " at " + a.at(a.r.at->middle()) : std::string());
  case R::BoltGap:
    return gapWords(a);
  case R::BoltHook:
    return a.ofSill("hooks of the bolts") + " inside the concrete";
  case R::WasherSheathing:
    return sheathingWords(a);
  case R::WasherSill:
    return a.ofSill("washers") + " wholly on the sill";
  case R::WasherColumn:
    return a.ofSill("washers") + " not under " + a.obstacle();
  default:
    return a.ofSill("washers") + washerWidths(a) + " side by side, none over another";
  }
}

} // namespace sillwright
