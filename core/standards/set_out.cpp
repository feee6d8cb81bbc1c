#include "core/standards/set_out.h"

namespace sillwright {

std::span<const NamedNumber> setOutTolerances() {
  static constexpr std::array<NamedNumber, 9> table{formThicker,     formThinner,           formedElevation,
                                                    foundationLevel, foundationLevelWithin, squareDiagonal,
                                                    embeddedItems,   rodsInGroup,           rodGroups};
  return table;
}

} // namespace sillwright
