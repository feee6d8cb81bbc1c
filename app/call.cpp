#include "app/call.h"

#include <algorithm>

namespace sillwright {

namespace {

const OptionRow* findOption(std::span<const OptionRow> known, std::string_view name) {
  const auto found = std::find_if(known.begin(), known.end(), [name](const OptionRow& row) { return row.name == name; });
  return found == known.end() ? nullptr : &*found;
}

} // namespace

std::string Call::get(std::string_view option, std::string_view fallback) const {
  const auto found = options.find(option);
  return found == options.end() ? std::string(fallback) : found->second;
}

Result<Call> parseCall(std::span<const std::string> arguments, std::span<const OptionRow> known) {
  Call call;
  bool optionsEnded = false;
  for (std::size_t i = 0; i < arguments.size(); ++i) {
    const std::string& word = arguments[i];
    if (optionsEnded || word.size() < 2 || word[0] != '-') {
      call.words.push_back(word);
      continue;
    }
    if (word == "--") {
      optionsEnded = true;
      continue;
    }
    const auto equals = word.find('=');
    const std::string name = word.substr(0, equals);
    const OptionRow* row = findOption(known, name);
    if (!row)
      return Problem{name, "there is no such option"};
    if (call.has(name))
      return Problem{name, "is given twice"};
    std::string value;
    if (equals != std::string::npos) {
      if (row->value.empty())
        return Problem{name, "takes no value"};
      value = word.substr(equals + 1);
    } else if (!row->value.empty()) {
      if (i + 1 >= arguments.size())
        return Problem{name, "needs a value"};
      value = arguments[++i];
    }
    call.options[name] = value;
  }
  return call;
}

} // namespace sillwright
