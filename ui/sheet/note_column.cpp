#include "ui/sheet/note_column.h"

namespace sillwright::sheet {

namespace {

void write(Pen& pen, const Note& note, bool atTop) {
  if (note.head && (atTop || note.headAlways))
    note.head(pen);
  note.draw(pen);
}

double heightOf(const Note& note, double width, bool atTop) {
  Drawing scratch;
  Pen pen{scratch, 0, width, 0};
  write(pen, note, atTop);
  return pen.y;
}

} // namespace

void Pen::title(std::string_view english, std::string_view spanish) {
  head(page, {x0, y + 10}, english, spanish, 11);
  page.line({x0, y + 15}, {x1, y + 15}, Ink::Text, 1.2);
  y += 28;
}

void Pen::text(std::string_view words, double indent, double size) {
  y = paragraph(page, {x0 + indent, y}, words, plain(size), x1 - x0 - indent);
}

void addList(std::vector<Note>& notes, const std::function<void(Pen&)>& head,
             const std::vector<std::function<void(Pen&)>>& lines, double between) {
  for (std::size_t i = 0; i < lines.size(); ++i)
    notes.push_back({lines[i], head, i == 0, i + 1 < lines.size() ? between : 12});
}

std::size_t fillColumn(Drawing& page, const std::vector<Note>& notes, const Bounds& column, std::size_t first) {
  double y = column.y0;
  for (std::size_t i = first; i < notes.size(); ++i) {
    const bool atTop = y <= column.y0;
    const double tall = heightOf(notes[i], column.x1 - column.x0, atTop);
    if (tall <= 0)
      continue;
    if (y + tall > column.y1 && !atTop)
      return i;
    Pen pen{page, column.x0, column.x1, y};
    write(pen, notes[i], atTop);
    y = pen.y + notes[i].after;
  }
  return notes.size();
}

void addColumnPages(std::vector<Draft>& drafts, const Draft& like, const std::string& secondLine,
                    const std::vector<Note>& notes, const PageFrame& frame, std::size_t first) {
  while (first < notes.size()) {
    Draft draft;
    draft.title = like.title;
    draft.subject = like.subject;
    draft.note = like.note;
    const Bounds content = drawHead(draft, frame, secondLine);
    constexpr double gutter = 24;
    const double width = (content.x1 - content.x0 - gutter) / 2;
    const std::size_t before = first;
    first = fillColumn(draft.drawing, notes, {content.x0, content.y0, content.x0 + width, content.y1}, first);
    first = fillColumn(draft.drawing, notes, {content.x1 - width, content.y0, content.x1, content.y1}, first);
    if (first == before)
      return;
    drafts.push_back(std::move(draft));
  }
}

} // namespace sillwright::sheet
