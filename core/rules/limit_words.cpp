#include "core/rules/limit_words.h"

#include "core/base/length.h"
#include "core/rules/word_parts.h"

namespace sillwright {

std::string limitWords(const Job& job, const LimitRow& row, double value) {
  if (row.unit == "in")
    return plateWords(job, value);
  if (row.unit == "%")
    return numberWords(value) + " %";
  if (row.unit == "ratio" || row.unit.empty())
    return numberWords(value);
  return numberWords(value) + " " + std::string(row.unit == "d" ? "diameters" : row.unit);
}

std::string_view sideWords(Wanted wanted) {
  switch (wanted) {
  case Wanted::AtLeast:
    return "at least";
  case Wanted::AtMost:
    return "at most";
  case Wanted::None:
    return "from";
  }
  return "";
}

std::string sourceWithStatus(const Source& source) {
  const std::string status(source.status == Status::Type ? "hardware type" : words(source.status));
  return source.document.empty() ? status : documentOf(source) + ", " + status;
}

std::string groundsWords(const std::string& reason, const std::string& who, const std::string& date) {
  if (who.empty() && date.empty())
    return reason;
  return reason + " (" + who + (who.empty() || date.empty() ? "" : ", ") + date + ")";
}

std::string_view countsWords(RuleCounts counts) {
  switch (counts) {
  case RuleCounts::Ask:
    return "ASK at most";
  case RuleCounts::Watch:
    return "WATCH at most";
  case RuleCounts::None:
    return "not looked at";
  }
  return "";
}

} // namespace sillwright
