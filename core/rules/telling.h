// What the sentences of findings are made of; used by rules/sentences only.
#pragma once

#include <cmath>
#include <string>
#include <string_view>

#include "core/model/lookup.h"
#include "core/rules/finding.h"
#include "core/rules/word_parts.h"

namespace sillwright {

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
  std::string pounds() const { return poundWords(f.measured); }
  std::string poundsWanted() const { return poundWords(f.limit); }
  // "mark HD2", of that end of the panel that is the i-th piece.
  std::string endMark(std::size_t i, bool right) const {
    const WallLine* wall = job.walls.find(f.wall);
    const Panel* panel = wall && i < f.pieces.size() ? findIn(wall->panels, f.pieces[i]) : nullptr;
    const std::string mark = !panel ? std::string() : right ? panel->rightMark : panel->leftMark;
    return mark.empty() ? "the mark" : "mark " + mark;
  }
  bool isFix() const { return f.ruleLevel == Level::Fix; }

  // How the measure stands to its limit: what must be, or what is aimed for.
  std::string wanted() const {
    if (!isFix())
      return limit() + " is aimed for";
    return (f.wanted == Wanted::AtMost ? "at most " : "at least ") + limit() + " is asked for";
  }
};

std::string rodSentence(const Telling& telling);
std::string framingSentence(const Telling& telling); // columns, panels, sills
std::string formSentence(const Telling& telling);    // bars, pour line, forms

} // namespace sillwright
