#include "ui/sheet/setting_table.h"

#include <algorithm>
#include <cmath>

#include "core/base/tolerance.h"
#include "core/model/lookup.h"
#include "core/refit/slot_words.h"
#include "core/rules/panel_ends.h"

namespace sillwright::sheet {

namespace {

struct Line {
  double station = 0;
  Row row;
};

std::string measure(const Job& job, double value) { return printMeasure(value, job.units); }

std::string sided(const Job& job, double from, const std::string& what) {
  if (std::abs(from) < tolerance::tapeMark / 2)
    return "on " + what;
  return measure(job, std::abs(from)) + (from > 0 ? " right of " : " left of ") + what;
}

std::string columnMark(const WallLayout& layout, const ColumnBody& column) {
  const Column* found = findIn(layout.wall->columns, column.id);
  return found ? found->mark : "column";
}

std::string strapFromColumn(const Job& job, const WallLayout& layout, const StrapBody& strap) {
  if (!strap.column)
    return "no column";
  const ColumnBody& column = layout.columns[*strap.column];
  return sided(job, strap.strap->station - column.box.s.middle(), columnMark(layout, column) + " centre");
}

// From the face of the nearest column, or the centre of the nearest stud.
std::string anchorFromColumn(const Job& job, const WallLayout& layout, const AnchorBody& anchor) {
  double best = 1e9;
  std::string text = "no column near";
  for (const ColumnBody& column : layout.columns) {
    const double away = gap(column.box.s, {anchor.station, anchor.station});
    if (away >= 0 && away < best) {
      best = away;
      const bool right = anchor.station > column.box.s.middle();
      text = measure(job, away) + (right ? " right of " : " left of ") + columnMark(layout, column) + " face";
    }
  }
  for (const StudBody& stud : layout.studs) {
    const double away = anchor.station - stud.box.s.middle();
    if (std::abs(away) < best) {
      best = std::abs(away);
      text = sided(job, away, "stud centre");
    }
  }
  return text;
}

std::string jointHeight(const Job& job, const Strap& strap) {
  if (std::abs(strap.heightOffset) < tolerance::tapeMark / 2)
    return "joint on pour line";
  return "joint " + measure(job, std::abs(strap.heightOffset)) +
         (strap.heightOffset > 0 ? " above pour line" : " below pour line");
}

std::string hookWords(HookDirection hook) {
  switch (hook) {
  case HookDirection::Inward:
    return "inward";
  case HookDirection::Outward:
    return "outward";
  case HookDirection::Left:
    return "left";
  case HookDirection::Right:
    return "right";
  }
  return {};
}

std::string washerWords(const Job& job, const AnchorBody& anchor) {
  if (!anchor.washer)
    return "none";
  std::string along = measure(job, anchor.washer->along);
  std::string across = measure(job, anchor.washer->across);
  for (std::string* text : {&along, &across})
    if (text->ends_with('"'))
      text->pop_back();
  std::string words = along + " x " + across;
  const bool slotted = anchor.washer->slot.has_value();
  if (slotted)
    words += " slotted";
  if (const double shift = anchor.bolt ? anchor.bolt->washerShift : 0; shift != 0) {
    const bool lengthwise = slotted && anchor.washer->slot->direction == SlotDirection::Along;
    words += std::string(", slid ") + (lengthwise ? (shift > 0 ? "right " : "left ") : shift > 0 ? "in " : "out ") +
             measure(job, std::abs(shift));
  }
  if (slotted && anchor.bolt && anchor.bolt->cutWasher)
    words += ", cut washer";
  return words + (anchor.sillPiece ? ", on sill" : ", on concrete");
}

std::string slideRoom(const Job& job, const WallLayout& layout, const ResolvedLimits& limits, Id piece) {
  const auto slots = slotsOf(layout, limits, piece);
  return slots ? roomShort(*slots, job.units) : "none";
}

Line strapLine(const Job& job, const WallLayout& layout, const ResolvedLimits& limits, const StrapBody& strap) {
  return {strap.strap->station,
          {"[]", strap.strap->mark, strap.type->name, printLength(strap.strap->station, job.units),
           strapFromColumn(job, layout, strap), jointHeight(job, *strap.strap), "inward", "none",
           slideRoom(job, layout, limits, strap.id), "..."}};
}

Line anchorLine(const Job& job, const WallLayout& layout, const ResolvedLimits& limits, const AnchorBody& anchor) {
  const std::string& mark = anchor.isRod ? anchor.rod->mark : anchor.bolt->mark;
  const std::string& name = anchor.isRod ? anchor.rodType->name : anchor.boltType->name;
  const bool hooked = !anchor.isRod && anchor.boltType->end != BoltEnd::Headed;
  return {anchor.station,
          {"[]", mark, name, printLength(anchor.station, job.units), anchorFromColumn(job, layout, anchor),
           measure(job, anchor.top - anchor.pour) + " above pour line",
           hooked ? hookWords(anchor.bolt->hook) : "straight", washerWords(job, anchor),
           slideRoom(job, layout, limits, anchor.id), "..."}};
}

Row endRow(const Job& job, const WallLayout& layout, const PanelEnd& end) {
  std::string hardware = "none", station;
  if (end.strap) {
    hardware = end.strap->strap->mark + "  " + end.strap->type->name;
    station = printLength(end.strap->strap->station, job.units);
  } else if (end.rod) {
    hardware = end.rod->rod->mark + "  " + end.rod->rodType->name;
    station = printLength(end.rod->station, job.units);
  }
  return {layout.wall->mark,
          end.panel->mark,
          end.side == Side::Left ? "left" : "right",
          end.mark ? end.mark->mark : "none",
          end.column ? columnMark(layout, *end.column) + "  " + print(end.column->makeUp) : "none",
          hardware,
          station};
}

} // namespace

Table settingTable(const Job& job, const CheckedWall& wall, Interval stretch) {
  Table table;
  table.columns = {{"", "", 24, false, false, Anchor::Middle},
                   {"MARK", "marca", 44, false, true, Anchor::Start},
                   {"WHAT", "qué es", 90, false, false, Anchor::Start},
                   {"FROM HOOK", "desde el gancho", 90, true, false, Anchor::Start},
                   {"FROM THE COLUMN", "desde el poste", 110, false, false, Anchor::Start},
                   {"HEIGHT", "altura", 100, false, false, Anchor::Start},
                   {"BENT", "doblez", 46, false, false, Anchor::Start},
                   {"WASHER", "arandela", 84, false, false, Anchor::Start},
                   {"SLIDE ROOM", "holgura", 84, false, false, Anchor::Middle, true},
                   {"AS SET", "lectura", 70, false, false, Anchor::Start}};
  const WallLayout& layout = wall.layout;
  const ResolvedLimits limits = resolve(*job.limits);
  std::vector<Line> lines;
  for (const StrapBody& strap : layout.straps)
    if (stretch.contains(strap.strap->station))
      lines.push_back(strapLine(job, layout, limits, strap));
  for (const AnchorBody& anchor : layout.anchors)
    if (stretch.contains(anchor.station))
      lines.push_back(anchorLine(job, layout, limits, anchor));
  std::stable_sort(lines.begin(), lines.end(), [](const Line& a, const Line& b) { return a.station < b.station; });
  for (Line& line : lines)
    table.rows.push_back(std::move(line.row));
  return table;
}

Table wallEndTable(const Job& job, const std::vector<std::shared_ptr<const CheckedWall>>& walls) {
  Table table;
  table.columns = {{"WALL", "muro", 34, false, true, Anchor::Start},
                   {"PANEL", "panel", 40, false, false, Anchor::Start},
                   {"END", "extremo", 40, false, false, Anchor::Start},
                   {"MARK", "marca", 40, false, true, Anchor::Start},
                   {"COLUMN", "poste", 76, false, false, Anchor::Start},
                   {"HARDWARE", "herraje", 110, false, false, Anchor::Start},
                   {"FROM HOOK", "desde el gancho", 84, false, true, Anchor::Start}};
  for (const auto& wall : walls)
    for (const PanelEnd& end : panelEnds(wall->layout))
      table.rows.push_back(endRow(job, wall->layout, end));
  return table;
}

} // namespace sillwright::sheet
