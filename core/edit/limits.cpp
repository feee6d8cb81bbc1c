#include "core/edit/limits.h"

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cmath>

#include "core/base/tolerance.h"
#include "core/edit/operations.h"
#include "core/rules/rule_book.h"

namespace sillwright {

namespace {

std::string trimmed(std::string_view text) {
  constexpr std::string_view blanks = " \t\r\n";
  const auto from = text.find_first_not_of(blanks);
  if (from == std::string_view::npos)
    return {};
  return std::string(text.substr(from, text.find_last_not_of(blanks) - from + 1));
}

bool isDay(std::string_view date) {
  if (date.size() != 10 || date[4] != '-' || date[7] != '-')
    return false;
  const auto number = [&](std::size_t at, std::size_t count) {
    int value = -1;
    const char* end = date.data() + at + count;
    return std::from_chars(date.data() + at, end, value).ptr == end ? value : -1;
  };
  const int year = number(0, 4), month = number(5, 2), day = number(8, 2);
  return year >= 0 && month >= 0 && day >= 0 &&
         std::chrono::year_month_day(std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                                     std::chrono::day(static_cast<unsigned>(day)))
             .ok();
}

// As they are kept, or what is missing.
Result<Grounds> checkedGrounds(const Grounds& given) {
  const Grounds grounds{trimmed(given.reason), trimmed(given.who), trimmed(given.date)};
  if (grounds.reason.empty())
    return Problem{"reason", "a change of the rule book needs a reason"};
  if (!grounds.date.empty() && !isDay(grounds.date))
    return Problem{"date", "\"" + grounds.date + "\" is not a day written as YYYY-MM-DD"};
  return grounds;
}

// The most that makes sense of each unit; beyond it somebody mistyped.
double mostOf(std::string_view unit) {
  if (unit == "in")
    return 1200;
  if (unit == "plf")
    return 10'000;
  return 100;
}

Result<double> readNumber(std::string_view typed) {
  const std::string text = trimmed(typed);
  double value = 0;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
  if (text.empty() || read.ec != std::errc() || read.ptr != text.data() + text.size() || !std::isfinite(value))
    return Problem{"", "expected a plain number"};
  return value;
}

template <class Change> void eraseIf(std::vector<Change>& list, std::string Change::*name, std::string_view which) {
  std::erase_if(list, [&](const Change& change) { return change.*name == which; });
}

// In place of the one of the same name, so that the order of the list and what else was said there stay.
template <class Change> void put(std::vector<Change>& list, std::string Change::*name, Change made) {
  const auto same = std::find_if(list.begin(), list.end(),
                                 [&](const Change& change) { return change.*name == made.*name; });
  if (same == list.end()) {
    list.push_back(std::move(made));
  } else {
    made.extra = same->extra;
    *same = std::move(made);
  }
}

} // namespace

Result<double> readLimit(const Job& job, const LimitRow& row, std::string_view typed) {
  const Result<double> value = row.unit == "in" ? parseLength(typed, job.units) : readNumber(typed);
  if (!value)
    return value;
  if (*value < 0)
    return Problem{"", "a limit is not less than nothing"};
  if (*value > mostOf(row.unit))
    return Problem{"", "that is more than makes sense here"};
  if ((row.unit == "bolts" || row.unit == "threads") && *value != std::floor(*value))
    return Problem{"", row.unit == "bolts" ? "bolts are counted whole" : "threads are counted whole"};
  return value;
}

Result<Job> changeLimit(const Job& job, std::string_view name, std::string_view typed, const Grounds& given) {
  const auto key = limitKey(name);
  if (!key)
    return Problem{std::string(name), "is not a limit of the rule book"};
  const LimitRow& row = limitTable()[static_cast<std::size_t>(*key)];
  const Result<double> value = readLimit(job, row, typed);
  if (!value)
    return Problem{"value", value.problem().text()};
  if (std::abs(*value - row.value) <= tolerance::same)
    return restoreLimit(job, name);
  const Result<Grounds> grounds = checkedGrounds(given);
  if (!grounds)
    return grounds.problem();
  JobLimits limits = *job.limits;
  put(limits.overrides, &LimitOverride::key,
      LimitOverride{std::string(name), *value, grounds->reason, grounds->who, grounds->date, {}});
  return setLimits(job, std::move(limits));
}

Job restoreLimit(const Job& job, std::string_view name) {
  JobLimits limits = *job.limits;
  eraseIf(limits.overrides, &LimitOverride::key, name);
  return setLimits(job, std::move(limits));
}

Result<Job> setRuleCounts(const Job& job, std::string_view rule, std::optional<RuleCounts> counts,
                          const Grounds& given) {
  if (!ruleByName(rule))
    return Problem{std::string(rule), "is not a rule of the rule book"};
  JobLimits limits = *job.limits;
  if (!counts) {
    eraseIf(limits.rules, &RuleOverride::rule, rule);
    return setLimits(job, std::move(limits));
  }
  const Result<Grounds> grounds = checkedGrounds(given);
  if (!grounds)
    return grounds.problem();
  put(limits.rules, &RuleOverride::rule,
      RuleOverride{std::string(rule), *counts, grounds->reason, grounds->who, grounds->date, {}});
  return setLimits(job, std::move(limits));
}

} // namespace sillwright
