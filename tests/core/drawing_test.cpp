#include "core/drawing/drawing.h"

#include <cmath>

#include <gtest/gtest.h>

#include "core/drawing/text_metrics.h"

namespace sillwright {
namespace {

void expectNear(const Bounds& got, const Bounds& wanted, double by = 1e-9) {
  EXPECT_NEAR(got.x0, wanted.x0, by);
  EXPECT_NEAR(got.y0, wanted.y0, by);
  EXPECT_NEAR(got.x1, wanted.x1, by);
  EXPECT_NEAR(got.y1, wanted.y1, by);
}

TEST(Bounds, HullSkipsAnEmptyOne) {
  const Bounds a{1, 1, 2, 2}, none{};
  EXPECT_EQ(hull(a, none), a);
  EXPECT_EQ(hull(none, a), a);
  EXPECT_EQ(hull(a, {0, 3, 1, 4}), (Bounds{0, 1, 2, 4}));
}

TEST(Bounds, TouchingIsNotOverlapping) {
  EXPECT_FALSE((Bounds{0, 0, 1, 1}).overlaps({1, 0, 2, 1}));
  EXPECT_TRUE((Bounds{0, 0, 1, 1}).overlaps({0.9, 0, 2, 1}));
  EXPECT_FALSE((Bounds{0, 0, 1, 1}).overlaps({0.9, 0, 2, 1}, 0.2));
}

TEST(Drawing, KeepsPrimitivesInOrderWithTheirPoints) {
  Drawing d;
  d.line({0, 0}, {10, 0}, Ink::Text, 1);
  d.fillRect(0, 0, 4, 2, Ink::Wood, 0.5);
  d.text({1, 2}, "S1", Ink::Fix, {});
  ASSERT_EQ(d.prims().size(), 3u);
  EXPECT_EQ(d.prims()[0].kind, Prim::Kind::Line);
  EXPECT_EQ(d.prims()[1].kind, Prim::Kind::Fill);
  EXPECT_EQ(d.pointsOf(d.prims()[1]).size(), 4u);
  EXPECT_FLOAT_EQ(d.prims()[1].opacity, 0.5f);
  EXPECT_EQ(d.textOf(d.prims()[2]).text, "S1");
}

TEST(Drawing, DrawsNothingWithoutInkOrPoints) {
  Drawing d;
  d.line({0, 0}, {10, 0}, Ink::None, 1);
  d.segments({}, Ink::Text, 1);
  d.polyline({}, Ink::Text, 1);
  d.dashed({}, 3, 2, Ink::Text, 1);
  d.text({0, 0}, "", Ink::Text, {});
  d.text({0, 0}, "unseen", Ink::None, {});
  EXPECT_TRUE(d.empty());
  EXPECT_TRUE(d.bounds().empty());
}

TEST(Drawing, BoundsHoldTheStrokes) {
  Drawing line;
  line.line({10, 10}, {30, 10}, Ink::Text, 2);
  expectNear(line.bounds(), {9, 9, 31, 11});
  Drawing ring;
  ring.ring({0, 0}, 5, Ink::Text, 1);
  expectNear(ring.bounds(), {-5.5, -5.5, 5.5, 5.5});
  Drawing rect;
  rect.rect(0, 0, 10, 10, Ink::Text, 1);
  expectNear(rect.bounds(), {-0.5, -0.5, 10.5, 10.5});
}

TEST(Drawing, BoundsHoldTheTipOfAMitre) {
  Drawing d; // a right angle pointing down: the mitre reaches half a width times the root of two past the corner
  const Point2 v[] = {{-10, -10}, {0, 0}, {10, -10}};
  d.polyline(v, Ink::Text, 2);
  EXPECT_NEAR(d.bounds().y1, std::sqrt(2.0), 1e-9);
}

TEST(Drawing, TextBoxFollowsAnchorAndTurn) {
  Drawing d;
  TextStyle style{10};
  const double w = textWidth("HELD", 10);
  expectNear(d.text({100, 50}, "HELD", Ink::Text, style), {100, 41.9, 100 + w, 50.2});
  style.anchor = Anchor::End;
  expectNear(d.text({100, 50}, "HELD", Ink::Text, style), {100 - w, 41.9, 100, 50.2});
  style.anchor = Anchor::Middle;
  style.turn = 90; // reads upward
  expectNear(d.text({100, 50}, "HELD", Ink::Text, style), {91.9, 50 - w / 2, 100.2, 50 + w / 2});
  style.turn = 180;
  expectNear(d.text({100, 50}, "HELD", Ink::Text, style), {100 - w / 2, 49.8, 100 + w / 2, 58.1});
}

TEST(Drawing, HaloWidensThePrimitiveNotTheLetters) {
  Drawing d;
  const Bounds letters = d.text({0, 0}, "S1", Ink::Text, {10, Weight::Bold, Anchor::Start, 0, Ink::Paper, 4});
  const Bounds& ink = d.prims()[0].box;
  EXPECT_LE(ink.x0, letters.x0 - 2);
  EXPECT_GE(ink.y1, letters.y1 + 2);
}

TEST(Drawing, DashesBeginAtEveryCorner) {
  Drawing d;
  const Point2 corner[] = {{0, 0}, {10, 0}, {10, 7}};
  d.dashed(corner, 4, 2, Ink::Text, 1);
  ASSERT_EQ(d.prims().size(), 1u);
  EXPECT_EQ(d.prims()[0].kind, Prim::Kind::Segments);
  const Point2 wanted[] = {{0, 0}, {4, 0}, {6, 0}, {10, 0}, {10, 0}, {10, 4}, {10, 6}, {10, 7}};
  const auto got = d.pointsOf(d.prims()[0]);
  ASSERT_EQ(got.size(), std::size(wanted));
  for (std::size_t i = 0; i < got.size(); ++i) {
    EXPECT_NEAR(got[i].x, wanted[i].x, 1e-12);
    EXPECT_NEAR(got[i].y, wanted[i].y, 1e-12);
  }
}

TEST(Drawing, DashesTooFineToDrawAreOneLine) {
  Drawing d;
  const Point2 ends[] = {{0, 0}, {10, 0}};
  d.dashed(ends, 0, 0, Ink::Text, 1);
  d.dashed(ends, 1e-9, 1e-9, Ink::Text, 1);
  ASSERT_EQ(d.prims().size(), 2u);
  for (const Prim& p : d.prims())
    EXPECT_EQ(p.count, 2u);
}

TEST(Drawing, FillWithAHoleKeepsItsRings) {
  Drawing d;
  const Polygon2 rings[] = {rectangle(0, 0, 10, 10), rectangle(2, 2, 4, 4)};
  d.fillRect(0, 0, 1, 1, Ink::Wood);
  d.fill(std::span<const Polygon2>(rings), Ink::Concrete);
  EXPECT_EQ(d.ringsOf(d.prims()[0]).size(), 1u);
  const auto got = d.ringsOf(d.prims()[1]);
  ASSERT_EQ(got.size(), 2u);
  EXPECT_EQ(got[0].size(), 4u);
  EXPECT_EQ(got[1][0], (Point2{2, 2}));
}

TEST(Drawing, AddMovesEverythingOfTheOther) {
  Drawing part;
  const Polygon2 rings[] = {rectangle(0, 0, 10, 10), rectangle(2, 2, 4, 4)};
  part.fill(std::span<const Polygon2>(rings), Ink::Concrete);
  part.text({1, 1}, "S1", Ink::Text, {});
  part.ring({5, 5}, 3, Ink::Text, 1);
  part.hit({Id{1}, Id{2}}, {0, 0, 1, 1}, HitArea::Part::Label);
  part.take("label", {0, 0, 2, 2});

  Drawing all = part;
  all.add(part, 100, 10);
  ASSERT_EQ(all.prims().size(), 6u);
  EXPECT_EQ(all.ringsOf(all.prims()[3])[1][0], (Point2{102, 12}));
  EXPECT_EQ(all.textOf(all.prims()[4]).text, "S1");
  EXPECT_EQ(all.pointsOf(all.prims()[4])[0], (Point2{101, 11}));
  EXPECT_EQ(all.pointsOf(all.prims()[5])[0], (Point2{105, 15}));
  EXPECT_EQ(all.pointsOf(all.prims()[5])[1].x, 3) << "a radius does not move";
  EXPECT_EQ(all.hits()[1].box, (Bounds{100, 10, 101, 11}));
  EXPECT_EQ(all.hits()[1].part, HitArea::Part::Label);
  EXPECT_EQ(all.taken()[1].box, (Bounds{100, 10, 102, 12}));
  expectNear(all.bounds(), hull(part.bounds(), part.bounds().moved(100, 10)));
}

} // namespace
} // namespace sillwright
