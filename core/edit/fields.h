// The fields of a piece as the card shows and sets them: one table for every kind, so that panel, typed lengths and
// tests speak of the same fields.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/model/lookup.h"

namespace sillwright {

enum class FieldKind { Length, Number, Text, Choice, Toggle };

struct Field {
  std::string key;   // "station"; stable
  std::string title; // "at"
  std::string note;  // "from the hook"
  FieldKind kind = FieldKind::Length;
  std::string text;                 // its value as shown in the job's units
  std::vector<std::string> choices; // for Choice: what can be picked (type names, columns, roles …)
};

// The fields of a piece in the order of the card; of the wall itself where ref.piece is empty.
std::vector<Field> fieldsOf(const Job& job, PieceRef ref);

// Sets one field from typed text. Error: place is the field's title, message what is wrong; the job stays as it was.
Result<Job> setField(const Job& job, PieceRef ref, std::string_view key, std::string_view typed);

} // namespace sillwright
