// Everything a window needs of one job at work, without a toolkit: the session, the findings that follow it, and the
// gesture in progress. Canvases turn events into the calls here; panels read from here and write through the session.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/drawing/in_hand.h"
#include "core/edit/repeat.h"
#include "core/edit/session.h"
#include "core/gesture/input.h"
#include "core/gesture/job_refit_desk.h"
#include "core/gesture/placing.h"
#include "core/gesture/refit_desk.h"
#include "core/gesture/snap.h"
#include "core/gesture/wall_pen.h"
#include "core/rules/checker.h"

namespace sillwright {

struct WorkNotice {
  Notice session;
  std::vector<Id> checked; // walls whose findings may differ
  bool gesture = false;    // what is in hand changed
  bool refit = false;      // what lies on a desk of the refit changed
};

class Workbench {
public:
  explicit Workbench(Job job);
  ~Workbench();
  Workbench(const Workbench&) = delete;
  Workbench& operator=(const Workbench&) = delete;

  Session& session() { return session_; }
  const Session& session() const { return session_; }
  const Job& job() const { return session_.job(); }
  const Checker& checker() const { return checker_; }
  // The wall in view, laid out and checked; null without walls.
  std::shared_ptr<const CheckedWall> wall() const { return checker_.wall(session_.wall()); }

  // ---- gestures: press, drag, release. Every call is safe in every state.
  // Press on a piece selects it (Ctrl adds or takes away) and holds it; on an end, that end; on a corner, the corner; on
  // a wall of the plan shows it; on nothing starts a rubber band. A release without a drag changes nothing but the
  // selection.
  void press(const PointerAt& pointer);
  void drag(const PointerAt& pointer);
  void release(const PointerAt& pointer);
  // A piece of the shelf enters, moves over and is dropped on a canvas. False where it cannot go there.
  bool beginPlace(const std::string& shelfKey, const PointerAt& pointer);
  void dragPlace(const PointerAt& pointer);
  void dropPlace(const PointerAt& pointer);
  // The same by click or key: at a station of the wall in view, as one undo step; selects it.
  bool placeAt(const std::string& shelfKey, double station);
  // Esc, undo, delete, close: the gesture ends and nothing of it stays.
  void cancel();
  const std::optional<InHand>& inHand() const { return inHand_; }

  // Typing while something is in hand, or with one piece selected: a length sets the distance from the hook. One
  // character; '\b' takes one back, '\r' sets, '\x1b' gives up. False where the key is not for a length.
  bool typeKey(char32_t key);
  const std::string& typed() const { return typed_; }
  // Why the typed length was refused; empty while it is fine.
  const std::string& typedProblem() const { return typedProblem_; }

  // ---- the pen that draws walls on the plan. While it is up a press on the plan sets a corner; everything else goes
  // on as ever, and what is drawn stays in hand. A finished outline is one undo step, and the pen is down again.
  void takePen();
  void putPen(); // down: what is drawn and not finished is gone
  const std::optional<WallPen>& pen() const { return pen_; }
  void hover(const PointerAt& pointer); // the pointer moves with no button down
  // Characters of a length, '\b' (takes back one, or a corner), '\r' (sets what is typed, else closes, or ends a single
  // wall), 'c' (closes), 'o' (leaves open). False where the key is not for the pen.
  bool penKey(char32_t key);
  bool takePenBack();                       // by one corner; false where there is none
  void penArrow(Point2 arrow, double step); // leads without a pointer

  // ---- walls of the plan, each one undo step; the problem where it cannot be, and then nothing changes
  std::optional<Problem> splitWall(Id wall, double station);
  std::optional<Problem> takeCornerAway(Id corner); // its two walls become one
  std::optional<Problem> moveWall(Id wall, double out);

  // ---- actions on the selection, each one undo step
  void nudge(double along, double up);
  void removeSelected();
  void selectNext(bool backwards); // in order of station on the wall in view
  void selectAllOfKind();
  void applyCorrection(const Finding& finding);                 // the way it offers first
  void applyWay(const Finding& finding, const Correction& way); // one of its ways
  void goTo(const Finding& finding); // shows the wall, selects the pieces
  // Sets a field of every selected piece that has it; the problem where it cannot be, and nothing changes.
  std::optional<Problem> setFieldOfSelected(std::string_view key, std::string_view typed);

  // ---- copies (workbench_copies.cpp), each one undo step; they give what is to be said of it
  std::vector<Id> selectedHere() const; // pieces of the wall in view
  bool copySelected();                  // pieces of the wall in view; false where none is selected
  const Copied& copied() const { return copied_; }
  std::string pasteAt(double station); // at the column selected, else there, on the wall in view
  std::string mirrorSelected();
  std::string repeatSelected(const Repeat& repeat);
  std::string matchPair();

  // What is proposed for the wall in view; any other edit of that wall puts it away.
  RefitDesk& refitDesk() { return refitDesk_; }
  const RefitDesk& refitDesk() const { return refitDesk_; }
  // What is proposed for all walls.
  JobRefitDesk& jobRefitDesk() { return jobRefitDesk_; }
  const JobRefitDesk& jobRefitDesk() const { return jobRefitDesk_; }
  // A wall of that list by itself: in view, with what is proposed for it. Nothing where it is gone.
  void lookAtListed(std::size_t row);

  std::vector<ShelfItem> shelf() const;

  using Listener = std::function<void(const WorkNotice&)>;
  void listen(Listener listener);

private:
  struct Held;
  void follow(const Notice& notice);
  void tell(const WorkNotice& notice);
  void tellGesture();
  bool holding();                  // the gesture is still ours: nobody ended its preview
  void show(struct Shown shown);   // as preview, and in hand
  void land();                     // let go: into the nearest slot
  void letGo();
  void pressPiece(const PointerAt& pointer);
  void dragBand(const PointerAt& pointer);
  void setTyped(double station);
  void setTypedOnPlan(double length);
  bool enterTyped();
  void pressPen(const PointerAt& pointer);
  void releasePen(const PointerAt& pointer);
  void finishPen(bool closed);
  std::string applyCopies(Copies copies, const std::string& verb, const std::string& where);

  Session session_;
  Checker checker_;
  RefitDesk refitDesk_{session_, checker_};
  JobRefitDesk jobRefitDesk_{session_, checker_};
  std::unique_ptr<Held> held_;
  std::optional<InHand> inHand_;
  std::string typed_;
  std::string typedProblem_;
  std::optional<WallPen> pen_;
  std::optional<Point2> penPressed_; // where the button went down
  std::vector<Listener> listeners_;
  Copied copied_;
  Selection pasted_; // what the last paste made
};

} // namespace sillwright
