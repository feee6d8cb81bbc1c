#include <algorithm>

#include "core/drawing/hatch.h"
#include "core/drawing/section_pen.h"

namespace sillwright {

namespace {

void drawBox(Drawing& d, const Bounds& b, Ink ground, Ink line, double width) {
  d.fillRect(b.x0, b.y0, b.x1, b.y1, ground);
  d.rect(b.x0, b.y0, b.x1, b.y1, line, width);
}

Polygon2 cutOutline(const SectionPen& pen) {
  const WallLayout& l = pen.layout;
  const double foot = std::max(l.bottom, pen.seen.from);
  const double top = pen.pour;
  const Interval a = l.across;
  if (l.footingAcross.empty() || l.stemBottom <= foot)
    return {{pen.x(a.from), pen.y(top)}, {pen.x(a.to), pen.y(top)}, {pen.x(a.to), pen.y(foot)},
            {pen.x(a.from), pen.y(foot)}};
  const Interval f = l.footingAcross;
  const double ledge = l.stemBottom;
  return {{pen.x(a.from), pen.y(top)},   {pen.x(a.to), pen.y(top)},    {pen.x(a.to), pen.y(ledge)},
          {pen.x(f.to), pen.y(ledge)},   {pen.x(f.to), pen.y(foot)},   {pen.x(f.from), pen.y(foot)},
          {pen.x(f.from), pen.y(ledge)}, {pen.x(a.from), pen.y(ledge)}};
}

void drawEarthBeside(SectionPen& pen) {
  const WallLayout& l = pen.layout;
  const double foot = std::max(l.bottom, pen.seen.from);
  if (l.footingAcross.empty() || l.stemBottom <= foot)
    return;
  constexpr double band = 4;
  const Interval outer = grown(l.footingAcross, band);
  for (const Interval d : {Interval{outer.from, l.footingAcross.from}, Interval{l.footingAcross.to, outer.to}}) {
    const Bounds b = pen.box(d, {foot, l.stemBottom});
    const Polygon2 earth = rectangle(b.x0, b.y0, b.x1, b.y1);
    pen.drawing.fill(earth, Ink::Earth);
    pen.lines.push_back(b);
    drawEarth(pen.drawing, earth, {pen.x(0), pen.y(l.stemBottom)});
    pen.drawing.line({b.x0, b.y0}, {b.x1, b.y0}, Ink::EarthLine, 1);
  }
}

// What goes on past a level ends in a break there, not in an edge.
void drawBreak(SectionPen& pen, double x0, double x1, double y, Ink ink) {
  const double middle = (x0 + x1) / 2;
  const Polygon2 line{{x0 - 8, y},         {middle - 6, y}, {middle - 2, y - 6},
                      {middle + 2, y + 5}, {middle + 6, y}, {x1 + 8, y}};
  pen.drawing.polyline(line, ink, 0.8);
  pen.lines.push_back({x0 - 8, y - 6, x1 + 8, y + 5});
}

// Concrete that goes on below the window ends in a break, not in an edge.
void drawCutEdges(SectionPen& pen, const Polygon2& outline) {
  const double foot = pen.seen.from;
  if (foot <= pen.layout.bottom)
    return pen.drawing.loop(outline, Ink::ConcreteLine, 1.5);
  const auto lowest = std::max_element(outline.begin(), outline.end(), [](auto a, auto b) { return a.y < b.y; })->y;
  Polygon2 open = outline;
  while (open.back().y < lowest - 1e-9 || open.front().y >= lowest - 1e-9) // begin with the left foot
    std::rotate(open.begin(), open.begin() + 1, open.end());
  std::rotate(open.begin(), open.end() - 1, open.end());
  pen.drawing.polyline(open, Ink::ConcreteLine, 1.5);
  drawBreak(pen, open.front().x, open.back().x, lowest - 1.5, Ink::ConcreteLine);
}

void drawForms(SectionPen& pen) {
  const WallLine& wall = *pen.layout.wall;
  const Interval z{std::max(pen.layout.stemBottom, pen.seen.from), pen.pour + wall.formTop};
  for (const Interval d : {Interval{-wall.forms.outside, 0.0},
                           Interval{wall.thickness, wall.thickness + wall.forms.inside}}) {
    if (d.length() <= 0)
      continue;
    const Bounds b = pen.box(d, z);
    pen.drawing.fillRect(b.x0, b.y0, b.x1, b.y1, Ink::Form);
    pen.drawing.dashedRect(b.x0, b.y0, b.x1, b.y1, 4, 2, Ink::FormLine, 0.7);
  }
}

void drawPourLine(SectionPen& pen) {
  const Bounds& w = pen.input.window;
  const double y = pen.y(pen.pour);
  if (pen.paper) {
    pen.drawing.line({pen.x(0) - 30, y}, {pen.x(0), y}, Ink::Text, 1.2);
    pen.drawing.line({pen.x(pen.layout.across.to), y}, {pen.x(pen.layout.across.to) + 40, y}, Ink::Text, 1.2);
  } else {
    pen.drawing.line({w.x0, y}, {w.x1, y}, Ink::BladeEdge, 3);
  }
  if (pen.paper)
    pen.note(pen.x(-pen.layout.wall->forms.outside) - 6, y + 12, "pour line", 10, Ink::Text, Anchor::End);
  else
    pen.note(w.x1 - 8, y - 5, "pour line", 10, Ink::Text, Anchor::End);
}

} // namespace

void drawSectionConcrete(SectionPen& pen) {
  drawEarthBeside(pen);
  const Polygon2 outline = cutOutline(pen);
  pen.drawing.fill(outline, Ink::Concrete);
  drawConcrete(pen.drawing, outline, {pen.x(0), pen.y(pen.pour)});
  drawCutEdges(pen, outline);
  drawForms(pen);
  drawPourLine(pen);
}

void drawSectionBars(SectionPen& pen) {
  const double s = pen.input.station;
  for (const BarBody& bar : pen.layout.bars) {
    const Capsule& c = bar.body;
    if (bar.bar->run == BarRun::Along) {
      const double run = c.b.s - c.a.s;
      if (s < std::min(c.a.s, c.b.s) || s > std::max(c.a.s, c.b.s))
        continue;
      const double part = run == 0 ? 0 : (s - c.a.s) / run;
      const double z = c.a.z + (c.b.z - c.a.z) * part;
      if (!pen.seen.contains(z))
        continue;
      const Point2 at{pen.x(c.a.d + (c.b.d - c.a.d) * part), pen.y(z)};
      const double radius = std::max(c.radius * pen.input.view.scale, 1.8);
      pen.drawing.disc(at, radius, Ink::BarFill);
      pen.drawing.ring(at, radius, Ink::Bar, 0.8);
    } else if (std::abs((c.a.s + c.b.s) / 2 - s) < 12) {
      const Interval z = overlap({std::min(c.a.z, c.b.z), std::max(c.a.z, c.b.z)}, pen.seen);
      const Bounds b = pen.box(around((c.a.d + c.b.d) / 2, 2 * c.radius), z);
      if (!z.empty())
        pen.drawing.dashedRect(b.x0, b.y0, b.x1, b.y1, 4, 2, Ink::BarPlan, 0.8);
    }
  }
}

void drawSectionFraming(SectionPen& pen) {
  const double s = pen.input.station;
  Interval wide{0, -1}; // of the lumber that goes on above
  const auto noteBroken = [&](Interval d, double top) {
    if (top > pen.seen.to + 1e-9)
      wide = wide.length() < 0 ? d : hull(wide, d);
  };
  for (const ColumnBody& column : pen.layout.columns) {
    const Interval z = overlap(column.box.z, pen.seen);
    if (!column.box.s.contains(s) || z.empty() || pen.anchor)
      continue;
    drawBox(pen.drawing, pen.box(column.box.d, z), Ink::Wood, Ink::WoodLine, 0.9);
    noteBroken(column.box.d, column.box.z.to);
  }
  for (const Panel& panel : pen.layout.wall->panels) {
    if (s < panel.from || s > panel.to)
      continue;
    const double thick = pen.layout.limits->sheathingThickness;
    const double edge = pen.layout.wall->sillInset;
    const auto sill = sillAt(pen.layout, s);
    const Interval z{pen.pour, std::min(pen.seen.to, pen.pour + panel.height)};
    if (panel.sheathing != Sheathing::Inside) {
      drawBox(pen.drawing, pen.box({edge - thick, edge}, z), Ink::Wood2, Ink::WoodLine, 0.8);
      noteBroken({edge - thick, edge}, pen.pour + panel.height);
    }
    if (panel.sheathing != Sheathing::Outside && sill) {
      const double inner = pen.layout.sills[*sill].box.d.to;
      drawBox(pen.drawing, pen.box({inner, inner + thick}, z), Ink::Wood2, Ink::WoodLine, 0.8);
    }
  }
  if (pen.paper && wide.length() > 0)
    drawBreak(pen, pen.x(wide.from), pen.x(wide.to), pen.y(pen.seen.to), Ink::WoodLine);
  if (const auto sill = sillAt(pen.layout, s)) {
    const SillPiece& piece = pen.layout.sills[*sill];
    const Bounds b = pen.box(piece.box.d, piece.box.z);
    pen.drawing.fillRect(b.x0, b.y0, b.x1, b.y1, Ink::Wood);
    drawWoodCut(pen.drawing, b);
    pen.drawing.rect(b.x0, b.y0, b.x1, b.y1, Ink::WoodLine, 1);
  }
}

} // namespace sillwright
