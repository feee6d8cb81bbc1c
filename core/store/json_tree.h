// A strict reader of JSON text (RFC 8259) into a flat tree. Stricter than most: a key that is there twice in one object,
// text that is not UTF-8, too much nesting or too many values are errors. Slices point into the text, which must live
// as long as the tree.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"

namespace sillwright {

enum class JsonKind : std::uint8_t { Null, Boolean, Number, Text, List, Object };
std::string_view tradeName(JsonKind kind); // "a number", "a list" …

struct JsonNode {
  std::string_view key;  // between the quotes, as written; empty in lists
  std::string_view text; // the whole value as written, quotes and brackets included
  std::uint32_t next = 0; // index behind the last node of this value
  JsonKind kind = JsonKind::Null;
};

// Nodes in the order of the text, node 0 the whole. The first child of node i is i + 1, its next sister nodes[child].next.
struct JsonTree {
  std::vector<JsonNode> nodes;
};

namespace json {
inline constexpr std::size_t largestText = 64u << 20; // bytes
inline constexpr std::size_t mostValues = 12'000'000;
inline constexpr std::size_t deepest = 64;
} // namespace json

// A byte order mark in front is passed over. Errors: place is "line N, character M" (1-based, characters not bytes), or
// for a key that is there twice its path ("walls[2].straps[0].station").
Result<JsonTree> parseJson(std::string_view text);

// Characters of a string as written between its quotes, escapes resolved. Precondition: parseJson accepted it.
std::string unescaped(std::string_view written);
// The same text with quotes and the escapes it needs.
void appendQuoted(std::string& out, std::string_view characters);
// Without the blanks between values. Precondition: parseJson accepted it.
std::string compact(std::string_view written);

bool isUtf8(std::string_view text);

} // namespace sillwright
