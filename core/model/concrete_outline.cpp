// Concrete as elevations see it, with the same faces that the rules measure to.
#include <algorithm>
#include <iterator>

#include "core/model/layout.h"

namespace sillwright {

namespace {

// An end of the concrete from the pour line down to the bottom. Where the concrete goes straight on it has no face: there
// it is cut at the corner.
Polygon2 endDownward(const WallLayout& layout, Side end) {
  std::vector<ConcreteFace> faces;
  for (const auto* list : {&layout.faces, &layout.footingEnds})
    for (const ConcreteFace& face : *list)
      if (face.kind != ConcreteFace::Kind::Step && (face.concrete == Side::Right) == (end == Side::Left))
        faces.push_back(face);
  std::sort(faces.begin(), faces.end(), [](const ConcreteFace& a, const ConcreteFace& b) { return a.z.to > b.z.to; });
  if (faces.empty()) {
    const double at = end == Side::Left ? layout.concrete.from : layout.concrete.to;
    const double pour = end == Side::Left ? layout.pour.front().height : layout.pour.back().height;
    return {{at, pour}, {at, layout.bottom}};
  }
  Polygon2 down;
  for (const ConcreteFace& face : faces) {
    down.push_back({face.station, face.z.to});
    down.push_back({face.station, face.z.from});
  }
  return down;
}

} // namespace

Polygon2 concreteOutline(const WallLayout& layout) {
  const Polygon2 left = endDownward(layout, Side::Left);
  const Polygon2 right = endDownward(layout, Side::Right);
  Polygon2 outline{left.front()};
  for (std::size_t i = 0; i + 1 < layout.pour.size(); ++i) {
    outline.push_back({layout.pour[i].s.to, layout.pour[i].height});
    outline.push_back({layout.pour[i].s.to, layout.pour[i + 1].height});
  }
  outline.insert(outline.end(), right.begin(), right.end());
  outline.insert(outline.end(), left.rbegin(), std::prev(left.rend()));
  return outline;
}

} // namespace sillwright
