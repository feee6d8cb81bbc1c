#include "core/gesture/job_refit_desk.h"

#include <algorithm>
#include <utility>

namespace sillwright {

namespace {

// Made from the same values: what was found for the one holds for the other.
bool same(const CheckedWall* a, const CheckedWall* b) {
  if (a == b)
    return true;
  return a && b && a->layout.wall == b->layout.wall && a->layout.types == b->layout.types &&
         a->layout.limits == b->layout.limits && a->layout.marks == b->layout.marks &&
         a->layout.place == b->layout.place;
}

JobRefitRow::Now nowOf(const JobRefitRow& row, const CheckedWall* wall) {
  return same(row.wall.get(), wall)                 ? JobRefitRow::Now::AsAsked
         : row.taken && same(row.taken.get(), wall) ? JobRefitRow::Now::Taken
                                                    : JobRefitRow::Now::Changed;
}

std::vector<RefitRow> changesIn(const WallRefit& found) {
  std::vector<RefitRow> rows;
  if (!found.refit || !found.refit->ok())
    return rows;
  const auto* proposal = std::get_if<Proposal>(&found.refit->value());
  for (const Change& change : proposal ? proposal->changes : std::get<NoLayout>(found.refit->value()).elsewhere)
    rows.push_back({change, true});
  return rows;
}

bool isTakenOver(const JobRefitRow& row) {
  return row.ticked && row.mayBeTicked();
}

} // namespace

std::vector<WallRefit> answersTo(const JobRefitQuestion& question, const Progress& progress) {
  std::vector<WallLayout> layouts;
  for (const auto& wall : question.walls)
    layouts.push_back(wall->layout);
  return refitJob(layouts, question.limits, {}, progress, *question.cancelled);
}

const Proposal* JobRefitRow::proposal() const {
  return found.refit && found.refit->ok() ? std::get_if<Proposal>(&found.refit->value()) : nullptr;
}

const Problem* JobRefitRow::problem() const {
  return found.refit && !found.refit->ok() ? &found.refit->problem() : nullptr;
}

bool JobRefitRow::mayBeTicked() const {
  return now == Now::AsAsked &&
         std::any_of(changes.begin(), changes.end(), [](const RefitRow& change) { return change.ticked; });
}

JobRefitDesk::JobRefitDesk(Session& session, const Checker& checker) : session_(session), checker_(checker) {}

// ---- asking and hearing ---------------------------------------------------------------------------------------------

void JobRefitDesk::open() {
  std::vector<Id> unwanted;
  for (const JobRefitRow& row : rows_)
    if (row.proposal() && !row.ticked)
      unwanted.push_back(row.id());
  shut(Closing::None);
  unwanted_ = std::move(unwanted);
  const Job& job = session_.settled();
  question_.walls.clear();
  for (std::size_t i = 0; i < job.walls.size(); ++i)
    if (auto wall = checker_.wall(job.walls[i].id); wall && hasSomethingToSet(job.walls[i]))
      question_.walls.push_back(std::move(wall));
  question_.limits = resolve(*job.limits);
  question_.cancelled = std::make_shared<std::atomic<bool>>(false);
  asked_ = question_.walls.size();
  needNothing_ = job.walls.size() - asked_;
  open_ = busy_ = true;
  if (!solver_)
    return answer(question_.number, answersTo(question_));
  tell();
  solver_(question_);
}

void JobRefitDesk::progress(std::size_t number, std::size_t done) {
  if (number != question_.number || !busy_ || done <= done_)
    return;
  done_ = done;
  tell();
}

void JobRefitDesk::answer(std::size_t number, std::vector<WallRefit> found) {
  if (number != question_.number || !busy_)
    return;
  busy_ = false;
  done_ = asked_;
  for (std::size_t i = 0; i < found.size() && i < question_.walls.size(); ++i) {
    const Id id = found[i].wall;
    add(found[i], question_.walls[i], std::find(unwanted_.begin(), unwanted_.end(), id) == unwanted_.end());
  }
  question_.walls.clear();
  tell();
}

void JobRefitDesk::add(const WallRefit& found, const std::shared_ptr<const CheckedWall>& wall, bool wanted) {
  JobRefitRow row;
  row.wall = wall;
  row.found = found;
  row.changes = changesIn(found);
  if (row.proposal() && row.changes.empty()) {
    ++needNothing_;
    return;
  }
  row.now = nowOf(row, checker_.wall(row.id()).get());
  row.ticked = wanted && row.proposal(); // where one place has no layout, what may move elsewhere waits to be wanted
  places_[row.id()] = rows_.size();
  rows_.push_back(std::move(row));
}

JobRefitRow* JobRefitDesk::rowOf(Id wall) {
  const auto at = places_.find(wall);
  return at == places_.end() ? nullptr : &rows_[at->second];
}

// ---- walls that change ----------------------------------------------------------------------------------------------

void JobRefitDesk::follow(std::span<const Id> checked, bool anotherJob) {
  if (!open_ || applying_)
    return;
  if (anotherJob)
    return shut(Closing::Overtaken);
  bool differs = false;
  for (const Id wall : checked)
    if (JobRefitRow* row = rowOf(wall)) {
      const JobRefitRow::Now now = nowOf(*row, checker_.wall(wall).get());
      differs = differs || now != row->now;
      row->now = now;
    }
  if (differs)
    tell();
}

void JobRefitDesk::hear(const RefitDesk& one) {
  if (!open_ || busy_)
    return;
  JobRefitRow* row = rowOf(one.isOpen() ? one.wall()->layout.wall->id : session_.wall());
  if (!row)
    return;
  if (!one.isOpen() && one.closing() == RefitDesk::Closing::Accepted) {
    row->taken = checker_.wall(row->id());
    row->now = JobRefitRow::Now::Taken;
  } else if (one.isOpen() && !one.isBusy() && one.aim() == RefitDesk::Aim::LeastMoved) {
    const bool changed = row->now != JobRefitRow::Now::AsAsked;
    row->wall = one.wall();
    row->found = one.found();
    row->changes = one.rows();
    row->now = nowOf(*row, checker_.wall(row->id()).get());
    row->ticked = changed ? row->proposal() != nullptr : row->ticked;
  }
}

// ---- yes and no -----------------------------------------------------------------------------------------------------

void JobRefitDesk::tick(std::size_t row, bool ticked) {
  if (row >= rows_.size() || !rows_[row].mayBeTicked() || rows_[row].ticked == ticked)
    return;
  rows_[row].ticked = ticked;
  tell();
}

std::size_t JobRefitDesk::ticked() const {
  return static_cast<std::size_t>(std::count_if(rows_.begin(), rows_.end(), isTakenOver));
}

bool JobRefitDesk::accept() {
  if (!canAccept())
    return false;
  accepted_ = leftOut_ = 0;
  Job job = session_.base();
  std::string only;
  for (const JobRefitRow& row : rows_)
    if (isTakenOver(row)) {
      job = withTicked(job, row.id(), row.changes);
      only = row.wall->layout.wall->mark;
      ++accepted_;
    } else if (row.now == JobRefitRow::Now::Changed && row.ticked) {
      ++leftOut_;
    }
  applying_ = true;
  session_.apply(std::move(job),
                 accepted_ == 1 ? "Refit wall " + only : "Refit " + std::to_string(accepted_) + " walls");
  applying_ = false;
  shut(Closing::Accepted);
  return true;
}

// ---- putting away ---------------------------------------------------------------------------------------------------

void JobRefitDesk::close() {
  if (open_)
    shut(busy_ ? Closing::Cancelled : Closing::Put);
}

void JobRefitDesk::shut(Closing why) {
  if (question_.cancelled)
    *question_.cancelled = true;
  open_ = busy_ = false;
  closing_ = why;
  ++question_.number;
  question_.walls.clear();
  rows_.clear();
  places_.clear();
  done_ = asked_ = needNothing_ = 0;
  if (why != Closing::None)
    tell();
}

void JobRefitDesk::tell() {
  for (const auto& listener : listeners_)
    listener();
}

} // namespace sillwright
