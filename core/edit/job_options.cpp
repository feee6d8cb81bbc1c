// The options of a job that say which clauses apply and what the plans give.
#include "core/edit/field_makers.h"
#include "core/edit/limits.h"
#include "core/edit/operations.h"

#include <charconv>

namespace sillwright {

namespace {

using namespace field_makers;
using Row = FieldRow<JobLimits>;

// A whole or plain number between two.
template <class Number, class Get, class Put>
Row numberRow(Field field, Number least, Number most, const char* wrong, Get get, Put put) {
  field.kind = FieldKind::Number;
  return {std::move(field),
          [=](const JobLimits& limits) {
            char text[32];
            const auto end = std::to_chars(text, text + sizeof text, get(limits)).ptr;
            return std::string(text, end);
          },
          [=](JobLimits& limits, std::string_view typed) -> std::string {
            Number value{};
            const auto read = std::from_chars(typed.data(), typed.data() + typed.size(), value);
            if (read.ec != std::errc() || read.ptr != typed.data() + typed.size() || !(value >= least) ||
                !(value <= most))
              return wrong;
            put(limits, value);
            return {};
          }};
}

Row toggle(const char* key, const char* title, const char* note, bool JobLimits::*member) {
  Row row = toggleRow<JobLimits>(
      key, title, [=](const JobLimits& limits) { return limits.*member; },
      [=](JobLimits& limits, bool on) { limits.*member = on; });
  row.field.note = note;
  return row;
}

Row seismicRow() {
  std::vector<std::pair<std::string, std::string>> named{{"not said", ""}};
  for (const char* category : {"A", "B", "C", "D", "D0", "D1", "D2", "E", "F"})
    named.emplace_back(category, category);
  Row row = choiceRow("seismicCategory", "seismic design category", &JobLimits::seismicCategory, std::move(named));
  row.field.note = "from the plans";
  return row;
}

std::vector<Row> optionRows(const Job& job) {
  FieldPlace place;
  place.job = &job;
  std::vector<Row> rows;
  rows.push_back(numberRow<int>(
      {"storeys", "storeys", "from the plans", {}, {}, {}}, 1, 6, "expected a whole number from 1 to 6",
      [](const JobLimits& limits) { return limits.storeys; },
      [](JobLimits& limits, int value) { limits.storeys = value; }));
  rows.push_back(seismicRow());
  rows.push_back(toggle("plateWashers", "plate washers called for", "from the plans", &JobLimits::plateWashers));
  rows.push_back(toggle("topBar", "bar near the top called for", "from the plans", &JobLimits::topBar));
  rows.push_back(
      toggle("openingBars", "bars beside openings called for", "from the plans", &JobLimits::openingBars));
  rows.push_back(optionalLengthRow(place, {"planBoltSpacing", "bolt spacing", "the plan's; empty: none given", {}, {}, {}},
                                   &JobLimits::planBoltSpacing, sizes));
  rows.push_back(lengthRow(place, {"sillOverhang", "sill off the concrete", "allowed by the plans", {}, {}, {}},
                           &JobLimits::sillOverhang, sizesOrNone));
  rows.push_back(lengthRow(place, {"sheathingThickness", "sheathing thickness", "from the plans", {}, {}, {}},
                           &JobLimits::sheathingThickness, sizesOrNone));
  rows.push_back(numberRow<double>(
      {"concreteStrength", "concrete strength, psi", "from the plans", {}, {}, {}}, 500, 20'000,
      "expected a number of psi from 500 to 20000", [](const JobLimits& limits) { return limits.concreteStrength; },
      [](JobLimits& limits, double value) { limits.concreteStrength = value; }));
  return rows;
}

} // namespace

std::vector<Field> jobOptions(const Job& job) {
  std::vector<Field> fields;
  for (const Row& row : optionRows(job)) {
    Field field = row.field;
    field.text = row.text(*job.limits);
    // A category of a file that is none of ours is shown and kept.
    if (field.kind == FieldKind::Choice && field.text.empty() && !job.limits->seismicCategory.empty()) {
      field.text = job.limits->seismicCategory;
      field.choices.push_back(field.text);
    }
    fields.push_back(std::move(field));
  }
  return fields;
}

Result<Job> setJobOption(const Job& job, std::string_view key, std::string_view typed) {
  for (const Field& field : jobOptions(job))
    if (field.key == key && field.text == typed)
      return job;
  for (const Row& row : optionRows(job)) {
    if (row.field.key != key)
      continue;
    JobLimits limits = *job.limits;
    if (const std::string wrong = row.set(limits, typed); !wrong.empty())
      return Problem{row.field.title, wrong};
    return setLimits(job, std::move(limits));
  }
  return Problem{std::string(key), "is not an option of the job"};
}

} // namespace sillwright
