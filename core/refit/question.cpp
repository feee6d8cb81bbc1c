#include "core/refit/question.h"

#include <algorithm>

#include "core/refit/refit_words.h"
#include "core/refit/relaxation_words.h"
#include "core/refit/told.h"
#include "core/rules/panel_ends.h"

namespace sillwright {

namespace {

// Every sentence of the page.
constexpr const char* title = "Question to the engineer";
constexpr const char* job = "Job: ";
constexpr const char* plans = "Plans: ";
constexpr const char* wall = "Wall: ";
constexpr const char* toBeSet = "To be set: ";
constexpr const char* collide = "With openings, framing and steel where they are now, these cannot all hold together; "
                                "without any one of them they can:";
constexpr const char* collideAlone = "With openings, framing and steel where they are now, this cannot hold:";
constexpr const char* shortBy = "Short by ";
constexpr const char* shortByEnd = " at the least.";
constexpr const char* notShort = "No one of them gives by an amount: one of them would have to go altogether.";
constexpr const char* notShortAlone = "It gives by no amount: it would have to go altogether.";
constexpr const char* givingHead = "What each one alone would have to give, all else kept, the smallest first:";
constexpr const char* givingHeadAlone = "What it would have to give, all else kept:";
constexpr const char* notByAmountOne = " gives by no amount: it would have to go altogether.";
constexpr const char* notByAmountMany = " give by no amount: one of them would have to go altogether.";
constexpr const char* asked = "Which of these may give, and by how much?";
constexpr const char* untilAnswered = "Nothing of this is changed on site before there is an answer.";
constexpr const char* caution =
    "The approved plans, the engineer of record, the hardware's own instructions, the local code and the inspector "
    "govern. Sillwright states measures against limits; it approves nothing.";

// ---- what is to be set ------------------------------------------------------------------------------------------

std::string joined(const std::vector<std::string>& parts, const char* between) {
  std::string all;
  for (const std::string& part : parts)
    all += (all.empty() ? "" : between) + part;
  return all;
}

std::string columnBehind(const WallLine& line, Id id) {
  const Column* column = findIn(line.columns, id);
  return column ? namedPiece(line, id) + " (" + print(column->makeUp) + ")" : std::string();
}

// ", for mark HD1 at the left end of panel P1"
std::string calledFor(const WallLayout& layout, const PanelEnd& end) {
  return ", " + (end.mark ? "for mark " + end.mark->mark + " " : std::string()) + "at the " +
         (end.side == Side::Left ? "left" : "right") + " end of " + namedPiece(*layout.wall, end.panel->id);
}

std::string calledFor(const WallLayout& layout, Id holdDown) {
  for (const PanelEnd& end : panelEnds(layout))
    if ((end.strap && end.strap->id == holdDown) || (end.rod && end.rod->id == holdDown))
      return calledFor(layout, end);
  return {};
}

// The strap that a panel end lacks, on the column that it would hang on; empty where none is lacking there.
std::string strapToAdd(const WallLayout& layout, Id column) {
  for (const PanelEnd& end : panelEnds(layout)) {
    const StrapType* type = end.mark ? findStrapType(*layout.types, end.mark->strapType) : nullptr;
    if (type && !end.strap && end.column && end.column->id == column)
      return "a strap (" + type->name + "), to be added on " + columnBehind(*layout.wall, column) +
             calledFor(layout, end);
  }
  return {};
}

std::string strapToSet(const WallLayout& layout, const Strap& strap) {
  const StrapType* type = findStrapType(*layout.types, strap.type);
  const std::string column = columnBehind(*layout.wall, strap.column);
  return namedPiece(*layout.wall, strap.id) + (type && !type->name.empty() ? " (" + type->name + ")" : "") +
         (column.empty() ? "" : " on " + column) + calledFor(layout, strap.id);
}

std::string rodToSet(const WallLayout& layout, const Rod& rod) {
  const RodType* type = findRodType(*layout.types, rod.type);
  const std::string column = columnBehind(*layout.wall, rod.column);
  return namedPiece(*layout.wall, rod.id) + (type && !type->name.empty() ? " (" + type->name + ")" : "") +
         (column.empty() ? "" : " beside " + column) + calledFor(layout, rod.id);
}

// The bolts of a sill, with the types that they are of.
std::string boltsToSet(const WallLayout& layout, const Requirement& requirement, LengthStyle style) {
  const Told told{layout, requirement, style};
  std::vector<std::string> types;
  for (const AnchorBody& anchor : layout.anchors)
    if (!anchor.isRod && anchor.sillPiece && layout.sills[*anchor.sillPiece].sill == told.id(0) &&
        std::find(types.begin(), types.end(), anchor.boltType->name) == types.end())
      types.push_back(anchor.boltType->name);
  return "anchor bolts" + (types.empty() ? std::string() : " (" + joined(types, "; ") + ")") + " through " +
         told.sill();
}

std::string pieceToSet(const WallLayout& layout, const Requirement& requirement, LengthStyle style) {
  const Told told{layout, requirement, style};
  if (const Strap* strap = findIn(layout.wall->straps, told.id(0)))
    return strapToSet(layout, *strap);
  if (const Rod* rod = findIn(layout.wall->rods, told.id(0)))
    return rodToSet(layout, *rod);
  if (told.kind(0) == PieceKind::Sill)
    return boltsToSet(layout, requirement, style);
  const std::string added = told.kind(0) == PieceKind::Column ? strapToAdd(layout, told.id(0)) : std::string();
  return !added.empty() ? added : told.kind(0) ? told.placed(0) : std::string();
}

// A column that a strap or rod is told with is not told again.
std::string whatIsToBeSet(const WallLayout& layout, const std::vector<Requirement>& requirements, LengthStyle style) {
  std::vector<std::string> pieces;
  for (const bool columns : {false, true})
    for (const Requirement& requirement : requirements) {
      if (requirement.pieces.empty() || columns != (findIn(layout.wall->columns, requirement.pieces[0]) != nullptr))
        continue;
      const std::string words = pieceToSet(layout, requirement, style);
      const std::string name = namedPiece(*layout.wall, requirement.pieces[0]) + " (";
      const bool told = std::any_of(pieces.begin(), pieces.end(), [&](const std::string& piece) {
        return piece == words || (columns && piece.find(name) != std::string::npos);
      });
      if (!words.empty() && !told)
        pieces.push_back(words);
    }
  return pieces.empty() ? std::string() : joined(pieces, "; ") + ".";
}

// ---- what it would take -----------------------------------------------------------------------------------------

// "1", "1 and 3", "1, 2 and 3"
std::string numbers(const std::vector<int>& list) {
  std::string words;
  for (std::size_t i = 0; i < list.size(); ++i)
    words += (i == 0 ? "" : i + 1 == list.size() ? " and " : ", ") + std::to_string(list[i]);
  return words;
}

void addGiving(Question& question, const WallLayout& layout, const std::vector<Requirement>& requirements,
               LengthStyle style) {
  std::vector<int> given, kept;
  for (std::size_t i = 0; i < requirements.size(); ++i)
    (givingWords(layout, requirements[i], style).empty() ? kept : given).push_back(static_cast<int>(i) + 1);
  const auto at = [&](int number) -> const Requirement& { return requirements[static_cast<std::size_t>(number) - 1]; };
  std::stable_sort(given.begin(), given.end(), [&](int a, int b) { return *at(a).by < *at(b).by; });
  for (const int number : given)
    question.giving.push_back({number, givingWords(layout, at(number), style)});
  const bool alone = requirements.size() == 1;
  if (given.empty()) {
    question.shortBy = alone ? notShortAlone : notShort;
    return;
  }
  question.shortBy = shortBy + printMeasure(*at(given.front()).by, style) + shortByEnd;
  question.givingHead = alone ? givingHeadAlone : givingHead;
  if (!kept.empty())
    question.notByAmount = numbers(kept) + (kept.size() == 1 ? notByAmountOne : notByAmountMany);
}

std::string withComma(const std::string& a, const std::string& b) {
  return a.empty() || b.empty() ? a + b : a + ", " + b;
}

} // namespace

Question questionOf(const Job& of, const WallLayout& layout, const ResolvedLimits& limits, const NoLayout& conflict) {
  Question question;
  question.title = title;
  if (const std::string named = withComma(of.title.job, of.title.address); !named.empty())
    question.about.push_back(job + named);
  if (!of.title.planSet.empty())
    question.about.push_back(plans + of.title.planSet);
  question.about.push_back(wall + withComma(layout.wall->mark, layout.wall->title));
  question.toBeSet = whatIsToBeSet(layout, conflict.requirements, of.units);
  question.collide = conflict.requirements.size() == 1 ? collideAlone : collide;
  for (const Requirement& requirement : conflict.requirements)
    question.requirements.push_back(requirementWords(layout, limits, requirement, of.units));
  addGiving(question, layout, conflict.requirements, of.units);
  question.asked = asked;
  question.untilAnswered = untilAnswered;
  question.caution = caution;
  return question;
}

std::vector<std::string> conflictLines(const Question& question) {
  std::vector<std::string> lines{question.collide};
  for (std::size_t i = 0; i < question.requirements.size(); ++i)
    lines.push_back(std::to_string(i + 1) + ". " + question.requirements[i]);
  lines.insert(lines.end(), {"", question.shortBy});
  if (!question.givingHead.empty())
    lines.push_back(question.givingHead);
  for (const QuestionGiving& giving : question.giving)
    lines.push_back("- " + std::to_string(giving.requirement) + ": " + giving.words);
  if (!question.notByAmount.empty())
    lines.push_back(question.notByAmount);
  return lines;
}

std::vector<std::string> linesOf(const Question& question) {
  std::vector<std::string> lines{question.title};
  lines.insert(lines.end(), question.about.begin(), question.about.end());
  lines.insert(lines.end(), {"", toBeSet + question.toBeSet, ""});
  const std::vector<std::string> conflict = conflictLines(question);
  lines.insert(lines.end(), conflict.begin(), conflict.end());
  lines.insert(lines.end(), {"", question.asked, question.untilAnswered, "", question.caution});
  return lines;
}

} // namespace sillwright
