// A refit on the desk: what is proposed for the wall in view, change by change, and what of it was refused. Nothing of
// the job changes before something is accepted. Without a toolkit; who wants the solving done elsewhere says so.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/drawing/shown_proposal.h"
#include "core/edit/session.h"
#include "core/refit/refit_job.h"
#include "core/rules/checker.h"

namespace sillwright {

// What has to be solved: values only, so that it can be done anywhere.
struct RefitQuestion {
  std::size_t number = 0;
  std::shared_ptr<const CheckedWall> wall;
  ResolvedLimits limits;
  RefitWishes wishes;
};
using RefitAnswer = WallRefit;
RefitAnswer answerTo(const RefitQuestion& question);

// A change of the proposal, or one that was refused and may be taken back.
struct RefitRow {
  Change change;
  bool ticked = true;
  bool operator==(const RefitRow&) const = default;
};
// The job with those that are ticked.
Job withTicked(const Job& job, Id wall, std::span<const RefitRow> rows);

class RefitDesk {
public:
  enum class Aim : std::uint8_t { LeastMoved, LayOut }; // LayOut: a sill piece without any bolt gets some, too
  enum class State : std::uint8_t { Closed, Proposed, Conflict, Impossible };
  enum class Closing : std::uint8_t { None, Put, Accepted, Overtaken }; // why it is closed; Put: away, by hand

  RefitDesk(Session& session, const Checker& checker);

  // Who solves: called with each question, answers sooner or later by answer(). Without one it is done on the spot.
  void solveBy(std::function<void(const RefitQuestion&)> solver) { solver_ = std::move(solver); }
  // Told after every change of the desk; must not change it.
  void listen(std::function<void()> listener) { listeners_.push_back(std::move(listener)); }

  // Asks anew for the wall in view; nothing without one. What was refused before stays refused.
  void open(Aim aim, std::vector<RefitRow> before = {});
  void close();
  // An answer to any but the last question is out of date and left aside.
  void answer(std::size_t number, RefitAnswer answer);
  // The wall proposed for, or what it stands among, is another than it was: the proposal goes.
  void follow();

  State state() const { return state_; }
  bool isOpen() const { return state_ != State::Closed || busy_; }
  bool isBusy() const { return busy_; } // what is shown is of the question before
  Closing closing() const { return closing_; }
  Aim aim() const { return aim_; }
  // The wall as it was when it was asked about; null while closed.
  std::shared_ptr<const CheckedWall> wall() const { return wall_; }
  const ResolvedLimits& limits() const { return limits_; }

  const Proposal* proposal() const; // null in any other state
  // All that collides, where there is no layout: each has nothing to do with the others. Else empty.
  const std::vector<NoLayout>& conflicts() const { return conflicts_; }
  const Problem* problem() const;
  WallRefit found() const; // whatever was answered
  // Changes left to right, refused ones among them; of a wall without a layout those elsewhere on it.
  const std::vector<RefitRow>& rows() const { return rows_; }
  // Unticked: it stays where it is, and the rest is solved again. An added piece is only left out: nothing keeps it
  // from being proposed.
  void tick(std::size_t row, bool ticked);
  bool canAccept() const;           // something is ticked, and it is an answer to what was last asked
  bool accept();                    // all that is ticked, as one undo step; closes
  bool acceptOnly(std::size_t row); // as one undo step; the rest is asked for again
  // Which row is looked at, for the drawing.
  void look(std::optional<std::size_t> row);
  std::optional<std::size_t> current() const { return current_; }
  // For the elevation; null where there is nothing to show.
  const ShownProposal* shown() const { return shown_ ? &*shown_ : nullptr; }

private:
  void ask();
  void take(const std::vector<Change>& changes);
  void show();
  void tell();
  void shut(Closing why);
  void apply(std::span<const RefitRow> rows, const std::string& name);

  Session& session_;
  const Checker& checker_;
  std::function<void(const RefitQuestion&)> solver_;
  std::vector<std::function<void()>> listeners_;
  State state_ = State::Closed;
  Closing closing_ = Closing::None;
  Aim aim_ = Aim::LeastMoved;
  bool busy_ = false;
  bool applying_ = false;
  std::size_t number_ = 0; // of the last question
  std::shared_ptr<const CheckedWall> wall_;
  ResolvedLimits limits_;
  std::optional<RefitAnswer> answer_;
  std::vector<NoLayout> conflicts_;
  std::vector<RefitRow> rows_;
  std::optional<std::size_t> current_;
  std::optional<ShownProposal> shown_;
};

} // namespace sillwright
