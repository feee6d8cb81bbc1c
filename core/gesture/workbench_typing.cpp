// A length typed while something is in hand or selected.
#include "core/base/length.h"
#include "core/edit/operations.h"
#include "core/gesture/typing.h"
#include "core/gesture/workbench_held.h"

namespace sillwright {

namespace {

constexpr double longestOnPlan = 12000; // in

} // namespace

bool Workbench::typeKey(char32_t key) {
  const bool band = held_ && held_->grip.kind == InHand::Kind::RubberBand;
  const bool onePiece = session_.selection().size() == 1 && session_.selection().front().piece;
  const bool target = held_ ? held_->moving && !band : onePiece;
  if (!target)
    return false;
  if (key == U'\r' || key == U'\n')
    return enterTyped();
  if (key == U'\x1b') {
    if (typed_.empty())
      return false;
    typed_.clear();
    typedProblem_.clear();
  } else if (key == U'\b') {
    if (typed_.empty())
      return false;
    dropLast(typed_);
    typedProblem_.clear();
  } else {
    if (!isOfLength(typed_, key))
      return false;
    typed_ += utf8(key);
    typedProblem_.clear();
  }
  if (inHand_) {
    inHand_->typed = typed_;
    inHand_->problem = typedProblem_;
  }
  tellGesture();
  return true;
}

bool Workbench::enterTyped() {
  if (typed_.empty())
    return false;
  const auto length = parseLength(typed_, job().units);
  const auto shown = wall();
  const double most = shown ? shown->layout.length : 0;
  const bool onPlan = held_ && (held_->grip.kind == InHand::Kind::Corner || held_->grip.kind == InHand::Kind::Wall);
  if (!length)
    typedProblem_ = length.problem().text();
  else if (onPlan && !(*length > 0 && *length <= longestOnPlan))
    typedProblem_ = "a length on the plan is longer than nothing and not longer than 1,000 feet";
  else if (!onPlan && (*length < 0 || *length > most))
    typedProblem_ = printLength(*length, job().units) + " is outside the wall (0 … " + printLength(most, job().units) + ")";
  if (!typedProblem_.empty()) {
    if (inHand_)
      inHand_->problem = typedProblem_;
    tellGesture();
    return true;
  }
  if (onPlan)
    setTypedOnPlan(*length);
  else
    setTyped(*length);
  return true;
}

// What cannot stay there stays in hand, with the reason.
void Workbench::setTypedOnPlan(double length) {
  if (!holding() || !inHand_)
    return;
  Shown shown = planToLength(held_->grip, *inHand_, length);
  if (!shown.hand.problem.empty()) {
    inHand_->problem = typedProblem_ = shown.hand.problem;
    return tellGesture();
  }
  typed_.clear();
  show(std::move(shown));
  const std::string name = held_->name;
  letGo();
  session_.commitPreview(name);
  tellGesture();
}

void Workbench::setTyped(double station) {
  typed_.clear();
  typedProblem_.clear();
  if (held_ && holding()) {
    const bool place = held_->grip.newPiece;
    show(held_->grip.kind == InHand::Kind::Resize ? resizeToStation(held_->grip, station)
                                                  : moveToStation(held_->grip, station));
    const std::string name = held_->name;
    const Selection selection = place ? held_->grip.pieces : session_.selection();
    letGo();
    session_.commitPreview(name, selection);
    return tellGesture();
  }
  const PieceRef piece = session_.selection().front();
  session_.apply(setStation(session_.base(), piece, station),
                 "Set " + calledIn(job(), piece) + " at " + printLength(station, job().units));
}

} // namespace sillwright
