// The checks behind the rows of the rule book, by subject. Each looks at one wall as laid out and files what it finds;
// where an input is missing it files nothing.
#pragma once

#include "core/model/layout.h"
#include "core/rules/draft.h"
#include "core/rules/limits.h"

namespace sillwright {

using Check = void(const WallLayout&, const ResolvedLimits&, Drafts&);

// strap_rules
Check checkStrapEdge, checkStrapJoint, checkStrapPair, checkStrapHang, checkStrapMissing;
// strap_nail_rules
Check checkStrapColumn, checkStrapNailEdge, checkStrapSeam, checkStrapNailDepth, checkStrapLean, checkStrapLeanOpening;
// strap_concrete_rules
Check checkStrapSteel, checkStrapDepth, checkStrapBack;
// bolt_sill_rules
Check checkBoltCount, checkBoltEndFar, checkBoltEndNear, checkBoltSpacing, checkBoltThird;
// bolt_rules
Check checkBoltEmbed, checkBoltThread, checkBoltOpening, checkBoltStud, checkBoltSteel, checkBoltStrap,
    checkBoltSplice;
// bolt_nut_rules
Check checkBoltRunOut, checkBoltMatch;
// bolt_cast_rules
Check checkBoltGap, checkBoltCover, checkBoltHook;
// washer_rules
Check checkWasherSheathing, checkWasherSill, checkWasherColumn, checkWasherWasher;
// column_rules
Check checkColumnSill, checkColumnOpening, checkColumnOverlap;
// panel_rules
Check checkPanelEnds, checkPanelSlender;
// steel_rules
Check checkBarCover, checkPourForm;

} // namespace sillwright
