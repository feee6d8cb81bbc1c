// The heads of the columns of a wall-end table as text.
#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/edit/text_table.h"
#include "core/gesture/wall_end_table.h"

namespace sillwright {

inline constexpr std::string_view noMark = "none";

enum class EndHead { Wall, Panel, End, Mark, Column, Hardware, At, State, SlideRoom, From, To };
inline constexpr std::array<std::string_view, 11> endHeadNames{
    "wall", "panel", "end", "mark", "column", "hardware", "at", "state", "slide room", "from", "to"};
inline constexpr std::string_view nameOf(EndHead head) {
  return endHeadNames[static_cast<std::size_t>(head)];
}

// The columns that are copied; a table without a head has these.
inline constexpr std::array<EndHead, 8> copiedHeads{EndHead::Wall,   EndHead::Panel,    EndHead::End, EndHead::Mark,
                                                    EndHead::Column, EndHead::Hardware, EndHead::At,  EndHead::State};

std::string_view headOf(EndCell cell);
// The sentence of a problem of a field: with the place only where it is one in what was typed.
std::string parseWords(const Problem& problem);

// What the columns of a table hold, and whether its first row says so.
struct EndColumns {
  std::vector<EndHead> heads;
  bool said = false;
  bool has(EndHead head) const { return std::find(heads.begin(), heads.end(), head) != heads.end(); }
};
// Error: place is "row 1, column 4".
Result<EndColumns> columnsOf(const TextRow& first);

// Words for what is wrong in a table: place is "row 3, at", or "row 3".
Problem inRow(int row, std::string_view column, std::string message);
std::string quoted(const std::string& text);
std::string lowerCase(std::string_view text);

} // namespace sillwright
