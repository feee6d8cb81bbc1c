// One sentence a finding, for somebody who does not know the rule: what stands where, and what it needs.
#include <cmath>

#include "core/model/lookup.h"
#include "core/rules/rule_book.h"
#include "core/rules/word_parts.h"
#include "core/rules/wording.h"

namespace sillwright {

namespace {

using R = RuleId;

// The pieces and numbers of one finding, as words.
struct Telling {
  const Job& job;
  const Finding& f;

  std::string piece(std::size_t i, std::string_view kind, std::string_view unmarked) const {
    const bool marked = i < f.pieces.size() && !markOf(job, {f.wall, f.pieces[i]}).empty();
    return marked ? std::string(kind) + nameOf(job, f, i) : std::string(unmarked);
  }
  std::string first() const { return nameOf(job, f, 0); }
  std::string second() const { return nameOf(job, f, 1); }
  std::string bar() const { return piece(1, "bar ", "a bar"); }
  std::string opening() const { return piece(1, "opening ", "the opening"); }
  std::string sill(std::size_t i) const { return piece(i, "sill ", "the sill"); }

  std::string measured() const { return measureWords(job, std::abs(f.measured), f.limit); }
  std::string amount() const { return measureWords(job, std::abs(f.measured), 0); }
  std::string limit() const { return lengthWords(job, f.limit); }
  // As the rule book has it, also where the job lets the rule count for less: there a rule that knows no other level, and
  // contact, are still that.
  bool isFix() const {
    const std::vector<Level>& levels = rule(f.rule).levels;
    const bool only = levels.size() == 1 && levels.front() == Level::Fix;
    return f.level == Level::Fix || only || (f.limit == 0 && levels.front() == Level::Fix);
  }

  // How the measure stands to its limit: what must be, or what is aimed for.
  std::string wanted() const {
    if (!isFix())
      return limit() + " is aimed for";
    return (f.wanted == Wanted::AtMost ? "at most " : "at least ") + limit() + " is asked for";
  }
};

std::string touchesOr(const Telling& t, const std::string& other) {
  return t.isFix() ? t.first() + " touches " + other
                   : t.first() + " passes " + t.measured() + " clear of " + other + "; " + t.wanted();
}

std::string outOrNear(const Telling& t, const std::string& whose, const std::string& face) {
  if (!t.isFix())
    return whose + " ends " + t.measured() + " from " + face + "; " + t.wanted();
  return std::abs(t.f.measured) < 1e-6 ? whose + " comes to " + face : whose + " comes " + t.amount() + " out of " + face;
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
    return t.first() + " leans " + t.amount() + " at the nail that leaves " + t.second() + " first; there is room for " +
           t.limit();
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
  case R::BoltMatch:
    return t.first() + " stands up " + t.measured() + (t.f.variant == 1 ? " less" : " more") +
           " than most bolts of the wall; " + t.wanted();
  default:
    return "The washer of " + t.first() + " lies " + t.amount() + " over a splice of " + t.sill(1);
  }
}

std::string washerSentence(const Telling& t) {
  constexpr std::string_view edges[]{"outside edge", "inside edge", "left end", "right end"};
  const std::string whose = "The washer of " + t.first();
  switch (t.f.rule) {
  case R::WasherSheathing:
    return whose + " ends " + t.measured() + " short of the sheathed " + std::string(edges[t.f.variant % 2]) +
           " of the sill; " + t.wanted() + " under a panel this strong";
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

std::string columnSentence(const Telling& t) {
  switch (t.f.rule) {
  case R::ColumnSill:
    if (t.f.pieces.size() == 1)
      return t.first() + " has no sill under it";
    return t.first() + " stands " + t.amount() +
           (t.f.variant == 0   ? " past the end of "
            : t.f.variant == 1 ? " over a splice of "
                               : " past the inside edge of ") +
           t.sill(1);
  case R::ColumnOpening:
    return t.first() + " stands " + t.amount() + " inside " + t.opening();
  default:
    return t.first() + " and " + t.second() + " overlap by " + t.amount();
  }
}

std::string coverSentence(const Telling& t) {
  const std::string bar = t.piece(0, "Bar ", "A bar");
  if (t.f.measured < 0)
    return bar + " comes " + t.amount() + " out of " + faceWords(t.f) + "; " + t.wanted() + " over it";
  return bar + " is " + t.measured() + " from " + faceWords(t.f) + "; " + t.wanted();
}

std::string panelSentence(const Telling& t) {
  if (t.f.rule == R::PanelEnds)
    return std::string("The ") + (t.f.variant == 0 ? "left" : "right") + " end of " +
           t.piece(0, "panel ", "the panel") + " has no column";
  return t.piece(0, "Panel ", "The panel") + " is " + ratioWords(t.f.measured, t.f.limit) +
         " times as high as it is long; more than " + numberWords(t.f.limit) +
         (t.f.level == Level::Ask ? " is for the engineer" : " takes from its strength");
}

std::string formSentence(const Telling& t) {
  const std::string top = "The top of the form is " + t.measured();
  return t.f.measured < 0 ? top + " below the pour line" : top + " above the pour line; " + t.wanted();
}

std::string sentence(const Telling& t) {
  if (t.f.rule <= R::StrapMissing)
    return strapSentence(t);
  if (t.f.rule <= R::BoltMatch)
    return boltSentence(t);
  if (t.f.rule <= R::WasherWasher)
    return washerSentence(t);
  if (t.f.rule <= R::ColumnOverlap)
    return columnSentence(t);
  if (t.f.rule <= R::PanelSlender)
    return panelSentence(t);
  return t.f.rule == R::BarCover ? coverSentence(t) : formSentence(t);
}

} // namespace

std::string message(const Job& job, const Finding& finding) { return sentence({job, finding}) + "."; }

} // namespace sillwright
