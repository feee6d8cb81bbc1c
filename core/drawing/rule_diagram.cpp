#include "core/drawing/rule_diagram.h"

#include <array>

#include "core/drawing/rule_sketch.h"

namespace sillwright {

namespace {

const sketch::RulePicture* pictureOf(std::string_view rule) {
  using namespace sketch;
  const std::array subjects{strapPictures(), strapCutPictures(), boltPictures(),  boltClearPictures(), washerPictures(),
                            rodPictures(),   framingPictures(),  panelPictures(), concretePictures()};
  for (const std::span<const RulePicture> pictures : subjects)
    for (const RulePicture& picture : pictures)
      if (picture.rule == rule)
        return &picture;
  return nullptr;
}

} // namespace

Drawing ruleDiagram(std::string_view ruleName, const Bounds& box, Medium medium) {
  Drawing drawing;
  const sketch::RulePicture* picture = pictureOf(ruleName);
  if (!picture || box.empty())
    return drawing;
  drawing.fillRect(box.x0, box.y0, box.x1, box.y1, Ink::Paper);
  sketch::Sketch pencil(drawing, box, medium);
  picture->draw(pencil);
  return drawing;
}

} // namespace sillwright
