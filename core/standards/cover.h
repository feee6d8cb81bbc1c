// Concrete cover over steel, ACI 318-19 Table 20.5.1.3.1, in inches.
#pragma once

namespace sillwright {

enum class Exposure { CastAgainstEarth, ExposedOrGround, Sheltered };

// barNumber 3 … 8. Sheltered is the row for walls not exposed to weather or ground.
double requiredCover(Exposure exposure, int barNumber);

} // namespace sillwright
