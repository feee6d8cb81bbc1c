// The pictures on the shelf: each piece to scale, what is cast in standing in one pour.
#pragma once

#include "core/drawing/drawing.h"
#include "core/gesture/workbench.h"

namespace sillwright {

// Which row of the shelf a piece stands in.
enum class ShelfRow { CastIn, Columns, Framing, Steel, Starters };
ShelfRow shelfRowOf(const ShelfItem& item);

// Height of the pictures of a row, and of the whole cell with the name under it, px.
double pictureHeight(ShelfRow row);

// The picture of an item in a cell of that width, px, y down; the cell is as high as its row's pictureHeight. What
// stands under all of a row (pour line and concrete, sill) runs through the whole width.
Drawing shelfPicture(const ShelfItem& item, const HardwareTypes& types, double width);

} // namespace sillwright
