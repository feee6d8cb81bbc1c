// The table of rules: what each one is called, means, measures, and where its limit comes from.
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/model/layout.h"
#include "core/rules/draft.h"
#include "core/rules/finding.h"
#include "core/rules/limits.h"

namespace sillwright {

using Findings = std::vector<Finding>;

struct RuleRow {
  RuleId id;
  std::string_view name;    // "strap.edge"
  std::string_view subject; // "strap"
  std::string_view meaning; // one trade sentence
  std::string_view measure; // what is measured, in words
  std::vector<Level> levels;
  Source source;
  void (*check)(const WallLayout&, const ResolvedLimits&, Drafts&);
};

// In the order of RuleId.
std::span<const RuleRow> ruleBook();
const RuleRow& rule(RuleId id);
std::optional<RuleId> ruleByName(std::string_view name);

// Limits of a job with its overrides: of limits, and of how far rules count.
ResolvedLimits resolve(const JobLimits& limits);

// All findings of one wall: worst first, then left to right, then by rule; the order is the same for equal walls.
// A finding carries a correction only where applying it to a copy of the wall was seen to cure it and to bring no new
// finding as bad or worse.
Findings checkWall(const WallLayout& layout, const ResolvedLimits& limits);

} // namespace sillwright
