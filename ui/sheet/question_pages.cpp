#include "ui/sheet/question_pages.h"

#include <algorithm>
#include <atomic>
#include <cctype>

#include "core/refit/question.h"
#include "core/refit/refit_job.h"
#include "core/refit/slots.h"
#include "ui/sheet/note_column.h"
#include "ui/sheet/question_drawing.h"

namespace sillwright::sheet {

namespace {

constexpr double beside = 14; // in of wall drawn on both sides of what collides
constexpr double gutter = 20; // pt between words and drawing
constexpr double shareOfWords = 0.6;
constexpr double widestWords = 460; // pt
constexpr double closeUp = 6;       // pt between notes on small paper

bool standsWrong(const CheckedWall& wall) {
  return std::any_of(wall.findings.begin(), wall.findings.end(),
                     [](const Finding& finding) { return finding.level == Level::Fix && isOfPosition(finding.rule); });
}

void number(Pen& pen, int value, const std::string& words) {
  pen.page.text({pen.x0 + 14, pen.y}, std::to_string(value) + ".", Ink::Text, bold(noteSize, Anchor::End));
  pen.text(words, 20);
}

void blank(Pen& pen, std::string_view english, std::string_view spanish) {
  const double from = head(pen.page, {pen.x0, pen.y}, english, spanish, smallSize) + 6;
  const std::vector<Point2> line{{std::max(from, pen.x0 + 96), pen.y + 1}, {pen.x1, pen.y + 1}};
  pen.page.dashed(line, 1, 2, Ink::Text, 0.6);
  pen.gap(18);
}

using Line = std::function<void(Pen&)>;

std::string capital(std::string words) {
  if (!words.empty())
    words[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(words[0])));
  return words;
}

std::vector<Note> notesOf(const Question& question, bool roomy) {
  std::vector<Note> notes;
  notes.push_back({[&](Pen& pen) {
    pen.title("WHAT IS TO BE SET", "qué se coloca");
    pen.text(capital(question.toBeSet));
  }});
  std::vector<Line> lines;
  for (std::size_t i = 0; i < question.requirements.size(); ++i)
    lines.push_back([&question, i](Pen& pen) { number(pen, static_cast<int>(i) + 1, question.requirements[i]); });
  addList(
      notes,
      [&](Pen& pen) {
        pen.title("WHAT COLLIDES", "qué no cabe junto");
        pen.text(question.collide);
        pen.gap(3);
      },
      lines, 2);
  lines.clear();
  for (const QuestionGiving& giving : question.giving)
    lines.push_back([&giving](Pen& pen) { number(pen, giving.requirement, giving.words); });
  if (!question.notByAmount.empty() || lines.empty())
    lines.push_back([&](Pen& pen) { pen.text(question.notByAmount); });
  addList(
      notes,
      [&](Pen& pen) {
        pen.title("HOW SHORT IT IS", "cuánto falta");
        pen.text(question.shortBy);
        pen.text(question.givingHead);
        pen.gap(3);
      },
      lines, 2);
  notes.push_back({[&question, roomy](Pen& pen) {
    pen.title("ASKED", "se pregunta");
    pen.y = paragraph(pen.page, {pen.x0, pen.y}, question.asked, bold(bodySize), pen.x1 - pen.x0);
    pen.text(question.untilAnswered);
    pen.gap(8);
    blank(pen, "ANSWER", "respuesta");
    if (roomy)
      blank(pen, "", "");
    blank(pen, "NAME, DATE", "nombre, fecha");
  }});
  if (!roomy)
    for (Note& note : notes)
      note.after = std::min(note.after, closeUp);
  return notes;
}

// All of it where there is room; the title block has the rest.
std::string about(const Question& question, double room) {
  std::string words;
  for (const std::string& line : question.about)
    words += (words.empty() ? "" : "  ·  ") + line;
  return textWidth(words, bodySize) <= room ? words : question.about.back();
}

void addQuestion(std::vector<Draft>& drafts, const Job& job, const WallQuestion& asked, const PageFrame& frame) {
  const WallLayout& layout = asked.wall->layout;
  const Question question = questionOf(job, layout, resolve(*job.limits), asked.conflict);
  Draft draft;
  draft.title = "QUESTION TO THE ENGINEER";
  draft.subject = layout.wall->mark + ", question";
  draft.note = layout.wall->title + (layout.wall->title.empty() ? "" : ", ") + "seen from outside";
  Draft like = draft;
  const Bounds content = drawHead(draft, frame, about(question, frame.content.x1 - frame.content.x0));
  const double width = std::min(widestWords, (content.x1 - content.x0 - gutter) * shareOfWords);
  const Bounds area{content.x0 + width + gutter, content.y0, content.x1, content.y1};
  draft.scale = drawQuestion(draft.drawing, job, *asked.wall, asked.conflict, area).name;
  const std::vector<Note> notes = notesOf(question, frame.width > 1000);
  const std::size_t rest =
      fillColumn(draft.drawing, notes, {content.x0, content.y0, content.x0 + width, content.y1}, 0);
  drafts.push_back(std::move(draft));
  addColumnPages(drafts, like, "continued", notes, frame, rest);
}

} // namespace

std::vector<WallQuestion> questionsOf(const Job& job, const std::vector<std::shared_ptr<const CheckedWall>>& walls) {
  std::vector<std::shared_ptr<const CheckedWall>> wrong;
  std::vector<WallLayout> layouts;
  for (const auto& wall : walls)
    if (standsWrong(*wall)) {
      wrong.push_back(wall);
      layouts.push_back(wall->layout);
    }
  const std::atomic<bool> cancelled = false;
  const std::vector<WallRefit> refits = refitJob(layouts, resolve(*job.limits), {}, {}, cancelled);
  std::vector<WallQuestion> questions;
  for (std::size_t i = 0; i < refits.size(); ++i)
    for (NoLayout& conflict : refits[i].conflicts())
      questions.push_back({wrong[i], std::move(conflict)});
  return questions;
}

void addQuestionPages(std::vector<Draft>& drafts, const Job& job, const std::vector<WallQuestion>& questions,
                      const PageFrame& frame) {
  for (const WallQuestion& question : questions)
    addQuestion(drafts, job, question, frame);
}

} // namespace sillwright::sheet
