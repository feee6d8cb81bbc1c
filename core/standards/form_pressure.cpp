#include "core/standards/form_pressure.h"

#include <algorithm>

namespace sillwright {

namespace {

bool holds(const FormPour& pour) {
  return pour.rate > 0 && pour.rate < formRateBelow.value && pour.height > 0 && pour.height <= formHeightMost.value &&
         pour.temperature > 0 && pour.unitWeight > 0 && pour.weightCoefficient > 0 && pour.chemistryCoefficient > 0;
}

} // namespace

double liquidHead(double unitWeight, double height) {
  return unitWeight * height;
}

std::optional<double> wallFormula(const FormPour& pour) {
  if (!holds(pour))
    return std::nullopt;
  return pour.weightCoefficient * pour.chemistryCoefficient * (150 + 9000 * pour.rate / pour.temperature);
}

std::optional<double> formPressure(const FormPour& pour) {
  const auto formula = wallFormula(pour);
  if (!formula)
    return std::nullopt;
  const double least = formPressureLeast.value * pour.weightCoefficient;
  return std::min(std::max(*formula, least), liquidHead(pour.unitWeight, pour.height));
}

} // namespace sillwright
