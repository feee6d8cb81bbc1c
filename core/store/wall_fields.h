// The fields of walls and of everything on them in a job file, in the order in which they are written.
#pragma once

#include "core/model/wall.h"
#include "core/store/fields.h"

namespace sillwright {

template <class F> void describe(F& f, Of<Footing> auto& footing) {
  f("width", footing.width, sizeOrNone);
  f("depth", footing.depth, sizeOrNone);
  f("projection", footing.projection, offset);
  f.extra(footing.extra);
}

template <class F> void describe(F& f, Of<FormBoards> auto& forms) {
  f("outside", forms.outside, sizeOrNone);
  f("inside", forms.inside, sizeOrNone);
  f.extra(forms.extra);
}

template <class F> void describe(F& f, Of<StudLayout> auto& studs) {
  f("from", studs.from);
  f("spacing", studs.spacing, Range{1, 1200});
  f("first", studs.first, offset);
  f("nominal", studs.nominal);
  f.extra(studs.extra);
}

template <class F> void describe(F& f, Of<PourStep> auto& step) {
  f("id", step.id);
  f("mark", step.mark);
  f("from", step.from);
  f("to", step.to);
  f("height", step.height, offset);
  f.extra(step.extra);
}

template <class F> void describe(F& f, Of<Sill> auto& sill) {
  f("id", sill.id);
  f("mark", sill.mark);
  f("from", sill.from);
  f("to", sill.to);
  f("nominal", sill.nominal);
  f.optional("species", sill.species);
  f.optional("splices", sill.splices);
  f.extra(sill.extra);
}

template <class F> void describe(F& f, Of<Opening> auto& opening) {
  f("id", opening.id);
  f("mark", opening.mark);
  f("kind", opening.kind);
  f("from", opening.from);
  f("to", opening.to);
  f("sillHeight", opening.sillHeight, offset);
  f("headHeight", opening.headHeight, offset);
  f("headerDepth", opening.headerDepth, sizeOrNone);
  f.extra(opening.extra);
}

template <class F> void describe(F& f, Of<Column> auto& column) {
  f("id", column.id);
  f("mark", column.mark);
  f("station", column.station);
  f("makeUp", column.makeUp);
  f("role", column.role);
  f("leeway", column.leeway, sizeOrNone);
  f.extra(column.extra);
}

template <class F> void describe(F& f, Of<Panel> auto& panel) {
  f("id", panel.id);
  f("mark", panel.mark);
  f("from", panel.from);
  f("to", panel.to);
  f("height", panel.height, size);
  f.optional("unitShear", panel.unitShear, Range{0, 100000});
  f.optional("designShear", panel.designShear, Range{0, 100000});
  f.optional("deadLoad", panel.deadLoad, Range{0, 100000});
  f.optional("lever", panel.lever, positiveLength);
  f("sheathing", panel.sheathing);
  f.optional("leftMark", panel.leftMark, KnownMark{});
  f.optional("rightMark", panel.rightMark, KnownMark{});
  f.extra(panel.extra);
}

template <class F> void describe(F& f, Of<Strap> auto& strap) {
  f("id", strap.id);
  f("mark", strap.mark);
  f("type", strap.type, Refers::ToStrapType);
  f("station", strap.station);
  f("heightOffset", strap.heightOffset, offset);
  f.optional("column", strap.column, Refers::ToOwnColumn);
  f.extra(strap.extra);
}

template <class F> void describe(F& f, Of<Bolt> auto& bolt) {
  f("id", bolt.id);
  f("mark", bolt.mark);
  f("type", bolt.type, Refers::ToBoltType);
  f("station", bolt.station);
  f("depth", bolt.depth);
  f("projection", bolt.projection, offset);
  f("hook", bolt.hook);
  f.optional("washer", bolt.washer, Refers::ToWasherType);
  f("cutWasher", bolt.cutWasher);
  f.optional("washerShift", bolt.washerShift, offset);
  f.extra(bolt.extra);
}

template <class F> void describe(F& f, Of<Rod> auto& rod) {
  f("id", rod.id);
  f("mark", rod.mark);
  f("type", rod.type, Refers::ToRodType);
  f("column", rod.column, Refers::ToOwnColumn);
  f("side", rod.side);
  f("offset", rod.offset, offset);
  f("depth", rod.depth);
  f("projection", rod.projection, offset);
  f.extra(rod.extra);
}

template <class F> void describe(F& f, Of<Bar> auto& bar) {
  f("id", bar.id);
  f("mark", bar.mark);
  f("run", bar.run);
  f("size", bar.size, Whole{3, 8});
  f("planned", bar.planned);
  f.optional("found", bar.found);
  f.extra(bar.extra);
}

template <class F> void describe(F& f, Of<GradeShot> auto& shot) {
  f("id", shot.id);
  f("mark", shot.mark);
  f("station", shot.station);
  f("reading", shot.reading, offset);
  f.optional("width", shot.width, size);
  f.extra(shot.extra);
}

template <class F> void describe(F& f, Of<Reading> auto& reading) {
  f("piece", reading.piece, Refers::ToOwnPiece);
  f.optional("along", reading.along, anyLength);
  f.optional("inOut", reading.inOut, offset);
  f.optional("pourOffset", reading.pourOffset, offset);
  f.optional("plumb", reading.plumb, offset);
  f("gauge", reading.gauge, size);
  f.optional("projection", reading.projection, offset);
  f("set", reading.set);
  f.optional("who", reading.who);
  f.optional("when", reading.when, Date{});
  f.extra(reading.extra);
}

template <class F> void describe(F& f, Of<WallLine> auto& wall) {
  f("id", wall.id);
  f("mark", wall.mark);
  f.optional("title", wall.title);
  f("startCorner", wall.startCorner, Refers::ToCorner);
  f("endCorner", wall.endCorner, Refers::ToCorner);
  f("startFraming", wall.startFraming);
  f("endFraming", wall.endFraming);
  f("kind", wall.kind);
  f("thickness", wall.thickness, size);
  f("stemHeight", wall.stemHeight, size);
  f("footing", wall.footing);
  f("forms", wall.forms);
  f("formTop", wall.formTop, offset);
  f("sillInset", wall.sillInset, offset);
  f("wallHeight", wall.wallHeight, size);
  f.optional("studs", wall.studs);
  f.optional("steps", wall.steps);
  f.optional("sills", wall.sills);
  f.optional("openings", wall.openings);
  f.optional("columns", wall.columns);
  f.optional("panels", wall.panels);
  f.optional("straps", wall.straps);
  f.optional("bolts", wall.bolts);
  f.optional("rods", wall.rods);
  f.optional("bars", wall.bars);
  f.optional("shots", wall.shots);
  f.optional("readings", wall.readings);
  f.extra(wall.extra);
}
template <> inline constexpr bool overLines<WallLine> = true;

} // namespace sillwright
