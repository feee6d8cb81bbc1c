// Where in a job file something is: a chain on the stack, made into words only when there is a problem.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace sillwright {

struct FilePlace {
  const FilePlace* parent = nullptr; // null: the whole file
  std::string_view name;             // of a field; empty: an item of a list
  std::size_t index = 0;

  FilePlace field(std::string_view fieldName) const { return {this, fieldName, 0}; }
  FilePlace item(std::size_t position) const { return {this, {}, position}; }

  // walls[2].straps[0].station
  std::string text() const {
    if (!parent)
      return {};
    const std::string before = parent->text();
    if (name.empty())
      return before + "[" + std::to_string(index) + "]";
    return before.empty() ? std::string(name) : before + "." + std::string(name);
  }
};

} // namespace sillwright
