#include "core/drawing/plain_number.h"
#include "core/drawing/text_metrics.h"
#include "core/drawing/writers.h"

namespace sillwright {
namespace {

std::string number(double value) {
  return plainNumber(value, 3);
}

std::string attribute(std::string_view key, const std::string& value) {
  std::string out(" ");
  out += key;
  out += "=\"";
  out += value;
  out += '"';
  return out;
}

std::string escaped(std::string_view text) {
  std::string out;
  for (const char c : text) {
    if (c == '&')
      out += "&amp;";
    else if (c == '<')
      out += "&lt;";
    else if (c == '>')
      out += "&gt;";
    else if (static_cast<unsigned char>(c) >= 0x20) // control characters are not allowed in XML
      out += c;
  }
  return out;
}

std::string hex(Rgb c) {
  constexpr std::string_view figures = "0123456789abcdef";
  std::string out = "#";
  for (const std::uint8_t v : {c.r, c.g, c.b}) {
    out += figures[v >> 4];
    out += figures[v & 15];
  }
  return out;
}

std::string place(Point2 p) {
  return number(p.x) + ' ' + number(p.y);
}

std::string path(std::span<const Point2> points, bool closed) {
  std::string d;
  for (std::size_t i = 0; i < points.size(); ++i)
    d.append(i == 0 ? "M" : "L").append(place(points[i]));
  if (closed)
    d += 'Z';
  return d;
}

std::string pairs(std::span<const Point2> points) {
  std::string d;
  for (std::size_t i = 0; i + 1 < points.size(); i += 2)
    d.append("M").append(place(points[i])).append("L").append(place(points[i + 1]));
  return d;
}

class Writer {
public:
  Writer(const Drawing& drawing, ThemeName theme) : drawing_(drawing), theme_(theme) {}

  std::string body() {
    for (const Prim& prim : drawing_.prims())
      write(prim);
    return std::move(out_);
  }

private:
  void write(const Prim& p) {
    const std::span<const Point2> points = drawing_.pointsOf(p);
    switch (p.kind) {
    case Prim::Kind::Fill:
      return fill(p);
    case Prim::Kind::Line:
      return stroke(p, path(points, false));
    case Prim::Kind::Loop:
      return stroke(p, path(points, true));
    case Prim::Kind::Segments:
      return stroke(p, pairs(points));
    case Prim::Kind::Disc:
      return discs(p);
    case Prim::Kind::Ring:
      return ring(p);
    case Prim::Kind::Text:
      return text(p);
    }
  }

  std::string paint(const char* key, const Prim& p) const {
    const bool faint = p.opacity < 1 && theme_ != ThemeName::Print;
    return attribute(key, hex(colour(theme_, p.ink))) +
           (faint ? attribute("opacity", number(static_cast<double>(p.opacity))) : "");
  }

  std::string pen(const Prim& p) const {
    return attribute("fill", "none") + paint("stroke", p) +
           attribute("stroke-width", number(static_cast<double>(p.width))) +
           (p.cap == Cap::Round ? attribute("stroke-linecap", "round") : "");
  }

  void fill(const Prim& p) {
    std::string d;
    for (const std::span<const Point2> ring : drawing_.ringsOf(p))
      d += path(ring, true);
    out_ +=
        "<path" + attribute("d", d) + (p.text > 0 ? attribute("fill-rule", "evenodd") : "") + paint("fill", p) + "/>\n";
  }

  void stroke(const Prim& p, const std::string& d) { out_ += "<path" + attribute("d", d) + pen(p) + "/>\n"; }

  std::string circle(Point2 centre, double radius) const {
    return "<circle" + attribute("cx", number(centre.x)) + attribute("cy", number(centre.y)) +
           attribute("r", number(radius));
  }

  void discs(const Prim& p) {
    out_ += "<g" + paint("fill", p) + '>';
    for (const Point2 centre : drawing_.pointsOf(p))
      out_ += circle(centre, static_cast<double>(p.width)) + "/>";
    out_ += "</g>\n";
  }

  void ring(const Prim& p) {
    const std::span<const Point2> points = drawing_.pointsOf(p);
    out_ += circle(points[0], points[1].x) + pen(p) + "/>\n";
  }

  void text(const Prim& p) {
    const TextPrim& t = drawing_.textOf(p);
    const TextStyle& s = t.style;
    const Point2 at = drawing_.pointsOf(p)[0];
    const double width = textWidth(t.text, s.size);
    const double x0 = at.x - (s.anchor == Anchor::Start ? 0 : s.anchor == Anchor::Middle ? width / 2 : width);
    std::string head = attribute("font-size", number(s.size));
    if (s.weight != Weight::Regular)
      head += s.weight == Weight::Bold ? attribute("font-weight", "700") : attribute("font-style", "italic");
    if (s.turn != 0)
      head += attribute("transform", "rotate(" + number(-s.turn) + ' ' + place(at) + ')');
    std::string spans;
    for (const TextRun& run : textRuns(t.text, s.size))
      spans += "<tspan" + attribute("x", number(x0 + run.x)) + attribute("y", number(at.y - run.rise)) +
               (run.size != s.size ? attribute("font-size", number(run.size)) : "") + '>' + escaped(run.text) +
               "</tspan>";
    if (s.halo != Ink::None)
      out_ += "<text aria-hidden=\"true\"" + head + attribute("fill", hex(colour(theme_, s.halo))) +
              attribute("stroke", hex(colour(theme_, s.halo))) + attribute("stroke-width", number(s.haloWidth)) +
              attribute("stroke-linejoin", "round") + '>' + spans + "</text>\n";
    out_ += "<text" + head + paint("fill", p) + '>' + spans + "</text>\n";
  }

  const Drawing& drawing_;
  ThemeName theme_;
  std::string out_;
};

} // namespace

std::string toSvg(const Drawing& drawing, double widthPt, double heightPt, ThemeName theme, const std::string& title) {
  // Without kerning, as our metrics: every run begins where the last one ended.
  return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\"" +
         attribute("width", number(widthPt / 72) + "in") + attribute("height", number(heightPt / 72) + "in") +
         attribute("viewBox", "0 0 " + number(widthPt) + ' ' + number(heightPt)) +
         attribute("font-family", "B612, DejaVu Sans, sans-serif") +
         attribute("stroke-miterlimit", number(mitreLimit)) + attribute("style", "font-kerning:none") +
         attribute("xml:space", "preserve") + ">\n<title>" + escaped(title) + "</title>\n" +
         Writer(drawing, theme).body() + "</svg>\n";
}

} // namespace sillwright
