#include "core/gesture/refit_desk.h"

#include <algorithm>
#include <utility>

#include "core/edit/operations.h"
#include "core/gesture/placing.h"
#include "core/refit/refit_words.h"

namespace sillwright {

namespace {

bool isAdded(const Change& change) {
  return !change.before;
}
bool isRefused(const RefitRow& row) {
  return !row.ticked && !isAdded(row.change);
}

double placeOf(const WallLine& wall, const Change& change) {
  const auto stand = change.after ? standAfter(wall, change) : standBefore(wall, change);
  return stand ? stand->station : 0;
}

} // namespace

Job withTicked(const Job& job, Id wall, std::span<const RefitRow> rows) {
  std::vector<PieceChange> made;
  for (const RefitRow& row : rows)
    if (row.ticked)
      made.push_back({row.change.before, row.change.after});
  return changePieces(job, wall, made);
}

RefitAnswer answerTo(const RefitQuestion& question) {
  return refitWall(question.wall->layout, question.limits, question.wishes);
}

RefitDesk::RefitDesk(Session& session, const Checker& checker) : session_(session), checker_(checker) {}

// ---- asking and hearing ---------------------------------------------------------------------------------------------

void RefitDesk::open(Aim aim, std::vector<RefitRow> before) {
  auto wall = checker_.wall(session_.wall());
  if (!wall)
    return;
  shut(Closing::None);
  aim_ = aim;
  wall_ = std::move(wall);
  rows_ = std::move(before);
  ask();
}

void RefitDesk::ask() {
  limits_ = resolve(*wall_->layout.limits);
  RefitQuestion question{++number_, wall_, limits_, {}};
  if (aim_ == Aim::LayOut)
    question.wishes.boltToAdd = boltToAdd(session_.settled(), wall_->layout);
  for (const RefitRow& row : rows_)
    if (isRefused(row))
      question.wishes.staying.push_back(pieceOf(row.change));
  busy_ = true;
  if (!solver_)
    return answer(question.number, answerTo(question));
  tell();
  solver_(question);
}

void RefitDesk::answer(std::size_t number, RefitAnswer answer) {
  if (number != number_ || !busy_)
    return;
  busy_ = false;
  answer_ = std::move(answer);
  conflicts_ = answer_->conflicts();
  const Result<Refit>& refit = *answer_->refit;
  if (!refit.ok()) {
    state_ = State::Impossible;
    std::erase_if(rows_, [](const RefitRow& row) { return !isRefused(row); });
  } else if (const Proposal* proposed = std::get_if<Proposal>(&refit.value())) {
    state_ = State::Proposed;
    take(proposed->changes);
  } else {
    state_ = State::Conflict;
    take(conflicts_.front().elsewhere);
  }
  show();
  tell();
}

void RefitDesk::take(const std::vector<Change>& changes) {
  const Id looked = current_ && *current_ < rows_.size() ? pieceOf(rows_[*current_].change) : Id{};
  std::vector<RefitRow> rows;
  for (const Change& change : changes) {
    const bool leftOut =
        isAdded(change) && std::find(rows_.begin(), rows_.end(), RefitRow{change, false}) != rows_.end();
    rows.push_back({change, !leftOut});
  }
  for (const RefitRow& row : rows_)
    if (isRefused(row))
      rows.push_back(row);
  const WallLine& wall = *wall_->layout.wall;
  std::stable_sort(rows.begin(), rows.end(), [&](const RefitRow& a, const RefitRow& b) {
    return placeOf(wall, a.change) < placeOf(wall, b.change);
  });
  rows_ = std::move(rows);
  current_.reset();
  for (std::size_t i = 0; i < rows_.size() && looked; ++i)
    if (pieceOf(rows_[i].change) == looked)
      current_ = i;
}

// ---- what there is --------------------------------------------------------------------------------------------------

const Proposal* RefitDesk::proposal() const {
  return state_ == State::Proposed ? std::get_if<Proposal>(&answer_->refit->value()) : nullptr;
}
const Problem* RefitDesk::problem() const {
  return state_ == State::Impossible ? &answer_->refit->problem() : nullptr;
}

WallRefit RefitDesk::found() const {
  return answer_.value_or(WallRefit{});
}

void RefitDesk::show() {
  shown_.reset();
  const bool some = std::any_of(rows_.begin(), rows_.end(), [](const RefitRow& row) { return row.ticked; });
  if (state_ != State::Proposed && !(state_ == State::Conflict && some))
    return;
  ShownProposal shown;
  auto line = std::make_shared<WallLine>(*wall_->layout.wall);
  shown.wall = line->id;
  for (std::size_t i = 0; i < rows_.size(); ++i)
    if (rows_[i].ticked) {
      if (current_ == i)
        shown.current = shown.changes.size();
      shown.changes.push_back(rows_[i].change);
      *line = withChange(*line, rows_[i].change);
    }
  const WallLayout& now = wall_->layout;
  shown.after = std::make_shared<const WallLayout>(
      layOut(std::shared_ptr<const WallLine>(std::move(line)), now.types, now.limits, now.marks, now.place));
  shown_ = std::move(shown);
}

void RefitDesk::look(std::optional<std::size_t> row) {
  if (row == current_ || (row && *row >= rows_.size()))
    return;
  current_ = row;
  show();
  tell();
}

// ---- yes and no -----------------------------------------------------------------------------------------------------

void RefitDesk::tick(std::size_t row, bool ticked) {
  if (row >= rows_.size() || rows_[row].ticked == ticked)
    return;
  rows_[row].ticked = ticked;
  if (!isAdded(rows_[row].change))
    return ask();
  show();
  tell();
}

bool RefitDesk::canAccept() const {
  return (state_ == State::Proposed || state_ == State::Conflict) && !busy_ &&
         std::any_of(rows_.begin(), rows_.end(), [](const RefitRow& row) { return row.ticked; });
}

void RefitDesk::apply(std::span<const RefitRow> rows, const std::string& name) {
  applying_ = true;
  session_.apply(withTicked(session_.base(), wall_->layout.wall->id, rows), name);
  applying_ = false;
}

bool RefitDesk::accept() {
  if (!canAccept())
    return false;
  apply(rows_, (aim_ == Aim::LayOut ? "Lay out wall " : "Refit wall ") + wall_->layout.wall->mark);
  shut(Closing::Accepted);
  return true;
}

bool RefitDesk::acceptOnly(std::size_t row) {
  if (!canAccept() || row >= rows_.size() || !rows_[row].ticked)
    return false;
  const RefitRow only = rows_[row];
  apply({&only, 1}, "Refit " + changeWords(*wall_->layout.wall, only.change, session_.settled().units));
  rows_.erase(rows_.begin() + static_cast<std::ptrdiff_t>(row));
  current_.reset();
  wall_ = checker_.wall(wall_->layout.wall->id);
  ask();
  return true;
}

// ---- putting away ---------------------------------------------------------------------------------------------------

void RefitDesk::close() {
  if (isOpen())
    shut(Closing::Put);
}

void RefitDesk::follow() {
  if (!isOpen() || applying_)
    return;
  const Id wall = wall_->layout.wall->id;
  if (session_.wall() != wall || checker_.wall(wall) != wall_)
    shut(Closing::Overtaken);
}

void RefitDesk::shut(Closing why) {
  state_ = State::Closed;
  closing_ = why;
  busy_ = false;
  ++number_;
  wall_.reset();
  answer_.reset();
  conflicts_.clear();
  rows_.clear();
  current_.reset();
  shown_.reset();
  if (why != Closing::None)
    tell();
}

void RefitDesk::tell() {
  for (const auto& listener : listeners_)
    listener();
}

} // namespace sillwright
