// The tables behind edit/fields: one row a field, made for one item at its place.
#pragma once

#include <functional>

#include "core/edit/fields.h"

namespace sillwright {

struct FieldPlace {
  const Job* job = nullptr;
  const WallLine* wall = nullptr;
  double length = 0; // of the wall, in
};

template <class Item> struct FieldRow {
  Field field; // without its text
  std::function<std::string(const Item&)> text;
  std::function<std::string(Item&, std::string_view)> set; // what is wrong, or ""
};

std::vector<FieldRow<PourStep>> rowsOf(const FieldPlace& place, const PourStep& item);
std::vector<FieldRow<Sill>> rowsOf(const FieldPlace& place, const Sill& item);
std::vector<FieldRow<Opening>> rowsOf(const FieldPlace& place, const Opening& item);
std::vector<FieldRow<Column>> rowsOf(const FieldPlace& place, const Column& item);
std::vector<FieldRow<Panel>> rowsOf(const FieldPlace& place, const Panel& item);
std::vector<FieldRow<Strap>> rowsOf(const FieldPlace& place, const Strap& item);
std::vector<FieldRow<Bolt>> rowsOf(const FieldPlace& place, const Bolt& item);
std::vector<FieldRow<Rod>> rowsOf(const FieldPlace& place, const Rod& item);
std::vector<FieldRow<Bar>> rowsOf(const FieldPlace& place, const Bar& item);
std::vector<FieldRow<GradeShot>> rowsOf(const FieldPlace& place, const GradeShot& item);
std::vector<FieldRow<WallLine>> rowsOf(const FieldPlace& place, const WallLine& item);

} // namespace sillwright
