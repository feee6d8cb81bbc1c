// Sentences about bars, the pour line and the forms.
#include <cmath>

#include "core/rules/telling.h"

namespace sillwright {

namespace {

using R = RuleId;

std::string coverSentence(const Telling& t) {
  const std::string bar = t.piece(0, "Bar ", "A bar");
  if (t.f.measured < 0)
    return bar + " comes " + t.amount() + " out of " + faceWords(t.f) + "; " + t.wanted() + " over it";
  return bar + " is " + t.measured() + " from " + faceWords(t.f) + "; " + t.wanted();
}

std::string barSentence(const Telling& t) {
  switch (t.f.rule) {
  case R::BarCover:
    return coverSentence(t);
  case R::BarClear:
    return t.piece(0, "Bar ", "A bar") + " is " + t.measured() + " clear of " + t.bar() + "; " + t.limit() +
           " lets the concrete through";
  case R::BarTop:
    return lengthWords(t.job, t.f.measured) +
           " of the wall has no No. 4 bar within 12\" of the top, and the job calls for one";
  default:
    if (t.f.variant >= 2)
      return std::string("No upright bar stands on the ") + (t.f.variant == 2 ? "left of " : "right of ") +
             t.piece(0, "opening ", "the opening");
    return std::string("The nearest upright bar on the ") + (t.f.variant == 0 ? "left of " : "right of ") +
           t.piece(0, "opening ", "the opening") + " is " + t.measured() + " away; at most " + t.limit() +
           " is asked for";
  }
}

std::string boardSentence(const Telling& t) {
  const std::string top = "The top of the form is " + t.measured();
  return t.f.measured < 0 ? top + " below the pour line" : top + " above the pour line; " + t.wanted();
}

std::string tapedSentence(const Telling& t) {
  switch (t.f.rule) {
  case R::PourShot:
    return t.piece(0, "Grade shot ", "A grade shot") + " is " + t.measured() +
           (t.f.variant == 0 ? " above" : " below") + " the pour line; " + t.wanted();
  case R::PourLevel:
    return t.piece(0, "Grade shot ", "A grade shot") + " is " + t.measured() + " higher than " +
           t.piece(1, "", "another") + "; within 20 ft at most " + t.limit() + " counts as level";
  case R::FormThickness:
    return "At " + t.piece(0, "grade shot ", "a grade shot") + " the forms stand " + t.measured() +
           (t.f.variant == 0 ? " too far apart" : " too close") + "; at most " + t.limit() + " is left to them";
  case R::FormSquare:
    return "A diagonal of the forms is " + t.measured() + (t.f.variant % 2 == 0 ? " longer" : " shorter") +
           " than on the plan; " +
           (t.f.variant < 2 ? "at most " + t.limit() + " counts as square" : t.limit() + " is aimed for") +
           " over such a length";
  default:
    return boardSentence(t);
  }
}

} // namespace

std::string formSentence(const Telling& t) {
  return t.f.rule <= R::BarOpening ? barSentence(t) : tapedSentence(t);
}

} // namespace sillwright
