#include "ui/sheet/sheet_frame.h"

#include <array>
#include <span>

#include "ui/sheet/sheet_text.h"

namespace sillwright::sheet {

namespace {

constexpr double margin = 24;
constexpr double titleBlockHeight = 62;
constexpr double cautionsHeight = 42;
constexpr double inset = 8;

constexpr std::array<Scale, 6> elevationScales{{{9.0, "1 1/2\" = 1'-0\""},
                                                {6.0, "1\" = 1'-0\""},
                                                {4.5, "3/4\" = 1'-0\""},
                                                {3.0, "1/2\" = 1'-0\""},
                                                {2.25, "3/8\" = 1'-0\""},
                                                {1.5, "1/4\" = 1'-0\""}}};
constexpr std::array<Scale, 12> planScales{{{3.0, "1/2\" = 1'-0\""},
                                            {2.25, "3/8\" = 1'-0\""},
                                            {1.5, "1/4\" = 1'-0\""},
                                            {1.125, "3/16\" = 1'-0\""},
                                            {0.75, "1/8\" = 1'-0\""},
                                            {0.375, "1/16\" = 1'-0\""},
                                            {0.3, "1\" = 20'-0\""},
                                            {0.2, "1\" = 30'-0\""},
                                            {0.12, "1\" = 50'-0\""},
                                            {0.06, "1\" = 100'-0\""},
                                            {0.03, "1\" = 200'-0\""},
                                            {0.012, "1\" = 500'-0\""}}};
constexpr std::array<Scale, 7> detailScales{{{18.0, "3\" = 1'-0\""},
                                             {9.0, "1 1/2\" = 1'-0\""},
                                             {6.0, "1\" = 1'-0\""},
                                             {4.5, "3/4\" = 1'-0\""},
                                             {3.0, "1/2\" = 1'-0\""},
                                             {2.25, "3/8\" = 1'-0\""},
                                             {1.5, "1/4\" = 1'-0\""}}};

Scale largest(std::span<const Scale> scales, double limit) {
  for (const Scale& scale : scales)
    if (scale.pointsPerInch <= limit + 1e-9)
      return scale;
  return scales.back();
}

struct Cell {
  std::string_view english;
  std::string_view spanish;
  std::string value;
  std::string second;
  double share = 1; // of the width
};

// The second line of a cell; a long one on two lines or three, smaller only where that does not do.
void drawSecond(Drawing& page, const std::string& words, Point2 at, double room) {
  constexpr double readable = 6.4, step = 0.3;
  double size = 9;
  if (textWidth(words, size) <= room) {
    page.text(at, words, Ink::Text, plain(size));
    return;
  }
  std::vector<std::string> lines = wrapped(words, size = smallSize, room);
  while (size > readable && lines.size() > 2)
    lines = wrapped(words, size -= step, room);
  while (size > step && lines.size() > 3)
    lines = wrapped(words, size -= step, room);
  double y = at.y - (lines.size() > 2 ? 7 : 5);
  for (const std::string& line : lines) {
    page.text({at.x, y}, line, Ink::Text, plain(size * std::min(1.0, room / textWidth(line, size))));
    y += size * 1.1;
  }
}

void drawCell(Drawing& page, const Cell& cell, double x0, double x1, double y0) {
  const double room = x1 - x0 - 12;
  const bool both = textWidth(cell.english, smallSize) + textWidth(cell.spanish, smallSize) + smallSize < room;
  head(page, {x0 + 6, y0 + 13}, cell.english, both ? cell.spanish : std::string_view(), smallSize);
  const auto fitted = [room](const std::string& text, double size) {
    const double wide = textWidth(text, size);
    return wide > room ? size * room / wide : size;
  };
  page.text({x0 + 6, y0 + 34}, cell.value, Ink::Text, bold(fitted(cell.value, 13)));
  drawSecond(page, cell.second, {x0 + 6, y0 + 50}, room);
}

std::string jobNote(const TitleBlock& title) {
  return title.address.empty() || title.note.empty() ? title.address + title.note : title.address + " · " + title.note;
}

std::string revisionWords(const Job& job) {
  return job.revisions->empty() ? "first issue" : std::to_string(job.revisions->back().number);
}

void drawTitleBlock(Draft& draft, const PageFrame& frame, const Job& job, const SheetOptions& options, int number,
                    int of) {
  Drawing& page = draft.drawing;
  const double y0 = frame.frame.y1 - titleBlockHeight;
  page.line({frame.frame.x0, y0}, {frame.frame.x1, y0}, Ink::Text, 1.5);
  const std::array<Cell, 9> cells{{
      {"JOB", "obra", job.title.job, jobNote(job.title), 1.75},
      {"SHOWS", "muestra", draft.subject, draft.note, 1.6},
      {"SCALE", "escala", draft.scale.empty() ? "as noted" : draft.scale, "cuts as noted", 1.1},
      {"PAPER", "papel", std::string(options.paper.title), "print at 100 %", 1.3},
      {"REVISION", "revisión", revisionWords(job), job.title.planSet.empty() ? "" : "plans " + job.title.planSet, 0.9},
      {"DATE", "fecha", options.date, "", 0.95},
      {"BY", "por", job.title.by, "", 1.0},
      {"SHEET", "hoja", std::to_string(number) + " of " + std::to_string(of), "", 0.8},
      {"", "", "Sillwright", "layout sheet · hoja de trazo", 1.2},
  }};
  double total = 0;
  for (const Cell& cell : cells)
    total += cell.share;
  double x = frame.frame.x0;
  for (const Cell& cell : cells) {
    const double right = x + (frame.frame.x1 - frame.frame.x0) * cell.share / total;
    drawCell(page, cell, x, right, y0);
    if (&cell != &cells.back())
      page.line({right, y0}, {right, frame.frame.y1}, Ink::Text, 0.7);
    x = right;
  }
}

void drawCautions(Drawing& page, const PageFrame& frame) {
  const double x = frame.frame.x0 + inset;
  const double width = frame.frame.x1 - frame.frame.x0 - 2 * inset;
  double y = frame.frame.y1 - titleBlockHeight - cautionsHeight + 10;
  const auto line = [&](std::string_view text, TextStyle style) {
    const double wide = textWidth(text, style.size);
    if (wide > width)
      style.size *= width / wide;
    page.text({x, y}, text, Ink::Text, style);
    y += 12.5;
  };
  line("GUARD bars and bolts that stick up.  Do not strip forms early.  Do not bend a cast-in strap twice.  "
       "Call before you change hardware.",
       bold(noteSize));
  line("PROTEJA varillas y pernos salientes.  No quite el encofrado antes de tiempo.  No doble dos veces la cinta "
       "empotrada.  Llame antes de cambiar herrajes.",
       italic(noteSize));
  line("The approved plans, the engineer of record, the hardware's own instructions, the local code and the inspector "
       "govern. This sheet states measures against limits; it approves nothing.",
       plain(noteSize));
}

} // namespace

PageFrame pageFrame(const Paper& paper) {
  PageFrame frame;
  frame.width = paper.width * 72;
  frame.height = paper.height * 72;
  frame.frame = {margin, margin, frame.width - margin, frame.height - margin};
  frame.content = {margin + inset, margin + inset, frame.width - margin - inset,
                   frame.height - margin - titleBlockHeight - cautionsHeight - 4};
  return frame;
}

Bounds drawHead(Draft& draft, const PageFrame& frame, const std::string& secondLine) {
  Bounds content = frame.content;
  draft.drawing.text({content.x0, content.y0 + 13}, draft.title, Ink::Text, bold(titleSize));
  draft.drawing.text({content.x0, content.y0 + 28}, secondLine, Ink::Text, plain(bodySize));
  content.y0 += 36;
  return content;
}

void finishPage(Draft& draft, const PageFrame& frame, const Job& job, const SheetOptions& options, int number, int of) {
  draft.drawing.rect(frame.frame.x0, frame.frame.y0, frame.frame.x1, frame.frame.y1, Ink::Text, 1.5);
  drawCautions(draft.drawing, frame);
  drawTitleBlock(draft, frame, job, options, number, of);
}

Scale elevationScale(double limit) { return largest(elevationScales, limit); }
Scale planScale(double limit) { return largest(planScales, limit); }
Scale detailScale(double limit) { return largest(detailScales, limit); }

void drawScaleBar(Drawing& page, double right, double y, double pointsPerInch) {
  const double foot = 12 * pointsPerInch;
  const double left = right - foot;
  for (int i = 0; i < 4; ++i) {
    const double x0 = left + foot * i / 4;
    if (i % 2 == 0)
      page.fillRect(x0, y, x0 + foot / 4, y + 5, Ink::Text);
  }
  page.rect(left, y, right, y + 5, Ink::Text, 0.7);
  page.text({left, y - 3}, "0", Ink::Text, plain(smallSize, Anchor::Middle));
  page.text({right, y - 3}, "1'", Ink::Text, plain(smallSize, Anchor::Middle));
  if (foot >= 60)
    page.text({(left + right) / 2, y - 3}, "6\"", Ink::Text, plain(smallSize, Anchor::Middle));
}

} // namespace sillwright::sheet
