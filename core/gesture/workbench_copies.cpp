// Copies of what is selected: pasted, mirrored, repeated; the straps of a pair made alike.
#include "core/base/length.h"
#include "core/edit/copy_places.h"
#include "core/edit/copy_words.h"
#include "core/edit/operations.h"
#include "core/gesture/pair_match.h"
#include "core/gesture/workbench_held.h"

#include <cctype>
#include <cmath>

namespace sillwright {

namespace {

std::vector<std::string> marksOf(const Job& job, const Selection& pieces) {
  std::vector<std::string> marks;
  for (const PieceRef& ref : pieces)
    marks.push_back(markOf(job, ref));
  return marks;
}

// The column that a piece is, or belongs to.
std::optional<Id> columnAt(const WallLine& wall, Id piece) {
  if (findIn(wall.columns, piece))
    return piece;
  if (const Strap* strap = findIn(wall.straps, piece); strap && strap->column)
    return strap->column;
  if (const Rod* rod = findIn(wall.rods, piece))
    return rod->column;
  return std::nullopt;
}

std::string placeWords(const Job& job, Id wall, const PastePlace& place, double station) {
  const std::string turned = place.carry.turned ? ", turned round" : "";
  if (!place.end)
    return "at " + printLength(station, job.units) + turned;
  return "at the end " + printLength(place.end->station, job.units) + " along wall " + markOf(job, {wall, {}}) + turned;
}

std::string amountWords(const Job& job, double by, const char* positive, const char* negative) {
  return printMeasure(std::abs(by), job.units) + " " + (by > 0 ? positive : negative);
}

} // namespace

std::vector<Id> Workbench::selectedHere() const {
  std::vector<Id> pieces;
  for (const PieceRef& ref : session_.selection())
    if (ref.piece && ref.wall == session_.wall())
      pieces.push_back(ref.piece);
  return pieces;
}

bool Workbench::copySelected() {
  cancel();
  Copied taken = copyOf(session_.settled(), session_.wall(), selectedHere());
  if (taken.empty())
    return false;
  copied_ = std::move(taken);
  return true;
}

// One undo step where anything was made; what was left out is said in any case.
std::string Workbench::applyCopies(Copies copies, const std::string& verb, const std::string& where) {
  const std::string leftOut = leftOutWords(copies.leftOut);
  if (copies.made.empty())
    return leftOut.empty() ? "nothing to " + verb : "nothing to " + verb + ": " + leftOut;
  const std::string marks = marksInWords(marksOf(copies.job, copies.made));
  const std::string what = copies.made.size() == 1 ? calledIn(copies.job, copies.made.front())
                                                   : std::to_string(copies.made.size()) + " pieces";
  std::string name = verb + " " + what;
  name.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(name.front())));
  session_.apply(std::move(copies.job), name, std::move(copies.made));
  const std::string done = verb + (verb.back() == 'e' ? "d: " : "ed: ");
  return done + marks + " " + where + (leftOut.empty() ? "" : " · " + leftOut);
}

std::string Workbench::pasteAt(double station) {
  cancel();
  if (copied_.empty())
    return "nothing to paste: copy pieces of a wall first";
  const Id wall = session_.wall();
  const WallLine* line = job().walls.find(wall);
  if (!line)
    return "there is no wall to paste onto";
  const std::vector<Id> selected = selectedHere();
  const bool again = session_.selection() == pasted_; // the last paste is not where the next one goes
  const auto column = selected.size() == 1 && !again ? columnAt(*line, selected.front()) : std::nullopt;
  const PastePlace place = pastePlace(job(), wall, copied_, column, station);
  const Interval stretch = stretchOf(copied_);
  Copies copies = putCopies(session_.base(), wall, copied_, std::span(&place.carry, 1));
  const bool any = !copies.made.empty();
  const std::string said =
      applyCopies(std::move(copies), "paste", placeWords(job(), wall, place, place.carry(stretch.middle())));
  if (any)
    pasted_ = session_.selection();
  return said;
}

std::string Workbench::mirrorSelected() {
  cancel();
  const Id wall = session_.wall();
  const auto place = mirrorPlace(job(), wall, selectedHere());
  if (!place)
    return "nothing to mirror: select pieces, or an opening with a pier beside it";
  const Copied taken = copyOf(session_.settled(), wall, place->pieces);
  const std::string about = place->about ? "about " + markOf(job(), {wall, *place->about})
                                         : "about the middle of wall " + markOf(job(), {wall, {}});
  return applyCopies(putCopies(session_.base(), wall, taken, std::span(&place->carry, 1)), "mirror", about);
}

std::string Workbench::repeatSelected(const Repeat& repeat) {
  cancel();
  Copies copies = repeated(session_.base(), session_.wall(), selectedHere(), repeat);
  return applyCopies(std::move(copies), "repeat", "every " + printLength(repeat.spacing, job().units));
}

std::string Workbench::matchPair() {
  cancel();
  const auto shown = wall();
  if (!shown)
    return "there is no wall";
  const auto match = sillwright::matchPair(shown->layout, session_.selection());
  if (!match)
    return match.problem().message;
  const std::string first = markOf(job(), match->first), second = match->matched.mark;
  const bool moved = std::abs(match->along) > 1e-9, raised = std::abs(match->up) > 1e-9;
  if (!moved && !raised)
    return second + " matches " + first + " already";
  std::string how;
  if (moved)
    how = " " + amountWords(job(), match->along, "right", "left");
  if (raised)
    how += std::string(moved ? "," : "") + " " + amountWords(job(), match->up, "up", "down");
  session_.apply(replacePiece(session_.base(), match->second.wall, match->matched),
                 "Match strap " + second + " with " + first + ":" + how, {match->first, match->second});
  return second + " matches " + first + ":" + how;
}

} // namespace sillwright
