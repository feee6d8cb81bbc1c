// What a hardware type holds besides single lengths, as it is typed and shown: profiles, nail rows, slots, columns.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/length.h"
#include "core/edit/numbers.h"
#include "core/model/hardware.h"

namespace sillwright {

// A measure as finely as it is stored: 2 1/2", 0.105" (to 1/10,000), 2.667 mm. bare: without the sign of the unit.
std::string exactMeasure(double inches, LengthStyle style);
std::string bareMeasure(double inches, LengthStyle style);

// "0.05, 0; 1/2, 2 down; 3 3/4, 12 down": point after point from the joint line to the tip of the hook, how far in from
// the outside of the form and how far down. The word down may be left out. Error: place is empty, message begins with
// the point it speaks of.
std::string printProfile(const std::vector<ProfilePoint>& profile, LengthStyle style);
Result<std::vector<ProfilePoint>> parseProfile(std::string_view typed, LengthStyle style);

// "1/2 left, 1/2 right", "middle"; also with a sign, + to the right.
std::string printNailRows(const std::vector<double>& rows, LengthStyle style);
Result<std::vector<double>> parseNailRows(std::string_view typed, LengthStyle style);

// "11/16 x 1 3/4 across": width, length, and which way it runs (across where that is not said); nothing: no slot.
std::string printSlot(const std::optional<WasherSlot>& slot, LengthStyle style);
Result<std::optional<WasherSlot>> parseSlot(std::string_view typed, LengthStyle style);

// "2-2x6, 4x6"; "any" where the list is empty.
std::string printColumns(const std::vector<MakeUp>& columns);
Result<std::vector<MakeUp>> parseColumns(std::string_view typed);

} // namespace sillwright
