// Forces at a panel from what the plans say of it. Nothing where the plans say too little; inches and pounds.
#pragma once

#include <optional>

#include "core/model/layout.h"
#include "core/rules/panel_ends.h"

namespace sillwright {

// Between the two hold-down lines of a panel as laid out.
std::optional<double> leverOf(const PanelEnd& left, const PanelEnd& right);
// On the plans: as entered; else from the middles of the columns that the marks call for, one at each end of the panel.
std::optional<double> plannedLever(const PanelEnd& left, const PanelEnd& right);

// Tie force at the ends of a panel, allowable stress level: v h L / lever, less w L^2 / 2 / lever where the plans give a
// dead load (SDPWS 2021 4.3.6.1 with statics). Never less than zero.
std::optional<double> tieForceOf(const PanelEnd& left, const PanelEnd& right);

// What the bolts through the sill under a panel carry along the wall together, wind or seismic, allowable stress level
// (NDS 2018 12.3, load duration 1.6). Nothing where a sill says no species or a bolt's value is not to be had.
std::optional<double> boltShearOf(const WallLayout& layout, const Panel& panel);

} // namespace sillwright
