// The one file of tolerances. All lengths in inches.
#pragma once

namespace sillwright::tolerance {

// Two computed lengths that differ by less are the same length. Far below a sixty-fourth, far above rounding noise of
// sums of sixteenths over 1,000 ft.
inline constexpr double same = 1e-6;

// What sums and roots of such lengths are off by at most: for asking on which side of an exact end a station lies.
inline constexpr double rounding = 1e-8;

// The finest mark of a tape; stations are rounded to it once, when an edit is committed.
inline constexpr double tapeMark = 1.0 / 16.0;

} // namespace sillwright::tolerance
