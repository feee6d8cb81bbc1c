// One job being worked on: its history, the selection, the wall in view, and a preview while a gesture runs.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/edit/history.h"

namespace sillwright {

// What changed since the last notice.
struct Notice {
  bool job = false;       // the job value (also a preview)
  bool selection = false;
  bool wall = false;      // another wall in view
  bool history = false;   // undo or redo state, saved state
  bool file = false;      // another job altogether
};

class Session {
public:
  explicit Session(Job job);

  // The job as shown: the preview while there is one.
  const Job& job() const { return preview_ ? *preview_ : history_.now().job; }
  const Job& settled() const { return history_.now().job; }
  const Selection& selection() const { return history_.now().selection; }
  const History& history() const { return history_; }
  // The wall in view: the selection's, or the last one shown; empty in a job without walls.
  Id wall() const { return wall_; }

  void open(Job job);
  void markSaved();
  bool changedSinceSaved() const;

  // The settled job with its id counter past everything ever given in this session: what an edit must start from, so
  // that no id is ever given twice, also after undo.
  Job base() const;
  // An edit as one undo step. A job equal to the settled one (but for the counter) is no step. Ends a preview first,
  // without it. Pieces that are gone leave the selection.
  void apply(Job job, std::string name);
  void apply(Job job, std::string name, Selection selection);

  void select(Selection selection);
  void show(Id wall);

  // In mid-preview they only drop the preview. True when something was done.
  bool undo();
  bool redo();

  // A preview replaces the job shown and leaves the history alone. token() changes whenever a preview ends: a gesture
  // that holds an old token must stop.
  std::size_t beginPreview();
  bool previewing() const { return previewing_; }
  std::size_t token() const { return token_; }
  void preview(Job job);
  void commitPreview(std::string name);
  void commitPreview(std::string name, Selection selection);
  void dropPreview();

  // Listeners are called after every change, in the order of joining, and must not change the session.
  using Listener = std::function<void(const Notice&)>;
  void listen(Listener listener);

private:
  void tell(const Notice& notice);
  void settle(Notice& notice); // after the settled job or the selection changed: wall, highest id
  bool endPreview();           // true when another job than the settled one was shown
  void travel(const std::function<void()>& step);

  History history_;
  std::optional<Job> preview_;
  bool previewing_ = false;
  std::size_t token_ = 1;
  std::size_t savedSerial_ = 0;
  std::uint32_t highestId_ = 1;
  Id wall_;
  std::vector<Listener> listeners_;
};

} // namespace sillwright
