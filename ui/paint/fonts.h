// Which fonts the program sees.
#pragma once

namespace sillwright {

// The package of B612 also holds a monospaced family whose upright letters answer to the name B612, and the toolkit
// would take those. Leaves that family out for this process, everything else as the machine has it. Call before the
// application object; does nothing where the user has chosen a font configuration, or there is none.
void leaveOutMonospacedNamesake();

} // namespace sillwright
