#include "core/store/field_writer.h"

#include <charconv>

namespace sillwright {
namespace {

template <class T> void appendNumber(std::string& out, T value) {
  char digits[32];
  const auto end = std::to_chars(digits, digits + sizeof digits, value).ptr;
  out.append(digits, end);
}

} // namespace

// Shortest digits that read back as the same number; adding 0 makes -0 a plain 0.
void TextWriter::write(double value) { appendNumber(out_, value + 0.0); }
void TextWriter::write(int value) { appendNumber(out_, value); }
void TextWriter::write(std::uint32_t value) { appendNumber(out_, value); }
void TextWriter::write(std::uint64_t value) { appendNumber(out_, value); }

void TextWriter::write(const WallList& walls) {
  list(walls.size(), false, [&](std::size_t i) { write(walls[i]); });
}

void TextWriter::newLine() {
  out_ += '\n';
  out_.append(static_cast<std::size_t>(indent_) * 2, ' ');
}

void FieldWriter::begin() {
  if (!first_)
    writer_.raw(spread_ ? "," : ", ");
  first_ = false;
  if (spread_)
    writer_.newLine();
}

void FieldWriter::appendName(std::string_view name) {
  writer_.raw("\"");
  writer_.raw(name);
  writer_.raw("\": ");
}

} // namespace sillwright
