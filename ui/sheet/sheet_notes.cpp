#include "ui/sheet/sheet_notes.h"

#include <algorithm>
#include <array>

#include "core/drawing/elevation.h"
#include "core/drawing/hatch.h"
#include "core/drawing/slide_sign.h"
#include "core/rules/limit_words.h"
#include "core/rules/wording.h"
#include "ui/sheet/note_column.h"
#include "ui/sheet/sheet_text.h"

namespace sillwright::sheet {

namespace {

bool concerns(const NotesInput& input, const Finding& finding) {
  return overlap(finding.region.s, grown(input.stretch, 0.5)).length() >= 0;
}

// On a page of its own a block says which part of which wall it is about.
void partLine(Pen& pen, const NotesInput& input) {
  if (input.part.empty())
    return;
  pen.page.text({pen.x0, pen.y}, input.part, Ink::Text, bold(noteSize));
  pen.gap(14);
}

void findingsHead(Pen& pen, const NotesInput& input) {
  pen.title("TO PUT RIGHT AND TO WATCH", "corregir y vigilar");
  partLine(pen, input);
}

// With the number that stands for its label in the drawing, where there was no room for that.
void findingLines(Pen& pen, const NotesInput& input, const Finding& finding) {
  const auto number = input.numbers.find(flagKey(finding));
  double right = pen.x1;
  if (number != input.numbers.end()) {
    constexpr double radius = 6.5;
    right -= 2 * radius + 4;
    const Point2 middle{pen.x1 - radius, pen.y - 3.4};
    pen.page.ring(middle, radius, Ink::Text, 0.9);
    pen.page.text({middle.x, middle.y + 3.2}, std::to_string(number->second), Ink::Text, plain(smallSize, Anchor::Middle));
  }
  drawSwatch(pen.page, finding.level, pen.x0, pen.y - 3.2, 12, 8.4, Ink::Text);
  pen.page.text({pen.x0 + 17, pen.y}, word(finding.level), Ink::Text, bold(noteSize));
  const double wide = textWidth(word(finding.level), noteSize) + 23;
  double size = noteSize;
  const std::string label = markedLabel(*input.job, finding);
  const double room = right - pen.x0 - wide;
  if (textWidth(label, size) > room)
    size *= room / textWidth(label, size);
  pen.page.text({pen.x0 + wide, pen.y}, label, Ink::Text, plain(size));
  pen.gap(12);
  const std::string cure = correctionWords(*input.job, finding);
  pen.text(whereabouts(*input.job, finding) + (cure.empty() ? "" : "; " + cure), 17, 9);
  pen.text(sourceWords(*input.job, finding), 17, smallSize);
}

// What this job changed in the rule book, with the grounds: a sheet is not read without them.
std::vector<std::string> changedRules(const Job& job) {
  std::vector<std::string> lines;
  for (const LimitOverride& change : job.limits->overrides)
    if (const auto key = limitKey(change.key)) {
      const LimitRow& row = limitTable()[static_cast<std::size_t>(*key)];
      lines.push_back(change.key + ": " + limitWords(job, row, change.value) + " (rule book " +
                      limitWords(job, row, row.value) + "): " +
                      groundsWords(change.reason, change.who, change.date));
    }
  for (const RuleOverride& change : job.limits->rules)
    lines.push_back(change.rule + ": " + std::string(countsWords(change.counts)) + ": " +
                    groundsWords(change.reason, change.who, change.date));
  return lines;
}

// Readings of the pour line: at both ends of the part and at every step in it.
void pourBlock(Pen& pen, const NotesInput& input) {
  pen.title("POUR LINE", "línea de colado, lecturas");
  partLine(pen, input);
  std::vector<double> at{input.stretch.from};
  for (const PourRun& run : input.wall->layout.pour)
    for (const double s : {run.s.from, run.s.to})
      if (s > input.stretch.from + 1 && s < input.stretch.to - 1)
        at.push_back(s);
  at.push_back(input.stretch.to);
  at.erase(std::unique(at.begin(), at.end()), at.end());
  const double step = 118;
  double x = pen.x0;
  for (const double s : at) {
    if (x + step > pen.x1 + 1) {
      x = pen.x0;
      pen.gap(17);
    }
    const std::string station = printLength(s, input.job->units);
    pen.page.text({x, pen.y}, station, Ink::Text, plain(bodySize));
    const std::vector<Point2> blank{{x + 56, pen.y + 1}, {x + step - 10, pen.y + 1}};
    pen.page.dashed(blank, 1, 2, Ink::Text, 0.6);
    x += step;
  }
  pen.gap(16);
  pen.text("limit ±1/8\" (common practice); joints of the straps of a panel within 1/8\" of each other");
}

// Bars to keep clear of, where the drawing had no room for their running dimensions.
void barsBlock(Pen& pen, const NotesInput& input) {
  if (input.bars.empty())
    return;
  pen.title("BARS AT", "varillas a, desde el gancho");
  partLine(pen, input);
  constexpr double step = 84;
  double x = pen.x0;
  for (const std::string& bar : input.bars) {
    if (x + step > pen.x1 + 1) {
      x = pen.x0;
      pen.gap(13);
    }
    const double room = step - 6;
    pen.page.text({x, pen.y}, bar, Ink::Text, plain(std::min(bodySize, bodySize * room / textWidth(bar, bodySize))));
    x += step;
  }
  pen.gap(14);
}

void checksBlock(Pen& pen, const NotesInput&) {
  pen.title("BEFORE THE POUR", "antes del colado");
  static constexpr std::array<std::array<std::string_view, 2>, 6> checks{{
      {"straps plumb, 1/8\" in 24\"", "cintas a plomo"},
      {"straps tight to the form", "cintas pegadas al encofrado"},
      {"hooks in, toward the steel", "ganchos hacia el acero"},
      {"bars as drawn, or call", "varillas como aquí, o llame"},
      {"nuts and washers at hand", "tuercas y arandelas"},
      {"caps on bars and bolts", "tapones en varillas y pernos"},
  }};
  for (const auto& check : checks) {
    pen.page.rect(pen.x0, pen.y - 8.5, pen.x0 + 10, pen.y + 1.5, Ink::Text, 0.9);
    pen.page.text({pen.x0 + 17, pen.y}, check[0], Ink::Text, plain(noteSize));
    pen.page.text({pen.x1, pen.y}, check[1], Ink::Text, italic(smallSize, Anchor::End));
    pen.gap(16);
  }
}

void keyBlock(Pen& pen, const NotesInput&) {
  pen.title("HOW TO READ THIS", "cómo se lee");
  const auto row = [&](std::string_view english, std::string_view spanish) {
    pen.page.text({pen.x0 + 22, pen.y}, english, Ink::Text, plain(noteSize));
    pen.page.text({pen.x1, pen.y}, spanish, Ink::Text, italic(smallSize, Anchor::End));
    pen.gap(16);
  };
  const auto mid = [&] { return pen.x0 + 8; };
  drawCrowsFoot(pen.page, mid(), pen.y, Pointing::Down, Ink::Text, 6, 1.2);
  row("the point is the mark", "la punta es la marca");
  pen.page.fillRect(mid() - 1.3, pen.y - 9, mid() + 1.3, pen.y + 1, Ink::Text);
  row("bar, as found", "varilla hallada");
  pen.page.rect(mid() - 1.3, pen.y - 9, mid() + 1.3, pen.y + 1, Ink::Text, 0.6);
  row("bar, as planned", "varilla según plano");
  for (const double dx : {-1.4, 1.4}) {
    const std::vector<Point2> dash{{mid() + dx, pen.y - 9}, {mid() + dx, pen.y + 1}};
    pen.page.dashed(dash, 3, 2, Ink::Text, 0.6);
  }
  row("where the plan had it", "donde la ponía el plano");
  pen.page.ring({mid(), pen.y - 3.5}, 4, Ink::Text, 1);
  pen.page.line({mid() - 2.8, pen.y - 6.3}, {mid() + 2.8, pen.y - 0.7}, Ink::Text, 0.9);
  pen.page.line({mid() - 2.8, pen.y - 0.7}, {mid() + 2.8, pen.y - 6.3}, Ink::Text, 0.9);
  row("hook points in, away from you", "gancho hacia adentro");
  drawSlideArrow(pen.page, {mid(), pen.y - 3.5}, Ink::Text, 0.9);
  row("may slide this far, no FIX", "holgura sin CORREGIR");
}

using Block = void (*)(Pen&, const NotesInput&);

void addNote(std::vector<Note>& notes, Block block, const NotesInput& input) {
  notes.push_back({[block, &input](Pen& pen) { block(pen, input); }});
}

void addFindings(std::vector<Note>& notes, const NotesInput& input) {
  std::vector<std::function<void(Pen&)>> lines;
  for (const Finding& finding : input.wall->findings)
    if (concerns(input, finding))
      lines.push_back([&input, &finding](Pen& pen) { findingLines(pen, input, finding); });
  if (lines.empty() && !input.part.empty()) // on a page of notes of all parts
    return;
  if (lines.empty())
    lines.push_back([](Pen& pen) { pen.text("Nothing out of its limit or target on this part."); });
  addList(notes, [&input](Pen& pen) { findingsHead(pen, input); }, lines, 4);
}

void addChangedRules(std::vector<Note>& notes, const NotesInput& input) {
  std::vector<std::function<void(Pen&)>> lines;
  for (std::string& line : changedRules(*input.job))
    lines.push_back([line = std::move(line)](Pen& pen) { pen.text(line); });
  addList(notes, [](Pen& pen) { pen.title("RULES CHANGED", "reglas cambiadas"); }, lines, 0);
}

std::vector<Note> allNotes(const NotesInput& input) {
  std::vector<Note> notes;
  addFindings(notes, input);
  addChangedRules(notes, input);
  for (const Block block : {barsBlock, pourBlock, checksBlock, keyBlock})
    addNote(notes, block, input);
  return notes;
}

constexpr const char* whatNotesAre = "what to put right, to read and to check";

} // namespace

std::size_t drawNotes(Drawing& page, const NotesInput& input, const Bounds& column) {
  return fillColumn(page, allNotes(input), column, 0);
}

void addRestOfNotes(std::vector<Draft>& drafts, Draft like, const NotesInput& input, std::size_t first,
                    const PageFrame& frame) {
  like.title += ", NOTES";
  addColumnPages(drafts, like, whatNotesAre, allNotes(input), frame, first);
}

void addNotePages(std::vector<Draft>& drafts, const std::vector<NotesInput>& parts, const PageFrame& frame) {
  if (parts.empty())
    return;
  std::vector<Note> notes;
  for (const NotesInput& part : parts) {
    if (!part.onlyBars)
      addFindings(notes, part);
    addNote(notes, barsBlock, part);
    if (!part.onlyBars)
      addNote(notes, pourBlock, part);
  }
  // Where all parts have their own column of notes, checks and key stand there.
  const bool column = std::all_of(parts.begin(), parts.end(), [](const NotesInput& part) { return part.onlyBars; });
  if (!column) {
    addChangedRules(notes, parts.front());
    for (const Block block : {checksBlock, keyBlock})
      addNote(notes, block, parts.front());
  }
  Draft like;
  like.title = "NOTES";
  like.subject = "all walls";
  like.note = "notes and readings";
  addColumnPages(drafts, like, whatNotesAre, notes, frame);
}

} // namespace sillwright::sheet
