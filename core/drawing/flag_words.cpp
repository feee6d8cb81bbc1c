#include "core/drawing/flag_words.h"

#include "core/rules/wording.h"

namespace sillwright {

LabelText flagWords(const Job& job, const Finding& finding) {
  std::string hint = correctionWords(job, finding);
  if (hint.empty())
    hint = whereabouts(job, finding);
  return {finding.level, std::string(word(finding.level)), markedLabel(job, finding), std::move(hint)};
}

} // namespace sillwright
