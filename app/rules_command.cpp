#include "app/command_parts.h"

#include <iostream>
#include <vector>

#include "core/rules/rule_book.h"
#include "core/rules/wording.h"

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
  return source.document.empty() ? std::string(words(source.status)) : std::string(source.document);
}

std::string sourceWithStatus(const Source& source) {
  const std::string status(words(source.status));
  return source.document.empty() ? (source.status == Status::Type ? "the hardware's own " + status : status)
                                 : std::string(source.document) + " (" + status + ")";
}

std::string limitJson(const LimitRow& row) {
  return "{\"limit\": " + shortest(row.value) + ", \"unit\": " + jsonText(row.unit) + ", \"level\": " +
         jsonText(word(row.level)) + ", \"source\": " + jsonText(sourceText(row.source)) + ", \"status\": " +
         jsonText(words(row.source.status)) + "}";
}

std::string ruleJson(const RuleRow& row) {
  std::string levels;
  for (const Level level : row.levels)
    levels += (levels.empty() ? "" : ", ") + jsonText(word(level));
  std::string out = "{\"name\": " + jsonText(row.name) + ", \"subject\": " + jsonText(row.subject) + ", \"meaning\": " +
                    jsonText(row.meaning) + ", \"measure\": " + jsonText(row.measure);
  const auto limits = limitsOf(row.id);
  if (limits.size() == 1) {
    out += ", \"limit\": " + shortest(limits[0]->value) + ", \"unit\": " + jsonText(limits[0]->unit);
  } else if (limits.size() > 1) {
    std::string list;
    for (const LimitRow* limit : limits)
      list += (list.empty() ? "" : ", ") + limitJson(*limit);
    out += ", \"limits\": [" + list + "]";
  }
  return out + ", \"levels\": [" + levels + "], \"source\": " + jsonText(sourceText(row.source)) + ", \"status\": " +
         jsonText(words(row.source.status)) + "}";
}

} // namespace

int rules(const Call& call, int&, char**) {
  if (!call.words.empty())
    return refuse({call.words[0], "rules takes no file"});
  if (call.has("--json")) {
    std::string list;
    for (const RuleRow& row : ruleBook())
      list += (list.empty() ? "" : ",\n ") + ruleJson(row);
    std::cout << "[" << list << "]\n";
    return nothingToFix;
  }
  for (const RuleRow& row : ruleBook()) {
    std::cout << row.name << "\n  " << row.meaning << "\n  measured: " << row.measure << '\n';
    for (const LimitRow* limit : limitsOf(row.id))
      std::cout << "  limit: " << limit->name << ' ' << shortest(limit->value) << ' ' << limit->unit << ", "
                << word(limit->level) << ", " << sourceWithStatus(limit->source) << '\n';
    std::cout << "  source: " << sourceWithStatus(row.source) << "\n\n";
  }
  return nothingToFix;
}

} // namespace sillwright
