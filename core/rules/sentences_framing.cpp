// Sentences about columns, panels and sills.
#include <cmath>

#include "core/rules/telling.h"

namespace sillwright {

namespace {

using R = RuleId;

std::string percentWords(double value) {
  return numberWords(std::round(value * 10) / 10) + " %";
}

std::string madeUpOtherwise(const Telling& t) {
  const WallLine* wall = t.job.walls.find(t.f.wall);
  const Column* column = wall && !t.f.pieces.empty() ? findIn(wall->columns, t.f.pieces[0]) : nullptr;
  const Panel* panel = wall && t.f.pieces.size() > 1 ? findIn(wall->panels, t.f.pieces[1]) : nullptr;
  const WallEndMark* mark = panel ? findMark(t.job, t.f.variant == 1 ? panel->rightMark : panel->leftMark) : nullptr;
  if (!column || !mark || !mark->column)
    return t.first() + " is not made up as the mark of the panel calls for";
  return t.first() + " is " + print(column->makeUp) + "; mark " + mark->mark + " at its end of " +
         t.piece(1, "panel ", "the panel") + " calls for " + print(*mark->column);
}

std::string columnSentence(const Telling& t) {
  switch (t.f.rule) {
  case R::ColumnPlan:
    return madeUpOtherwise(t);
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

std::string panelSentence(const Telling& t) {
  if (t.f.rule == R::PanelEnds)
    return std::string("The ") + (t.f.variant == 0 ? "left" : "right") + " end of " +
           t.piece(0, "panel ", "the panel") + " has no column";
  if (t.f.rule == R::PanelLever)
    return "The hold-downs of " + t.piece(0, "panel ", "the panel") +
           " stand closer than on the plans: the tie force grows by " + percentWords(t.f.measured) + "; " +
           percentWords(t.f.limit) + (t.f.ruleLevel == Level::Ask ? " is for the engineer" : " is watched");
  if (t.f.rule == R::PanelTie)
    return std::string("The tie force at the ") + (t.f.variant == 0 ? "left" : "right") + " end of " +
           t.piece(0, "panel ", "the panel") + " is " + t.pounds() + "; " +
           t.endMark(0, t.f.variant == 1) + " requires its hold-down to carry only " + t.poundsWanted();
  return t.piece(0, "Panel ", "The panel") + " is " + ratioWords(t.f.measured, t.f.limit) +
         " times as high as it is long; more than " + numberWords(t.f.limit) +
         (t.f.ruleLevel == Level::Ask ? " is for the engineer" : " takes from its strength");
}

std::string concreteSentence(const Telling& t) {
  constexpr std::string_view past[]{"past the outside face", "past the inside face", "past the left end",
                                    "past the right end"};
  const std::string sill = t.piece(0, "Sill ", "A sill");
  if (t.f.variant >= 4)
    return "A piece of " + t.piece(0, "sill ", "the sill") + " lies " + t.amount() +
           (t.f.variant == 4 ? " above" : " below") + " the pour line under part of it";
  return sill + " lies " + t.amount() + " " + std::string(past[t.f.variant]) + " of the concrete" +
         (t.f.limit > 0 ? "; the job allows " + t.limit() : std::string());
}

std::string sillSentence(const Telling& t) {
  switch (t.f.rule) {
  case R::SillCorner:
    return t.piece(0, "Sill ", "The sill") +
           (t.f.variant < 2 ? " and that of the next wall overlap by " : " leaves a gap of ") + t.amount() +
           (t.f.variant < 2 ? " at the corner on its " : " to that of the next wall at the corner on its ") +
           (t.f.variant % 2 == 0 ? "left" : "right");
  case R::SillConcrete:
    return concreteSentence(t);
  case R::SillMark:
    return t.piece(0, "Sill ", "The sill") + " is not of the size that the mark of a panel on it calls for";
  default:
    return "A piece of " + t.piece(0, "sill ", "the sill") + " is " + printLength(t.f.measured, t.job.units) +
           " long; the longest lumber is " + printLength(t.f.limit, t.job.units);
  }
}

} // namespace

std::string framingSentence(const Telling& t) {
  if (t.f.rule <= R::ColumnPlan)
    return columnSentence(t);
  return t.f.rule <= R::PanelTie ? panelSentence(t) : sillSentence(t);
}

} // namespace sillwright
