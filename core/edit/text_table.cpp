#include "core/edit/text_table.h"

#include <algorithm>

namespace sillwright {

namespace {

constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";

std::string trimmed(std::string_view cell) {
  const auto first = cell.find_first_not_of(" \r\n");
  if (first == cell.npos)
    return {};
  return std::string(cell.substr(first, cell.find_last_not_of(" \r\n") - first + 1));
}

bool endsCell(std::string_view text, std::size_t at) {
  return at >= text.size() || text[at] == '\t' || text[at] == '\n' || text[at] == '\r';
}

// Where a cell in quotes that begins at `at` ends, past its last quote; npos where it is none.
std::size_t endOfQuoted(std::string_view text, std::size_t at) {
  if (at >= text.size() || text[at] != '"')
    return text.npos;
  for (std::size_t i = at + 1; i < text.size(); ++i) {
    if (text[i] != '"')
      continue;
    if (i + 1 < text.size() && text[i + 1] == '"')
      ++i;
    else
      return endsCell(text, i + 1) ? i + 1 : text.npos;
  }
  return text.npos;
}

std::string withoutQuotes(std::string_view quoted) {
  std::string cell;
  for (std::size_t i = 1; i + 1 < quoted.size(); ++i) {
    cell += quoted[i];
    if (quoted[i] == '"')
      ++i;
  }
  return cell;
}

class Reader {
public:
  explicit Reader(std::string_view text) : text_(text) {
    if (text_.starts_with(byteOrderMark))
      text_.remove_prefix(byteOrderMark.size());
  }

  std::vector<TextRow> read() {
    std::vector<TextRow> rows;
    while (at_ < text_.size()) {
      TextRow row{line_, {}};
      do
        row.cells.push_back(cell());
      while (takes('\t'));
      endLine();
      if (std::any_of(row.cells.begin(), row.cells.end(), [](const std::string& each) { return !each.empty(); }))
        rows.push_back(std::move(row));
    }
    return rows;
  }

private:
  bool takes(char wanted) {
    if (at_ >= text_.size() || text_[at_] != wanted)
      return false;
    ++at_;
    return true;
  }

  void endLine() {
    const bool back = takes('\r'), on = takes('\n');
    if (back || on)
      ++line_;
  }

  std::string cell() {
    const std::size_t from = at_;
    if (const std::size_t end = endOfQuoted(text_, at_); end != text_.npos) {
      at_ = end;
      const std::string_view quoted = text_.substr(from, end - from);
      line_ += static_cast<int>(std::count(quoted.begin(), quoted.end(), '\n'));
      return trimmed(withoutQuotes(quoted));
    }
    while (!endsCell(text_, at_))
      ++at_;
    return trimmed(text_.substr(from, at_ - from));
  }

  std::string_view text_;
  std::size_t at_ = 0;
  int line_ = 1;
};

} // namespace

std::vector<TextRow> readTextTable(std::string_view text) {
  return Reader(text).read();
}

std::string writeTextRow(std::span<const std::string> cells) {
  std::string row;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const std::string& cell = cells[i];
    row += i > 0 ? "\t" : "";
    if (!cell.starts_with('"') && cell.find_first_of("\t\r\n") == cell.npos) {
      row += cell;
      continue;
    }
    row += '"';
    for (const char each : cell)
      row += each == '"' ? std::string("\"\"") : std::string(1, each);
    row += '"';
  }
  return row;
}

} // namespace sillwright
