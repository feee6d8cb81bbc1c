// A pasted table of wall ends into the job.
#include <algorithm>
#include <map>
#include <set>

#include "core/base/length.h"
#include "core/base/tolerance.h"
#include "core/edit/operations.h"
#include "core/edit/text_table.h"
#include "core/gesture/panels_laid_out.h"
#include "core/gesture/wall_end_heads.h"

namespace sillwright {

namespace {

// A row of the text, for one of the ends it names.
struct Line {
  int row = 0;
  Id wall;
  std::string panel; // mark
  Side side = Side::Left;
  std::map<EndHead, std::string> cells; // that are not empty
  const std::string* cell(EndHead head) const {
    const auto found = cells.find(head);
    return found == cells.end() ? nullptr : &found->second;
  }
};

class Paste {
public:
  Paste(const Job& job, EndColumns columns) : job_(job), columns_(std::move(columns)) {
    for (std::size_t i = 0; i < job.walls.size(); ++i)
      walls_[job.walls[i].mark].push_back(job.walls[i].id);
  }

  std::optional<Problem> read(const TextRow& row) {
    if (row.cells.size() > columns_.heads.size())
      return inRow(row.line, {},
                   "has " + std::to_string(row.cells.size()) + " cells, the table has " +
                       std::to_string(columns_.heads.size()) + " columns");
    Line line;
    line.row = row.line;
    for (std::size_t i = 0; i < row.cells.size(); ++i)
      if (!row.cells[i].empty())
        line.cells[columns_.heads[i]] = row.cells[i];
    if (auto problem = addressed(line))
      return problem;
    const std::string* end = line.cell(EndHead::End);
    const std::string word = end ? lowerCase(*end) : std::string();
    if (word != "left" && word != "right" && word != "both")
      return inRow(line.row, "end", "expected left, right or both");
    for (const Side side : {Side::Left, Side::Right})
      if (word == "both" || (word == "left") == (side == Side::Left)) {
        line.side = side;
        const auto [before, isNew] = seen_.insert({{line.wall, line.panel, side}, line.row});
        if (!isNew)
          return inRow(line.row, "end", "the same end as in row " + std::to_string(before->second));
        lines_.push_back(line);
      }
    return std::nullopt;
  }

  Result<PastedEnds> done() {
    for (const Line& line : lines_)
      if (!standing(line))
        if (auto problem = toMake(line))
          return *problem;
    Job next = withPanels(job_, made_);
    for (const Line& line : lines_) {
      Result<Job> set = lineSet(next, line);
      if (!set)
        return set.problem();
      next = *std::move(set);
    }
    const int ends = static_cast<int>(lines_.size()), panels = static_cast<int>(made_.size());
    const std::string name = panels > 0 ? "Paste " + std::to_string(panels) + (panels == 1 ? " panel" : " panels")
                                        : "Paste " + std::to_string(ends) + (ends == 1 ? " wall end" : " wall ends");
    return PastedEnds{std::move(next), name, ends, panels};
  }

private:
  std::optional<Problem> addressed(Line& line) {
    const std::string* wall = line.cell(EndHead::Wall);
    if (!wall)
      return inRow(line.row, "wall", "is empty");
    const auto found = walls_.find(*wall);
    if (found == walls_.end())
      return inRow(line.row, "wall", "there is no wall " + quoted(*wall));
    if (found->second.size() > 1)
      return inRow(line.row, "wall", "several walls have the mark " + quoted(*wall));
    line.wall = found->second.front();
    const std::string* panel = line.cell(EndHead::Panel);
    if (!panel)
      return inRow(line.row, "panel", "is empty");
    line.panel = *panel;
    const auto& panels = job_.walls.find(line.wall)->panels;
    const auto marked = [&](const Panel& each) { return each.mark == line.panel; };
    if (std::count_if(panels.begin(), panels.end(), marked) > 1)
      return inRow(line.row, "panel", "several panels of the wall have the mark " + quoted(line.panel));
    return std::nullopt;
  }

  const Panel* standing(const Line& line) const { return panelIn(job_, line); }

  static const Panel* panelIn(const Job& job, const Line& line) {
    for (const Panel& panel : job.walls.find(line.wall)->panels)
      if (panel.mark == line.panel)
        return &panel;
    return nullptr;
  }

  Result<double> lengthIn(const Line& line, EndHead head) const {
    const std::string* cell = line.cell(head);
    if (!cell)
      return inRow(line.row, nameOf(head), "is empty: a new panel needs it");
    const Result<double> length = parseLength(*cell, job_.units);
    return length ? length : Result<double>(inRow(line.row, nameOf(head), length.problem().text()));
  }

  // The panel a row is about, made or found among those that are made.
  std::optional<Problem> toMake(const Line& line) {
    if (!columns_.has(EndHead::From))
      return inRow(line.row, "panel",
                   "there is no panel " + quoted(line.panel) +
                       " on this wall; with columns from and to it would be made");
    PanelToMake* made = nullptr;
    for (PanelToMake& each : made_)
      if (each.wall == line.wall && each.panel.mark == line.panel)
        made = &each;
    if (!made || line.cell(EndHead::From) || line.cell(EndHead::To)) {
      const Result<double> from = lengthIn(line, EndHead::From), to = lengthIn(line, EndHead::To);
      if (!from)
        return from.problem();
      if (!to)
        return to.problem();
      if (made && (*from != made->panel.from || *to != made->panel.to))
        return inRow(line.row, *from != made->panel.from ? "from" : "to",
                     "is another one than in the row of its other end");
      if (!made) {
        if (auto problem = placeProblem(line, {*from, *to}))
          return problem;
        made = &made_.emplace_back();
        made->wall = line.wall;
        made->panel.mark = line.panel;
        made->panel.from = *from;
        made->panel.to = *to;
        made->panel.height = job_.walls.find(line.wall)->wallHeight;
      }
    }
    return endToMake(line, *made);
  }

  std::optional<Problem> endToMake(const Line& line, PanelToMake& made) const {
    if (const std::string* mark = line.cell(EndHead::Mark); mark && *mark != noMark) {
      WallEnd any; // a mark can be set at any end: only whether there is such a mark is asked here
      any.wall = line.wall;
      if (!findMark(job_, *mark))
        return inRow(line.row, "mark", parseWords(setCell(job_, any, EndCell::Mark, *mark).problem()));
      (line.side == Side::Left ? made.panel.leftMark : made.panel.rightMark) = *mark;
    }
    if (const std::string* column = line.cell(EndHead::Column)) {
      const auto makeUp = parseMakeUp(*column);
      if (!makeUp || !dressed(makeUp->nominal.thickness) || !dressed(makeUp->nominal.width) || makeUp->plies < 1 ||
          makeUp->plies > 9)
        return inRow(line.row, "column", "expected a make-up such as 4x6 or 2-2x6");
      (line.side == Side::Left ? made.left : made.right) = *makeUp;
    }
    return std::nullopt;
  }

  // Where a new panel cannot stand.
  std::optional<Problem> placeProblem(const Line& line, Interval s) const {
    const WallLine& wall = *job_.walls.find(line.wall);
    const double length = wallLength(job_, wall);
    if (s.from < -tolerance::same || s.from > length)
      return inRow(line.row, "from", "is outside the wall, which is " + printLength(length, job_.units) + " long");
    if (s.to > length + tolerance::same || s.to < 0)
      return inRow(line.row, "to", "is outside the wall, which is " + printLength(length, job_.units) + " long");
    if (s.length() < tolerance::tapeMark)
      return inRow(line.row, "to", "the left end must stay left of the right end");
    const auto over = [&](const auto& other) { return gap(s, {other.from, other.to}) < -tolerance::same; };
    for (const Opening& opening : wall.openings)
      if (over(opening))
        return inRow(line.row, "from", "the panel would stand over the opening " + opening.mark);
    for (const Panel& panel : wall.panels)
      if (over(panel))
        return inRow(line.row, "from", "the panel would stand over the panel " + panel.mark);
    for (const PanelToMake& made : made_)
      if (made.wall == line.wall && over(made.panel))
        return inRow(line.row, "from", "the panel would stand over the panel " + made.panel.mark);
    for (std::size_t i = 0; i < job_.walls.size(); ++i)
      for (const Panel& panel : job_.walls[i].panels)
        if (panel.mark == line.panel)
          return inRow(line.row, "panel", quoted(line.panel) + " stands on wall " + job_.walls[i].mark);
    for (const PanelToMake& made : made_)
      if (made.panel.mark == line.panel)
        return inRow(line.row, "panel", quoted(line.panel) + " is on another wall in this table");
    return std::nullopt;
  }

  // Both ends of a stretch that stands already; they may pass one another on the way.
  Result<Job> stretchSet(const Job& job, const Line& line) const {
    const Panel& panel = *panelIn(job, line);
    Panel changed = panel;
    for (const EndHead head : {EndHead::From, EndHead::To}) {
      double& member = head == EndHead::From ? changed.from : changed.to;
      const std::string* typed = line.cell(head);
      if (!typed || *typed == printLength(member, job.units, 64))
        continue;
      const Result<double> length = lengthIn(line, head);
      if (!length)
        return length.problem();
      if (*length < -tolerance::same || *length > wallLength(job, *job.walls.find(line.wall)) + tolerance::same)
        return inRow(line.row, nameOf(head), "is outside the wall");
      member = *length;
    }
    if (changed.to - changed.from < tolerance::tapeMark)
      return inRow(line.row, "to", "the left end must stay left of the right end");
    return changed == panel ? job : replacePiece(job, line.wall, changed);
  }

  Result<Job> lineSet(const Job& job, const Line& line) {
    Result<Job> next = stretchSet(job, line);
    const bool isMade = !standing(line);
    constexpr std::pair<EndHead, EndCell> cells[] = {
        {EndHead::Mark, EndCell::Mark}, {EndHead::Column, EndCell::Column}, {EndHead::At, EndCell::Station}};
    for (const auto& [head, cell] : cells) {
      const std::string* typed = next ? line.cell(head) : nullptr;
      if (!typed || (isMade && head == EndHead::Mark))
        continue;
      Result<Job> set = setCell(*next, endIn(*next, line), cell, *typed);
      if (!set)
        return inRow(line.row, nameOf(head), set.problem().message);
      next = std::move(set);
    }
    return next;
  }

  WallEnd endIn(const Job& job, const Line& line) {
    const auto wall = job.walls.findPointer(line.wall);
    if (wall != laidOut_) {
      laidOut_ = wall;
      ends_ = wallEnds(layOut(job, wall));
    }
    const Id panel = panelIn(job, line)->id;
    return *std::find_if(ends_.begin(), ends_.end(),
                         [&](const WallEnd& end) { return end.panel == panel && end.end == line.side; });
  }

  struct Address {
    Id wall;
    std::string panel;
    Side side;
    bool operator<(const Address& o) const {
      return std::tie(wall.value, panel, side) < std::tie(o.wall.value, o.panel, o.side);
    }
  };

  const Job& job_;
  EndColumns columns_;
  std::map<std::string, std::vector<Id>> walls_; // by mark
  std::map<Address, int> seen_;                  // and in which row
  std::vector<Line> lines_;
  std::vector<PanelToMake> made_;
  WallList::Pointer laidOut_; // the wall whose ends these are
  std::vector<WallEnd> ends_;
};

} // namespace

Result<PastedEnds> pasteEnds(const Job& job, std::string_view text) {
  const std::vector<TextRow> rows = readTextTable(text);
  if (rows.empty())
    return Problem{"", "there is no text to paste"};
  const Result<EndColumns> columns = columnsOf(rows.front());
  if (!columns)
    return columns.problem();
  if (columns->said && rows.size() == 1)
    return inRow(rows.front().line, {}, "is the head, and no row follows it");
  Paste paste(job, *columns);
  for (std::size_t i = columns->said ? 1 : 0; i < rows.size(); ++i)
    if (auto problem = paste.read(rows[i]))
      return *problem;
  return paste.done();
}

} // namespace sillwright
