#include "core/standards/source.h"

namespace sillwright {

std::string_view words(Status status) {
  switch (status) {
  case Status::Published:
    return "published";
  case Status::FromMemory:
    return "from memory";
  case Status::CommonPractice:
    return "common practice";
  case Status::Type:
    return "type";
  case Status::Plans:
    return "plans";
  case Status::Geometry:
    return "geometry";
  case Status::Statics:
    return "statics";
  }
  return "";
}

std::string documentOf(const Source& source) {
  return (source.borrowed ? "borrowed: " : "") + std::string(source.document);
}

} // namespace sillwright
