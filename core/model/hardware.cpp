#include "core/model/hardware.h"

#include <charconv>

namespace sillwright {

namespace {

template <class Type> const Type* findType(const std::vector<Type>& list, Id id) {
  for (const Type& type : list)
    if (type.id == id)
      return &type;
  return nullptr;
}

} // namespace

double alongWall(const MakeUp& makeUp) { return makeUp.plies * dressedThickness(makeUp.nominal); }

double acrossWall(const MakeUp& makeUp) { return dressedWidth(makeUp.nominal); }

std::string print(const MakeUp& makeUp) {
  const std::string size = print(makeUp.nominal);
  return makeUp.plies == 1 ? size : std::to_string(makeUp.plies) + "-" + size;
}

std::optional<MakeUp> parseMakeUp(std::string_view written) {
  MakeUp makeUp;
  const auto dash = written.find('-');
  if (dash != std::string_view::npos) {
    const std::string_view plies = written.substr(0, dash);
    const auto read = std::from_chars(plies.data(), plies.data() + plies.size(), makeUp.plies);
    if (read.ec != std::errc{} || read.ptr != plies.data() + plies.size() || makeUp.plies < 1 || makeUp.plies > 9)
      return std::nullopt;
    written.remove_prefix(dash + 1);
  }
  const auto nominal = parseNominal(written);
  if (!nominal)
    return std::nullopt;
  makeUp.nominal = *nominal;
  return makeUp;
}

const StrapType* findStrapType(const HardwareTypes& types, Id id) { return findType(types.straps, id); }
const BoltType* findBoltType(const HardwareTypes& types, Id id) { return findType(types.bolts, id); }
const RodType* findRodType(const HardwareTypes& types, Id id) { return findType(types.rods, id); }
const WasherType* findWasherType(const HardwareTypes& types, Id id) { return findType(types.washers, id); }

std::vector<NailAt> nailsOf(const NailPattern& pattern) {
  std::vector<NailAt> nails;
  const std::size_t rows = pattern.rows.size();
  if (rows == 0)
    return nails;
  for (int i = 0; i < pattern.count; ++i) {
    const double height = pattern.first + i * pattern.spacing;
    if (pattern.staggered)
      nails.push_back({pattern.rows[static_cast<std::size_t>(i) % rows], height});
    else
      for (const double row : pattern.rows)
        nails.push_back({row, height});
  }
  return nails;
}

} // namespace sillwright
