// The JSON Schema (2020-12) of a job file, made from the same field lists that read, write and check it.
#pragma once

#include <set>
#include <string>

#include "core/store/job_fields.h"
#include "core/store/job_json.h"
#include "core/store/parts.h"
#include "core/store/words.h"

namespace sillwright::support {

class SchemaMaker;

// Collects the properties of one entity.
class SchemaFields {
public:
  explicit SchemaFields(SchemaMaker& maker) : maker_(maker) {}
  template <class T, class Allowed = Anything> void operator()(std::string_view name, const T& value, Allowed = {}) {
    add(name, value);
    required_ += (required_.empty() ? "\"" : ", \"") + std::string(name) + "\"";
  }
  template <class T, class Allowed = Anything> void optional(std::string_view name, const T& value, Allowed = {}) {
    add(name, value);
  }
  void extra(const std::string&) {}
  std::string text(int indent) const;

private:
  template <class T> void add(std::string_view name, const T& value);
  SchemaMaker& maker_;
  std::string properties_;
  std::string required_;
};

// Text of the schema of a value's type.
class SchemaMaker {
public:
  int indent = 0;

  template <class T> std::string of(const T& value) {
    if constexpr (std::is_same_v<T, bool>)
      return "{\"type\": \"boolean\"}";
    else if constexpr (std::is_same_v<T, double>)
      return "{\"type\": \"number\"}";
    else if constexpr (std::is_same_v<T, int>)
      return "{\"type\": \"integer\"}";
    else if constexpr (std::is_same_v<T, std::uint32_t> || std::is_same_v<T, std::uint64_t> || std::is_same_v<T, Id>)
      return "{\"type\": \"integer\", \"minimum\": 0}";
    else if constexpr (std::is_same_v<T, std::string>)
      return "{\"type\": \"string\"}";
    else if constexpr (std::is_same_v<T, Nominal>)
      return "{\"type\": \"string\", \"pattern\": \"^[0-9]+x[0-9]+$\"}";
    else if constexpr (std::is_same_v<T, MakeUp>)
      return "{\"type\": \"string\", \"pattern\": \"^([0-9]-)?[0-9]+x[0-9]+$\"}";
    else if constexpr (std::is_enum_v<T>)
      return oneOf(std::span<const std::string_view>(fileWords<T>));
    else if constexpr (std::is_same_v<T, WallList>)
      return list(WallLine{});
    else if constexpr (std::is_same_v<T, std::shared_ptr<const Job>>)
      return "{\"$ref\": \"#/$defs/job\"}";
    else
      return ofClass(value);
  }

private:
  static std::string oneOf(std::span<const std::string_view> words) {
    std::string text = "{\"enum\": [";
    for (std::size_t i = 0; i < words.size(); ++i)
      text += (i ? ", \"" : "\"") + std::string(words[i]) + "\"";
    return text + "]}";
  }
  template <class T> std::string list(const T& item) { return "{\"type\": \"array\", \"items\": " + of(item) + "}"; }
  template <class T> std::string ofClass(const std::vector<T>&) { return list(T{}); }
  template <class T> std::string ofClass(const std::optional<T>&) { return of(T{}); }
  template <class T> std::string ofClass(const Shared<T>&) { return of(T{}); }
  template <InParts T> std::string ofClass(const T& value) {
    std::string items;
    int count = 0;
    const auto one = [&](const auto& part) {
      items += (count++ ? ", " : "") + of(part);
    };
    std::apply([&](const auto&... part) { (one(part), ...); }, parts(value));
    return "{\"type\": \"array\", \"prefixItems\": [" + items + "], \"items\": false, \"minItems\": " +
           std::to_string(count) + "}";
  }
  template <Entity T> std::string ofClass(const T& value) {
    SchemaFields fields(*this);
    ++indent;
    describe(fields, value);
    --indent;
    return fields.text(indent);
  }
};

template <class T> void SchemaFields::add(std::string_view name, const T& value) {
  properties_ += (properties_.empty() ? "\n" : ",\n") + std::string(static_cast<std::size_t>(maker_.indent) * 2, ' ') + "\"" +
                 std::string(name) + "\": " + maker_.of(value);
}

inline std::string SchemaFields::text(int indent) const {
  return "{\"type\": \"object\", \"required\": [" + required_ + "], \"properties\": {" + properties_ + "\n" +
         std::string(static_cast<std::size_t>(indent) * 2, ' ') + "}}";
}

inline std::string jobSchema() {
  SchemaMaker maker;
  const std::string job = maker.of(Job{});
  return "{\n\"$schema\": \"https://json-schema.org/draft/2020-12/schema\",\n"
         "\"title\": \"Sillwright job\",\n"
         "\"description\": \"Lengths in inches, angles in degrees, forces in pounds. Plan points are [x, y]; points of a "
         "wall are [station, depth, height]. Fields that are not listed are kept.\",\n"
         "\"type\": \"object\",\n\"required\": [\"format\"],\n\"properties\": {\"format\": {\"const\": " +
         std::to_string(currentFormat) + "}},\n\"$ref\": \"#/$defs/job\",\n\"$defs\": {\"job\": " + job + "}\n}\n";
}

} // namespace sillwright::support
