#include "app/commands.h"

#include <algorithm>
#include <cstdio>
#include <iostream>
#include <vector>

#include "app/command_parts.h"
#include "core/model/lookup.h"
#include "core/store/json_tree.h"

namespace sillwright {

int refuse(const Problem& problem) {
  std::cerr << problem.text() << '\n';
  return wrongCall;
}

std::string jsonText(std::string_view text) {
  std::string out;
  appendQuoted(out, text);
  return out;
}

std::string shortest(double value) {
  char text[40];
  std::snprintf(text, sizeof text, "%.10g", value);
  return text;
}

std::string markOrNumber(const WallLine& wall, Id id) {
  const auto piece = findPiece(wall, id);
  return piece && !markOf(*piece).empty() ? markOf(*piece) : "#" + std::to_string(id.value);
}

namespace {

constexpr std::string_view usualStatus = "0 nothing to fix, 1 something to fix";

struct CommandRow {
  std::string_view name;
  std::string_view words;
  std::string_view does;
  std::vector<OptionRow> options;
  int (*run)(const Call&, int&, char**);
  std::string_view status = usualStatus;
};

const std::vector<CommandRow>& commands() {
  static const OptionRow asJson{"--json", "", "as JSON"};
  static const std::vector<CommandRow> table{
      {"check", "JOB…", "prints the findings of jobs, worst first", {asJson}, check},
      {"refit",
       "JOB -o OUT",
       "lays the hardware out again with the least movement, or says which requirements collide",
       {{"-o", "OUT", "the job file to write; only where something moves and every wall asked for has a layout"},
        asJson,
        {"--wall", "NAME", "only this wall; all walls when not given"},
        {"--least", "", "moves nothing for a target's sake (WATCH)"},
        {"--question", "FILE.txt", "writes what to ask the engineer, where a wall has no layout"},
        {"--model", "FILE.lp",
         "writes the problem that was solved for other solvers; of several walls FILE-A.lp, FILE-B.lp …"}},
       refitOfJob,
       "0 laid out or nothing to do, 1 a wall has no layout"},
      {"slots",
       "JOB",
       "prints where straps, bolts, rods, columns with leeway and planned bars may stand, and their slide room",
       {asJson},
       slotsOfJob},
      {"sheet",
       "JOB -o FILE.pdf|FOLDER",
       "writes the layout sheet",
       {{"-o", "FILE", "the PDF file, or with --format svg the folder, to write"},
        {"--format", "pdf|svg", "pdf when not given"},
        {"--paper", "NAME", "letter, tabloid (when not given), arch-b, arch-c, arch-d, a4 or a3; landscape"},
        {"--pages", "LIST", "of plan, elevations, sections, questions, with commas; all when not given"},
        {"--date", "YYYY-MM-DD", "the date on the sheet; today when not given"}},
       sheet},
      {"rules", "[JOB]", "prints the rule book; with a job, as it holds there", {asJson}, rules}};
  return table;
}

const CommandRow* findCommand(std::string_view name) {
  for (const CommandRow& row : commands())
    if (row.name == name)
      return &row;
  return nullptr;
}

std::string helpOf(const CommandRow& row) {
  std::string out = "sillwright " + std::string(row.name) + (row.words.empty() ? "" : " " + std::string(row.words)) +
                    "\n" + std::string(row.does) + "\n";
  for (const OptionRow& option : row.options) {
    std::string left = "  " + std::string(option.name) + (option.value.empty() ? "" : " " + std::string(option.value));
    left.resize(std::max<std::size_t>(left.size() + 2, 24), ' ');
    out += left + std::string(option.help) + "\n";
  }
  return out + "Exit status: " + std::string(row.status) + ", 2 the input or the call is wrong.\n";
}

} // namespace

bool isCommand(std::string_view word) { return findCommand(word) != nullptr; }

int runCommand(std::string_view command, std::span<const std::string> arguments, int& argc, char** argv) {
  const CommandRow& row = *findCommand(command);
  if (std::find(arguments.begin(), arguments.end(), "--help") != arguments.end()) {
    std::cout << helpOf(row);
    return nothingToFix;
  }
  const auto call = parseCall(arguments, row.options);
  return call ? row.run(*call, argc, argv) : refuse(call.problem());
}

std::string generalHelp() {
  std::string out = "sillwright [JOB]\nopens the editor, on a job file where one is given\n\n";
  for (const CommandRow& row : commands()) {
    std::string left = "sillwright " + std::string(row.name) + (row.words.empty() ? "" : " " + std::string(row.words));
    left.resize(std::max<std::size_t>(left.size() + 2, 40), ' ');
    out += left + std::string(row.does) + "\n";
  }
  return out + "\nsillwright COMMAND --help says what a command takes.\n"
               "The approved plans, the engineer of record, the hardware's own instructions, the local code and the\n"
               "inspector govern. Sillwright states measures against limits; it approves nothing.\n";
}

} // namespace sillwright
