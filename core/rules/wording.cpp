#include "core/rules/wording.h"

#include "core/model/lookup.h"
#include "core/rules/limit_words.h"
#include "core/rules/limits.h"
#include "core/rules/rule_book.h"
#include "core/rules/word_parts.h"

namespace sillwright {

namespace {

using R = RuleId;

const LimitRow* limitRow(const Job& job, const Finding& f) {
  const LimitRow* best = nullptr;
  for (const LimitRow& row : limitTable()) {
    if (row.rule != f.rule || row.level != f.ruleLevel || row.wanted == Wanted::None)
      continue;
    if (!best || (row.key == LimitKey::BoltSpacingTall && job.limits->storeys > 2))
      best = &row;
  }
  return best;
}

std::string sourceText(const Source& source) {
  if (source.document.empty())
    return source.status == Status::Type ? "hardware type" : std::string(words(source.status));
  const std::string document = documentOf(source);
  return source.status == Status::Published ? document : document + " (" + std::string(words(source.status)) + ")";
}

} // namespace

std::string_view word(Level level, Language language) {
  const bool spanish = language == Language::Spanish;
  switch (level) {
  case Level::Fix:
    return spanish ? "CORREGIR" : "FIX";
  case Level::Ask:
    return spanish ? "CONSULTAR" : "ASK";
  case Level::Watch:
    return spanish ? "VIGILAR" : "WATCH";
  }
  return "";
}

std::string markedLabel(const Job& job, const Finding& f) {
  const std::string mark = f.pieces.empty() ? std::string() : markOf(job, {f.wall, f.pieces.front()});
  return mark.empty() ? label(job, f) : mark + " · " + label(job, f);
}

std::string sourceWords(const Job& job, const Finding& f) {
  const LimitRow* row = limitRow(job, f);
  std::string text = sourceText(row ? row->source : rule(f.rule).source);
  if (f.rule == R::BoltSpacing && f.variant == 1)
    text = words(Status::Plans);
  if (f.rule == R::BoltHook && f.variant == 0) // which way it points is the trade's, how long it is the standard's
    text = words(Status::CommonPractice);
  if (f.rule == R::BoltHook && f.variant == 3)
    text = words(Status::Geometry);
  for (const LimitOverride& change : job.limits->overrides)
    if (row && change.key == row->name)
      text.append("; changed for this job: ").append(change.reason);
  for (const RuleOverride& change : job.limits->rules)
    if (change.rule == rule(f.rule).name)
      text.append("; counts ").append(countsWords(change.counts)).append(" in this job: ").append(change.reason);
  return text;
}

} // namespace sillwright
