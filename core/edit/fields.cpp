#include "core/edit/fields.h"

#include "core/edit/field_rows.h"
#include "core/edit/operations.h"

namespace sillwright {

namespace {

template <class Item> std::vector<Field> shown(const FieldPlace& place, const Item& item) {
  std::vector<Field> fields;
  for (const FieldRow<Item>& row : rowsOf(place, item)) {
    Field field = row.field;
    field.text = row.text(item);
    fields.push_back(std::move(field));
  }
  return fields;
}

// The problem, or nothing when the item holds the new value.
template <class Item>
std::optional<Problem> setIn(const FieldPlace& place, Item& item, std::string_view key, std::string_view typed) {
  for (const FieldRow<Item>& row : rowsOf(place, item))
    if (row.field.key == key) {
      if (typed == row.text(item)) // what is shown may be rounded: typing it again changes nothing
        return std::nullopt;
      const std::string wrong = row.set(item, typed);
      return wrong.empty() ? std::nullopt : std::optional(Problem{row.field.title, wrong});
    }
  return Problem{std::string(key), "there is no such field here"};
}

FieldPlace placeIn(const Job& job, const WallLine& wall) { return {&job, &wall, wallLength(job, wall)}; }

} // namespace

std::vector<Field> fieldsOf(const Job& job, PieceRef ref) {
  const WallLine* wall = job.walls.find(ref.wall);
  if (!wall)
    return {};
  const FieldPlace place = placeIn(job, *wall);
  if (!ref.piece || ref.piece == ref.wall)
    return shown(place, *wall);
  const auto piece = findPiece(*wall, ref.piece);
  return piece ? std::visit([&](const auto& item) { return shown(place, item); }, *piece) : std::vector<Field>{};
}

Result<Job> setField(const Job& job, PieceRef ref, std::string_view key, std::string_view typed) {
  const WallLine* wall = job.walls.find(ref.wall);
  if (!wall)
    return Problem{std::string(key), "the wall is not there any more"};
  const FieldPlace place = placeIn(job, *wall);
  if (!ref.piece || ref.piece == ref.wall) {
    WallLine line = *wall;
    if (auto problem = setIn(place, line, key, typed))
      return *problem;
    return replaceWall(job, std::move(line));
  }
  auto piece = findPiece(*wall, ref.piece);
  if (!piece)
    return Problem{std::string(key), "the piece is not there any more"};
  if (auto problem = std::visit([&](auto& item) { return setIn(place, item, key, typed); }, *piece))
    return *problem;
  if (const Opening* opening = std::get_if<Opening>(&*piece)) { // the pour-line step at its ends comes along
    Job next = moveEnd(job, ref, Side::Left, opening->from);
    next = moveEnd(next, ref, Side::Right, opening->to);
    return replacePiece(next, ref.wall, *piece);
  }
  return replacePiece(job, ref.wall, *piece);
}

} // namespace sillwright
