// Slots and slide room in words: on tape marks, never past what is good.
#include <gtest/gtest.h>

#include "core/edit/operations.h"
#include "core/refit/in_the_way.h"
#include "core/refit/slot_words.h"
#include "core/rules/rule_book.h"
#include "tests/support/sample_jobs.h"

namespace sillwright {
namespace {

constexpr auto style = LengthStyle::FeetInches;

PieceSlots standing(double at, std::vector<Interval> slots) {
  PieceSlots piece{Id{1}, PieceKind::Bolt, at, std::move(slots), {}};
  if (const auto own = partAt(piece.slots, at))
    piece.room = Room{at - own->from, own->to - at};
  return piece;
}

TEST(SlotWords, theRoomGoesFromTheMarkItIsSetAtToTheLastGoodMarks) {
  // The slot's marks are 9 and 12. 10.53 is set at 10 1/2, 10.54 at 10 9/16.
  EXPECT_EQ(roomWords(standing(10.53, {{8.98, 12.04}}), style), "1 1/2\" left, 1 1/2\" right");
  EXPECT_EQ(roomWords(standing(10.54, {{8.98, 12.04}}), style), "1 9/16\" left, 1 7/16\" right");
  EXPECT_EQ(roomShort(standing(10.54, {{8.98, 12.04}}), style), "1 9/16\" | 1 7/16\"");
}

TEST(SlotWords, noRoomIsSaidNotCounted) {
  EXPECT_EQ(roomWords(standing(9, {{9, 12}}), style), "none to the left, 3\" right");
  EXPECT_EQ(roomWords(standing(12, {{9, 12}}), style), "3\" left, none to the right");
  EXPECT_EQ(roomWords(standing(9, {{9, 9}}), style), "none either way");
  EXPECT_EQ(roomShort(standing(9, {{9, 9}}), style), "0\" | 0\"");
  EXPECT_EQ(roomWords(standing(13, {{9, 12}}), style), "none here");
  EXPECT_EQ(roomShort(standing(13, {{9, 12}}), style), "none here");
  EXPECT_EQ(roomWords(standing(13, {}), style), "none here");
}

TEST(SlotWords, itsOwnSlotElseTheNearest) {
  const std::vector<Interval> slots{{0, 1}, {3, 4}};
  EXPECT_EQ(ownSlot(standing(0.5, slots)), slots[0]);
  EXPECT_EQ(ownSlot(standing(1.8, slots)), slots[0]); // 0.8 against 1.2
  EXPECT_EQ(ownSlot(standing(2.2, slots)), slots[1]);
  EXPECT_FALSE(ownSlot(standing(2.2, {})));
}

TEST(SlotWords, aSlotEndsOnTheLastMarksInside) {
  EXPECT_EQ(slotWords(Interval{9.99, 14.3}, style), "0'-10\" to 1'-2 1/4\"");
  EXPECT_EQ(slotWords(Interval{9.99, 10.01}, style), "0'-10\"");
  EXPECT_EQ(slotWords(Interval{10.51, 10.53}, style), "0'-10 33/64\""); // between 10 1/2 and 10 9/16
  EXPECT_EQ(slotWords(standing(10, {{9.99, 14.3}, {20.51, 20.53}, {24, 30}}), style),
            "0'-10\" to 1'-2 1/4\", 2'-0\" to 2'-6\"");
}

TEST(SlotWords, whatIsInTheWayIsNamed) {
  Job job = support::boatShedFront();
  const WallLine& wall = job.walls[0];
  const Id edge = wall.straps[0].id, bolt = wall.bolts[0].id;
  const ResolvedLimits limits = resolve(*job.limits);
  const auto told = [&](Id piece, double station) {
    const Job moved = setStation(job, {job.walls[0].id, piece}, station);
    return inTheWay(layOut(moved, moved.walls.pointer(0)), limits, piece);
  };
  EXPECT_EQ(told(edge, 2.75), "");
  EXPECT_EQ(told(edge, 1.5), "end of the concrete"); // 1 3/4 is the least
  EXPECT_EQ(told(bolt, 8), "bar V1");
}

} // namespace
} // namespace sillwright
