// What the window needs of files and sheets.
#pragma once

#include "ui/window/services.h"

namespace sillwright {

Services fileServices();

} // namespace sillwright
