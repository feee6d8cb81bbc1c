// A refit of the whole job on the desk: wall by wall what is proposed, or why there is no layout. Nothing of the job
// changes before it is accepted. Without a toolkit; who wants the solving done elsewhere says so.
#pragma once

#include <atomic>
#include <functional>
#include <memory>
#include <span>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/gesture/refit_desk.h"
#include "core/refit/refit_job.h"

namespace sillwright {

// What has to be solved: values only, so that it can be done anywhere.
struct JobRefitQuestion {
  std::size_t number = 0;
  std::vector<std::shared_ptr<const CheckedWall>> walls; // those that have something to set, in the order of the job
  ResolvedLimits limits;
  std::shared_ptr<std::atomic<bool>> cancelled; // true: nobody waits for the answer any more
};
std::vector<WallRefit> answersTo(const JobRefitQuestion& question, const Progress& progress = {});

// A wall that needs something.
struct JobRefitRow {
  enum class Now : std::uint8_t {
    AsAsked, // what was found holds for it
    Changed, // it, or what it stands among, is another than it was: what was found says nothing any more
    Taken,   // its own proposal was accepted
  };
  std::shared_ptr<const CheckedWall> wall; // as it was asked about
  WallRefit found;
  std::vector<RefitRow> changes; // with what was refused of them while it was looked at by itself
  bool ticked = false;
  Now now = Now::AsAsked;
  std::shared_ptr<const CheckedWall> taken = {}; // as it was once its proposal was accepted

  Id id() const { return wall->layout.wall->id; }
  // Null where there is none.
  const Proposal* proposal() const;
  const Problem* problem() const;
  bool mayBeTicked() const; // there is something to take over
};

class JobRefitDesk {
public:
  enum class Closing : std::uint8_t { None, Put, Cancelled, Accepted, Overtaken }; // Put: away, by hand

  JobRefitDesk(Session& session, const Checker& checker);

  // Who solves: called with each question, answers sooner or later by answer(). Without one it is done on the spot.
  void solveBy(std::function<void(const JobRefitQuestion&)> solver) { solver_ = std::move(solver); }
  // Told after every change of the desk; must not change it.
  void listen(std::function<void()> listener) { listeners_.push_back(std::move(listener)); }

  // Asks anew for every wall; walls without their tick stay so.
  void open();
  // In the middle of the solving it is given up: walls not begun are not begun any more.
  void close();
  // How many walls are done; an answer. To any but the last question they are out of date and left aside.
  void progress(std::size_t number, std::size_t done);
  void answer(std::size_t number, std::vector<WallRefit> found);
  // These walls may be others than they were, or it is another job altogether.
  void follow(std::span<const Id> checked, bool anotherJob);
  // A wall of the list was looked at by itself: what was refused, accepted or found anew there holds here, too.
  void hear(const RefitDesk& one);

  bool isOpen() const { return open_; }
  bool isBusy() const { return busy_; }
  Closing closing() const { return closing_; }
  std::size_t done() const { return done_; } // of the walls asked about
  std::size_t asked() const { return asked_; }
  // Walls that need something, in the order of the job; how many need nothing.
  const std::vector<JobRefitRow>& rows() const { return rows_; }
  std::size_t needNothing() const { return needNothing_; }

  void tick(std::size_t row, bool ticked);
  std::size_t ticked() const; // how many would be taken over
  bool canAccept() const { return open_ && !busy_ && ticked() > 0; }
  bool accept(); // all walls that are ticked and not changed, as one undo step; closes
  std::size_t accepted() const { return accepted_; } // how many walls were, and
  std::size_t leftOut() const { return leftOut_; }   // how many were not because they had changed

private:
  void add(const WallRefit& found, const std::shared_ptr<const CheckedWall>& wall, bool wanted);
  JobRefitRow* rowOf(Id wall);
  void shut(Closing why);
  void tell();

  Session& session_;
  const Checker& checker_;
  std::function<void(const JobRefitQuestion&)> solver_;
  std::vector<std::function<void()>> listeners_;
  bool open_ = false;
  bool busy_ = false;
  bool applying_ = false;
  Closing closing_ = Closing::None;
  JobRefitQuestion question_; // the last one
  std::vector<Id> unwanted_;  // walls that had lost their tick when it was asked
  std::size_t done_ = 0, asked_ = 0, needNothing_ = 0, accepted_ = 0, leftOut_ = 0;
  std::vector<JobRefitRow> rows_;
  std::unordered_map<Id, std::size_t> places_; // in rows_
};

} // namespace sillwright
