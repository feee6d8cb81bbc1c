#include "core/standards/cover.h"

namespace sillwright {

double requiredCover(Exposure exposure, int barNumber) {
  switch (exposure) {
  case Exposure::CastAgainstEarth:
    return 3;
  case Exposure::ExposedOrGround:
    return barNumber >= 6 ? 2 : 1.5;
  case Exposure::Sheltered:
    return 0.75;
  }
  return 3;
}

} // namespace sillwright
