// Sentences about rods.
#include <cmath>

#include "core/rules/telling.h"

namespace sillwright {

namespace {

using R = RuleId;

std::string coverSentence(const Telling& t, std::string_view whose) {
  if (t.f.measured < 0)
    return t.first() + std::string(whose) + " comes " + t.amount() + " out of " + faceWords(t.f);
  return t.first() + std::string(whose) + " is " + t.measured() + " from " + faceWords(t.f) + "; at least " +
         t.limit() + " is asked for";
}

} // namespace

std::string rodSentence(const Telling& t) {
  switch (t.f.rule) {
  case R::RodOffset:
    return t.first() + " stands " + t.measured() + (t.f.variant == 0 ? " too far from " : " too close to ") +
           t.piece(1, "", "its column") + " for its bracket; " + t.wanted();
  case R::RodEdge:
    return coverSentence(t, "") + " where its nut is torqued";
  case R::RodEmbed:
    return t.first() + " is " + t.measured() + " deep in the concrete; " + t.wanted();
  case R::RodThread:
    return t.f.variant == 1
               ? t.first() + " has " + t.measured() + " of thread to spare; " + t.wanted()
               : t.first() + " stands up " + t.measured() + "; sill, washer, nut and two threads need " + t.limit();
  case R::RodSteel:
    return t.isFix() ? t.first() + " touches " + t.bar()
                     : t.first() + " passes " + t.measured() + " clear of " + t.bar() + "; " + t.wanted();
  case R::RodCover:
    return coverSentence(t, " or its foot") + (t.f.measured < 0 ? "" : " over a bar");
  case R::RodOpening:
    return t.first() + " stands " + t.amount() + " inside " + t.opening();
  default:
    return t.first() + " leans " + (t.f.variant == 0 ? "right " : "left ") + t.measured() + " in 24\"; " + t.wanted();
  }
}

} // namespace sillwright
