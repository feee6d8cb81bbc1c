#include "core/standards/form_pressure.h"

#include <algorithm>

namespace sillwright {

namespace {

bool holds(const FormPour& pour) {
  return pour.rate > 0 && pour.rate <= fastRateMost.value && pour.height > 0 && pour.temperature > 0 &&
         pour.unitWeight > 0 && pour.weightCoefficient > 0 && pour.chemistryCoefficient > 0;
}

bool slow(const FormPour& pour) {
  return pour.rate < slowRateBelow.value && pour.height <= slowHeightMost.value;
}

double plainConcrete(const FormPour& pour) {
  if (slow(pour))
    return 150 + 9000 * pour.rate / pour.temperature;
  return 150 + 43400 / pour.temperature + 2800 * pour.rate / pour.temperature;
}

} // namespace

double liquidHead(double unitWeight, double height) {
  return unitWeight * height;
}

std::optional<double> wallFormula(const FormPour& pour) {
  if (!holds(pour))
    return std::nullopt;
  return pour.weightCoefficient * pour.chemistryCoefficient * plainConcrete(pour);
}

std::optional<double> formPressure(const FormPour& pour) {
  const auto formula = wallFormula(pour);
  if (!formula)
    return std::nullopt;
  const double least = formPressureLeast.value * pour.weightCoefficient;
  return std::min(std::max(*formula, least), liquidHead(pour.unitWeight, pour.height));
}

} // namespace sillwright
