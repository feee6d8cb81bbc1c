#include "core/store/json_tree.h"

#include <algorithm>
#include <optional>

#include "core/store/json_text.h"

namespace sillwright {

std::string_view tradeName(JsonKind kind) {
  switch (kind) {
  case JsonKind::Null: return "nothing";
  case JsonKind::Boolean: return "true or false";
  case JsonKind::Number: return "a number";
  case JsonKind::Text: return "text";
  case JsonKind::List: return "a list";
  case JsonKind::Object: return "a group of fields";
  }
  return "";
}

namespace {

// Objects up to this many keys are searched for doubles key by key, larger ones by sorting.
constexpr std::size_t fewKeys = 24;

class Parser {
public:
  explicit Parser(std::string_view text) : text_(text) { nodes_.reserve(text.size() / 12); }

  Result<JsonTree> run() {
    skipBlanks();
    value({});
    skipBlanks();
    if (!problem_ && at_ != text_.size())
      fail("something follows the end");
    if (problem_)
      return *problem_;
    return JsonTree{std::move(nodes_)};
  }

private:
  bool value(std::string_view key) {
    if (nodes_.size() >= json::mostValues)
      return fail("more values than a job may have");
    const std::size_t index = nodes_.size();
    const std::size_t begin = at_;
    nodes_.push_back({key, {}, 0, JsonKind::Null});
    if (!content(index))
      return false;
    nodes_[index].text = text_.substr(begin, at_ - begin);
    nodes_[index].next = static_cast<std::uint32_t>(nodes_.size());
    return true;
  }

  bool content(std::size_t index) {
    JsonKind& kind = nodes_[index].kind;
    switch (peek()) {
    case '{': kind = JsonKind::Object; return nested(index, '}');
    case '[': kind = JsonKind::List; return nested(index, ']');
    case '"': kind = JsonKind::Text; return string().has_value();
    case 't': kind = JsonKind::Boolean; return word("true");
    case 'f': kind = JsonKind::Boolean; return word("false");
    case 'n': kind = JsonKind::Null; return word("null");
    default: kind = JsonKind::Number; return number();
    }
  }

  bool nested(std::size_t index, char close) {
    if (open_.size() >= json::deepest)
      return fail("nested deeper than " + std::to_string(json::deepest));
    open_.push_back(index);
    ++at_;
    skipBlanks();
    if (!take(close) && !members(close))
      return false;
    open_.pop_back();
    nodes_[index].next = static_cast<std::uint32_t>(nodes_.size());
    return close == ']' || noDoubles(index);
  }

  bool members(char close) {
    while (true) {
      if (!(close == '}' ? member() : value({})))
        return false;
      skipBlanks();
      if (take(close))
        return true;
      if (!take(','))
        return fail(std::string("expected a comma or ") + close);
      skipBlanks();
    }
  }

  bool member() {
    if (peek() != '"')
      return fail("expected a field name in quotes");
    const auto key = string();
    if (!key)
      return false;
    skipBlanks();
    if (!take(':'))
      return fail("expected a colon");
    skipBlanks();
    return value(*key);
  }

  // The characters between the quotes, checked and as written.
  std::optional<std::string_view> string() {
    const std::size_t begin = at_ + 1;
    const auto end = json::endOfString(text_, begin);
    at_ = end.at;
    if (!end.message.empty()) {
      fail(std::string(end.message));
      return std::nullopt;
    }
    return text_.substr(begin, at_++ - begin);
  }

  bool number() {
    const std::size_t length = json::lengthOfNumber(text_.substr(at_));
    if (length == 0)
      return fail("expected a value");
    at_ += length;
    return true;
  }

  bool word(std::string_view expected) {
    if (text_.substr(at_, expected.size()) != expected)
      return fail("expected a value");
    at_ += expected.size();
    return true;
  }

  bool noDoubles(std::size_t object) {
    keys_.clear();
    for (std::size_t i = object + 1; i < nodes_.size(); i = nodes_[i].next)
      keys_.push_back(nodes_[i].key);
    if (std::any_of(keys_.begin(), keys_.end(), [](auto key) { return key.find('\\') != key.npos; }))
      return noDoublesEscaped(object);
    if (keys_.size() <= fewKeys) {
      for (std::size_t i = 1; i < keys_.size(); ++i)
        if (std::find(keys_.begin(), keys_.begin() + i, keys_[i]) != keys_.begin() + i)
          return failTwice(object, std::string(keys_[i]));
      return true;
    }
    std::sort(keys_.begin(), keys_.end());
    const auto twice = std::adjacent_find(keys_.begin(), keys_.end());
    return twice == keys_.end() || failTwice(object, std::string(*twice));
  }

  bool noDoublesEscaped(std::size_t object) {
    std::vector<std::string> keys;
    for (const auto key : keys_)
      keys.push_back(unescaped(key));
    std::sort(keys.begin(), keys.end());
    const auto twice = std::adjacent_find(keys.begin(), keys.end());
    return twice == keys.end() || failTwice(object, *twice);
  }

  bool failTwice(std::size_t object, const std::string& key) {
    open_.push_back(object);
    std::string place;
    for (std::size_t depth = 1; depth < open_.size(); ++depth)
      appendStep(place, open_[depth - 1], open_[depth]);
    problem_ = Problem{place.empty() ? key : place + "." + key, "is there twice"};
    return false;
  }

  void appendStep(std::string& place, std::size_t parent, std::size_t child) const {
    if (nodes_[parent].kind == JsonKind::Object) {
      place += (place.empty() ? "" : ".") + unescaped(nodes_[child].key);
      return;
    }
    std::size_t position = 0;
    for (std::size_t i = parent + 1; i != child; i = nodes_[i].next)
      ++position;
    place += "[" + std::to_string(position) + "]";
  }

  bool fail(std::string message) {
    problem_ = Problem{json::lineAndCharacter(text_, at_), std::move(message)};
    return false;
  }

  char peek() const { return at_ < text_.size() ? text_[at_] : '\0'; }
  bool take(char wanted) { return peek() == wanted && at_ < text_.size() ? (++at_, true) : false; }
  void skipBlanks() {
    while (at_ < text_.size() && json::isBlank(text_[at_]))
      ++at_;
  }

  std::string_view text_;
  std::size_t at_ = 0;
  std::vector<JsonNode> nodes_;
  std::vector<std::size_t> open_;
  std::vector<std::string_view> keys_;
  std::optional<Problem> problem_;
};

} // namespace

Result<JsonTree> parseJson(std::string_view text) {
  if (text.size() > json::largestText)
    return Problem{"", "larger than 64 MB"};
  constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
  if (text.substr(0, byteOrderMark.size()) == byteOrderMark)
    text.remove_prefix(byteOrderMark.size());
  if (const std::size_t bad = json::firstNotUtf8(text); bad != text.size())
    return Problem{json::lineAndCharacter(text, bad), "not UTF-8 text"};
  return Parser(text).run();
}

} // namespace sillwright
