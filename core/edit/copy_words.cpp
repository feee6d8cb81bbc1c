#include "core/edit/copy_words.h"

#include <algorithm>
#include <map>

namespace sillwright {

namespace {

constexpr std::size_t mostNamed = 4;

std::string many(const std::vector<std::string>& marks, const char* one, const char* several) {
  return marksInWords(marks) + (marks.size() == 1 ? one : several);
}

std::string sentence(LeftOutWhy why, const std::vector<std::string>& marks) {
  switch (why) {
  case LeftOutWhy::StandsAlready:
    return many(marks, " stands there already", " stand there already");
  case LeftOutWhy::InTheWay:
    return many(marks, " is in the way", " are in the way");
  case LeftOutWhy::PastTheEnd:
    return marksInWords(marks) + " would be past the end of the wall";
  case LeftOutWhy::TooDeep:
    return "there is no concrete for " + marksInWords(marks);
  case LeftOutWhy::NoColumn:
    return "there is no column to hang " + marksInWords(marks) + " on";
  case LeftOutWhy::NoType:
    return "this job has no hardware like " + marksInWords(marks);
  case LeftOutWhy::OnlyRead:
    return many(marks, " is read on the forms", " are read on the forms");
  }
  return {};
}

// What is told of: what stands there, or else what was to be copied.
const std::string& toldOf(const LeftOut& left) {
  const bool other = left.why == LeftOutWhy::StandsAlready || left.why == LeftOutWhy::InTheWay;
  return other ? left.other : left.mark;
}

} // namespace

std::string marksInWords(std::span<const std::string> marks) {
  std::string words;
  const std::size_t named = marks.size() > mostNamed ? mostNamed - 1 : marks.size();
  for (std::size_t i = 0; i < named; ++i)
    words += (i == 0 ? "" : i + 1 == marks.size() ? " and " : ", ") + marks[i];
  return named == marks.size() ? words : words + " and " + std::to_string(marks.size() - named) + " more";
}

std::string leftOutWords(std::span<const LeftOut> leftOut) {
  std::map<LeftOutWhy, std::vector<std::string>> told;
  for (const LeftOut& left : leftOut)
    if (std::vector<std::string>& marks = told[left.why];
        std::find(marks.begin(), marks.end(), toldOf(left)) == marks.end())
      marks.push_back(toldOf(left));
  std::string words;
  for (const auto& [why, marks] : told)
    words += (words.empty() ? "" : "; ") + sentence(why, marks);
  return words;
}

} // namespace sillwright
