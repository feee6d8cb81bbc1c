// A mixed-integer programme as plain text in the LP form that general solvers read: whole coefficients, rows, bounds,
// binary variables. Variables that are not told otherwise are at least 0.
#pragma once

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace sillwright::sequence {

// A sum of whole multiples of variables. Variables may come more than once.
struct LinearSum {
  std::vector<std::pair<std::int64_t, std::string>> terms = {};
  std::int64_t constant = 0;

  LinearSum& add(std::int64_t factor, const std::string& variable) {
    terms.emplace_back(factor, variable);
    return *this;
  }
  LinearSum& add(std::int64_t factor, const LinearSum& other);
};

class LpText {
public:
  void say(const std::string& comment);
  void minimise(const LinearSum& sum);
  void atMost(const LinearSum& sum, std::int64_t limit); // sum <= limit
  void atLeast(const LinearSum& sum, std::int64_t limit);
  void equal(const LinearSum& sum, std::int64_t value);
  void free(const std::string& variable); // also below 0
  void binary(const std::string& variable);
  std::string text() const;

private:
  void row(const LinearSum& sum, const char* relation, std::int64_t limit);

  std::string comments;
  std::string objective;
  std::string rows;
  std::string bounds;
  std::string binaries;
  int count = 0;
};

} // namespace sillwright::sequence
