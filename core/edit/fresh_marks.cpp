#include "core/edit/fresh_marks.h"

#include <charconv>

namespace sillwright {

std::string FreshMarks::next(PieceKind kind) {
  const std::string prefix(markPrefix(kind));
  auto used = used_.find(kind);
  if (used == used_.end())
    used = used_.emplace(kind, usedWith(prefix)).first;
  std::uint32_t& number = last_[kind];
  do
    ++number;
  while (used->second.contains(number));
  return prefix + std::to_string(number);
}

std::set<std::uint32_t> FreshMarks::usedWith(const std::string& prefix) const {
  std::set<std::uint32_t> used;
  for (std::size_t i = 0; i < job_.walls.size(); ++i)
    forEachList(job_.walls[i], [&](const auto& list) {
      for (const auto& item : list) {
        std::uint32_t number = 0;
        const char* end = item.mark.data() + item.mark.size();
        if (item.mark.starts_with(prefix) && std::from_chars(item.mark.data() + prefix.size(), end, number).ptr == end)
          used.insert(number);
      }
    });
  return used;
}

} // namespace sillwright
