#include "core/refit/lp_text.h"

#include <cstdlib>
#include <map>

namespace sillwright::sequence {
namespace {

// One term a few times a line: some readers take no long lines.
std::string written(const LinearSum& sum) {
  std::map<std::string, std::int64_t> factors;
  for (const auto& [factor, variable] : sum.terms)
    factors[variable] += factor;
  std::string text;
  int inLine = 0;
  for (const auto& [variable, factor] : factors) {
    if (factor == 0)
      continue;
    if (++inLine % 8 == 0)
      text += "\n   ";
    text += (factor < 0 ? " - " : " + ") + std::to_string(std::abs(factor)) + " " + variable;
  }
  return text;
}

} // namespace

LinearSum& LinearSum::add(std::int64_t factor, const LinearSum& other) {
  for (const auto& [times, variable] : other.terms)
    terms.emplace_back(factor * times, variable);
  constant += factor * other.constant;
  return *this;
}

void LpText::say(const std::string& comment) {
  comments += "\\ " + comment + "\n";
}

void LpText::minimise(const LinearSum& sum) {
  objective = " cost:" + written(sum) + "\n";
}

void LpText::row(const LinearSum& sum, const char* relation, std::int64_t limit) {
  std::string left = written(sum);
  if (left.empty())
    left = " + 0 nothing"; // a row without variables still says whether it holds
  rows += " r" + std::to_string(++count) + ":" + left + relation + std::to_string(limit - sum.constant) + "\n";
}

void LpText::atMost(const LinearSum& sum, std::int64_t limit) {
  row(sum, " <= ", limit);
}
void LpText::atLeast(const LinearSum& sum, std::int64_t limit) {
  row(sum, " >= ", limit);
}
void LpText::equal(const LinearSum& sum, std::int64_t value) {
  row(sum, " = ", value);
}
void LpText::free(const std::string& variable) {
  bounds += " " + variable + " free\n";
}
void LpText::binary(const std::string& variable) {
  binaries += " " + variable + "\n";
}

std::string LpText::text() const {
  return comments + "Minimize\n" + objective + "Subject To\n" + rows + "Bounds\n nothing = 0\n" + bounds +
         (binaries.empty() ? "" : "Binary\n" + binaries) + "End\n";
}

} // namespace sillwright::sequence
