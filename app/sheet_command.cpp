#include "app/command_parts.h"

#include <QDate>
#include <QGuiApplication>
#include <filesystem>
#include <iostream>
#include <map>
#include <vector>

#include "core/store/files.h"
#include "ui/paint/fonts.h"
#include "ui/sheet/output.h"
#include "ui/sheet/pages.h"

namespace sillwright {

namespace {

Result<std::vector<PageKind>> pageKinds(const std::string& list) {
  static const std::map<std::string, PageKind, std::less<>> names{{"plan", PageKind::Plan},
                                                                  {"elevations", PageKind::Elevation},
                                                                  {"sections", PageKind::Section},
                                                                  {"questions", PageKind::Question}};
  std::vector<PageKind> kinds;
  std::size_t from = 0;
  while (from <= list.size()) {
    const std::size_t comma = std::min(list.find(',', from), list.size());
    const std::string name = list.substr(from, comma - from);
    const auto found = names.find(name);
    if (found == names.end())
      return Problem{"--pages", "\"" + name + "\" is none of plan, elevations, sections, questions"};
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

} // namespace

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

} // namespace sillwright
