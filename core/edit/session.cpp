#include "core/edit/session.h"

#include <algorithm>
#include <utility>

#include "core/model/lookup.h"

namespace sillwright {

namespace {

bool exists(const Job& job, PieceRef ref) {
  const WallLine* wall = job.walls.find(ref.wall);
  if (!wall)
    return false;
  bool found = !ref.piece || ref.piece == ref.wall;
  forEachList(*wall, [&](const auto& list) { found = found || findIn(list, ref.piece) != nullptr; });
  return found;
}

Selection existing(const Job& job, Selection selection) {
  std::erase_if(selection, [&](PieceRef ref) { return !exists(job, ref); });
  return selection;
}

Id firstWall(const Job& job) { return job.walls.empty() ? Id{} : job.walls[0].id; }

bool equalButForCounter(const Job& a, Job b) {
  b.nextId = a.nextId;
  return a == b;
}

} // namespace

Session::Session(Job job) : history_(std::move(job)) {
  highestId_ = settled().nextId;
  wall_ = firstWall(settled());
}

void Session::open(Job job) {
  history_ = History(std::move(job));
  preview_.reset();
  previewing_ = false;
  ++token_;
  savedSerial_ = history_.now().serial;
  highestId_ = settled().nextId;
  wall_ = firstWall(settled());
  tell({true, true, true, true, true});
}

void Session::markSaved() {
  savedSerial_ = history_.now().serial;
  Notice notice;
  notice.history = true;
  tell(notice);
}

bool Session::changedSinceSaved() const { return savedSerial_ != history_.now().serial; }

Job Session::base() const {
  Job job = settled();
  job.nextId = std::max(job.nextId, highestId_);
  return job;
}

void Session::apply(Job job, std::string name) { apply(std::move(job), std::move(name), selection()); }

void Session::apply(Job job, std::string name, Selection newSelection) {
  Notice notice;
  notice.job = endPreview();
  highestId_ = std::max(highestId_, job.nextId);
  Selection kept = existing(job, std::move(newSelection));
  if (equalButForCounter(settled(), job)) {
    notice.selection = kept != selection();
    history_.setSelection(std::move(kept));
    settle(notice);
  } else {
    notice.selection = kept != selection();
    history_.push(std::move(job), std::move(kept), std::move(name));
    notice.job = notice.history = true;
    settle(notice);
  }
  tell(notice);
}

void Session::select(Selection newSelection) {
  Selection kept = existing(settled(), std::move(newSelection));
  if (kept == selection())
    return;
  history_.setSelection(std::move(kept));
  Notice notice;
  notice.selection = true;
  settle(notice);
  tell(notice);
}

void Session::show(Id wall) {
  if (wall == wall_ || !settled().walls.find(wall))
    return;
  wall_ = wall;
  Notice notice;
  notice.wall = true;
  // What was chosen on another wall is not in view any more: no field of it may be set by mistake.
  Selection kept = selection();
  if (std::erase_if(kept, [wall](const PieceRef& ref) { return ref.wall != wall; }) > 0) {
    history_.setSelection(std::move(kept));
    notice.selection = true;
  }
  tell(notice);
}

bool Session::undo() {
  if (previewing_) {
    dropPreview();
    return true;
  }
  if (!history_.canUndo())
    return false;
  travel([this] { history_.undo(); });
  return true;
}

bool Session::redo() {
  if (previewing_) {
    dropPreview();
    return true;
  }
  if (!history_.canRedo())
    return false;
  travel([this] { history_.redo(); });
  return true;
}

std::size_t Session::beginPreview() {
  dropPreview();
  previewing_ = true;
  return token_;
}

void Session::preview(Job job) {
  if (!previewing_)
    return;
  highestId_ = std::max(highestId_, job.nextId);
  preview_ = std::move(job);
  Notice notice;
  notice.job = true;
  tell(notice);
}

void Session::commitPreview(std::string name) { commitPreview(std::move(name), selection()); }

void Session::commitPreview(std::string name, Selection newSelection) {
  if (!previewing_)
    return;
  Job job = preview_ ? *preview_ : settled();
  apply(std::move(job), std::move(name), std::move(newSelection));
}

void Session::dropPreview() {
  Notice notice;
  if (previewing_) {
    notice.job = endPreview();
    tell(notice);
  }
}

void Session::listen(Listener listener) { listeners_.push_back(std::move(listener)); }

void Session::tell(const Notice& notice) {
  for (std::size_t i = 0; i < listeners_.size(); ++i)
    listeners_[i](notice);
}

bool Session::endPreview() {
  const bool shown = preview_.has_value();
  if (previewing_)
    ++token_;
  previewing_ = false;
  preview_.reset();
  return shown;
}

void Session::travel(const std::function<void()>& step) {
  const Selection before = selection();
  step();
  Notice notice;
  notice.job = notice.history = true;
  notice.selection = selection() != before;
  settle(notice);
  tell(notice);
}

void Session::settle(Notice& notice) {
  highestId_ = std::max(highestId_, settled().nextId);
  Id wall = wall_;
  if (!selection().empty())
    wall = selection().back().wall;
  else if (!settled().walls.find(wall))
    wall = firstWall(settled());
  notice.wall = notice.wall || wall != wall_;
  wall_ = wall;
}

} // namespace sillwright
