// The fields of hardware types in a job file, in the order in which they are written.
#pragma once

#include "core/model/hardware.h"
#include "core/store/fields.h"

namespace sillwright {

template <class F> void describe(F& f, Of<NailPattern> auto& nails) {
  f("rows", nails.rows, offset);
  f("first", nails.first, sizeOrNone);
  f("spacing", nails.spacing, sizeOrNone);
  f("count", nails.count, Whole{0, 1000});
  f("staggered", nails.staggered);
  f.optional("nail", nails.nail);
  f("nailDiameter", nails.nailDiameter, sizeOrNone);
  f("nailLength", nails.nailLength, sizeOrNone);
  f.extra(nails.extra);
}

template <class F> void describe(F& f, Of<StrapType> auto& type) {
  f("id", type.id);
  f("name", type.name);
  f("plateWidth", type.plateWidth, size);
  f("plateThickness", type.plateThickness, size);
  f("profile", type.profile, offset);
  f("exposedLength", type.exposedLength, size);
  f("nails", type.nails);
  f("edgeMinimum", type.edgeMinimum, sizeOrNone);
  f("edgeTarget", type.edgeTarget, sizeOrNone);
  f("jointTolerance", type.jointTolerance, sizeOrNone);
  f("hangerReach", type.hangerReach, offset);
  f.optional("columns", type.columns);
  f.optional("statedCapacity", type.statedCapacity, notNegative);
  f.optional("note", type.note);
  f.extra(type.extra);
}

template <class F> void describe(F& f, Of<BoltType> auto& type) {
  f("id", type.id);
  f("name", type.name);
  f("diameter", type.diameter, size);
  f("length", type.length, size);
  f("threadLength", type.threadLength, sizeOrNone);
  f("threadsPerInch", type.threadsPerInch, Range{1, 80});
  f("end", type.end);
  f("hookLeg", type.hookLeg, sizeOrNone);
  f("hookReturn", type.hookReturn, sizeOrNone);
  f("headWidth", type.headWidth, sizeOrNone);
  f("headThickness", type.headThickness, sizeOrNone);
  f("minimumEmbedment", type.minimumEmbedment, sizeOrNone);
  f.optional("note", type.note);
  f.extra(type.extra);
}

template <class F> void describe(F& f, Of<RodType> auto& type) {
  f("id", type.id);
  f("name", type.name);
  f("diameter", type.diameter, size);
  f("embedment", type.embedment, size);
  f("threadLength", type.threadLength, sizeOrNone);
  f("threadsPerInch", type.threadsPerInch, Range{1, 80});
  f("footWidth", type.footWidth, sizeOrNone);
  f("footThickness", type.footThickness, sizeOrNone);
  f("bracketOffset", type.bracketOffset, sizeOrNone);
  f.optional("washer", type.washer, Refers::ToWasherType);
  f.optional("note", type.note);
  f.extra(type.extra);
}

template <class F> void describe(F& f, Of<WasherSlot> auto& slot) {
  f("width", slot.width, size);
  f("length", slot.length, size);
  f("direction", slot.direction);
  f.extra(slot.extra);
}

template <class F> void describe(F& f, Of<WasherType> auto& type) {
  f("id", type.id);
  f("name", type.name);
  f("along", type.along, size);
  f("across", type.across, size);
  f("thickness", type.thickness, size);
  f("hole", type.hole, sizeOrNone);
  f.optional("slot", type.slot);
  f.optional("note", type.note);
  f.extra(type.extra);
}

template <class F> void describe(F& f, Of<HardwareTypes> auto& types) {
  f("straps", types.straps);
  f("bolts", types.bolts);
  f("rods", types.rods);
  f("washers", types.washers);
  f.extra(types.extra);
}
template <> inline constexpr bool overLines<HardwareTypes> = true;

} // namespace sillwright
