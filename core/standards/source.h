// Where a number comes from, and how sure that is.
#pragma once

#include <string>
#include <string_view>

namespace sillwright {

enum class Status {
  Published,      // the document was seen
  FromMemory,     // published, but only remembered: never the basis of a FIX
  CommonPractice, // of the trade, no document
  Type,           // entered for the hardware from its own instructions
  Plans,          // entered from the approved plans
  Geometry,       // follows from the shapes alone
  Statics
};

struct Source {
  std::string_view document; // "IRC 2024 R403.1.6", "ACI 318-19 Table 20.5.1.3.1"; empty for practice and geometry
  Status status = Status::CommonPractice;
  bool borrowed = false; // says it of something else, and is taken as a guide here
};

// The same document as a guide for something it does not speak of.
constexpr Source borrowed(Source source) {
  source.borrowed = true;
  return source;
}

// "IRC 2024 R403.1.6", "borrowed: ACI 318-19 25.2.1"; empty where there is no document.
std::string documentOf(const Source& source);

// A single number of a document, with what it is.
struct NamedNumber {
  std::string_view name; // "plate washer, thickness at least"
  double value = 0;
  std::string_view unit; // "in", "psi", "ft/h"; empty for a plain factor
  Source source;
};

std::string_view words(Status status);

} // namespace sillwright
