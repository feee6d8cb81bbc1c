#include "core/drawing/text_metrics.h"

#include <algorithm>
#include <array>
#include <optional>

#include "core/drawing/b612_advances.h"

namespace sillwright {
namespace {

constexpr double figureSize = 0.70; // of numerator and denominator
constexpr double slashSize = 0.86;
constexpr double numeratorRise = 0.27; // em
constexpr double gapAfterWhole = 0.09; // em
constexpr double slashAdvance = 0.72;  // of its own: the figures reach under and over it
constexpr double slashBack = 0.14;

// Advance of a sign in ems. A letter the family does not have counts as an n.
double advance(char32_t sign) {
  std::uint16_t units = 0;
  if (sign >= 0x20 && sign <= 0x7E)
    units = b612::ascii[sign - 0x20];
  else if (sign >= 0xA0 && sign <= 0xFF)
    units = b612::latin1[sign - 0xA0];
  else {
    const auto found = std::lower_bound(b612::signs.begin(), b612::signs.end(), sign,
                                        [](const b612::Advance& a, char32_t s) { return a.sign < s; });
    units = found != b612::signs.end() && found->sign == sign ? found->units : b612::ascii['n' - 0x20];
  }
  return units / b612::unitsPerEm;
}

// The code point at `at`, and past it. A stray byte of broken text counts as one sign.
char32_t nextSign(std::string_view text, std::size_t& at) {
  const auto lead = static_cast<unsigned char>(text[at++]);
  const int more = lead >= 0xF0 ? 3 : lead >= 0xE0 ? 2 : lead >= 0xC0 ? 1 : 0;
  char32_t sign = more == 3 ? lead & 0x07u : more == 2 ? lead & 0x0Fu : more == 1 ? lead & 0x1Fu : lead;
  for (int i = 0; i < more && at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0u) == 0x80u; ++i)
    sign = sign << 6 | (static_cast<unsigned char>(text[at++]) & 0x3Fu);
  return sign;
}

double plainWidth(std::string_view text, double size) {
  double width = 0;
  for (std::size_t at = 0; at < text.size();)
    width += advance(nextSign(text, at));
  return width * size;
}

bool isFigure(char c) {
  return c >= '0' && c <= '9';
}
bool isLetter(char c) {
  return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
}

struct Fraction {
  std::size_t from = 0, slash = 0, to = 0; // byte positions
};

// A fraction whose numerator begins at `at`.
std::optional<Fraction> fractionAt(std::string_view line, std::size_t at) {
  if (!isFigure(line[at]) || (at > 0 && (isFigure(line[at - 1]) || line[at - 1] == '/')))
    return std::nullopt;
  const std::size_t slash = at + 1 < line.size() && isFigure(line[at + 1]) ? at + 2 : at + 1;
  if (slash >= line.size() || line[slash] != '/')
    return std::nullopt;
  std::size_t to = slash + 1;
  while (to < line.size() && isFigure(line[to]))
    ++to;
  constexpr std::array<std::string_view, 6> denominators{"2", "4", "8", "16", "32", "64"};
  const std::string_view denominator = line.substr(slash + 1, to - slash - 1);
  const bool known = std::find(denominators.begin(), denominators.end(), denominator) != denominators.end();
  if (!known || (to < line.size() && line[to] == '/'))
    return std::nullopt;
  return Fraction{at, slash, to};
}

// True when what stands before the blank is a whole number of inches (12, -3, (4, 20'-2), not a mark (V18) or a
// fraction.
bool endsInWholeInches(std::string_view before) {
  before = before.substr(std::min(before.size(), before.rfind(' ') + 1));
  std::size_t figures = 0;
  while (figures < before.size() && isFigure(before[before.size() - 1 - figures]))
    ++figures;
  if (figures == 0)
    return false;
  if (isLetter(before[before.front() == '(' && before.size() > 1 ? 1 : 0]))
    return false;
  before.remove_suffix(figures);
  for (const std::string_view sign : {"-", "+", "±", "−"})
    if (before.ends_with(sign)) {
      before.remove_suffix(sign.size());
      break;
    }
  // After feet anything may stand before: 20'-2, @20'-2.
  return before.empty() || before == "(" || before.ends_with('\'') || before.ends_with("′");
}

class RunBuilder {
public:
  explicit RunBuilder(double size) : size_(size) {}

  void plain(std::string_view text) {
    if (text.empty())
      return;
    put(text, size_, 0);
    x_ += plainWidth(text, size_);
  }
  // The blank between whole inches and a fraction is kept in the text but is only a narrow gap on the page.
  void wholeGap() {
    runs_.back().text += ' ';
    x_ += gapAfterWhole * size_;
  }
  void fraction(std::string_view numerator, std::string_view denominator) {
    put(numerator, size_ * figureSize, numeratorRise * size_);
    x_ += plainWidth(numerator, size_ * figureSize);
    const double slash = plainWidth("/", size_ * slashSize);
    x_ -= slashBack * slash;
    put("/", size_ * slashSize, 0);
    x_ += (slashBack + slashAdvance) * slash;
    put(denominator, size_ * figureSize, 0);
    x_ += plainWidth(denominator, size_ * figureSize);
  }
  double width() const { return x_; }
  std::vector<TextRun> take() { return std::move(runs_); }

private:
  void put(std::string_view text, double size, double rise) { runs_.push_back({std::string(text), x_, rise, size}); }

  double size_;
  double x_ = 0;
  std::vector<TextRun> runs_;
};

RunBuilder build(std::string_view line, double size) {
  RunBuilder builder(size);
  std::size_t done = 0;
  for (std::size_t at = 0; at < line.size(); ++at) {
    const std::optional<Fraction> found = fractionAt(line, at);
    if (!found)
      continue;
    const bool afterWhole = at > done + 1 && line[at - 1] == ' ' && endsInWholeInches(line.substr(0, at - 1));
    builder.plain(line.substr(done, at - done - (afterWhole ? 1 : 0)));
    if (afterWhole)
      builder.wholeGap();
    builder.fraction(line.substr(at, found->slash - at), line.substr(found->slash + 1, found->to - found->slash - 1));
    done = found->to;
    at = done - 1;
  }
  builder.plain(line.substr(done));
  return builder;
}

} // namespace

std::vector<TextRun> textRuns(std::string_view line, double size) {
  return build(line, size).take();
}

double textWidth(std::string_view line, double size) {
  if (line.find('/') == std::string_view::npos)
    return plainWidth(line, size);
  return build(line, size).width();
}

double letterDrop(std::string_view line) {
  return line.find_first_of("gjpqyQ()[]{}|_,;@$") != std::string_view::npos || line.find("ç") != std::string_view::npos
             ? 0.26
         : line.find('/') != std::string_view::npos ? 0.05
                                                    : 0.02;
}

std::vector<std::string> wrapped(std::string_view text, double size, double width) {
  std::vector<std::string> lines;
  std::string line;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t blank = std::min(text.find(' ', at), text.size());
    const std::string_view word = text.substr(at, blank - at);
    at = blank + 1;
    if (word.empty())
      continue;
    std::string longer = line.empty() ? std::string(word) : line + ' ' + std::string(word);
    if (!line.empty() && textWidth(longer, size) > width) {
      lines.push_back(std::move(line));
      longer = std::string(word);
    }
    line = std::move(longer);
  }
  if (!line.empty())
    lines.push_back(std::move(line));
  return lines;
}

} // namespace sillwright
