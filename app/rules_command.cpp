#include "app/command_parts.h"

#include <iostream>
#include <optional>
#include <vector>

#include "core/rules/limit_words.h"
#include "core/rules/rule_book.h"
#include "core/rules/waiting.h"
#include "core/rules/wording.h"
#include "core/store/files.h"

namespace sillwright {

namespace {

std::vector<const LimitRow*> limitsOf(RuleId id) {
  std::vector<const LimitRow*> rows;
  for (const LimitRow& row : limitTable())
    if (row.rule == id)
      rows.push_back(&row);
  return rows;
}

std::string sourceText(const Source& source) {
  return source.document.empty() ? std::string(words(source.status)) : documentOf(source);
}

const LimitOverride* changeOf(const Job& job, const LimitRow& row) {
  for (const LimitOverride& change : job.limits->overrides)
    if (change.key == row.name)
      return &change;
  return nullptr;
}

const RuleOverride* changeOf(const Job& job, const RuleRow& row) {
  for (const RuleOverride& change : job.limits->rules)
    if (change.rule == row.name)
      return &change;
  return nullptr;
}

// ---- JSON: its fields are a promise to other programs -----------------------------------------------------------

template <class Change> std::string groundsJson(const Change& change) {
  return "\"reason\": " + jsonText(change.reason) + ", \"who\": " + jsonText(change.who) + ", \"date\": " +
         jsonText(change.date);
}

std::string sourceJson(const Source& source) {
  return "\"source\": " + jsonText(sourceText(source)) + ", \"status\": " + jsonText(words(source.status));
}

std::string limitJson(const LimitRow& row, const Job* job) {
  std::string out = "{\"name\": " + jsonText(row.name) + ", \"side\": " + jsonText(sideWords(row.wanted)) +
                    ", \"limit\": " + shortest(row.value) + ", \"unit\": " + jsonText(row.unit) + ", \"level\": " +
                    jsonText(word(row.level)) + ", " + sourceJson(row.source);
  if (job) {
    const LimitOverride* change = changeOf(*job, row);
    out += ", \"here\": " + shortest(change ? change->value : row.value) + ", \"changed\": " +
           (change ? "{" + groundsJson(*change) + "}" : "null");
  }
  return out + "}";
}

// of: the first few that lack it; count: all of them. Neither where the job as a whole lacks it.
std::string waitsJson(const Job& job, RuleId id) {
  std::string out;
  for (const Waiting& waiting : waitsFor(job, id)) {
    std::string of;
    for (const Lacking& each : waiting.first)
      of += (of.empty() ? "" : ", ") + jsonText(each.name);
    out += (out.empty() ? "{\"words\": " : ", {\"words\": ") + jsonText(waitingWords(waiting));
    if (!waiting.kind.empty())
      out += ", \"input\": " + jsonText(waiting.input) + ", \"kind\": " + jsonText(waiting.kind) + ", \"count\": " +
             std::to_string(waiting.count) + ", \"of\": [" + of + "]";
    out += "}";
  }
  return out;
}

std::string ruleJson(const RuleRow& row, const Job* job) {
  std::string levels, limits;
  for (const Level level : row.levels)
    levels += (levels.empty() ? "" : ", ") + jsonText(word(level));
  for (const LimitRow* limit : limitsOf(row.id))
    limits += (limits.empty() ? "" : ", ") + limitJson(*limit, job);
  std::string out = "{\"name\": " + jsonText(row.name) + ", \"subject\": " + jsonText(row.subject) + ", \"meaning\": " +
                    jsonText(row.meaning) + ", \"measure\": " + jsonText(row.measure) + ", \"limits\": [" + limits +
                    "], \"levels\": [" + levels + "], " + sourceJson(row.source);
  if (job) {
    const RuleOverride* change = changeOf(*job, row);
    out += ", \"counts\": " + (change ? "{\"as\": " + jsonText(countsWords(change->counts)) + ", " +
                                           groundsJson(*change) + "}"
                                     : "null") + ", \"waitsFor\": [" + waitsJson(*job, row.id) + "]";
  }
  return out + "}";
}

// ---- words ------------------------------------------------------------------------------------------------------

void printRule(const RuleRow& row, const Job* job) {
  const Job plain;
  std::cout << row.name << "\n  " << row.meaning << "\n  measured: " << row.measure << '\n';
  for (const LimitRow* limit : limitsOf(row.id)) {
    const LimitOverride* change = job ? changeOf(*job, *limit) : nullptr;
    const Job& in = job ? *job : plain;
    std::cout << "  limit: " << limit->name << ' ' << sideWords(limit->wanted) << ' '
              << limitWords(in, *limit, change ? change->value : limit->value) << ", " << word(limit->level) << ", "
              << sourceWithStatus(limit->source) << '\n';
    if (change)
      std::cout << "    changed for this job from " << limitWords(in, *limit, limit->value) << ": "
                << groundsWords(change->reason, change->who, change->date) << '\n';
  }
  std::cout << "  source: " << sourceWithStatus(row.source) << '\n';
  if (const RuleOverride* change = job ? changeOf(*job, row) : nullptr)
    std::cout << "  counts in this job: " << countsWords(change->counts) << ": "
              << groundsWords(change->reason, change->who, change->date) << '\n';
  if (job)
    for (const Waiting& waiting : waitsFor(*job, row.id))
      std::cout << "  in this job: " << waitingWords(waiting) << '\n';
  std::cout << '\n';
}

} // namespace

int rules(const Call& call, int&, char**) {
  if (call.words.size() > 1)
    return refuse({call.words[1], "rules takes one job file, or none"});
  std::optional<Job> job;
  if (!call.words.empty()) {
    auto loaded = loadJob(call.words[0]);
    if (!loaded)
      return refuse(loaded.problem());
    job = std::move(loaded.value());
  }
  std::string list;
  for (const RuleRow& row : ruleBook())
    if (call.has("--json"))
      list += (list.empty() ? "" : ",\n ") + ruleJson(row, job ? &*job : nullptr);
    else
      printRule(row, job ? &*job : nullptr);
  if (call.has("--json"))
    std::cout << "[" << list << "]\n";
  return nothingToFix;
}

} // namespace sillwright
