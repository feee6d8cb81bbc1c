#include "core/store/field_reader.h"

#include <algorithm>
#include <span>
#include <system_error>

namespace sillwright {

bool TreeReader::is(JsonKind kind, std::size_t i, const FilePlace& place) {
  if (nodes_[i].kind == kind)
    return true;
  fail(place, "expected " + std::string(tradeName(kind)) + ", found " + std::string(tradeName(nodes_[i].kind)));
  return false;
}

void TreeReader::read(std::size_t i, double& out, const FilePlace& place) {
  if (!is(JsonKind::Number, i, place))
    return;
  const std::string_view text = nodes_[i].text;
  const auto parsed = std::from_chars(text.data(), text.data() + text.size(), out);
  if (parsed.ec != std::errc() || !std::isfinite(out))
    fail(place, std::string(text) + " is outside what a number can hold");
}

template <class T> void TreeReader::readWhole(std::size_t i, T& out, const FilePlace& place) {
  if (!is(JsonKind::Number, i, place))
    return;
  const std::string_view text = nodes_[i].text;
  const auto parsed = std::from_chars(text.data(), text.data() + text.size(), out);
  if (parsed.ec == std::errc::result_out_of_range)
    fail(place, std::string(text) + " is too large");
  else if (parsed.ec != std::errc() || parsed.ptr != text.data() + text.size())
    fail(place, std::string(text) + " is not a whole number" + (std::is_signed_v<T> ? "" : " from 0 up"));
}

void TreeReader::read(std::size_t i, int& out, const FilePlace& place) { readWhole(i, out, place); }
void TreeReader::read(std::size_t i, std::uint32_t& out, const FilePlace& place) { readWhole(i, out, place); }
void TreeReader::read(std::size_t i, std::uint64_t& out, const FilePlace& place) { readWhole(i, out, place); }

void TreeReader::read(std::size_t i, bool& out, const FilePlace& place) {
  if (is(JsonKind::Boolean, i, place))
    out = nodes_[i].text == "true";
}

void TreeReader::read(std::size_t i, std::string& out, const FilePlace& place) {
  if (!is(JsonKind::Text, i, place))
    return;
  const std::string_view written = nodes_[i].text.substr(1, nodes_[i].text.size() - 2);
  if (written.find('\\') == written.npos)
    out.assign(written);
  else
    out = unescaped(written);
}

void TreeReader::read(std::size_t i, Nominal& out, const FilePlace& place) {
  std::string written;
  read(i, written, place);
  if (problem_)
    return;
  if (const auto nominal = parseNominal(written))
    out = *nominal;
  else
    fail(place, "\"" + written + "\" is not a size of lumber such as \"3x6\"");
}

void TreeReader::read(std::size_t i, MakeUp& out, const FilePlace& place) {
  std::string written;
  read(i, written, place);
  if (problem_)
    return;
  if (const auto makeUp = parseMakeUp(written))
    out = *makeUp;
  else
    fail(place, "\"" + written + "\" is not a column such as \"2-2x6\" or \"4x6\"");
}

void TreeReader::read(std::size_t i, WallList& out, const FilePlace& place) {
  std::vector<WallLine> walls;
  read(i, walls, place);
  out = WallList(std::move(walls));
}

void TreeReader::read(std::size_t i, std::shared_ptr<const Job>& out, const FilePlace& place) {
  auto job = std::make_shared<Job>();
  read(i, *job, place);
  out = std::move(job);
}

std::optional<std::size_t> TreeReader::wordOf(std::size_t i, std::span<const std::string_view> among,
                                              const FilePlace& place) {
  std::string written;
  read(i, written, place);
  if (problem_)
    return std::nullopt;
  const auto found = std::find(among.begin(), among.end(), written);
  if (found != among.end())
    return static_cast<std::size_t>(found - among.begin());
  std::string choices;
  for (const std::string_view word : among)
    choices += (choices.empty() ? "\"" : ", \"") + std::string(word) + "\"";
  fail(place, "\"" + written + "\" is none of " + choices);
  return std::nullopt;
}

std::string TreeReader::unused(std::size_t object) const {
  std::string out;
  for (std::size_t i = object + 1; i < nodes_[object].next; i = nodes_[i].next) {
    if (used_[i])
      continue;
    out += out.empty() ? "{\"" : ",\"";
    out.append(nodes_[i].key);
    out += "\":" + compact(nodes_[i].text);
  }
  return out.empty() ? out : out + "}";
}

std::optional<std::size_t> FieldReader::find(std::string_view name) {
  const std::size_t end = reader_.node(object_).next;
  const auto take = [&](std::size_t i) {
    reader_.use(i);
    cursor_ = reader_.node(i).next;
    return i;
  };
  if (cursor_ < end && reader_.node(cursor_).key == name)
    return take(cursor_);
  for (std::size_t i = object_ + 1; i < end; i = reader_.node(i).next)
    if (reader_.node(i).key == name)
      return take(i);
  return std::nullopt;
}

} // namespace sillwright
