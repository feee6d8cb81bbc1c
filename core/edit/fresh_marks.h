// Marks for many new pieces at once.
#pragma once

#include <map>
#include <set>
#include <string>

#include "core/model/lookup.h"

namespace sillwright {

// Prefix of the kind and a number nobody on the wall list uses, the lowest first, as freshMark gives one; the job is looked
// through once a kind. The job outlives it.
class FreshMarks {
public:
  explicit FreshMarks(const Job& job) : job_(job) {}

  std::string next(PieceKind kind);

private:
  std::set<std::uint32_t> usedWith(const std::string& prefix) const;

  const Job& job_;
  std::map<PieceKind, std::set<std::uint32_t>> used_;
  std::map<PieceKind, std::uint32_t> last_;
};

} // namespace sillwright
