#include "core/store/files.h"

#include <QFile>
#include <QFileInfo>
#include <QLockFile>
#include <QSaveFile>
#include <QString>

#include "core/store/job_json.h"

namespace sillwright {

namespace {

constexpr qint64 largestFile = 64LL * 1024 * 1024;

QString q(const std::string& text) { return QString::fromStdString(text); }

Problem fileProblem(const std::string& path, const QString& what) { return {path, what.toStdString()}; }

// Where a file stands in a problem of its content: "path: walls[2] …".
Problem inFile(const std::string& path, const Problem& problem) {
  return {problem.place.empty() ? path : path + ": " + problem.place, problem.message};
}

Result<QByteArray> readBytes(const std::string& path) {
  QFile file(q(path));
  if (!QFileInfo::exists(q(path)))
    return fileProblem(path, QStringLiteral("there is no such file"));
  if (QFileInfo(q(path)).isDir())
    return fileProblem(path, QStringLiteral("is a folder"));
  if (!file.open(QIODevice::ReadOnly))
    return fileProblem(path, QStringLiteral("cannot be read: ") + file.errorString());
  if (file.size() > largestFile)
    return fileProblem(path, QStringLiteral("is larger than 64 MB, more than any job"));
  QByteArray bytes = file.readAll();
  if (file.error() != QFileDevice::NoError)
    return fileProblem(path, QStringLiteral("cannot be read: ") + file.errorString());
  return bytes;
}

std::string_view viewOf(const QByteArray& bytes) {
  return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

} // namespace

Result<Job> loadJob(const std::string& path) {
  const auto bytes = readBytes(path);
  if (!bytes)
    return bytes.problem();
  auto job = readJob(viewOf(*bytes));
  if (!job)
    return inFile(path, job.problem());
  return job;
}

std::string previousPath(const std::string& path) { return path + ".previous"; }

Result<Done> writeFile(const std::string& path, std::string_view bytes) {
  QSaveFile file(q(path));
  if (!file.open(QIODevice::WriteOnly))
    return fileProblem(path, QStringLiteral("cannot be written: ") + file.errorString());
  // On a full disk one large write comes back short without an error, and committing would replace a good file by a cut
  // one: every byte is counted, and anything else is given up.
  qint64 written = 0;
  const auto size = static_cast<qint64>(bytes.size());
  while (written < size) {
    const qint64 step = file.write(bytes.data() + written, size - written);
    if (step <= 0)
      break;
    written += step;
    if (!file.flush())
      break;
  }
  if (written != size || !file.flush() || file.error() != QFileDevice::NoError || file.size() != size) {
    const QString why = file.error() != QFileDevice::NoError ? file.errorString() : QStringLiteral("the disk is full");
    file.cancelWriting();
    file.commit();
    return fileProblem(path, QStringLiteral("cannot be written: ") + why);
  }
  if (!file.commit())
    return fileProblem(path, QStringLiteral("cannot be written: ") + file.errorString());
  return Done{};
}

Result<Done> saveJob(const Job& job, const std::string& path) {
  if (const auto problem = checkJob(job))
    return Problem{problem->place, problem->message};
  const bool there = QFileInfo::exists(q(path));
  if (there) {
    const auto old = readBytes(path);
    if (!old)
      return old.problem();
    if (!old->isEmpty()) {
      if (!readJob(viewOf(*old)))
        return fileProblem(path, QStringLiteral("holds something that is not a readable job; save under another name"));
      const auto kept = writeFile(previousPath(path), viewOf(*old));
      if (!kept)
        return kept.problem();
    }
  }
  return writeFile(path, writeJob(job));
}

struct JobLock::Hold {
  QLockFile file;
  explicit Hold(const QString& path) : file(path) {}
};

JobLock::JobLock(std::unique_ptr<Hold> hold) : hold_(std::move(hold)) {}
JobLock::~JobLock() = default;

std::unique_ptr<JobLock> JobLock::take(const std::string& path, std::string& holder) {
  auto hold = std::make_unique<Hold>(q(path) + QStringLiteral(".lock"));
  hold->file.setStaleLockTime(0);
  if (hold->file.tryLock(0))
    return std::unique_ptr<JobLock>(new JobLock(std::move(hold)));
  if (hold->file.error() != QLockFile::LockFailedError)
    return std::unique_ptr<JobLock>(new JobLock(nullptr));
  qint64 process = 0;
  QString host, program;
  hold->file.getLockInfo(&process, &host, &program);
  holder = program.toStdString() + " (process " + std::to_string(process) + ") on " + host.toStdString();
  return nullptr;
}

} // namespace sillwright
