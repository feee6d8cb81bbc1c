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
// strap_plan_rules
Check checkStrapPlumb, checkStrapType, checkStrapCapacity;
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
// washer_type_rules
Check checkWasherSize, checkWasherSlot;
// rod_rules
Check checkRodOffset, checkRodEdge, checkRodEmbed, checkRodThread, checkRodSteel, checkRodCover, checkRodOpening,
    checkRodPlumb;
// column_rules
Check checkColumnSill, checkColumnOpening, checkColumnOverlap;
// panel_rules
Check checkPanelEnds, checkPanelSlender;
// panel_plan_rules
Check checkColumnPlan, checkPanelLever, checkPanelTie, checkBoltShear;
// sill_rules
Check checkSillCorner, checkSillConcrete, checkSillMark, checkSillPiece;
// steel_rules
Check checkBarCover, checkPourForm;
// bar_rules
Check checkBarClear, checkBarTop, checkBarOpening;
// form_rules
Check checkPourShot, checkPourLevel, checkFormSquare, checkFormThickness;

} // namespace sillwright
