// The job's list of hardware types and of the plan's wall-end marks: their fields as typed, adding and removing. All
// numbers are entered by the user, from the hardware's own instructions and from the approved plans.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/base/result.h"
#include "core/edit/fields.h"

namespace sillwright {

enum class ListedKind { Strap, Bolt, Rod, Washer, Mark };

// One line of the list, by its id in the job: a hardware type, or a mark.
struct Listed {
  ListedKind kind = ListedKind::Strap;
  Id id;
  std::string name;
  bool operator==(const Listed&) const = default;
};

// In the order of ListedKind, then of the job.
std::vector<Listed> listed(const Job& job);
std::optional<Listed> findListed(const Job& job, Id id);

// What uses a type or a mark.
struct ListedUse {
  int pieces = 0;                 // straps, bolts (of a washer: bolts too), rods, ends of panels (of a mark)
  std::vector<std::string> walls; // marks of the walls they stand on, each once
  std::vector<std::string> marks; // that call for the type
  std::vector<std::string> rods;  // names of rod types that have the washer
  int count() const { return pieces + static_cast<int>(marks.size() + rods.size()); }
};
// Of everything that is used at all. Goes through all walls once.
std::unordered_map<Id, ListedUse> usesOfListed(const Job& job);
// "4 straps on walls A and B, and mark HD1"; empty where nothing uses it.
std::string useWords(const ListedUse& use, ListedKind kind);

// The type or mark that a field of the card names ("type", "washer", the marks of a panel's ends); empty where it names
// none.
Id listedAt(const Job& job, PieceRef piece, std::string_view key);

// The fields in the order of the form, in the job's units; none where there is no such id.
std::vector<Field> listedFields(const Job& job, Id id);

// Sets one field from typed text. What a job file may not hold is refused: hardware that cannot be made, a name or mark
// that another one has, a bolt shorter than one of its kind stands out. A mark's new name goes to the panels that bear
// it. Error: place is the field's title, message what is wrong; the job stays as it was.
Result<Job> setListedField(const Job& job, Id id, std::string_view key, std::string_view typed);

// A copy of `like` with a name of its own; where like is empty or of another kind, a plain one whose name says that it
// is to be filled in. Second: its id.
std::pair<Job, Id> addListed(const Job& job, ListedKind kind, Id like);

// Error where something uses it: says what, and where.
Result<Job> removeListed(const Job& job, Id id);

} // namespace sillwright
