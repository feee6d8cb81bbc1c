#include <array>

#include "core/drawing/plain_number.h"
#include "core/drawing/writers.h"

namespace sillwright {
namespace {

std::string number(double value) {
  return plainNumber(value, 2);
}

std::string places(std::span<const Point2> points) {
  std::string out;
  for (const Point2 p : points)
    out += ' ' + number(p.x) + ',' + number(p.y);
  return out;
}

std::string_view kindName(Prim::Kind kind) {
  constexpr std::array<std::string_view, 7> names{"fill", "line", "loop", "segments", "disc", "ring", "text"};
  return names[static_cast<std::size_t>(kind)];
}

std::string styleOf(const TextStyle& s) {
  constexpr std::array<std::string_view, 3> weights{"regular", "bold", "italic"}, anchors{"start", "middle", "end"};
  std::string out = ' ' + number(s.size) + ' ' + std::string(weights[static_cast<std::size_t>(s.weight)]) + ' ' +
                    std::string(anchors[static_cast<std::size_t>(s.anchor)]);
  if (s.turn != 0)
    out += " turn " + number(s.turn);
  if (s.halo != Ink::None)
    out += " halo " + std::string(name(s.halo)) + ' ' + number(s.haloWidth);
  return out;
}

std::string lineOf(const Drawing& drawing, const Prim& p) {
  std::string out = std::string(kindName(p.kind)) + ' ' + std::string(name(p.ink));
  if (p.opacity < 1)
    out += " opacity " + number(static_cast<double>(p.opacity));
  if (p.kind == Prim::Kind::Text) {
    const TextPrim& t = drawing.textOf(p);
    return out + styleOf(t.style) + places(drawing.pointsOf(p)) + " | " + t.text;
  }
  if (p.kind == Prim::Kind::Fill) {
    const auto rings = drawing.ringsOf(p);
    for (std::size_t i = 0; i < rings.size(); ++i)
      out += (i > 0 ? " /" : "") + places(rings[i]);
    return out;
  }
  out += ' ' + number(static_cast<double>(p.width)) + (p.cap == Cap::Round ? " round" : "");
  return out + places(drawing.pointsOf(p));
}

} // namespace

std::string toText(const Drawing& drawing) {
  std::string out;
  for (const Prim& prim : drawing.prims())
    out += lineOf(drawing, prim) + '\n';
  return out;
}

} // namespace sillwright
