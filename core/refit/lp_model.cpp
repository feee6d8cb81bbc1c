#include "core/refit/lp_model.h"

#include <algorithm>
#include <cstdlib>

#include "core/refit/lp_slots.h"
#include "core/refit/lp_text.h"
#include "core/refit/sequence_candidates.h"

namespace sillwright::sequence {
namespace {

struct Run {
  Mark from = 0;
  Mark to = 0;
  Effect effect = 0;
};

// Maximal runs of marks that are free and cost the same.
template <typename EffectAt> std::vector<Run> runsOver(const Stretch& stretch, EffectAt effectAt) {
  std::vector<Run> runs;
  for (Mark at = stretch.from; at <= stretch.to; ++at) {
    const Effect effect = effectAt(at);
    if (effect == kBlocked)
      continue;
    if (!runs.empty() && runs.back().to == at - 1 && runs.back().effect == effect)
      runs.back().to = at;
    else
      runs.push_back({at, at, effect});
  }
  return runs;
}

template <typename... Numbers> std::string named(const std::string& kind, Numbers... numbers) {
  return kind + (... + ("_" + std::to_string(numbers)));
}

Stretch ownOf(const Anchored& piece) {
  Stretch own{std::max(piece.own.from, piece.outermost.from), std::min(piece.own.to, piece.outermost.to)};
  if (piece.fixed)
    own = {std::max(own.from, *piece.reference), std::min(own.to, *piece.reference)};
  return own;
}

class Model {
public:
  Model(const Problem& givenProblem, const LpQuestion& givenQuestion) : problem(givenProblem), question(givenQuestion) {
    for (std::size_t which = 0; which < problem.sillPieces.size(); ++which)
      ranges.push_back(rangesOf(problem.sillPieces[which], question.boltSlots[which]));
  }

  std::string written() {
    lp.say(
        "Stations in marks (1/16 in). Minimise one level with the earlier ones held; see the meaning of the names in");
    lp.say("the manual: x, y stations; u bolt there; f free run; m matching; v movement; z set piece moved.");
    for (int piece = 0; piece < static_cast<int>(problem.anchored.size()); ++piece)
      anchor(piece);
    for (int index = 0; index < static_cast<int>(problem.distances.size()); ++index)
      keepDistance(index);
    for (int which = 0; which < static_cast<int>(problem.sillPieces.size()); ++which)
      fillSill(which);
    for (int which = 0; which < static_cast<int>(problem.sillPieces.size()); ++which)
      for (int next = which + 1; next < static_cast<int>(problem.sillPieces.size()); ++next)
        keepSillsApart(which, next);
    for (int index = 0; index < static_cast<int>(problem.besides.size()); ++index)
      keepBeside(index);
    nameLevels();
    return lp.text();
  }

private:
  // `value` lies in one of the runs where `chosen` is 1 and anywhere (within `slack`) where it is 0.
  void choose(const std::string& name, const std::vector<Run>& runs, const LinearSum& value, const LinearSum& chosen,
              Mark slack) {
    LinearSum below = value;
    LinearSum above = value;
    LinearSum one;
    for (std::size_t index = 0; index < runs.size(); ++index) {
      const std::string run = named(name, index);
      lp.binary(run);
      one.add(1, run);
      below.add(-runs[index].to, run);
      above.add(-runs[index].from, run);
      pay(runs[index].effect, run);
    }
    one.add(-1, chosen);
    lp.equal(one, 0);
    // value <= sum of ends + slack (1 - chosen)
    lp.atMost(below.add(slack, chosen), slack);
    lp.atLeast(above.add(-slack, chosen), -slack);
  }

  void pay(Effect effect, const std::string& variable) {
    asks.add(effect >> 16, variable);
    watches.add(effect & 0xFFFF, variable);
  }

  static LinearSum only(const std::string& variable) { return LinearSum{}.add(1, variable); }
  static LinearSum whole(std::int64_t value) {
    LinearSum sum;
    sum.constant = value;
    return sum;
  }

  // moved >= |by| + shift - slack (1 - holds)
  void move(const std::string& moved, const LinearSum& by, const LinearSum& shift, const LinearSum& holds, Mark slack) {
    for (const int sign : {1, -1}) {
      LinearSum row = only(moved);
      row.add(-sign, by).add(-1, shift).add(-slack, holds);
      lp.atLeast(row, -slack);
    }
  }

  void anchor(int piece) {
    const Anchored& anchored = problem.anchored[piece];
    const std::string station = named("x", piece);
    lp.free(station);
    choose(named("f_x", piece),
           runsOver(ownOf(anchored), [&](Mark at) { return effectOf(anchored.ground, at, problem.countWatch); }),
           only(station), whole(1), 0);
    if (!anchored.reference)
      return;
    const std::string moved = named("v_x", piece);
    LinearSum by = only(station);
    by.constant = -*anchored.reference;
    move(moved, by, {}, whole(1), 0);
    movement.add(1, moved);
    if (anchored.set)
      countSetMove(moved, named("z_x", piece));
  }

  void countSetMove(const std::string& moved, const std::string& isMoved) {
    lp.binary(isMoved);
    lp.atMost(only(moved).add(-longest(), isMoved), 0);
    setMoved.add(1, isMoved);
  }

  // No movement with its depth shift is longer.
  Mark longest() const {
    Mark least = 0;
    Mark most = 0;
    Mark shift = 0;
    const auto hold = [&](Mark from, Mark to) {
      least = std::min(least, from);
      most = std::max(most, to);
    };
    for (const Anchored& piece : problem.anchored) {
      hold(piece.outermost.from, piece.outermost.to);
      if (piece.reference)
        hold(*piece.reference, *piece.reference);
    }
    for (const SillPiece& sill : problem.sillPieces) {
      hold(sill.stretch.from, sill.stretch.to);
      for (const ReferenceBolt& bolt : sill.reference) {
        hold(bolt.station, bolt.station);
        for (const Mark depth : bolt.shift)
          if (depth < kFar)
            shift = std::max(shift, depth);
      }
    }
    return most - least + shift;
  }

  void keepDistance(int index) {
    const Distance& distance = problem.distances[index];
    const Stretch left = ownOf(problem.anchored[distance.left]);
    const Stretch right = ownOf(problem.anchored[distance.right]);
    const auto runs = runsOver({right.from - left.to, right.to - left.from}, [&](Mark difference) {
      const bool allowed = std::any_of(distance.allowed.begin(), distance.allowed.end(), [&](const Stretch& stretch) {
        return difference >= stretch.from && difference <= stretch.to;
      });
      return allowed ? effectOf({{}, distance.tolls}, difference, problem.countWatch) : kBlocked;
    });
    choose(named("f_d", index), runs, only(named("x", distance.right)).add(-1, named("x", distance.left)), whole(1), 0);
  }

  int slots(int which) const { return question.boltSlots[which]; }
  Mark length(int which) const { return problem.sillPieces[which].stretch.to - problem.sillPieces[which].stretch.from; }

  // 1 where there is such a bolt; nothing beyond the last slot.
  LinearSum there(int which, int bolt) const {
    return bolt < slots(which) ? only(named("u", which, bolt)) : LinearSum{};
  }

  LinearSum inOption(int which, int bolt, int option) const { return only(named("w", which, bolt, option)); }

  // From the left end of the wall.
  LinearSum stationOf(int which, int bolt) const {
    LinearSum sum = only(named("y", which, bolt));
    sum.constant = problem.sillPieces[which].stretch.from;
    return sum;
  }

  void fillSill(int which) {
    const SillPiece& sill = problem.sillPieces[which];
    for (int bolt = 0; bolt < slots(which); ++bolt) {
      placeBolt(which, bolt);
      endWindows(which, bolt);
      if (bolt + 1 < slots(which))
        keepNeighbours(which, bolt);
    }
    LinearSum count;
    for (int bolt = 0; bolt < slots(which); ++bolt)
      count.add(1, there(which, bolt));
    lp.atLeast(count, sill.least);
    pieces.add(1, count);
    matchReferences(which);
  }

  void placeBolt(int which, int bolt) {
    const SillPiece& sill = problem.sillPieces[which];
    lp.binary(named("u", which, bolt));
    if (bolt > 0)
      lp.atLeast(there(which, bolt - 1).add(-1, there(which, bolt)), 0);
    // The runs of all options in one choice: y between the ends chosen, and 0 without a bolt.
    LinearSum below = only(named("y", which, bolt));
    LinearSum above = below;
    LinearSum one;
    for (int option = 0; option < problem.depthOptions; ++option) {
      LinearSum inThis;
      int index = 0;
      for (const Run& run : runsOf(which, bolt, option)) {
        const std::string name = named("f_y", which, bolt, option, index++);
        lp.binary(name);
        inThis.add(1, name);
        below.add(-(run.to - sill.stretch.from), name);
        above.add(-(run.from - sill.stretch.from), name);
        pay(run.effect, name);
      }
      one.add(1, inThis);
      lp.equal(inThis.add(-1, inOption(which, bolt, option)), 0);
    }
    lp.equal(one.add(-1, there(which, bolt)), 0);
    lp.atMost(below, 0);
    lp.atLeast(above, 0);
  }

  // With the ground beside pieces that have a single mark.
  std::vector<Run> runsOf(int which, int bolt, int option) const {
    const SillPiece& sill = problem.sillPieces[which];
    return runsOver(ranges[which][bolt], [&](Mark at) {
      Effect effect = effectOf(sill.options[option], at, problem.countWatch);
      for (const Beside& beside : problem.besides)
        if (const Stretch own = ownOf(problem.anchored[beside.anchored]); own.from == own.to)
          effect = sum(effect, effectOf(beside.options[option], at - own.from, problem.countWatch));
      return effect;
    });
  }

  void endWindows(int which, int bolt) {
    const SillPiece& sill = problem.sillPieces[which];
    if (sill.first && bolt == 0)
      lp.atMost(only(named("y", which, 0)).add(-sill.first->farthest, there(which, 0)), 0);
    if (sill.last) {
      const Mark least = length(which) - sill.last->farthest;
      LinearSum row = only(named("y", which, bolt));
      row.add(-least, there(which, bolt)).add(least, there(which, bolt + 1));
      if (least > 0)
        lp.atLeast(row, 0);
    }
  }

  Mark leastGap(int left, int right) const {
    Mark least = 1;
    for (const LeastGap& gap : problem.leastGaps)
      if (gap.left == left && gap.right == right)
        least = std::max(least, gap.least);
    return least;
  }

  // From the left end of the sill piece.
  Mark mostRight(int which, int bolt) const {
    return std::max(0, ranges[which][bolt].to - problem.sillPieces[which].stretch.from);
  }
  Mark mostLeft(int which, int bolt) const { return ranges[which][bolt].from - problem.sillPieces[which].stretch.from; }

  void keepNeighbours(int which, int bolt) {
    const SillPiece& sill = problem.sillPieces[which];
    LinearSum difference = only(named("y", which, bolt + 1));
    difference.add(-1, named("y", which, bolt));
    for (int left = 0; left < problem.depthOptions; ++left)
      for (int right = 0; right < problem.depthOptions; ++right) {
        const Mark slack = mostRight(which, bolt) + leastGap(left, right);
        LinearSum row = difference;
        row.add(-slack, inOption(which, bolt, left)).add(-slack, inOption(which, bolt + 1, right));
        lp.atLeast(row, leastGap(left, right) - 2 * slack);
      }
    for (int index = 0; index < static_cast<int>(sill.most.size()); ++index)
      keepMost(which, bolt, index, difference);
    if (sill.gapTolls.empty())
      return;
    const auto runs = runsOver({1, std::max(1, length(which))}, [&](Mark at) {
      return effectOf({{}, sill.gapTolls}, at, problem.countWatch);
    });
    choose(named("f_g", which, bolt), runs, difference, there(which, bolt + 1), length(which));
  }

  // The right bolt at or left of `from`, or the left one at or right of `to`, or both near enough.
  void keepMost(int which, int bolt, int index, const LinearSum& difference) {
    const SillPiece& sill = problem.sillPieces[which];
    const MostGap& gap = sill.most[index];
    const Mark from = gap.from - sill.stretch.from;
    const Mark to = gap.to - sill.stretch.from;
    const Mark beyond = mostRight(which, bolt + 1) - from;
    if (beyond <= 0 || mostLeft(which, bolt) >= to)
      return;
    // Without a right bolt the difference is not above 0, so it may be 0 whatever the limit.
    LinearSum near = difference;
    near.add(-gap.most, there(which, bolt + 1));
    const Mark slack = std::max(0, mostRight(which, bolt + 1) - mostLeft(which, bolt) - gap.most);
    if (from > 0) {
      const std::string leftOf = named("f_l", which, bolt, index);
      lp.binary(leftOf);
      near.add(-slack, leftOf);
      lp.atMost(only(named("y", which, bolt + 1)).add(beyond, leftOf), from + beyond);
    }
    if (to <= mostRight(which, bolt)) {
      const std::string rightOf = named("f_r", which, bolt, index);
      lp.binary(rightOf);
      near.add(-slack, rightOf);
      lp.atLeast(only(named("y", which, bolt)).add(-to, rightOf), 0);
    }
    lp.atMost(near, 0);
  }

  void matchReferences(int which) {
    const SillPiece& sill = problem.sillPieces[which];
    const int references = static_cast<int>(sill.reference.size());
    const auto match = [&](int bolt, int reference) { return named("m", which, bolt, reference); };
    for (int bolt = 0; bolt < slots(which); ++bolt) {
      LinearSum one;
      for (int reference = 0; reference < references; ++reference) {
        lp.binary(match(bolt, reference));
        one.add(1, match(bolt, reference));
      }
      pieces.add(-1, one);
      lp.atMost(one.add(-1, there(which, bolt)), 0);
      for (int later = bolt + 1; later < slots(which); ++later)
        for (int reference = 0; reference < references; ++reference) {
          LinearSum inOrder;
          for (int other = reference; other < references; ++other)
            inOrder.add(1, match(bolt, other));
          for (int other = 0; other <= reference; ++other)
            inOrder.add(1, match(later, other));
          lp.atMost(inOrder, 1);
        }
    }
    for (int reference = 0; reference < references; ++reference)
      followReference(which, reference);
  }

  void followReference(int which, int reference) {
    const SillPiece& sill = problem.sillPieces[which];
    const ReferenceBolt& old = sill.reference[reference];
    const std::string moved = named("v_y", which, reference);
    LinearSum kept;
    for (int bolt = 0; bolt < slots(which); ++bolt) {
      const LinearSum isIt = only(named("m", which, bolt, reference));
      kept.add(1, isIt);
      LinearSum by = stationOf(which, bolt);
      by.constant -= old.station;
      LinearSum shift;
      Mark shiftMost = 0;
      for (int option = 0; option < problem.depthOptions; ++option)
        if (old.shift[option] >= kFar) // another make: not both
          lp.atMost(LinearSum{}.add(1, isIt).add(1, inOption(which, bolt, option)), 1);
        else
          shift.add(old.shift[option], inOption(which, bolt, option));
      const Mark ends[] = {sill.stretch.from, ranges[which][bolt].from, ranges[which][bolt].to};
      Mark slack = 0;
      for (const Mark end : ends)
        slack = std::max(slack, std::abs(end - old.station));
      for (const Mark depth : old.shift)
        if (depth < kFar)
          shiftMost = std::max(shiftMost, depth);
      move(moved, by, shift, isIt, slack + shiftMost);
    }
    pieces.add(1, whole(1)).add(-1, kept);
    movement.add(1, moved);
    if (old.fixed) {
      lp.equal(kept, 1);
      lp.atMost(only(moved), 0);
    } else {
      lp.atMost(kept, 1);
    }
    if (!old.set)
      return;
    const std::string isMoved = named("z_y", which, reference);
    countSetMove(moved, isMoved);
    lp.atLeast(only(isMoved).add(1, kept), 1);
  }

  // The last bolt of one sill piece and the first of a later one, where those between have none.
  void keepSillsApart(int which, int next) {
    if (slots(next) == 0)
      return;
    for (int bolt = 0; bolt < slots(which); ++bolt)
      for (int left = 0; left < problem.depthOptions; ++left)
        for (int right = 0; right < problem.depthOptions; ++right) {
          const Mark gap = leastGap(left, right);
          if (problem.sillPieces[next].stretch.from - problem.sillPieces[which].stretch.to >= gap)
            continue;
          LinearSum row = stationOf(next, 0);
          row.add(-1, stationOf(which, bolt));
          row.add(-gap, inOption(which, bolt, left)).add(-gap, inOption(next, 0, right));
          row.add(gap, there(which, bolt + 1));
          for (int between = which + 1; between < next; ++between)
            row.add(gap, there(between, 0));
          lp.atLeast(row, -gap);
        }
  }

  void keepBeside(int index) {
    const Beside& beside = problem.besides[index];
    const Stretch own = ownOf(problem.anchored[beside.anchored]);
    if (own.from >= own.to)
      return;
    for (int which = 0; which < static_cast<int>(problem.sillPieces.size()); ++which)
      for (int bolt = 0; bolt < slots(which); ++bolt)
        for (int option = 0; option < problem.depthOptions; ++option)
          keepBoltBeside(index, own, which, bolt, option);
  }

  void keepBoltBeside(int index, const Stretch& own, int which, int bolt, int option) {
    const Beside& beside = problem.besides[index];
    const Stretch& range = ranges[which][bolt];
    const Stretch differences{range.from - own.to, range.to - own.from};
    const auto runs =
        runsOver(differences, [&](Mark at) { return effectOf(beside.options[option], at, problem.countWatch); });
    if (runs.size() == 1 && runs[0].effect == 0 && runs[0].from == differences.from && runs[0].to == differences.to)
      return;
    // Where there is no such bolt its station is the left end of the sill piece.
    const Mark end = problem.sillPieces[which].stretch.from;
    const Mark slack = std::max(
        {std::abs(differences.from), std::abs(differences.to), std::abs(end - own.from), std::abs(end - own.to)});
    choose(named("f_b", index, which, bolt, option), runs, stationOf(which, bolt).add(-1, named("x", beside.anchored)),
           inOption(which, bolt, option), slack);
  }

  void nameLevels() {
    const LinearSum* sums[] = {&asks, &pieces, &setMoved, &watches, &movement};
    const char* names[] = {"ask", "pieces", "set_moved", "watch", "movement"};
    const std::int64_t held[] = {question.earlier.ask, question.earlier.pieces, question.earlier.setMoved,
                                 question.earlier.watch, question.earlier.movement};
    for (std::size_t level = 0; level < std::size(names); ++level) {
      lp.equal(only(names[level]).add(-1, *sums[level]), 0);
      if (level < static_cast<std::size_t>(question.minimise))
        lp.atMost(only(names[level]), held[level]);
    }
    lp.minimise(only(names[static_cast<std::size_t>(question.minimise)]));
  }

  const Problem& problem;
  const LpQuestion& question;
  std::vector<std::vector<Stretch>> ranges; // by sill piece and bolt, from the left end of the wall
  LpText lp;
  LinearSum asks;
  LinearSum pieces;
  LinearSum setMoved;
  LinearSum watches;
  LinearSum movement;
};

} // namespace

std::string lpModel(const Problem& problem, const LpQuestion& question) {
  return Model(problem, question).written();
}

} // namespace sillwright::sequence
