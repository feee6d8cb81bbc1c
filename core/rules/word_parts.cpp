#include "core/rules/word_parts.h"

#include <array>
#include <charconv>
#include <cmath>

#include "core/base/tolerance.h"
#include "core/model/layout.h"
#include "core/model/lookup.h"

namespace sillwright {

std::string nameOf(const Job& job, const Finding& f, std::size_t i) {
  if (i >= f.pieces.size())
    return {};
  const std::string mark = markOf(job, {f.wall, f.pieces[i]});
  return mark.empty() ? std::string("#").append(std::to_string(f.pieces[i].value)) : mark;
}

std::string numberWords(double value) {
  std::array<char, 32> text{};
  const double rounded = std::round(value * 1e9) / 1e9 + 0.0;
  const auto end = std::to_chars(text.data(), text.data() + text.size(), rounded).ptr;
  return {text.data(), end};
}

// Finer and finer until the measure no longer reads like the limit it misses, nor like nothing at all.
std::string measureWords(const Job& job, double value, double limit) {
  for (const int denominator : {16, 32, 64}) {
    const std::string text = printMeasure(value, job.units, denominator);
    const bool likeNothing = std::abs(value) > tolerance::same && text == printMeasure(0, job.units, denominator);
    if (!likeNothing && text != printMeasure(limit, job.units, denominator))
      return text;
  }
  const bool metric = job.units == LengthStyle::Millimetres;
  const double scale = metric ? 25.4 : 1;
  const double rounded = std::round(value * scale * 1000) / 1000;
  const bool tells = rounded != 0 && std::abs(rounded - limit * scale) > 0.0005;
  return numberWords(tells ? rounded : value * scale) + (metric ? " mm" : "\"");
}

std::string ratioWords(double value, double limit) {
  for (const double parts : {100.0, 1e4}) {
    const double rounded = std::round(value * parts) / parts;
    if (std::abs(rounded - limit) > tolerance::same)
      return numberWords(rounded);
  }
  return numberWords(value);
}

std::string poundWords(double pounds) {
  std::string digits = numberWords(std::round(pounds));
  for (std::size_t at = digits.size(); at > 3 && digits[at - 4] != '-'; at -= 3)
    digits.insert(at - 3, ",");
  return digits + " lb";
}

std::string lengthWords(const Job& job, double value) {
  return printMeasure(value, job.units);
}

std::string plateWords(const Job& job, double value) {
  const double parts = value * 64;
  if (job.units == LengthStyle::Millimetres || std::abs(parts - std::round(parts)) < tolerance::same)
    return printMeasure(value, job.units, 64);
  return numberWords(std::round(value * 10000) / 10000) + "\"";
}

std::string edgeWords(const Finding& finding) {
  const std::string side = finding.variant % 2 == 0 ? "left" : "right";
  switch (static_cast<ConcreteFace::Kind>(finding.variant / 2)) {
  case ConcreteFace::Kind::End:
    return "the " + side + " end of the concrete";
  case ConcreteFace::Kind::Corner:
    return "the corner on its " + side;
  case ConcreteFace::Kind::Step:
    return "the step on its " + side;
  }
  return {};
}

std::string faceWords(const Finding& finding) {
  constexpr std::array faces{"the left end", "the right end", "the outside face",
                             "the inside face", "the top", "the bottom"};
  if (finding.variant == faces.size())
    return "the top of the footing";
  return finding.variant < faces.size() ? std::string(faces[finding.variant]) + " of the concrete"
                                        : "the face of the wall at the corner";
}

} // namespace sillwright
