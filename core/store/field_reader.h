// Reads values from a tree of JSON by their field lists. The first problem stops everything.
#pragma once

#include <charconv>
#include <cmath>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/store/file_place.h"
#include "core/store/job_fields.h"
#include "core/store/json_tree.h"
#include "core/store/parts.h"
#include "core/store/words.h"

namespace sillwright {

class TreeReader {
public:
  explicit TreeReader(const JsonTree& tree) : nodes_(tree.nodes), used_(tree.nodes.size()) {}

  const std::optional<Problem>& problem() const { return problem_; }
  const JsonNode& node(std::size_t i) const { return nodes_[i]; }
  void use(std::size_t i) { used_[i] = true; }
  bool used(std::size_t i) const { return used_[i]; }
  void fail(const FilePlace& place, std::string message) {
    if (!problem_)
      problem_ = Problem{place.text(), std::move(message)};
  }

  void read(std::size_t i, double& out, const FilePlace& place);
  void read(std::size_t i, int& out, const FilePlace& place);
  void read(std::size_t i, std::uint32_t& out, const FilePlace& place);
  void read(std::size_t i, std::uint64_t& out, const FilePlace& place);
  void read(std::size_t i, bool& out, const FilePlace& place);
  void read(std::size_t i, std::string& out, const FilePlace& place);
  void read(std::size_t i, Id& out, const FilePlace& place) { read(i, out.value, place); }
  void read(std::size_t i, Nominal& out, const FilePlace& place);
  void read(std::size_t i, MakeUp& out, const FilePlace& place);
  void read(std::size_t i, WallList& out, const FilePlace& place);
  void read(std::size_t i, std::shared_ptr<const Job>& out, const FilePlace& place);
  template <class T> void read(std::size_t i, std::vector<T>& out, const FilePlace& place);
  template <class T> void read(std::size_t i, Shared<T>& out, const FilePlace& place);
  template <class T>
    requires std::is_enum_v<T>
  void read(std::size_t i, T& out, const FilePlace& place);
  template <InParts T> void read(std::size_t i, T& out, const FilePlace& place);
  template <Entity T> void read(std::size_t i, T& out, const FilePlace& place);

  // False, and the problem is noted, where the value is of another kind.
  bool is(JsonKind kind, std::size_t i, const FilePlace& place);
  // Fields of an object that were not used, as a JSON object; empty where there are none.
  std::string unused(std::size_t object) const;

private:
  template <class T> void readWhole(std::size_t i, T& out, const FilePlace& place);
  std::optional<std::size_t> wordOf(std::size_t i, std::span<const std::string_view> among, const FilePlace& place);

  const std::vector<JsonNode>& nodes_;
  std::vector<bool> used_;
  std::optional<Problem> problem_;
};

// The visitor for the field lists.
class FieldReader {
public:
  FieldReader(TreeReader& reader, std::size_t object, const FilePlace& place)
      : reader_(reader), object_(object), cursor_(object + 1), place_(place) {}

  template <class T, class Allowed = Anything> void operator()(std::string_view name, T& value, Allowed = {}) {
    if (reader_.problem())
      return;
    if (const auto i = find(name))
      reader_.read(*i, value, place_.field(name));
    else
      reader_.fail(place_.field(name), "is missing");
  }

  template <class T, class Allowed = Anything> void optional(std::string_view name, T& value, Allowed = {}) {
    if (const auto i = reader_.problem() ? std::nullopt : find(name))
      reader_.read(*i, value, place_.field(name));
  }

  template <class T, class Allowed = Anything>
  void optional(std::string_view name, std::optional<T>& value, Allowed = {}) {
    if (const auto i = reader_.problem() ? std::nullopt : find(name))
      reader_.read(*i, value.emplace(), place_.field(name));
  }

  void extra(std::string& out) { out = reader_.unused(object_); }

private:
  // Files are nearly always in our order: looks at the next field first.
  std::optional<std::size_t> find(std::string_view name);

  TreeReader& reader_;
  std::size_t object_;
  std::size_t cursor_;
  const FilePlace& place_;
};

template <class T> void TreeReader::read(std::size_t i, std::vector<T>& out, const FilePlace& place) {
  if (!is(JsonKind::List, i, place))
    return;
  std::size_t position = 0;
  for (std::size_t item = i + 1; item < nodes_[i].next && !problem_; item = nodes_[item].next)
    read(item, out.emplace_back(), place.item(position++));
}

template <class T> void TreeReader::read(std::size_t i, Shared<T>& out, const FilePlace& place) {
  T value;
  read(i, value, place);
  out = Shared<T>(std::move(value));
}

template <class T>
  requires std::is_enum_v<T>
void TreeReader::read(std::size_t i, T& out, const FilePlace& place) {
  if (const auto found = wordOf(i, fileWords<T>, place))
    out = static_cast<T>(*found);
}

template <InParts T> void TreeReader::read(std::size_t i, T& out, const FilePlace& place) {
  if (!is(JsonKind::List, i, place))
    return;
  std::size_t item = i + 1;
  std::size_t position = 0;
  const auto one = [&](auto& part) {
    if (item < nodes_[i].next) {
      read(item, part, place.item(position));
      item = nodes_[item].next;
    } else {
      fail(place.item(position), "is missing");
    }
    ++position;
  };
  std::apply([&](auto&... part) { (one(part), ...); }, parts(out));
  if (item < nodes_[i].next)
    fail(place.item(position), "is one too many");
}

template <Entity T> void TreeReader::read(std::size_t i, T& out, const FilePlace& place) {
  if (!is(JsonKind::Object, i, place))
    return;
  FieldReader fields(*this, i, place);
  describe(fields, out);
}

} // namespace sillwright
