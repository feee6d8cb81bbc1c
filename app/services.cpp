#include "app/services.h"

#include <QDate>

#include "core/store/files.h"
#include "ui/sheet/output.h"
#include "ui/sheet/pages.h"

namespace sillwright {

namespace {

std::optional<Problem> problemOf(const Result<Done>& done) {
  return done ? std::nullopt : std::optional(done.problem());
}

std::optional<Problem> writeSheet(const Job& job, const std::string& path, const std::string& paperKey) {
  const auto paper = paperByKey(paperKey);
  if (!paper)
    return Problem{"paper", paperKey + " is no paper this program knows"};
  SheetOptions options;
  options.paper = *paper;
  options.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
  const auto pages = composeSheets(job, options);
  if (pages.empty())
    return Problem{"layout sheet", "the job has no walls to draw"};
  return problemOf(writePdf(pages, {job.title.job + ", layout sheet", job.title.note, options.date}, path));
}

} // namespace

Services fileServices() {
  Services services;
  services.loadJob = loadJob;
  services.saveJob = [](const Job& job, const std::string& path) { return problemOf(saveJob(job, path)); };
  services.lock = [](const std::string& path, std::string& holder) {
    return std::shared_ptr<void>(JobLock::take(path, holder));
  };
  services.writeSheet = writeSheet;
  return services;
}

} // namespace sillwright
