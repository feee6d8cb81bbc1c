// The fields of a job in a job file, in the order in which they are written.
#pragma once

#include "core/model/job.h"
#include "core/store/fields.h"
#include "core/store/hardware_fields.h"
#include "core/store/wall_fields.h"

namespace sillwright {

template <class F> void describe(F& f, Of<TitleBlock> auto& title) {
  f.optional("job", title.job);
  f.optional("address", title.address);
  f.optional("by", title.by);
  f.optional("planSet", title.planSet);
  f.optional("note", title.note);
  f.extra(title.extra);
}
template <> inline constexpr bool overLines<TitleBlock> = true;

template <class F> void describe(F& f, Of<Corner> auto& corner) {
  f("id", corner.id);
  f("at", corner.at);
  f.extra(corner.extra);
}

template <class F> void describe(F& f, Of<LimitOverride> auto& change) {
  f("key", change.key);
  f("value", change.value, notNegative);
  f("reason", change.reason, NotEmpty{});
  f.optional("who", change.who);
  f.optional("date", change.date, Date{});
  f.extra(change.extra);
}

template <class F> void describe(F& f, Of<RuleOverride> auto& change) {
  f("rule", change.rule, NotEmpty{});
  f("counts", change.counts);
  f("reason", change.reason, NotEmpty{});
  f.optional("who", change.who);
  f.optional("date", change.date, Date{});
  f.extra(change.extra);
}

template <class F> void describe(F& f, Of<JobLimits> auto& limits) {
  f("storeys", limits.storeys, Whole{1, 6});
  f.optional("seismicCategory", limits.seismicCategory);
  f("plateWashers", limits.plateWashers);
  f.optional("topBar", limits.topBar);
  f.optional("openingBars", limits.openingBars);
  f.optional("planBoltSpacing", limits.planBoltSpacing, size);
  f("sillOverhang", limits.sillOverhang, sizeOrNone);
  f("sheathingThickness", limits.sheathingThickness, sizeOrNone);
  f("concreteStrength", limits.concreteStrength, Range{500, 20000});
  f.optional("overrides", limits.overrides);
  f.optional("rules", limits.rules);
  f.extra(limits.extra);
}
template <> inline constexpr bool overLines<JobLimits> = true;

template <class F> void describe(F& f, Of<WallEndMark> auto& row) {
  f("id", row.id);
  f("mark", row.mark, NotEmpty{});
  f.optional("strapType", row.strapType, Refers::ToStrapType);
  f.optional("rodType", row.rodType, Refers::ToRodType);
  f.optional("column", row.column);
  f.optional("requiredCapacity", row.requiredCapacity, notNegative);
  f.optional("sill", row.sill);
  f.optional("boltSpacing", row.boltSpacing, size);
  f.extra(row.extra);
}

template <class F> void describe(F& f, Of<Underlay> auto& underlay) {
  f("path", underlay.path, NotEmpty{});
  f("size", underlay.size);
  f.optional("hash", underlay.hash);
  f("origin", underlay.origin);
  f("inchesPerPixel", underlay.inchesPerPixel, Range{1e-6, 1e6});
  f("turn", underlay.turn, Range{-360, 360});
  f("dim", underlay.dim, Range{0, 1});
  f("locked", underlay.locked);
  f.extra(underlay.extra);
}

template <class F> void describe(F& f, Of<Diagonal> auto& diagonal) {
  f("id", diagonal.id);
  f("from", diagonal.from, Refers::ToCorner);
  f("to", diagonal.to, Refers::ToCorner);
  f("measured", diagonal.measured, positiveLength);
  f.extra(diagonal.extra);
}

template <class F> void describe(F& f, Of<Revision> auto& revision) {
  f("number", revision.number, Whole{0, 100000});
  f.optional("date", revision.date, Date{});
  f.optional("reason", revision.reason);
  f.optional("by", revision.by);
  f("job", revision.job);
  f.extra(revision.extra);
}
template <> inline constexpr bool overLines<Revision> = true;

template <class F> void describe(F& f, Of<Job> auto& job) {
  f("title", job.title);
  f("units", job.units);
  f("types", job.types);
  f("limits", job.limits);
  f.optional("marks", job.marks);
  f("corners", job.corners);
  f("walls", job.walls);
  f.optional("underlay", job.underlay);
  f.optional("diagonals", job.diagonals);
  f.optional("revisions", job.revisions);
  f("nextId", job.nextId);
  f.extra(job.extra);
}
template <> inline constexpr bool overLines<Job> = true;

} // namespace sillwright
