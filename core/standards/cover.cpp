#include "core/standards/cover.h"

#include <array>

namespace sillwright {

namespace {

using E = Exposure;

// For each exposure the smaller bars first.
constexpr std::array<CoverRow, 4> table{
    {{E::CastAgainstEarth, "cast against earth", 3, 8, coverAgainstEarth},
     {E::ExposedOrGround, "exposed to weather or in contact with ground", 3, 5, coverFormed},
     {E::ExposedOrGround, "exposed to weather or in contact with ground", 6, 8, coverFormedLarge},
     {E::Sheltered, "walls not exposed", 3, 8, coverSheltered}}};

} // namespace

std::span<const CoverRow> coverTable() {
  return table;
}

double requiredCover(Exposure exposure, int barNumber) {
  double cover = 0;
  for (const CoverRow& row : table)
    if (row.exposure == exposure && (cover == 0 || barNumber >= row.smallest))
      cover = row.cover;
  return cover;
}

} // namespace sillwright
