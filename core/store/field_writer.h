// Writes values by their field lists: fields in fixed order, one piece a line, so that two versions of a job can be
// compared line by line.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/store/job_fields.h"
#include "core/store/json_tree.h"
#include "core/store/parts.h"
#include "core/store/words.h"

namespace sillwright {

// Whether an optional field is left out.
inline bool isNothing(const std::string& text) { return text.empty(); }
inline bool isNothing(Id id) { return !id; }
inline bool isNothing(bool value) { return !value; }
inline bool isNothing(double value) { return value == 0; }
template <class T> bool isNothing(const std::vector<T>& list) { return list.empty(); }
template <class T> bool isNothing(const std::optional<T>& value) { return !value; }
template <class T> bool isNothing(const Shared<T>& value) { return isNothing(*value); }

// Appends to a text that grows. Values stand at the end of a line begun before; indent is that line's.
class TextWriter {
public:
  explicit TextWriter(std::string& out) : out_(out) {}

  void write(double value);
  void write(int value);
  void write(std::uint32_t value);
  void write(std::uint64_t value);
  void write(bool value) { out_ += value ? "true" : "false"; }
  void write(const std::string& value) { appendQuoted(out_, value); }
  void write(Id id) { write(id.value); }
  void write(Nominal nominal) { appendQuoted(out_, print(nominal)); }
  void write(const MakeUp& makeUp) { appendQuoted(out_, print(makeUp)); }
  void write(const WallList& walls);
  void write(const std::shared_ptr<const Job>& job) { write(*job); }
  template <class T> void write(const std::optional<T>& value) { write(*value); }
  template <class T> void write(const Shared<T>& value) { write(*value); }
  template <class T> void write(const std::vector<T>& list);
  template <class T>
    requires std::is_enum_v<T>
  void write(T value) {
    appendQuoted(out_, fileWords<T>[static_cast<std::size_t>(value)]);
  }
  template <InParts T> void write(const T& value);
  template <Entity T> void write(const T& entity);

  void raw(std::string_view text) { out_ += text; }
  void newLine();
  void indent(int by) { indent_ += by; }

private:
  template <class T> static constexpr bool onOneLine = InParts<T> || std::is_arithmetic_v<T> || std::is_same_v<T, MakeUp>;
  template <class Count, class WriteItem> void list(Count count, bool oneLine, WriteItem&& writeItem);

  std::string& out_;
  int indent_ = 0;
};

// The visitor for the field lists.
class FieldWriter {
public:
  FieldWriter(TextWriter& writer, bool spread) : writer_(writer), spread_(spread) {}

  template <class T, class Allowed = Anything> void operator()(std::string_view name, const T& value, Allowed = {}) {
    begin();
    appendName(name);
    writer_.write(value);
  }
  template <class T, class Allowed = Anything> void optional(std::string_view name, const T& value, Allowed = {}) {
    if (!isNothing(value))
      (*this)(name, value);
  }
  void extra(const std::string& fields) {
    if (fields.size() <= 2)
      return;
    begin();
    writer_.raw(std::string_view(fields).substr(1, fields.size() - 2));
  }

private:
  void begin();
  void appendName(std::string_view name);

  TextWriter& writer_;
  bool spread_;
  bool first_ = true;
};

template <class Count, class WriteItem> void TextWriter::list(Count count, bool oneLine, WriteItem&& writeItem) {
  raw("[");
  indent(1);
  for (Count i = 0; i < count; ++i) {
    if (i > 0)
      raw(oneLine ? ", " : ",");
    if (!oneLine)
      newLine();
    writeItem(i);
  }
  indent(-1);
  if (!oneLine && count > 0)
    newLine();
  raw("]");
}

template <class T> void TextWriter::write(const std::vector<T>& values) {
  list(values.size(), onOneLine<T>, [&](std::size_t i) { write(values[i]); });
}

template <InParts T> void TextWriter::write(const T& value) {
  raw("[");
  bool first = true;
  const auto one = [&](const auto& part) {
    raw(first ? "" : ", ");
    first = false;
    write(part);
  };
  std::apply([&](const auto&... part) { (one(part), ...); }, parts(value));
  raw("]");
}

template <Entity T> void TextWriter::write(const T& entity) {
  raw("{");
  indent(1);
  FieldWriter fields(*this, overLines<T>);
  describe(fields, entity);
  indent(-1);
  if (overLines<T>)
    newLine();
  raw("}");
}

} // namespace sillwright
