// What requirements are told from, with the limits; used by requirement_*_words only.
#pragma once

#include <cmath>

#include "core/refit/told.h"
#include "core/rules/limit_words.h"
#include "core/rules/limits.h"
#include "core/rules/panel_ends.h"
#include "core/rules/word_parts.h"

namespace sillwright {

struct Asked : Told {
  const ResolvedLimits& limits;

  // " (IRC 2024 R403.1.6)", or with what the job changed it for.
  std::string source(LimitKey key) const {
    const LimitRow& row = limitTable()[static_cast<std::size_t>(key)];
    for (const LimitOverride& change : layout.limits->overrides)
      if (change.key == row.name)
        return " (changed for this job: " + change.reason + ")";
    return " (" + (row.source.document.empty() ? std::string(words(row.source.status)) : documentOf(row.source)) + ")";
  }
  // "3 1/2\" (7 diameters, ACI 318-19 …)" where the bolts are all as thick.
  std::string diameters(LimitKey key) const {
    const std::string factor = numberWords(limits[key]) + " diameters";
    const std::string from = source(key).substr(2);
    const auto thick = thickness();
    return thick ? much(limits[key] * *thick) + " (" + factor + ", " + from : factor + " (" + from;
  }
  const StrapType* strapType() const {
    for (const PanelEnd& end : panelEnds(layout))
      if (end.column && end.column->id == id(0) && end.mark)
        return findStrapType(*layout.types, end.mark->strapType);
    return body() ? body()->type : nullptr;
  }
  const StrapBody* body() const {
    for (const StrapBody& each : layout.straps)
      if (each.id == id(0))
        return &each;
    return nullptr;
  }

private:
  // Of the bolts that it is asked of; none where they differ.
  std::optional<double> thickness() const {
    std::optional<double> one;
    for (const AnchorBody& anchor : layout.anchors) {
      const bool meant = !id(0) || kind(0) == PieceKind::Sill ? !anchor.isRod : anchor.id == id(0);
      if (!meant)
        continue;
      if (one && std::abs(*one - anchor.diameter) > 1e-6)
        return std::nullopt;
      one = anchor.diameter;
    }
    return one;
  }
};

std::string boltRequirement(const Asked& asked); // bolts and washers

} // namespace sillwright
