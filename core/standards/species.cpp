#include "core/standards/species.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace sillwright {

namespace {

constexpr std::array<Species, 6> table{
    {{"Southern Pine", 0.55, {"SP", "SYP", "Southern Yellow Pine"}},
     {"Douglas Fir-Larch", 0.50, {"DF-L", "DF", "Doug Fir", "Douglas Fir", "Doug Fir-Larch"}},
     {"Hem-Fir", 0.43, {"HF"}},
     {"Spruce-Pine-Fir", 0.42, {"SPF"}},
     {"Redwood", 0.37, {"RW"}},
     {"Spruce-Pine-Fir (South)", 0.36, {"SPF (South)", "SPF-S"}}}};

constexpr double smallDowel = 0.25; // in; from here on along and across the grain differ

bool isAsciiLetterOrDigit(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
}

// "DF-L" and "df l" are one word.
std::string bareLetters(std::string_view text) {
  std::string bare;
  for (const char c : text)
    if (isAsciiLetterOrDigit(c))
      bare += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  return bare;
}

double toNearest50(double psi) {
  return 50 * std::round(psi / 50);
}

double smallDowelBearing(double specificGravity) {
  return toNearest50(16600 * std::pow(specificGravity, 1.84));
}

} // namespace

std::span<const Species> speciesTable() {
  return table;
}

std::optional<Species> speciesByName(std::string_view written) {
  const std::string wanted = bareLetters(written);
  if (wanted.empty())
    return std::nullopt;
  const auto named = [&](std::string_view name) { return bareLetters(name) == wanted; };
  for (const Species& species : table)
    if (named(species.name) || std::any_of(species.alsoWritten.begin(), species.alsoWritten.end(), named))
      return species;
  return std::nullopt;
}

double bearingAlong(double specificGravity, double diameter) {
  return diameter < smallDowel ? smallDowelBearing(specificGravity) : toNearest50(11200 * specificGravity);
}

double bearingAcross(double specificGravity, double diameter) {
  if (diameter < smallDowel)
    return smallDowelBearing(specificGravity);
  return toNearest50(6100 * std::pow(specificGravity, 1.45) / std::sqrt(diameter));
}

double bearingAtAngle(double specificGravity, double diameter, double degrees) {
  const double along = bearingAlong(specificGravity, diameter);
  const double across = bearingAcross(specificGravity, diameter);
  const double sine = std::sin(degrees * std::numbers::pi / 180);
  return along * across / (along * sine * sine + across * (1 - sine * sine));
}

} // namespace sillwright
