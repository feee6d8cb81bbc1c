#include "core/base/on_all_cores.h"

#include <gtest/gtest.h>

#include <chrono>
#include <thread>
#include <vector>

namespace sillwright {
namespace {

TEST(OnAllCores, everyPieceOfWorkIsDoneOnce) {
  for (const std::size_t count : {0u, 1u, 2u, 7u, 500u}) {
    std::vector<std::atomic<int>> done(count);
    onAllCores(count, [&](std::size_t i) { ++done[i]; });
    for (const auto& each : done)
      EXPECT_EQ(each, 1);
  }
}

TEST(OnAllCores, progressCountsUpWithoutHolesAndNeverTwoAtOnce) {
  std::vector<std::size_t> told; // unguarded: the calls come one at a time
  onAllCores(
      200, [](std::size_t) {},
      [&](std::size_t done, std::size_t of) {
        EXPECT_EQ(of, 200u);
        told.push_back(done);
      });
  ASSERT_EQ(told.size(), 200u);
  for (std::size_t i = 0; i < told.size(); ++i)
    EXPECT_EQ(told[i], i + 1);
}

TEST(OnAllCores, nothingIsBegunOnceCancelled) {
  std::atomic<bool> cancelled = false;
  std::atomic<int> begun = 0;
  onAllCores(
      10000,
      [&](std::size_t) {
        if (++begun == 5)
          cancelled = true;
        std::this_thread::sleep_for(std::chrono::microseconds(50));
      },
      {}, &cancelled);
  EXPECT_GE(begun, 5);
  EXPECT_LE(begun, 5 + static_cast<int>(std::thread::hardware_concurrency()));
  begun = 0;
  onAllCores(10, [&](std::size_t) { ++begun; }, {}, &cancelled);
  EXPECT_EQ(begun, 0);
}

} // namespace
} // namespace sillwright
