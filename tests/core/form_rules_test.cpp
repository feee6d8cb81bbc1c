// pour.form: the top of the form is nowhere under the pour line.
#include <gtest/gtest.h>

#include "strap_wall.h"

namespace sillwright {
namespace {

using namespace testing_support;

constexpr Interval across{0, 8};

Findings formAt(double top) {
  StrapWall bare = bareStrapWall();
  bare.wall.formTop = top;
  return found(bare, RuleId::PourForm);
}

TEST(PourForm, fixesAFormUnderThePourLine) {
  EXPECT_TRUE(formAt(sixteenth).empty());
  EXPECT_TRUE(formAt(0).empty());
  EXPECT_TRUE(
      isOnly(formAt(-sixteenth), {Level::Fix, {strapWall}, -sixteenth, 0, {{0, 288}, across, {-sixteenth, 0}}, {}}));
}

TEST(PourForm, takesTheLimitOfTheJob) {
  StrapWall bare = bareStrapWall();
  bare.limit("pour.form", 1);
  bare.wall.formTop = 1;
  EXPECT_TRUE(found(bare, RuleId::PourForm).empty());
  bare.wall.formTop -= sixteenth;
  EXPECT_TRUE(
      isOnly(found(bare, RuleId::PourForm), {Level::Fix, {strapWall}, 0.9375, 1, {{0, 288}, across, {0.9375, 1}}, {}}));
}

// The boards step with the pour line, so each stretch of them is low.
TEST(PourForm, showsEveryStretchOfASteppedForm) {
  StrapWall bare = bareStrapWall();
  bare.step(48, 240, -8);
  bare.wall.formTop = -0.5;
  const Findings findings = found(bare, RuleId::PourForm);
  ASSERT_EQ(findings.size(), 3u);
  EXPECT_TRUE(is(findings[0], {Level::Fix, {strapWall}, -0.5, 0, {{0, 48}, across, {-0.5, 0}}, {}}));
  EXPECT_TRUE(is(findings[1], {Level::Fix, {strapWall}, -0.5, 0, {{48, 240}, across, {-8.5, -8}}, {}}));
  EXPECT_TRUE(is(findings[2], {Level::Fix, {strapWall}, -0.5, 0, {{240, 288}, across, {-0.5, 0}}, {}}));
}

} // namespace
} // namespace sillwright
