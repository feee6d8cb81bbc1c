// One sentence a finding, for somebody who does not know the rule: what stands where, and what it needs.
#include <cmath>

#include "core/rules/measure.h"
#include "core/rules/telling.h"
#include "core/rules/wording.h"

namespace sillwright {

namespace {

using R = RuleId;

std::string touchesOr(const Telling& t, const std::string& other) {
  return t.isFix() ? t.first() + " touches " + other
                   : t.first() + " passes " + t.measured() + " clear of " + other + "; " + t.wanted();
}

std::string outOrNear(const Telling& t, const std::string& whose, const std::string& face) {
  if (!t.isFix())
    return whose + " ends " + t.measured() + " from " + face + "; " + t.wanted();
  return std::abs(t.f.measured) < 1e-6 ? whose + " comes to " + face
                                       : whose + " comes " + t.amount() + " out of " + face;
}

std::string edgeSentence(const Telling& t) {
  if (t.f.measured < 0)
    return t.first() + " hangs " + t.amount() + " past " + edgeWords(t.f) + "; " + t.wanted();
  return "The plate of " + t.first() + " is " + t.measured() + " from " + edgeWords(t.f) + "; " + t.wanted();
}

std::string hangSentence(const Telling& t) {
  const std::string limit = t.f.wanted == Wanted::AtLeast ? " starts at " : " ends at ";
  return "The form top is " + t.measured() + (t.f.measured < 0 ? " below" : " above") + " the joint line of " +
         t.first() + "; the reach of its hanger" + limit + t.limit();
}

std::string strapSentence(const Telling& t) {
  switch (t.f.rule) {
  case R::StrapEdge:
    return edgeSentence(t);
  case R::StrapJoint:
    return "The joint line of " + t.first() + " is " + t.measured() + (t.f.variant == 1 ? " below" : " above") +
           " the pour line; " + t.wanted();
  case R::StrapPair:
    return t.first() + " and " + t.second() + " hang " + t.measured() + " apart in height; " + t.wanted();
  case R::StrapLean:
    return t.first() + " leans " + t.amount() + " at the nail that leaves " + t.second() +
           " first; there is room for " + t.limit();
  case R::StrapLeanOpening:
    return t.first() + " stands " + t.amount() + " inside " + t.opening();
  case R::StrapColumn:
    if (t.f.variant == 1)
      return t.first() + " belongs to no column; its nails need one";
    return numberWords(t.f.measured) + (t.f.measured == 1 ? " nail of " : " nails of ") + t.first() + " " +
           (t.f.measured == 1 ? "misses " : "miss ") + t.second() + "; every nail lands on the column";
  case R::StrapNailEdge:
    return "Nails of " + t.first() + " come " + t.measured() + " to the edge of their ply in " + t.second() + "; " +
           t.wanted();
  case R::StrapSeam:
    return numberWords(t.f.measured) + (t.f.measured == 1 ? " nail of " : " nails of ") + t.first() + " " +
           (t.f.measured == 1 ? "is" : "are") + " on the seam between two plies of " + t.second() +
           "; ask before nailing there";
  case R::StrapNailDepth:
    return "The nails of " + t.first() + " go " + t.measured() + " into " + t.second() + "; " +
           (t.isFix() ? "at least " + t.limit() + " is asked for" : t.limit() + " gives them their full value");
  case R::StrapSteel:
    return touchesOr(t, t.bar());
  case R::StrapDepth:
    return outOrNear(t, "The hook of " + t.first(), "the bottom of the concrete");
  case R::StrapBack:
    return outOrNear(t, "The hook of " + t.first(), "the inside face of the concrete");
  case R::StrapHang:
    return hangSentence(t);
  case R::StrapPlumb:
    return t.first() + " leans " + (t.f.variant == 0 ? "right " : "left ") + t.measured() + " in 24\"; " + t.wanted();
  case R::StrapType:
    return t.f.variant == 0 ? t.first() + " is not of the type that the mark at its end of " +
                                  t.piece(1, "panel ", "the panel") + " calls for"
                            : t.first() + " may not be nailed to a column made up like " + t.second();
  case R::StrapCapacity:
    return t.first() + " is stated to hold " + t.pounds() + "; " + t.endMark(1, t.f.variant == 1) +
           " requires " + t.poundsWanted();
  default:
    return std::string("The ") + (t.f.variant == 0 ? "left" : "right") + " end of " +
           t.piece(0, "panel ", "the panel") + " has no strap, and its mark calls for one";
  }
}

std::string countSentence(const Telling& t) {
  if (t.f.variant == 1)
    return t.first() + " stands " + t.measured() + " from the middle of its piece of sill; at most " + t.limit() +
           " keeps it in the middle third";
  return "A piece of " + t.sill(0) + " has " + (t.f.measured == 0 ? std::string("no") : numberWords(t.f.measured)) +
         (t.f.measured == 1 ? " bolt; at least " : " bolts; at least ") + numberWords(t.f.limit) + " asked for";
}

std::string studSentence(const Telling& t) {
  return t.f.variant == 1 ? "The nut of " + t.first() + " is " + t.amount() + " under " + t.second()
                          : t.first() + " or its washer is " + t.amount() + " under a stud";
}

std::string threadSentence(const Telling& t) {
  if (t.f.variant == 1)
    return t.first() + " has " + t.measured() + " of thread to spare; " + t.wanted();
  return t.first() + " stands up " + t.measured() + "; sill, washers, nut and two threads need " + t.limit();
}

std::string boltCoverSentence(const Telling& t) {
  if (t.f.measured < 0)
    return t.first() + " or its hook comes " + t.amount() + " out of " + faceWords(t.f);
  return t.first() + " or its hook is " + t.measured() + " from " + faceWords(t.f) + "; at least " + t.limit() +
         " is asked for over a bar";
}

std::string hookSentence(const Telling& t) {
  switch (t.f.variant) {
  case 0:
    return "The hook of " + t.first() + " does not point inward, toward the steel";
  case 3:
    return "The hook of " + t.first() + " comes " + t.amount() + " out of the concrete";
  default:
    return "The hook of " + t.first() + " is " + t.measured() + " long from the face of its shank; " +
           (t.f.variant == 1 ? "at least " : "at most ") + t.limit() + " counts";
  }
}

std::string boltSentence(const Telling& t) {
  switch (t.f.rule) {
  case R::BoltCount:
    return countSentence(t);
  case R::BoltEndFar:
  case R::BoltEndNear:
    return t.first() + " stands " + t.measured() + " from the " + (t.f.variant == 0 ? "left" : "right") +
           " end of its piece of sill; " + t.wanted();
  case R::BoltSpacing:
    return t.first() + " and " + t.second() + " are " + t.measured() + " apart; " + t.wanted();
  case R::BoltThird:
    return t.first() + " stands " + t.measured() + " from the edge of the sill; the middle third begins at " +
           t.limit();
  case R::BoltEmbed:
    return t.first() + " is " + t.measured() + " deep in the concrete; " + t.wanted();
  case R::BoltThread:
    return threadSentence(t);
  case R::BoltOpening:
    return t.first() + " stands " + t.amount() + " inside " + t.opening();
  case R::BoltStud:
    return studSentence(t);
  case R::BoltSteel:
    return touchesOr(t, t.bar());
  case R::BoltStrap:
    return touchesOr(t, t.second());
  case R::BoltRunOut:
    return "The thread of " + t.first() + " ends " + t.amount() + " above the underside of its nut";
  case R::BoltGap:
    return t.first() + " and " + t.second() + " stand " + t.measured() + " apart; at least " + t.limit() +
           (t.isFix() ? " is asked for" : " is asked for where their nuts are torqued");
  case R::BoltCover:
    return boltCoverSentence(t);
  case R::BoltHook:
    return hookSentence(t);
  case R::BoltShear:
    return "The bolts under " + t.piece(0, "panel ", "the panel") + " carry " + t.pounds() +
           " together; its shear is " + t.poundsWanted();
  case R::BoltMatch:
    return t.first() + " stands up " + t.measured() + (t.f.variant == 1 ? " less" : " more") +
           " than most bolts of the wall; " + t.wanted();
  default:
    return "The washer of " + t.first() + " lies " + t.amount() + " over a splice of " + t.sill(1);
  }
}

// Both limits of the trap, as places for the tape: inward to a mark.
std::string windowWords(const Telling& t) {
  if (!t.f.window)
    return {};
  const double from = byToMark(0, t.f.window->from), to = -byToMark(0, -t.f.window->to);
  if (to < from)
    return ", and this washer cannot do that while its bolt is in the middle third of the sill";
  return ", and its bolt does that and is in the middle third of the sill, too, only from " + lengthWords(t.job, from) +
         " to " + lengthWords(t.job, to) + " in from that edge";
}

std::string sizeSentence(const Telling& t) {
  if (t.f.variant == 0)
    return t.first() + " has no plate washer; one of at least " + t.limit() + " square is asked for";
  if (t.f.variant == 2)
    return "The washer of " + t.first() + " is " + plateWords(t.job, t.f.measured) + " thick; at least " +
           plateWords(t.job, t.f.limit) + " is asked for";
  return "The washer of " + t.first() + " is " + t.measured() + " wide; " + t.wanted();
}

std::string slotSentence(const Telling& t) {
  const std::string slot = "The slot in the washer of " + t.first();
  switch (t.f.variant) {
  case 0:
    return slot + " is " + t.measured() + " wide; " + t.wanted();
  case 1:
    return slot + " is " + t.measured() + " long; " + t.wanted();
  case 2:
    return slot + " has no cut washer over it";
  default:
    return "The washer of " + t.first() + " is slid " + t.measured() + "; its hole leaves room for " + t.limit();
  }
}

std::string washerSentence(const Telling& t) {
  constexpr std::string_view edges[]{"outside edge", "inside edge", "left end", "right end"};
  const std::string whose = "The washer of " + t.first();
  switch (t.f.rule) {
  case R::WasherSheathing:
    return whose + " ends " + t.measured() + " short of the sheathed " + std::string(edges[t.f.variant % 2]) +
           " of the sill; " + t.wanted() + " under a panel this strong" + windowWords(t);
  case R::WasherSize:
    return sizeSentence(t);
  case R::WasherSlot:
    return slotSentence(t);
  case R::WasherSill:
    if (t.f.variant == 4)
      return t.first() + " stands where no sill lies on it";
    return whose + " hangs " + t.amount() + " over the " + std::string(edges[t.f.variant % 4]) + " of the sill";
  case R::WasherColumn:
    return t.isFix() ? whose + " is " + t.amount() + " under " + t.second()
                     : whose + " is " + t.measured() + " from " + t.second() + "; " + t.wanted();
  default:
    return "The washers of " + t.first() + " and " + t.second() + " overlap by " + t.amount();
  }
}

std::string sentence(const Telling& t) {
  if (t.f.rule <= R::StrapCapacity)
    return strapSentence(t);
  if (t.f.rule <= R::BoltShear)
    return boltSentence(t);
  if (t.f.rule <= R::WasherWasher)
    return washerSentence(t);
  if (t.f.rule <= R::RodPlumb)
    return rodSentence(t);
  return t.f.rule <= R::SillPiece ? framingSentence(t) : formSentence(t);
}

} // namespace

std::string message(const Job& job, const Finding& finding) {
  return sentence({job, finding}) + ".";
}

} // namespace sillwright
