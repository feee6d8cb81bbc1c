// Adding to and removing from the job's list of hardware types and marks; what uses them.
#include "core/edit/types.h"

#include <algorithm>

#include "core/edit/operations.h"

namespace sillwright {

namespace {

constexpr const char* fillInNote = "to fill in from the hardware's own instructions";

// ---- uses ---------------------------------------------------------------------------------------------------------

void addUse(std::unordered_map<Id, ListedUse>& uses, Id type, const std::string& wall) {
  if (!type)
    return;
  ListedUse& use = uses[type];
  ++use.pieces;
  if (use.walls.empty() || use.walls.back() != wall)
    use.walls.push_back(wall);
}

// "A", "A and B", "A, B and C"
std::string joined(const std::vector<std::string>& words) {
  std::string all;
  for (std::size_t i = 0; i < words.size(); ++i)
    all += (i == 0 ? "" : i + 1 == words.size() ? " and " : ", ") + words[i];
  return all;
}

std::string counted(int count, const std::string& one, const std::string& several) {
  return std::to_string(count) + " " + (count == 1 ? one : several);
}

std::string piecesWords(int count, ListedKind kind) {
  switch (kind) {
  case ListedKind::Strap: return counted(count, "strap", "straps");
  case ListedKind::Bolt: return counted(count, "bolt", "bolts");
  case ListedKind::Rod: return counted(count, "rod", "rods");
  case ListedKind::Washer: return counted(count, "bolt", "bolts");
  case ListedKind::Mark: return counted(count, "end of a panel", "ends of panels");
  }
  return {};
}

// ---- a new one ----------------------------------------------------------------------------------------------------

template <class List> std::string freshName(const List& list, const std::string& wanted) {
  const auto taken = [&](const std::string& name) {
    return std::any_of(list.begin(), list.end(), [&](const auto& type) { return type.name == name; });
  };
  std::string name = wanted;
  for (int i = 2; taken(name); ++i)
    name = wanted + " " + std::to_string(i);
  return name;
}

// Plain shapes that a job may hold, and no more.
StrapType plainStrap() {
  StrapType strap;
  strap.name = "strap to fill in";
  strap.plateWidth = 1;
  strap.plateThickness = 0.125;
  strap.profile = {{0, 0}, {0, -1}};
  strap.exposedLength = 1;
  return strap;
}

BoltType plainBolt() {
  BoltType bolt;
  bolt.name = "bolt to fill in";
  bolt.diameter = 0.5;
  bolt.length = 12;
  bolt.threadLength = 1;
  bolt.threadsPerInch = 1;
  bolt.hookLeg = 1;
  return bolt;
}

RodType plainRod() {
  RodType rod;
  rod.name = "rod to fill in";
  rod.diameter = 0.5;
  rod.embedment = 1;
  rod.threadLength = 1;
  rod.threadsPerInch = 1;
  return rod;
}

WasherType plainWasher() {
  WasherType washer;
  washer.name = "washer to fill in";
  washer.hole = 0.5;
  return washer;
}

template <class Type> void addTo(std::vector<Type>& list, Id id, Id like, Type plain) {
  const Type* old = nullptr;
  for (const Type& type : list)
    if (type.id == like)
      old = &type;
  Type made = old ? *old : std::move(plain);
  made.id = id;
  if (!old)
    made.note = fillInNote;
  made.name = freshName(list, old ? old->name + " copy" : made.name);
  list.push_back(std::move(made));
}

void addTo(std::vector<WallEndMark>& marks, Id id, Id like) {
  WallEndMark made;
  if (const WallEndMark* old = findIn(marks, like))
    made = *old;
  made.id = id;
  const auto taken = [&](const std::string& mark) {
    return std::any_of(marks.begin(), marks.end(), [&](const WallEndMark& row) { return row.mark == mark; });
  };
  int number = 1;
  while (taken("HD" + std::to_string(number)))
    ++number;
  made.mark = "HD" + std::to_string(number);
  marks.push_back(std::move(made));
}

} // namespace

std::unordered_map<Id, ListedUse> usesOfListed(const Job& job) {
  std::unordered_map<Id, ListedUse> uses;
  std::unordered_map<std::string, Id> marks;
  for (const WallEndMark& mark : *job.marks) {
    marks[mark.mark] = mark.id;
    for (const Id type : {mark.strapType, mark.rodType})
      if (type)
        uses[type].marks.push_back(mark.mark);
  }
  for (const RodType& rod : job.types->rods)
    if (rod.washer)
      uses[rod.washer].rods.push_back(rod.name);
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    const WallLine& wall = job.walls[i];
    for (const Strap& strap : wall.straps)
      addUse(uses, strap.type, wall.mark);
    for (const Rod& rod : wall.rods)
      addUse(uses, rod.type, wall.mark);
    for (const Bolt& bolt : wall.bolts)
      for (const Id type : {bolt.type, bolt.washer})
        addUse(uses, type, wall.mark);
    for (const Panel& panel : wall.panels)
      for (const std::string& end : {panel.leftMark, panel.rightMark})
        if (const auto mark = marks.find(end); mark != marks.end())
          addUse(uses, mark->second, wall.mark);
  }
  return uses;
}

std::string useWords(const ListedUse& use, ListedKind kind) {
  std::vector<std::string> words;
  if (use.pieces > 0)
    words.push_back(piecesWords(use.pieces, kind) + " on " + (use.walls.size() == 1 ? "wall " : "walls ") +
                    joined(use.walls));
  if (!use.marks.empty())
    words.push_back((use.marks.size() == 1 ? "mark " : "marks ") + joined(use.marks));
  for (const std::string& rod : use.rods)
    words.push_back(rod);
  std::string all;
  for (const std::string& each : words)
    all += (all.empty() ? "" : ", and ") + each;
  return all;
}

Id listedAt(const Job& job, PieceRef ref, std::string_view key) {
  const auto piece = findPiece(job, ref);
  if (!piece)
    return {};
  if (const Strap* strap = std::get_if<Strap>(&*piece); strap && key == "type")
    return strap->type;
  if (const Rod* rod = std::get_if<Rod>(&*piece); rod && key == "type")
    return rod->type;
  if (const Bolt* bolt = std::get_if<Bolt>(&*piece))
    return key == "type" ? bolt->type : key == "washer" ? bolt->washer : Id{};
  if (const Panel* panel = std::get_if<Panel>(&*piece); panel && (key == "leftMark" || key == "rightMark"))
    if (const WallEndMark* mark = findMark(job, key == "leftMark" ? panel->leftMark : panel->rightMark))
      return mark->id;
  return {};
}

std::pair<Job, Id> addListed(const Job& job, ListedKind kind, Id like) {
  Job next = job;
  const Id id = takeId(next);
  if (kind == ListedKind::Mark) {
    next.marks.edit([&](std::vector<WallEndMark>& marks) { addTo(marks, id, like); });
    return {std::move(next), id};
  }
  next.types.edit([&](HardwareTypes& types) {
    switch (kind) {
    case ListedKind::Strap: return addTo(types.straps, id, like, plainStrap());
    case ListedKind::Bolt: return addTo(types.bolts, id, like, plainBolt());
    case ListedKind::Rod: return addTo(types.rods, id, like, plainRod());
    case ListedKind::Washer: return addTo(types.washers, id, like, plainWasher());
    case ListedKind::Mark: return;
    }
  });
  return {std::move(next), id};
}

Result<Job> removeListed(const Job& job, Id id) {
  const auto entry = findListed(job, id);
  if (!entry)
    return Problem{"", "it is not in the list any more"};
  const auto uses = usesOfListed(job);
  if (const auto use = uses.find(id); use != uses.end())
    return Problem{entry->name, "stays: it is used by " + useWords(use->second, entry->kind)};
  Job next = job;
  const auto is = [id](const auto& each) { return each.id == id; };
  if (entry->kind == ListedKind::Mark)
    next.marks.edit([&](std::vector<WallEndMark>& marks) { std::erase_if(marks, is); });
  else
    next.types.edit([&](HardwareTypes& types) {
      std::erase_if(types.straps, is);
      std::erase_if(types.bolts, is);
      std::erase_if(types.rods, is);
      std::erase_if(types.washers, is);
    });
  return next;
}

} // namespace sillwright
