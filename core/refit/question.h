// The question to the engineer where a wall has no layout: its parts, for text and for paper. It says what collides and
// what it would take; what may be done, the engineer says.
#pragma once

#include <string>
#include <vector>

#include "core/refit/refit.h"

namespace sillwright {

struct QuestionGiving {
  int requirement = 1; // its number
  std::string words;   // how far that one alone would have to give
};

struct Question {
  std::string title;
  std::vector<std::string> about;        // job, plans, wall: a line each
  std::string toBeSet;                   // a sentence without a verb
  std::string collide;                   // what heads the requirements
  std::vector<std::string> requirements; // numbered from 1
  std::string shortBy;
  std::string givingHead;             // empty where no single one gives by an amount
  std::vector<QuestionGiving> giving; // the smallest first
  std::string notByAmount;            // those that give by none; empty where all do
  std::string asked;
  std::string untilAnswered;
  std::string caution;
};

Question questionOf(const Job& job, const WallLayout& layout, const ResolvedLimits& limits, const NoLayout& conflict);

// What collides and what each would have to give, as plain text.
std::vector<std::string> conflictLines(const Question& question);
// The whole question as plain text; empty lines part paragraphs.
std::vector<std::string> linesOf(const Question& question);

} // namespace sillwright
