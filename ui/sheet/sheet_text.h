// Type on the sheets: sizes in points, and the two languages of a head.
#pragma once

#include <string>
#include <string_view>

#include "core/drawing/drawing.h"
#include "core/drawing/text_metrics.h"

namespace sillwright::sheet {

inline constexpr double titleSize = 14;
inline constexpr double bigSize = 13;
inline constexpr double bodySize = 10;
inline constexpr double noteSize = 9.5;
inline constexpr double smallSize = 8.5;

inline TextStyle plain(double size, Anchor anchor = Anchor::Start) { return {size, Weight::Regular, anchor, 0, Ink::None, 2.5}; }
inline TextStyle bold(double size, Anchor anchor = Anchor::Start) { return {size, Weight::Bold, anchor, 0, Ink::None, 2.5}; }
inline TextStyle italic(double size, Anchor anchor = Anchor::Start) { return {size, Weight::Italic, anchor, 0, Ink::None, 2.5}; }

// A head in English with the Spanish beside it: EN bold, es italic. Returns the right end.
double head(Drawing& page, Point2 at, std::string_view english, std::string_view spanish, double size);

// A paragraph broken to a width; returns the base line after the last line.
double paragraph(Drawing& page, Point2 at, std::string_view text, const TextStyle& style, double width,
                 double lead = 1.3);

} // namespace sillwright::sheet
