#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>

#include "core/model/job.h"
#include "core/model/lookup.h"

namespace sillwright {
namespace {

WallLine wall(std::uint32_t id, std::uint32_t from, std::uint32_t to) {
  WallLine line;
  line.id = {id};
  line.mark = "W" + std::to_string(id);
  line.startCorner = {from};
  line.endCorner = {to};
  return line;
}

TEST(WallList, agreesWithAPlainMapAfterAnyEdits) {
  std::mt19937 random(7);
  for (int round = 0; round < 20; ++round) {
    WallList list;
    std::map<std::uint32_t, WallLine> plain;
    std::vector<std::uint32_t> order;
    std::uint32_t next = 1;
    for (int step = 0; step < 400; ++step) {
      const auto what = random() % 4;
      if (what <= 1 || order.empty()) {
        const auto corner = [&] { return 1000 + static_cast<std::uint32_t>(random() % 9); };
        const WallLine line = wall(next, corner(), corner());
        list.add(line);
        plain[next] = line;
        order.push_back(next++);
      } else if (what == 2) {
        const std::uint32_t id = order[random() % order.size()];
        WallLine line = plain[id];
        line.thickness = static_cast<double>(random() % 100);
        line.endCorner = {1000 + static_cast<std::uint32_t>(random() % 9)};
        list.replace(line);
        plain[id] = line;
      } else if (random() % 3 == 0) {
        const std::size_t at = random() % order.size();
        list.remove({order[at]});
        plain.erase(order[at]);
        order.erase(order.begin() + static_cast<std::ptrdiff_t>(at));
      }
    }
    ASSERT_EQ(list.size(), order.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
      EXPECT_EQ(list[i], plain[order[i]]);
      EXPECT_EQ(list.indexOf({order[i]}), i);
      EXPECT_EQ(*list.find({order[i]}), plain[order[i]]);
    }
    EXPECT_EQ(list.find({next}), nullptr);
    for (std::uint32_t corner = 1000; corner < 1009; ++corner) {
      std::vector<Id> expected;
      for (const std::uint32_t id : order)
        if (plain[id].startCorner.value == corner || plain[id].endCorner.value == corner)
          expected.push_back({id});
      EXPECT_EQ(list.atCorner({corner}), expected);
    }
  }
}

TEST(WallList, differenceNamesExactlyTheChangedWalls) {
  WallList before;
  for (std::uint32_t id = 1; id <= 300; ++id)
    before.add(wall(id, id, id + 1));
  WallList after = before;
  for (const std::uint32_t id : {3u, 64u, 65u, 300u}) {
    WallLine line = *after.find({id});
    line.thickness = 10;
    after.replace(line);
  }
  after.remove({100});
  after.add(wall(500, 1, 2));
  std::vector<Id> changed;
  after.difference(before, [&](Id id) { changed.push_back(id); });
  std::sort(changed.begin(), changed.end());
  EXPECT_EQ(changed, (std::vector<Id>{{3}, {64}, {65}, {100}, {300}, {500}}));
  changed.clear();
  before.difference(before, [&](Id id) { changed.push_back(id); });
  EXPECT_TRUE(changed.empty());
}

TEST(WallList, copiesShareEveryWallThatDidNotChange) {
  WallList before;
  for (std::uint32_t id = 1; id <= 200; ++id)
    before.add(wall(id, id, id + 1));
  WallList after = before;
  WallLine line = *after.find({77});
  line.title = "changed";
  after.replace(line);
  for (std::size_t i = 0; i < before.size(); ++i)
    EXPECT_EQ(before.pointer(i) == after.pointer(i), before[i].id != Id{77});
  EXPECT_FALSE(before == after);
  EXPECT_EQ(before.find({77})->title, "");
}

} // namespace
} // namespace sillwright
