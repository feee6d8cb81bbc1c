#include "app/commands.h"

#include <QDate>
#include <QGuiApplication>
#include <algorithm>
#include <atomic>
#include <cstdio>
#include <filesystem>
#include <iostream>
#include <map>
#include <optional>
#include <thread>
#include <vector>

#include "app/call.h"
#include "core/rules/checker.h"
#include "core/rules/wording.h"
#include "core/store/files.h"
#include "ui/paint/fonts.h"
#include "ui/sheet/output.h"
#include "ui/sheet/pages.h"

namespace sillwright {

namespace {

struct CommandRow {
  std::string_view name;
  std::string_view words;
  std::string_view does;
  std::vector<OptionRow> options;
  int (*run)(const Call&, int&, char**);
};

int refuse(const Problem& problem) {
  std::cerr << problem.text() << '\n';
  return wrongCall;
}

std::string jsonText(std::string_view text) {
  std::string out = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\')
      out += '\\';
    if (static_cast<unsigned char>(c) < 0x20) {
      char code[8];
      std::snprintf(code, sizeof code, "\\u%04x", static_cast<unsigned>(static_cast<unsigned char>(c)));
      out += code;
      continue;
    }
    out += c;
  }
  return out + "\"";
}

std::string shortest(double value) {
  char text[40];
  std::snprintf(text, sizeof text, "%.10g", value);
  return text;
}

// ---- check ----------------------------------------------------------------------------------------------------------
struct CheckedJob {
  std::string path;
  std::optional<Problem> problem;
  Job job;
  Findings findings;
  Counts counts;
};

CheckedJob checkFile(const std::string& path) {
  CheckedJob checked;
  checked.path = path;
  auto job = loadJob(path);
  if (!job) {
    checked.problem = job.problem();
    return checked;
  }
  checked.job = std::move(job.value());
  for (const auto& wall : checkAll(checked.job)) {
    checked.findings.insert(checked.findings.end(), wall->findings.begin(), wall->findings.end());
    checked.counts += wall->counts;
  }
  std::stable_sort(checked.findings.begin(), checked.findings.end(),
                   [](const Finding& a, const Finding& b) { return a.level < b.level; });
  return checked;
}

std::vector<CheckedJob> checkFiles(const std::vector<std::string>& paths) {
  std::vector<CheckedJob> results(paths.size());
  std::atomic<std::size_t> next{0};
  const auto work = [&] {
    for (std::size_t i = next++; i < paths.size(); i = next++)
      results[i] = checkFile(paths[i]);
  };
  const std::size_t count = std::min<std::size_t>(std::max(1U, std::thread::hardware_concurrency()), paths.size());
  std::vector<std::thread> others;
  for (std::size_t i = 1; i < count; ++i)
    others.emplace_back(work);
  work();
  for (std::thread& other : others)
    other.join();
  return results;
}

std::string checkJson(const CheckedJob& checked) {
  std::string out = "{\"job\": " + jsonText(checked.path) + ", \"findings\": [";
  for (std::size_t i = 0; i < checked.findings.size(); ++i)
    out += (i == 0 ? "\n  " : ",\n  ") + json(checked.job, checked.findings[i]);
  return out + (checked.findings.empty() ? "]" : "\n]") + ", \"counts\": {\"FIX\": " +
         std::to_string(checked.counts.fix) + ", \"ASK\": " + std::to_string(checked.counts.ask) +
         ", \"WATCH\": " + std::to_string(checked.counts.watch) + "}}";
}

void printFindings(const CheckedJob& checked) {
  std::cout << checked.path << ": " << checked.counts.fix << " FIX, " << checked.counts.ask << " ASK, "
            << checked.counts.watch << " WATCH\n";
  for (const Finding& finding : checked.findings) {
    const WallLine* wall = checked.job.walls.find(finding.wall);
    std::cout << "  " << word(finding.level) << "  wall " << (wall ? wall->mark : "?") << "  "
              << markedLabel(checked.job, finding) << "\n      " << message(checked.job, finding) << "\n      "
              << rule(finding.rule).name << ", " << sourceWords(checked.job, finding);
    const std::string cure = correctionWords(checked.job, finding);
    std::cout << (cure.empty() ? "" : "; " + cure) << '\n';
  }
}

int check(const Call& call, int&, char**) {
  if (call.words.empty())
    return refuse({"check", "needs at least one job file"});
  const auto results = checkFiles(call.words);
  for (const CheckedJob& checked : results)
    if (checked.problem)
      return refuse(*checked.problem);
  bool fix = false;
  std::string all;
  for (const CheckedJob& checked : results) {
    fix = fix || checked.counts.fix > 0;
    if (call.has("--json"))
      all += (all.empty() ? "" : ",\n") + checkJson(checked);
    else
      printFindings(checked);
  }
  if (call.has("--json"))
    std::cout << (results.size() > 1 ? "[" + all + "]" : all) << '\n';
  return fix ? somethingToFix : nothingToFix;
}

// ---- sheet ----------------------------------------------------------------------------------------------------------
Result<std::vector<PageKind>> pageKinds(const std::string& list) {
  static const std::map<std::string, PageKind, std::less<>> names{
      {"plan", PageKind::Plan}, {"elevations", PageKind::Elevation}, {"sections", PageKind::Section}};
  std::vector<PageKind> kinds;
  std::size_t from = 0;
  while (from <= list.size()) {
    const std::size_t comma = std::min(list.find(',', from), list.size());
    const std::string name = list.substr(from, comma - from);
    const auto found = names.find(name);
    if (found == names.end())
      return Problem{"--pages", "\"" + name + "\" is none of plan, elevations, sections"};
    kinds.push_back(found->second);
    from = comma + 1;
  }
  return kinds;
}

Result<SheetOptions> sheetOptions(const Call& call) {
  SheetOptions options;
  const auto paper = paperByKey(call.get("--paper", "tabloid"));
  if (!paper)
    return Problem{"--paper", "\"" + call.get("--paper") + "\" is none of letter, tabloid, arch-b, arch-c, arch-d, a4, a3"};
  options.paper = *paper;
  options.date = call.get("--date", QDate::currentDate().toString(Qt::ISODate).toStdString());
  if (!isDate(options.date))
    return Problem{"--date", "\"" + options.date + "\" is not a day written YYYY-MM-DD"};
  if (call.has("--pages")) {
    auto kinds = pageKinds(call.get("--pages"));
    if (!kinds)
      return kinds.problem();
    options.kinds = kinds.value();
  }
  return options;
}

int sheet(const Call& call, int& argc, char** argv) {
  if (call.words.size() != 1)
    return refuse({"sheet", "needs one job file"});
  const std::string out = call.get("-o");
  if (out.empty())
    return refuse({"-o", "needs the file or folder to write"});
  const std::string format = call.get("--format", out.ends_with(".svg") ? "svg" : "pdf");
  if (format != "pdf" && format != "svg")
    return refuse({"--format", "\"" + format + "\" is neither pdf nor svg"});
  const auto options = sheetOptions(call);
  if (!options)
    return refuse(options.problem());
  const auto job = loadJob(call.words[0]);
  if (!job)
    return refuse(job.problem());
  leaveOutMonospacedNamesake();
  const QGuiApplication application(argc, argv);
  const auto pages = composeSheets(*job, *options);
  if (pages.empty())
    return refuse({call.words[0], "the job has no walls to draw"});
  if (format == "svg") {
    const auto written = writeSvg(pages, out, std::filesystem::path(call.words[0]).stem().string());
    if (!written)
      return refuse(written.problem());
    for (const std::string& file : *written)
      std::cout << file << '\n';
    return nothingToFix;
  }
  const auto written = writePdf(pages, {job->title.job + ", layout sheet", job->title.note, options->date}, out);
  if (!written)
    return refuse(written.problem());
  std::cout << out << ": " << pages.size() << (pages.size() == 1 ? " page" : " pages") << '\n';
  return nothingToFix;
}

// ---- rules ----------------------------------------------------------------------------------------------------------
std::vector<const LimitRow*> limitsOf(RuleId id) {
  std::vector<const LimitRow*> rows;
  for (const LimitRow& row : limitTable())
    if (row.rule == id)
      rows.push_back(&row);
  return rows;
}

std::string sourceText(const Source& source) {
  return source.document.empty() ? std::string(words(source.status)) : std::string(source.document);
}

std::string limitJson(const LimitRow& row) {
  return "{\"limit\": " + shortest(row.value) + ", \"unit\": " + jsonText(row.unit) + ", \"level\": " +
         jsonText(word(row.level)) + ", \"source\": " + jsonText(sourceText(row.source)) + ", \"status\": " +
         jsonText(words(row.source.status)) + "}";
}

std::string ruleJson(const RuleRow& row) {
  std::string levels;
  for (const Level level : row.levels)
    levels += (levels.empty() ? "" : ", ") + jsonText(word(level));
  std::string out = "{\"name\": " + jsonText(row.name) + ", \"subject\": " + jsonText(row.subject) + ", \"meaning\": " +
                    jsonText(row.meaning) + ", \"measure\": " + jsonText(row.measure);
  const auto limits = limitsOf(row.id);
  if (limits.size() == 1) {
    out += ", \"limit\": " + shortest(limits[0]->value) + ", \"unit\": " + jsonText(limits[0]->unit);
  } else if (limits.size() > 1) {
    std::string list;
    for (const LimitRow* limit : limits)
      list += (list.empty() ? "" : ", ") + limitJson(*limit);
    out += ", \"limits\": [" + list + "]";
  }
  return out + ", \"levels\": [" + levels + "], \"source\": " + jsonText(sourceText(row.source)) + ", \"status\": " +
         jsonText(words(row.source.status)) + "}";
}

int rules(const Call& call, int&, char**) {
  if (!call.words.empty())
    return refuse({call.words[0], "rules takes no file"});
  if (call.has("--json")) {
    std::string list;
    for (const RuleRow& row : ruleBook())
      list += (list.empty() ? "" : ",\n ") + ruleJson(row);
    std::cout << "[" << list << "]\n";
    return nothingToFix;
  }
  for (const RuleRow& row : ruleBook()) {
    std::cout << row.name << "\n  " << row.meaning << "\n  measured: " << row.measure << '\n';
    for (const LimitRow* limit : limitsOf(row.id))
      std::cout << "  limit: " << limit->name << ' ' << shortest(limit->value) << ' ' << limit->unit << ", "
                << word(limit->level) << ", " << sourceText(limit->source) << '\n';
    std::cout << "  source: " << sourceText(row.source) << " (" << words(row.source.status) << ")\n";
  }
  return nothingToFix;
}

const std::vector<CommandRow>& commands() {
  static const OptionRow asJson{"--json", "", "as JSON"};
  static const std::vector<CommandRow> table{
      {"check", "JOB…", "prints the findings of jobs, worst first", {asJson}, check},
      {"sheet",
       "JOB -o FILE.pdf|FOLDER",
       "writes the layout sheet",
       {{"-o", "FILE", "the PDF file, or with --format svg the folder, to write"},
        {"--format", "pdf|svg", "pdf when not given"},
        {"--paper", "NAME", "letter, tabloid (when not given), arch-b, arch-c, arch-d, a4 or a3; landscape"},
        {"--pages", "LIST", "of plan, elevations, sections, with commas; all when not given"},
        {"--date", "YYYY-MM-DD", "the date on the sheet; today when not given"}},
       sheet},
      {"rules", "", "prints the rule book", {asJson}, rules}};
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
  return out + "Exit status: 0 nothing to fix, 1 something to fix, 2 the input or the call is wrong.\n";
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
