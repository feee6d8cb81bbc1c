// What a job says otherwise than the rule book, and the options that say which clauses apply: edits from a job to a job.
// The only edits that know the rule book, and of it only names and limits.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/edit/fields.h"
#include "core/rules/limits.h"

namespace sillwright {

// Why a job differs from the rule book, who says so, and when (YYYY-MM-DD or nothing).
struct Grounds {
  std::string reason;
  std::string who;
  std::string date;
};

// A limit as typed: a length as people write it for "in", a plain number for everything else. Errors: what is not a
// number, below nothing, beyond what the unit allows, or a part of a bolt.
Result<double> readLimit(const Job& job, const LimitRow& row, std::string_view typed);

// Sets a limit for this job. The rule book's own value takes a change back, and needs no reason. Error: an unknown name,
// a value that readLimit refuses, no reason, a day that does not exist.
Result<Job> changeLimit(const Job& job, std::string_view name, std::string_view typed, const Grounds& grounds);
// The rule book's value again; the job as it is where it was not changed.
Job restoreLimit(const Job& job, std::string_view name);

// How far what a rule finds counts in this job; nothing: as in the rule book, which needs no reason. Errors as above.
Result<Job> setRuleCounts(const Job& job, std::string_view rule, std::optional<RuleCounts> counts,
                          const Grounds& grounds);

// Storeys, seismic category and the rest, in the order of the form.
std::vector<Field> jobOptions(const Job& job);
// One option from typed text. Error: place is the option's title; the job stays as it was.
Result<Job> setJobOption(const Job& job, std::string_view key, std::string_view typed);

} // namespace sillwright
