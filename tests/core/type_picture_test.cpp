// Pictures of hardware types: to their numbers, inside their box, no text over another.
#include "core/drawing/type_picture.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/edit/operations.h"
#include "core/edit/types.h"

namespace sillwright {
namespace {

constexpr Bounds boxes[] = {{0, 0, 300, 540}, {0, 0, 340, 220}, {0, 0, 350, 420}, {20, 10, 520, 560}, {0, 0, 640, 240}};

std::vector<std::pair<std::string, Bounds>> textsOf(const Drawing& drawing) {
  std::vector<std::pair<std::string, Bounds>> texts;
  for (const Prim& prim : drawing.prims())
    if (prim.kind == Prim::Kind::Text) {
      const TextPrim& text = drawing.textOf(prim);
      texts.emplace_back(text.text, prim.box.grown(-0.16 * text.style.size - text.style.haloWidth / 2));
    }
  return texts;
}

bool says(const Drawing& drawing, const std::string& words) {
  for (const auto& [text, box] : textsOf(drawing))
    if (text.find(words) != std::string::npos)
      return true;
  return false;
}

// Sample types, a headed bolt, a flat washer with a slot along, and a long profile.
Job withTypes() {
  Job job = newJob();
  job.types.edit([&](HardwareTypes& types) {
    BoltType headed = types.bolts.front();
    headed.id = takeId(job);
    headed.end = BoltEnd::Headed;
    headed.headWidth = 1;
    headed.headThickness = 0.5;
    types.bolts.push_back(headed);
    StrapType flat = types.straps.front();
    flat.id = takeId(job);
    flat.profile = {{0, 0}, {0, -10}, {6, -10}};
    types.straps.push_back(flat);
    types.washers.back().slot->direction = SlotDirection::Along;
    types.washers.back().hole = 0.5;
  });
  return job;
}

TEST(TypePicture, staysInItsBoxWithNoTextOverAnother) {
  for (const LengthStyle style : {LengthStyle::FeetInches, LengthStyle::Millimetres}) {
    Job job = withTypes();
    job.units = style;
    for (const Listed& each : listed(job))
      for (const Bounds& box : boxes) {
        if (each.kind == ListedKind::Mark)
          continue;
        SCOPED_TRACE(each.name + " in " + std::to_string(box.x1 - box.x0));
        const Drawing drawing = typePicture(job, each.id, box);
        ASSERT_FALSE(drawing.empty());
        EXPECT_GT(drawing.bounds().y1 - drawing.bounds().y0, std::min(box.x1 - box.x0, box.y1 - box.y0) / 2);
        EXPECT_TRUE(box.grown(4).contains(drawing.bounds()));
        const auto texts = textsOf(drawing);
        for (std::size_t i = 0; i < texts.size(); ++i)
          for (std::size_t j = i + 1; j < texts.size(); ++j)
            EXPECT_FALSE(texts[i].second.overlaps(texts[j].second, 0.5)) << texts[i].first << " / " << texts[j].first;
      }
  }
}

TEST(TypePicture, saysTheNumbersOfTheType) {
  const Job job = withTypes();
  const Drawing strap = typePicture(job, job.types->straps[0].id, boxes[2]);
  for (const char* words : {"2 1/2\"", "22\"", "14\"", "16 nails, staggered", "10d common", "1\" apart", "first 5\" up",
                            "5   5 1/2\", 12 1/2\" down"})
    EXPECT_TRUE(says(strap, words)) << words;
  const Drawing bolt = typePicture(job, job.types->bolts[0].id, boxes[1]);
  for (const char* words : {"5/8\"", "12\"", "5\" of thread", "2 1/2\"", "1 1/2\""})
    EXPECT_TRUE(says(bolt, words)) << words;
  const Drawing washer = typePicture(job, job.types->washers[2].id, boxes[1]);
  for (const char* words : {"3\" along", "4 1/2\" across", "slot 11/16\"", "x 1 3/4\""})
    EXPECT_TRUE(says(washer, words)) << words;
  const Drawing rod = typePicture(job, job.types->rods[0].id, boxes[1]);
  for (const char* words : {"12\"", "6\" of thread", "1 1/4\" off the column", "5/8\" rod"})
    EXPECT_TRUE(says(rod, words)) << words;
}

TEST(TypePicture, followsTheNumbers) {
  const Job job = withTypes();
  const Id id = job.types->bolts[0].id;
  const auto changed = setListedField(job, id, "threadLength", "3 1/4");
  ASSERT_TRUE(changed);
  EXPECT_TRUE(says(typePicture(*changed, id, boxes[1]), "3 1/4\" of thread"));
}

TEST(TypePicture, nothingForWhatIsNoType) {
  const Job job = withTypes();
  EXPECT_TRUE(typePicture(job, job.marks->front().id, boxes[1]).empty());
  EXPECT_TRUE(typePicture(job, Id{9999}, boxes[1]).empty());
  EXPECT_TRUE(typePicture(job, job.types->bolts[0].id, {0, 0, 50, 50}).empty());
}

} // namespace
} // namespace sillwright
