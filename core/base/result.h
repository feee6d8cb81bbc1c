// A value, or one problem that names the place. Everything that reads input returns this.
#pragma once

#include <string>
#include <utility>
#include <variant>

namespace sillwright {

// What is wrong and where: place is a path in a job file ("walls[2].straps[0].station"), an option ("--paper"), a
// column of typed text ("character 4"), or a file name. message is one sentence without the place.
struct Problem {
  std::string place;
  std::string message;

  std::string text() const { return place.empty() ? message : place + ": " + message; }
  bool operator==(const Problem&) const = default;
};

template <class T> class [[nodiscard]] Result {
public:
  Result(T value) : state_(std::move(value)) {}
  Result(Problem problem) : state_(std::move(problem)) {}

  bool ok() const { return state_.index() == 0; }
  explicit operator bool() const { return ok(); }
  // Precondition of value, * and ->: ok().
  const T& value() const { return std::get<0>(state_); }
  T& value() { return std::get<0>(state_); }
  const T& operator*() const { return value(); }
  const T* operator->() const { return &value(); }
  T* operator->() { return &value(); }
  // Precondition: !ok().
  const Problem& problem() const { return std::get<1>(state_); }

private:
  std::variant<T, Problem> state_;
};

// Outcome of something that gives nothing back but may fail.
struct Done {
  bool operator==(const Done&) const = default;
};

} // namespace sillwright
