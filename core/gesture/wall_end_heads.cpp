#include "core/gesture/wall_end_heads.h"

#include <cctype>

namespace sillwright {

std::string lowerCase(std::string_view text) {
  std::string all(text);
  for (char& each : all)
    each = static_cast<char>(std::tolower(static_cast<unsigned char>(each)));
  return all;
}

std::string quoted(const std::string& text) {
  return "'" + text + "'";
}

Problem inRow(int row, std::string_view column, std::string message) {
  const std::string place = "row " + std::to_string(row);
  return {column.empty() ? place : place + ", " + std::string(column), std::move(message)};
}

namespace {

std::optional<EndHead> headNamed(const std::string& cell) {
  const std::string name = lowerCase(cell);
  for (std::size_t i = 0; i < endHeadNames.size(); ++i)
    if (name == endHeadNames[i])
      return static_cast<EndHead>(i);
  return std::nullopt;
}

std::string namesOf(const std::vector<EndHead>& heads) {
  std::string all;
  for (const EndHead head : heads)
    all += (all.empty() ? "" : ", ") + std::string(nameOf(head));
  return all;
}

} // namespace

Result<EndColumns> columnsOf(const TextRow& first) {
  const auto names = [](const std::string& cell) {
    const auto head = headNamed(cell);
    return head == EndHead::Wall || head == EndHead::Panel || head == EndHead::End;
  };
  EndColumns columns;
  columns.said = std::any_of(first.cells.begin(), first.cells.end(), names);
  if (!columns.said) {
    columns.heads.assign(copiedHeads.begin(), copiedHeads.end());
    if (first.cells.size() != columns.heads.size())
      return inRow(first.line, {},
                   "has " + std::to_string(first.cells.size()) +
                       " columns. Put a head over them, or give all of these: " + namesOf(columns.heads));
    return columns;
  }
  for (std::size_t i = 0; i < first.cells.size(); ++i) {
    const auto head = headNamed(first.cells[i]);
    const std::string place = "column " + std::to_string(i + 1);
    if (!head)
      return inRow(
          first.line, place,
          (first.cells[i].empty() ? std::string("has no name") : quoted(first.cells[i]) + " is none of the schedule") +
              "; there are wall, panel, end, mark, column, at, and from and to for new panels");
    if (columns.has(*head))
      return inRow(first.line, place, quoted(first.cells[i]) + " stands there twice");
    columns.heads.push_back(*head);
  }
  for (const EndHead needed : {EndHead::Wall, EndHead::Panel, EndHead::End})
    if (!columns.has(needed))
      return inRow(first.line, {}, "the column " + quoted(std::string(nameOf(needed))) + " is missing");
  if (columns.has(EndHead::From) != columns.has(EndHead::To))
    return inRow(first.line, {}, "from and to come together");
  return columns;
}

} // namespace sillwright
