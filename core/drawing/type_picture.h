// A hardware type drawn to its own numbers, with the numbers: a strap from outside and in the cut, a bolt and a rod in
// the cut, a washer from above. Sizes in points; letters keep their size, the piece is drawn as large as fits.
#pragma once

#include "core/drawing/drawing.h"
#include "core/model/job.h"

namespace sillwright {

// Empty where the job has no such type, or where the box is too small to say anything.
Drawing typePicture(const Job& job, Id type, const Bounds& box);

} // namespace sillwright
