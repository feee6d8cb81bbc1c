#include "core/drawing/label_placement.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/drawing/text_metrics.h"

namespace sillwright {

namespace {

constexpr double air = 2;          // kept free round a label
constexpr double forbidden = 1e5;  // a ground that costs so much takes no label
constexpr double bendCost = 40;
constexpr double crossingCost = 25;
constexpr double staying = 24;     // a label moves only for a place that is cheaper by so much
constexpr int stepsEachWay = 28;   // of half a label
constexpr double numberCost = 2000; // of a number in a circle
constexpr std::size_t mostTraded = 6; // labels; more are left as they came

struct Candidate {
  LabelForm form = LabelForm::OneLine;
  Bounds box;
  std::vector<Point2> leader;
  double cost = std::numeric_limits<double>::infinity();
};

double side(Point2 a, Point2 b, Point2 p) { return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x); }

bool crosses(const Segment2& p, const Segment2& q) {
  const double a = side(p.a, p.b, q.a);
  const double b = side(p.a, p.b, q.b);
  const double c = side(q.a, q.b, p.a);
  const double d = side(q.a, q.b, p.b);
  return a * b <= 0 && c * d <= 0 && std::max(p.a.x, p.b.x) >= std::min(q.a.x, q.b.x) &&
         std::max(q.a.x, q.b.x) >= std::min(p.a.x, p.b.x) && std::max(p.a.y, p.b.y) >= std::min(q.a.y, q.b.y) &&
         std::max(q.a.y, q.b.y) >= std::min(p.a.y, p.b.y);
}

bool crosses(const Segment2& s, const Bounds& b) {
  if (b.contains(s.a) || b.contains(s.b))
    return true;
  return crosses(s, {{b.x0, b.y0}, {b.x1, b.y1}}) || crosses(s, {{b.x0, b.y1}, {b.x1, b.y0}});
}

template <class Visit> void eachLeg(const std::vector<Point2>& leader, Visit&& visit) {
  for (std::size_t i = 0; i + 1 < leader.size(); ++i)
    visit(Segment2{leader[i], leader[i + 1]});
}

bool crosses(const std::vector<Point2>& leader, const Bounds& box) {
  bool any = false;
  eachLeg(leader, [&](const Segment2& leg) { any = any || crosses(leg, box); });
  return any;
}

bool crosses(const std::vector<Point2>& leader, const std::vector<Point2>& other) {
  bool any = false;
  eachLeg(leader, [&](const Segment2& a) { eachLeg(other, [&](const Segment2& b) { any = any || crosses(a, b); }); });
  return any;
}

double lengthOf(const std::vector<Point2>& leader) {
  double length = 0;
  eachLeg(leader, [&](const Segment2& leg) { length += std::hypot(leg.b.x - leg.a.x, leg.b.y - leg.a.y); });
  return length;
}

double apart(const Bounds& a, const Bounds& b) {
  const double dx = std::max({0.0, a.x0 - b.x1, b.x0 - a.x1});
  const double dy = std::max({0.0, a.y0 - b.y1, b.y0 - a.y1});
  return std::hypot(dx, dy);
}

Point2 nearestOf(const Bounds& box, Point2 to) {
  return {std::clamp(to.x, box.x0, box.x1), std::clamp(to.y, box.y0, box.y1)};
}

double outOf(const Bounds& box, Point2 at) {
  const Point2 near = nearestOf(box, at);
  return std::hypot(at.x - near.x, at.y - near.y);
}

class Placer {
public:
  explicit Placer(const PlacementInput& input) : in_(input) {}

  std::vector<PlacedLabel> run() {
    std::vector<const LabelRequest*> order;
    for (const LabelRequest& request : in_.requests)
      order.push_back(&request);
    std::stable_sort(order.begin(), order.end(), [](const LabelRequest* a, const LabelRequest* b) {
      if (a->text.level != b->text.level)
        return a->text.level < b->text.level;
      if (a->flag.x0 != b->flag.x0)
        return a->flag.x0 < b->flag.x0;
      return a->key < b->key;
    });
    for (const LabelRequest* request : order)
      placed_.push_back(place(*request));
    tradePlaces();
    numberThem();
    return std::move(placed_);
  }

private:
  // The worst goes first and may take the only good place of another: where two together stand better the other way
  // round, they trade.
  void tradePlaces() {
    if (placed_.size() > mostTraded)
      return;
    for (std::size_t i = 0; i < placed_.size(); ++i)
      for (std::size_t k = i + 1; k < placed_.size(); ++k) {
        const std::vector<PlacedLabel> before = placed_;
        const double cost = placed_[i].cost + placed_[k].cost;
        placed_.erase(placed_.begin() + static_cast<std::ptrdiff_t>(k));
        placed_.erase(placed_.begin() + static_cast<std::ptrdiff_t>(i));
        const PlacedLabel second = place(before[k].request);
        placed_.push_back(second);
        const PlacedLabel first = place(before[i].request);
        placed_ = before;
        if (first.cost + second.cost + staying < cost) {
          placed_[i] = first;
          placed_[k] = second;
        }
      }
  }

  void numberThem() {
    for (PlacedLabel& label : placed_)
      label.number = label.leader.empty() ? ++numbers_ : 0;
  }

  PlacedLabel place(const LabelRequest& request) {
    Candidate best;
    for (const LabelForm form : forms(request))
      searchForm(request, form, best);
    const Candidate kept = asBefore(request);
    if (std::isfinite(kept.cost) && kept.cost <= best.cost + staying)
      best = kept;
    if (std::isfinite(best.cost))
      return {request, best.form, best.box, best.leader, best.cost, 0};
    return numbered(request);
  }

  static std::vector<LabelForm> forms(const LabelRequest& request) {
    if (request.text.hint.empty())
      return {LabelForm::OneLine, LabelForm::Tall};
    return {LabelForm::TwoLines, LabelForm::OneLine, LabelForm::Tall};
  }

  void searchForm(const LabelRequest& request, LabelForm form, Candidate& best) const {
    const Size size = labelSize(request.text, form, in_.k);
    const double middle = (request.flag.y0 + request.flag.y1 - size.height) / 2;
    for (const double x : columns(request, size))
      for (int step = 0; step <= 2 * stepsEachWay; ++step) {
        const double up = (step % 2 ? -1 : 1) * ((step + 1) / 2) * size.height / 2;
        const Bounds box{x, middle + up, x + size.width, middle + up + size.height};
        if (apart(box, request.flag) < best.cost)
          consider(request, form, box, best);
      }
  }

  std::vector<double> columns(const LabelRequest& request, Size size) const {
    std::vector<double> xs;
    for (const double off : {16.0, 40.0, 80.0}) {
      xs.push_back(request.flag.x0 - off - size.width);
      xs.push_back(request.flag.x1 + off);
    }
    xs.push_back((request.flag.x0 + request.flag.x1 - size.width) / 2);
    xs.push_back(in_.window.x0 + air);
    xs.push_back(in_.window.x1 - air - size.width);
    for (const Ground& ground : in_.grounds)
      if (ground.cost == 0) {
        xs.push_back(ground.box.x0 + 8);
        xs.push_back(ground.box.x1 - 8 - size.width);
      }
    return xs;
  }

  void consider(const LabelRequest& request, LabelForm form, const Bounds& box, Candidate& best) const {
    const double ground = groundCost(box);
    if (!isFree(box) || ground >= forbidden)
      return;
    for (std::vector<Point2>& leader : leaders(box, request.flag)) {
      if (!allowed(leader, box))
        continue;
      const double cost = lengthOf(leader) + bendCost * static_cast<double>(leader.size() - 2) + ground +
                          crossingCost * crossings(leader, request.flag) + 6 * formCost(form);
      if (cost < best.cost)
        best = {form, box, std::move(leader), cost};
    }
  }

  static double formCost(LabelForm form) {
    return form == LabelForm::TwoLines ? 0 : form == LabelForm::OneLine ? 1 : 2;
  }

  bool isFree(const Bounds& box) const {
    if (!in_.window.contains(box))
      return false;
    const Bounds room = box.grown(air);
    for (const Bounds& taken : in_.taken)
      if (taken.overlaps(room))
        return false;
    for (const LabelRequest& request : in_.requests)
      if (request.flag.overlaps(room))
        return false;
    for (const PlacedLabel& placed : placed_)
      if (placed.box.overlaps(room) || crosses(placed.leader, room))
        return false;
    return true;
  }

  double groundCost(const Bounds& box) const {
    double cost = 0;
    for (const Ground& ground : in_.grounds)
      if (ground.cost > cost && ground.box.overlaps(box))
        cost = ground.cost;
    return cost;
  }

  // Straight from the middle of a side; along and then up or down; up or down and then along.
  static std::vector<std::vector<Point2>> leaders(const Bounds& box, const Bounds& flag) {
    const Point2 middle{(flag.x0 + flag.x1) / 2, (flag.y0 + flag.y1) / 2};
    const bool rightward = (box.x0 + box.x1) / 2 < middle.x;
    const bool downward = (box.y0 + box.y1) / 2 < middle.y;
    const Point2 fromSide{rightward ? box.x1 : box.x0, (box.y0 + box.y1) / 2};
    const Point2 fromFoot{std::clamp(middle.x, box.x0 + 8, box.x1 - 8), downward ? box.y1 : box.y0};
    const Point2 toSide{rightward ? flag.x0 : flag.x1, std::clamp(fromSide.y, flag.y0 + 1, flag.y1 - 1)};
    const Point2 toEnd{middle.x, downward ? flag.y0 : flag.y1};
    std::vector<std::vector<Point2>> all{{fromSide, toSide}};
    if (fromFoot.x == middle.x)
      all.push_back({fromFoot, toEnd});
    else
      all.push_back({fromFoot, {fromFoot.x, middle.y}, {fromFoot.x < middle.x ? flag.x0 : flag.x1, middle.y}});
    if (fromSide.y < flag.y0 || fromSide.y > flag.y1)
      all.push_back({fromSide, {middle.x, fromSide.y}, toEnd});
    return all;
  }

  bool allowed(const std::vector<Point2>& leader, const Bounds& own) const {
    for (const Point2 p : leader)
      if (!in_.window.contains(p))
        return false;
    for (std::size_t i = 1; i < leader.size(); ++i)
      if (own.grown(-1).contains(leader[i]))
        return false;
    for (const Bounds& taken : in_.taken)
      if (crosses(leader, taken))
        return false;
    for (const PlacedLabel& placed : placed_)
      if (crosses(leader, placed.box) || crosses(leader, placed.leader))
        return false;
    return true;
  }

  int crossings(const std::vector<Point2>& leader, const Bounds& flag) const {
    int count = 0;
    for (const Bounds& outline : in_.outlines)
      count += crosses(leader, outline);
    for (const LabelRequest& other : in_.requests)
      if (!(other.flag == flag) && crosses(leader, other.flag))
        count += 2;
    return count;
  }

  Candidate asBefore(const LabelRequest& request) const {
    Candidate kept;
    for (const PlacedLabel& last : in_.last) {
      if (last.request.key != request.key || last.number > 0)
        continue;
      const Size size = labelSize(request.text, last.form, in_.k);
      consider(request, last.form, {last.box.x0, last.box.y0, last.box.x0 + size.width, last.box.y0 + size.height},
               kept);
    }
    return kept;
  }

  // Rings about the flag, beside it first and then farther and farther out.
  static std::vector<Point2> ringsAbout(const Bounds& f, double r) {
    const Point2 middle{(f.x0 + f.x1) / 2, (f.y0 + f.y1) / 2};
    const double step = 2 * r + 1;
    constexpr int most = 8;
    std::vector<Point2> rings;
    for (int out = 0; out < most; ++out) {
      const double off = r + 2 + out * step;
      for (int along = 0; along <= most; ++along)
        for (const double by : {along * step, -along * step}) {
          rings.push_back({f.x0 - off, middle.y + by});
          rings.push_back({f.x1 + off, middle.y + by});
          rings.push_back({middle.x + by, f.y0 - off});
          rings.push_back({middle.x + by, f.y1 + off});
        }
    }
    std::stable_sort(rings.begin(), rings.end(), [&](Point2 a, Point2 b) { return outOf(f, a) < outOf(f, b); });
    return rings;
  }

  // A number in a circle at the flag, where it is free if anywhere; away from it a line says whose it is.
  PlacedLabel numbered(const LabelRequest& request) {
    const double r = 7 * in_.k;
    const Bounds& f = request.flag;
    const Point2 middle{(f.x0 + f.x1) / 2, (f.y0 + f.y1) / 2};
    Bounds chosen = Bounds{middle.x, middle.y, middle.x, middle.y}.grown(r);
    const auto choose = [&](auto&& allowed) {
      for (const Point2 at : ringsAbout(f, r))
        if (const Bounds box = Bounds{at.x, at.y, at.x, at.y}.grown(r); isFree(box) && allowed(box)) {
          chosen = box;
          return true;
        }
      return false;
    };
    const auto offOutlines = [&](const Bounds& box) {
      return std::none_of(in_.outlines.begin(), in_.outlines.end(), [&](const Bounds& b) { return b.overlaps(box); });
    };
    if (!choose(offOutlines)) // neither on the tape nor on hardware, if that can be
      choose([](const Bounds&) { return true; });
    return {request, LabelForm::OneLine, chosen, {}, numberCost, 1};
  }

  const PlacementInput& in_;
  std::vector<PlacedLabel> placed_;
  int numbers_ = 0;
};

void drawNumber(Drawing& drawing, const PlacedLabel& label, double k) {
  const Point2 at{(label.box.x0 + label.box.x1) / 2, (label.box.y0 + label.box.y1) / 2};
  const Ink ink = inkOf(label.request.text.level);
  const double r = (label.box.x1 - label.box.x0) / 2;
  const Point2 flag = nearestOf(label.request.flag, at);
  if (outOf(label.request.flag, at) > r + 4)
    drawing.line(at, flag, ink, 0.7 * k);
  drawing.disc(at, r, Ink::Paper);
  drawing.ring(at, r - 0.6, ink, 1.2);
  const double size = 9 * k;
  drawing.text({at.x, at.y + size * capHeight / 2}, std::to_string(label.number), ink,
               {size, Weight::Bold, Anchor::Middle});
}

} // namespace

std::vector<PlacedLabel> placeLabels(const PlacementInput& input) { return Placer(input).run(); }

void drawPlacedLabels(Drawing& drawing, const std::vector<PlacedLabel>& labels, double k) {
  for (const PlacedLabel& label : labels) {
    if (label.number > 0)
      continue;
    const Ink ink = inkOf(label.request.text.level);
    drawing.polyline(label.leader, Ink::Paper, 3.1 * k);
    drawing.polyline(label.leader, ink, 0.7 * k);
    if (!label.leader.empty())
      drawing.disc(label.leader.back(), 1.9 * k, ink);
  }
  for (const PlacedLabel& label : labels) {
    if (label.number > 0)
      drawNumber(drawing, label, k);
    else
      drawLabel(drawing, label.request.text, label.form, label.box.x0, label.box.y0, k);
    drawing.hit(label.request.piece, label.box, HitArea::Part::Label);
  }
}

} // namespace sillwright
