// Makes canvases speak: one child for every piece, with its name, its findings, where it is and whether it is selected.
#pragma once

namespace sillwright {

// Once in a program, before a canvas is asked.
void installAccessibleCanvas();

} // namespace sillwright
