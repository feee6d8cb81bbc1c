// A command line taken apart: which words, which options.
#pragma once

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"

namespace sillwright {

struct OptionRow {
  std::string_view name;  // "--paper" or "-o"
  std::string_view value; // what it takes ("NAME"), or empty: a switch
  std::string_view help;
};

struct Call {
  std::vector<std::string> words;
  std::map<std::string, std::string, std::less<>> options;

  bool has(std::string_view option) const { return options.find(option) != options.end(); }
  // The value, or the fallback where the option was not given.
  std::string get(std::string_view option, std::string_view fallback = {}) const;
};

// --name VALUE, --name=VALUE and -o VALUE; "--" ends the options. Problem: place is the word that is wrong.
Result<Call> parseCall(std::span<const std::string> arguments, std::span<const OptionRow> known);

} // namespace sillwright
