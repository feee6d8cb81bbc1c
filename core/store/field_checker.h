// Checks values by what their field lists allow: numbers finite and in range, references to something that is there,
// days that exist. The first problem stops everything.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/base/result.h"
#include "core/store/field_writer.h"
#include "core/store/file_place.h"
#include "core/store/job_fields.h"

namespace sillwright {

// -3 is outside 0 … 288
std::string outsideWords(double value, double low, double high);
bool isDay(std::string_view date); // YYYY-MM-DD, one that exists

// What every id of a job stands for.
struct KnownIds {
  enum class Kind { StrapType, BoltType, RodType, WasherType, Corner, Mark, Wall, Column, OtherPiece, Other };
  struct Known {
    Kind kind;
    Id wall; // of a piece
  };
  std::unordered_map<Id, Known> ids;
  std::unordered_map<std::string, Id> marks;
};

class FieldChecker {
public:
  FieldChecker(const KnownIds& known, std::optional<Problem>& problem, const FilePlace& place, Id wall)
      : known_(known), problem_(problem), place_(place), wall_(wall) {}

  template <class T> void operator()(std::string_view name, const T& value) {
    if (!problem_)
      check(place_.field(name), value, Anything{});
  }
  template <class T, class Allowed> void operator()(std::string_view name, const T& value, Allowed allowed) {
    if (!problem_)
      check(place_.field(name), value, allowed);
  }
  template <class T, class Allowed = Anything>
  void optional(std::string_view name, const T& value, Allowed allowed = {}) {
    if (!problem_ && !isNothing(value))
      check(place_.field(name), value, allowed);
  }
  void extra(const std::string& fields);

private:
  void check(const FilePlace& place, double value, Range allowed);
  void check(const FilePlace& place, double value, Anything) { check(place, value, anyLength); }
  void check(const FilePlace& place, int value, Whole allowed);
  void check(const FilePlace& place, Id value, Refers allowed);
  void check(const FilePlace& place, const std::string& value, Date);
  void check(const FilePlace& place, const std::string& value, NotEmpty);
  void check(const FilePlace& place, const std::string& value, KnownMark);
  void check(const FilePlace& place, const std::string& value, Anything);
  void check(const FilePlace&, Id, Anything) {} // job_check looks at ids of its own
  void check(const FilePlace&, bool, Anything) {}
  void check(const FilePlace&, std::uint32_t, Anything) {}
  void check(const FilePlace&, std::uint64_t, Anything) {}
  void check(const FilePlace& place, Nominal value, Anything);
  void check(const FilePlace& place, const MakeUp& value, Anything);
  void check(const FilePlace&, const WallList&, Anything) {} // job_check goes through the walls
  void check(const FilePlace&, const std::shared_ptr<const Job>&, Anything) {} // and the revisions
  template <class T, class Allowed> void check(const FilePlace& place, const std::vector<T>& list, Allowed allowed) {
    for (std::size_t i = 0; i < list.size() && !problem_; ++i)
      check(place.item(i), list[i], allowed);
  }
  template <class T, class Allowed> void check(const FilePlace& place, const std::optional<T>& value, Allowed allowed) {
    if (value)
      check(place, *value, allowed);
  }
  template <class T, class Allowed> void check(const FilePlace& place, const Shared<T>& value, Allowed allowed) {
    check(place, *value, allowed);
  }
  template <class T>
    requires std::is_enum_v<T>
  void check(const FilePlace&, T, Anything) {}
  template <InParts T, class Allowed> void check(const FilePlace& place, const T& value, Allowed allowed) {
    std::size_t i = 0;
    const auto one = [&](const auto& part) {
      if (!problem_)
        check(place.item(i++), part, allowed);
    };
    std::apply([&](const auto&... part) { (one(part), ...); }, parts(value));
  }
  template <Entity T> void check(const FilePlace& place, const T& entity, Anything) {
    FieldChecker fields(known_, problem_, place, wall_);
    describe(fields, entity);
  }

  void fail(const FilePlace& place, std::string message) { problem_ = Problem{place.text(), std::move(message)}; }

  const KnownIds& known_;
  std::optional<Problem>& problem_;
  const FilePlace& place_;
  Id wall_; // that the fields stand in; empty outside of walls
};

} // namespace sillwright
