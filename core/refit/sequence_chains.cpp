#include "core/refit/sequence_chains.h"

#include <algorithm>
#include <map>
#include <numeric>

namespace sillwright::sequence {
namespace {

bool belongs(const Group& group, int piece) {
  return std::find(group.pieces.begin(), group.pieces.end(), piece) != group.pieces.end();
}

Mark stationOf(const Group& group, const Stance& stance, int piece) {
  const auto at = std::find(group.pieces.begin(), group.pieces.end(), piece) - group.pieces.begin();
  return stance.stations[static_cast<std::size_t>(at)];
}

Link linkOf(const Problem& problem, const Anchors& anchors, const Group& left, const Group& right) {
  std::vector<const Distance*> between;
  for (const Distance* distance : anchors.open)
    if ((belongs(left, distance->left) && belongs(right, distance->right)) ||
        (belongs(right, distance->left) && belongs(left, distance->right)))
      between.push_back(distance);
  Link link;
  if (between.empty())
    return link;
  std::map<std::vector<Weight>, int> columns;
  for (const Stance& there : right.stances) {
    std::vector<Weight> column;
    for (const Stance& here : left.stances) {
      Weight cost;
      for (const Distance* distance : between) {
        const bool inOrder = belongs(left, distance->left);
        const Mark from = stationOf(left, here, inOrder ? distance->left : distance->right);
        const Mark to = stationOf(right, there, inOrder ? distance->right : distance->left);
        cost = plus(cost, weightOf(effectOf(*distance, inOrder ? to - from : from - to, problem.countWatch)));
      }
      column.push_back(cost);
    }
    link.face.push_back(columns.try_emplace(std::move(column), static_cast<int>(columns.size())).first->second);
  }
  link.faces = static_cast<int>(columns.size());
  link.cost.resize(left.stances.size() * columns.size());
  for (const auto& [column, face] : columns)
    for (std::size_t here = 0; here < column.size(); ++here)
      link.cost[here * columns.size() + face] = column[here];
  return link;
}

// Of the groups first … last of a chain.
struct Run {
  std::size_t first = 0;
  std::size_t last = 0;
  std::vector<std::vector<Weight>> before; // by group and stance: least cost of what is left of it in the chain
  std::vector<std::vector<Weight>> after;  // its own, and of what is right of it
  Weight least;
};

std::vector<Run> runsOf(const Anchors& anchors) {
  std::vector<Run> runs;
  for (std::size_t group = 0; group < anchors.groups.size(); ++group) {
    if (anchors.links[group].faces == 0)
      runs.push_back({group, group, {}, {}, {}});
    runs.back().last = group;
  }
  for (Run& run : runs) {
    const std::size_t count = run.last - run.first + 1;
    run.before.resize(count);
    run.after.resize(count);
    run.before[0].assign(anchors.groups[run.first].stances.size(), Weight{});
    for (std::size_t index = 1; index < count; ++index) {
      const Link& link = anchors.links[run.first + index];
      const std::vector<Stance>& left = anchors.groups[run.first + index - 1].stances;
      std::vector<Weight> least(link.faces, kNever);
      for (std::size_t here = 0; here < left.size(); ++here)
        for (int face = 0; face < link.faces; ++face)
          least[face] =
              std::min(least[face], plus(plus(run.before[index - 1][here], left[here].cost), link.at(here, face)));
      for (const int face : link.face)
        run.before[index].push_back(least[face]);
    }
    for (std::size_t index = count; index-- > 0;) {
      const std::vector<Stance>& stances = anchors.groups[run.first + index].stances;
      for (const Stance& stance : stances)
        run.after[index].push_back(stance.cost);
      if (index + 1 == count)
        continue;
      const Link& link = anchors.links[run.first + index + 1];
      std::vector<Weight> least(link.faces, kNever);
      for (std::size_t there = 0; there < link.face.size(); ++there)
        least[link.face[there]] = std::min(least[link.face[there]], run.after[index + 1][there]);
      for (std::size_t here = 0; here < stances.size(); ++here) {
        Weight rest = kNever;
        for (int face = 0; face < link.faces; ++face)
          rest = std::min(rest, plus(link.at(here, face), least[face]));
        run.after[index][here] = plus(run.after[index][here], rest);
      }
    }
    run.least = *std::min_element(run.after[0].begin(), run.after[0].end());
  }
  return runs;
}

// Keeps these stances, in this order.
void choose(Anchors& anchors, std::size_t which, const std::vector<std::size_t>& order) {
  Group& group = anchors.groups[which];
  std::vector<Stance> stances;
  for (const std::size_t index : order)
    stances.push_back(std::move(group.stances[index]));
  group.stances = std::move(stances);
  if (Link& link = anchors.links[which]; link.faces > 0) {
    std::vector<int> face;
    for (const std::size_t index : order)
      face.push_back(link.face[index]);
    link.face = std::move(face);
  }
  if (which + 1 == anchors.links.size() || anchors.links[which + 1].faces == 0)
    return;
  Link& link = anchors.links[which + 1];
  std::vector<Weight> cost;
  for (const std::size_t index : order)
    for (int face = 0; face < link.faces; ++face)
      cost.push_back(link.at(index, face));
  link.cost = std::move(cost);
}

void thin(Anchors& anchors, const Weight& most) {
  const std::vector<Run> runs = runsOf(anchors);
  Weight spare = most - anchors.standing;
  for (const Run& run : runs) {
    if (isNever(run.least))
      anchors.possible = false;
    spare = spare - run.least;
  }
  if (!anchors.possible || spare < Weight{}) {
    anchors.possible = false;
    return;
  }
  for (const Run& run : runs)
    for (std::size_t index = 0; index < run.before.size(); ++index) {
      std::vector<Weight> whole;
      std::vector<std::size_t> order;
      for (std::size_t stance = 0; stance < run.before[index].size(); ++stance) {
        whole.push_back(plus(run.before[index][stance], run.after[index][stance]));
        if (!isNever(whole.back()) && !(run.least + spare < whole.back()))
          order.push_back(stance);
      }
      std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return whole[a] < whole[b]; });
      choose(anchors, run.first + index, order);
    }
}

void layOver(Anchors& anchors, const Row& row) {
  for (Row& ground : anchors.grounds)
    for (Mark station = std::max(row.stretch.from, ground.stretch.from);
         station <= std::min(row.stretch.to, ground.stretch.to); ++station)
      for (int option = 0; option < row.options; ++option)
        ground.at(station, option) = sum(ground.at(station, option), row.at(station, option));
}

// Chains in which nothing is left to choose.
void layWhatStands(Anchors& anchors) {
  std::vector<Run> runs = runsOf(anchors);
  for (auto run = runs.rbegin(); run != runs.rend(); ++run) {
    const auto first = anchors.groups.begin() + static_cast<std::ptrdiff_t>(run->first);
    const auto last = anchors.groups.begin() + static_cast<std::ptrdiff_t>(run->last) + 1;
    if (std::any_of(first, last, [](const Group& group) { return group.stances.size() > 1; }))
      continue;
    for (auto group = first; group != last; ++group)
      layOver(anchors, group->stances[0].effects);
    anchors.standing = anchors.standing + run->least;
    anchors.groups.erase(first, last);
    anchors.links.erase(anchors.links.begin() + static_cast<std::ptrdiff_t>(run->first),
                        anchors.links.begin() + static_cast<std::ptrdiff_t>(run->last) + 1);
  }
}

Row easiestOf(const Group& group) {
  Row easiest = group.stances[0].effects;
  for (const Stance& stance : group.stances)
    for (std::size_t index = 0; index < easiest.effects.size(); ++index)
      easiest.effects[index] = std::min(easiest.effects[index], stance.effects.effects[index]);
  return easiest;
}

// With state 0 and the excess.
void complete(Part& part, const Weight& least) {
  const Weight after = *std::min_element(part.after.begin(), part.after.end());
  part.before.insert(part.before.begin(), least - after);
  part.after.insert(part.after.begin(), after);
  for (int state = 0; state < part.states(); ++state)
    part.excess.push_back(part.before[state] + part.after[state] - least);
}

// Faces from the one in the cheapest chain on.
std::vector<int> facesInOrder(const Link& link, const std::vector<Weight>& before, const std::vector<Weight>& after) {
  std::vector<int> order(link.faces);
  std::iota(order.begin(), order.end(), 0);
  std::stable_sort(order.begin(), order.end(),
                   [&](int a, int b) { return plus(before[a], after[a]) < plus(before[b], after[b]); });
  std::erase_if(order, [&](int face) { return isNever(plus(before[face], after[face])); });
  return order;
}

void addParts(Chains& chains, const Anchors& anchors, const Run& run) {
  const int chain = static_cast<int>(chains.chains.size());
  chains.chains.push_back({{anchors.groups[run.first].reach.from, anchors.groups[run.last].reach.to}, run.least});
  for (std::size_t index = 0; index < run.before.size(); ++index) {
    const std::size_t which = run.first + index;
    const Group& group = anchors.groups[which];
    if (index > 0) {
      const Link& link = anchors.links[which];
      const std::vector<Stance>& left = anchors.groups[which - 1].stances;
      std::vector<Weight> before(link.faces, kNever);
      std::vector<Weight> after(link.faces, kNever);
      for (std::size_t there = 0; there < group.stances.size(); ++there) {
        before[link.face[there]] = run.before[index][there];
        after[link.face[there]] = std::min(after[link.face[there]], run.after[index][there]);
      }
      Part between;
      between.chain = chain;
      between.marks = {anchors.groups[which - 1].reach.to + 1, group.reach.from - 1};
      const std::vector<int> order = facesInOrder(link, before, after);
      for (const int face : order) {
        between.before.push_back(before[face]);
        between.after.push_back(after[face]);
        for (std::size_t there = 0; there < group.stances.size(); ++there)
          between.onward.push_back(link.face[there] == face ? Weight{} : kNever);
      }
      complete(between, run.least);
      for (std::size_t here = 0; here < left.size(); ++here)
        for (const int face : order)
          chains.parts.back().onward.push_back(plus(left[here].cost, link.at(here, face)));
      chains.parts.push_back(std::move(between));
    }
    Part part;
    part.chain = chain;
    part.group = static_cast<int>(which);
    part.marks = group.reach;
    part.before = run.before[index];
    part.after = run.after[index];
    complete(part, run.least);
    chains.parts.push_back(std::move(part));
  }
}

} // namespace

void linkGroups(const Problem& problem, Anchors& anchors, const Weight& most) {
  for (std::size_t which = 0; which < anchors.groups.size(); ++which)
    anchors.links.push_back(which == 0 ? Link{}
                                       : linkOf(problem, anchors, anchors.groups[which - 1], anchors.groups[which]));
  thin(anchors, most);
  if (!anchors.possible)
    return;
  layWhatStands(anchors);
  for (Group& group : anchors.groups)
    group.easiest = easiestOf(group);
}

Anchors eased(const Anchors& anchors) {
  Anchors easy;
  easy.possible = anchors.possible;
  easy.standing = anchors.standing;
  easy.grounds = anchors.grounds;
  if (!anchors.possible)
    return easy;
  for (const Run& run : runsOf(anchors))
    easy.standing = easy.standing + run.least;
  for (const Group& group : anchors.groups)
    layOver(easy, group.easiest);
  return easy;
}

Chains chainsOf(const Anchors& anchors) {
  Chains chains;
  for (const Run& run : runsOf(anchors))
    addParts(chains, anchors, run);
  return chains;
}

} // namespace sillwright::sequence
