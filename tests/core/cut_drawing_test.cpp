#include "core/drawing/cut_drawing.h"

#include <random>

#include <gtest/gtest.h>

namespace sillwright {
namespace {

const Bounds box{100, 50, 300, 200};

TEST(CutDrawing, CutsAreasAndLinesAtTheEdgeAndLeavesOutWhatCannotBeCut) {
  Drawing drawing;
  drawing.fillRect(0, 0, 150, 100, Ink::Wood, 0.5);
  drawing.line({0, 100}, {400, 100}, Ink::Text, 2);
  drawing.rect(120, 60, 140, 80, Ink::Text, 1); // whole
  drawing.disc({300, 100}, 5, Ink::Steel);      // half of it is out
  drawing.ring({200, 100}, 20, Ink::Steel, 1);
  drawing.text({290, 100}, "out at the right", Ink::Text, {});
  const Drawing cut = cutTo(drawing, box);
  ASSERT_EQ(cut.prims().size(), 4u);
  EXPECT_EQ(cut.prims()[0].box, (Bounds{100, 50, 150, 100}));
  EXPECT_EQ(cut.prims()[0].opacity, 0.5f);
  EXPECT_EQ(cut.prims()[1].kind, Prim::Kind::Segments);
  EXPECT_EQ(cut.pointsOf(cut.prims()[1])[0], (Point2{100, 100}));
  EXPECT_EQ(cut.pointsOf(cut.prims()[1])[1], (Point2{300, 100}));
  EXPECT_EQ(cut.prims()[2].kind, Prim::Kind::Loop);
  EXPECT_EQ(cut.prims()[3].kind, Prim::Kind::Ring);
}

TEST(CutDrawing, NothingStandsPastTheEdgeByMoreThanHalfAStroke) {
  std::mt19937 random(3);
  std::uniform_real_distribution<double> x(0, 400), y(0, 260), size(1, 90);
  for (int i = 0; i < 400; ++i) {
    Drawing drawing;
    const Point2 three[] = {{x(random), y(random)}, {x(random), y(random)}, {x(random), y(random)}};
    drawing.fill(three, Ink::Wood);
    drawing.loop(three, Ink::Text, 2);
    drawing.polyline(three, Ink::Text, 2);
    drawing.dashed(three, 5, 3, Ink::Text, 2);
    drawing.disc(three[0], size(random), Ink::Steel);
    drawing.ring(three[1], size(random), Ink::Steel, 2);
    drawing.text(three[2], "V16 found", Ink::Text, {});
    const Drawing cut = cutTo(drawing, box);
    for (const Prim& prim : cut.prims())
      EXPECT_TRUE(box.grown(1 + 1e-6).contains(prim.box));
  }
}

TEST(CutDrawing, LeavesWhatIsInsideAsItIs) {
  Drawing drawing;
  const Point2 corner[] = {{110, 60}, {150, 60}, {150, 90}};
  drawing.polyline(corner, Ink::Hand, 2); // widths are kept as floats
  drawing.line({110, 100}, {150, 100}, Ink::Hand, 1, Cap::Round);
  drawing.text({120, 120}, "V16", Ink::Text, {});
  const Drawing cut = cutTo(drawing, box);
  ASSERT_EQ(cut.prims().size(), drawing.prims().size());
  for (std::size_t i = 0; i < cut.prims().size(); ++i) {
    EXPECT_EQ(cut.prims()[i].kind, drawing.prims()[i].kind);
    EXPECT_EQ(cut.prims()[i].box, drawing.prims()[i].box);
    EXPECT_EQ(cut.prims()[i].cap, drawing.prims()[i].cap);
  }
}

} // namespace
} // namespace sillwright
