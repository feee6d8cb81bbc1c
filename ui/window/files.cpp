#include "ui/window/files.h"

#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QDateTime>
#include <QFileInfo>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>
#include <QSettings>

#include "core/edit/operations.h"

namespace sillwright {

namespace {

constexpr const char* recentSetting = "recent";
constexpr int mostRecent = 10;
constexpr int copyEvery = 60'000; // ms
const QString suffix = QStringLiteral("sillwright");

QString text(const std::string& words) { return QString::fromStdString(words); }

QString filter() { return Files::tr("Sillwright jobs (*.sillwright);;All files (*)"); }

// Where the copy of unsaved work on a file stands.
QString copyPath(const QString& path) { return path + QStringLiteral(".autosave"); }

// A copy is worth offering when it is younger than the file: an older one belongs to work that was saved since.
bool holdsUnsavedWork(const QString& path) {
  const QFileInfo copy(copyPath(path));
  return copy.exists() && copy.lastModified() >= QFileInfo(path).lastModified();
}

} // namespace

Files::Files(Workbench& bench, QWidget& window, Services services)
    : QObject(&window), bench_(bench), window_(window), services_(std::move(services)) {
  connect(&copyTimer_, &QTimer::timeout, this, &Files::keepCopy);
  copyTimer_.start(copyEvery);
}

Files::~Files() = default;

QString Files::shortName() const {
  if (!path_.isEmpty())
    return QFileInfo(path_).fileName();
  const QString title = text(bench_.job().title.job);
  return title.isEmpty() ? tr("new job") : title;
}

QStringList Files::recent() const {
  QStringList there;
  for (const QString& path : QSettings().value(recentSetting).toStringList())
    if (QFileInfo::exists(path))
      there << path;
  return there;
}

void Files::take(const QString& path) {
  markOpen(path);
  path_ = path;
  if (!path.isEmpty()) {
    QStringList all = QSettings().value(recentSetting).toStringList();
    const QString whole = QFileInfo(path).absoluteFilePath();
    all.removeAll(whole);
    all.prepend(whole);
    QSettings().setValue(recentSetting, QStringList(all.mid(0, mostRecent)));
  }
  Q_EMIT changed();
}

// A second program on one file is told, and may go on: the one that saves last wins.
void Files::markOpen(const QString& path) {
  if (path == path_ && lock_)
    return;
  lock_.reset();
  if (path.isEmpty() || !services_.lock)
    return;
  std::string holder;
  lock_ = services_.lock(path.toStdString(), holder);
  if (!lock_)
    tell(tr("%1 is open in another program.").arg(QFileInfo(path).fileName()),
         {"", (holder.empty() ? std::string() : holder + "; ") + "what is saved here takes the place of what is saved there"});
}

void Files::tell(const QString& what, const Problem& problem) {
  QMessageBox box(QMessageBox::Warning, tr("Sillwright"), what, QMessageBox::Ok, &window_);
  box.setInformativeText(text(problem.text()));
  box.exec();
}

// ---- new and open -----------------------------------------------------------------------------------------------

bool Files::mayLeave() {
  if (!unsaved())
    return true;
  QMessageBox box(QMessageBox::Question, tr("Sillwright"), tr("%1 has changes that are not saved.").arg(shortName()),
                  QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, &window_);
  box.setDefaultButton(QMessageBox::Save);
  const int answer = box.exec();
  if (answer == QMessageBox::Save)
    return save();
  if (answer != QMessageBox::Discard)
    return false;
  dropCopy();
  return true;
}

bool Files::newJob() {
  bench_.cancel();
  if (!mayLeave())
    return false;
  bench_.session().open(sillwright::newJob());
  take({});
  return true;
}

bool Files::open() {
  const QString folder = path_.isEmpty() ? QDir::currentPath() : QFileInfo(path_).absolutePath();
  const QString path = QFileDialog::getOpenFileName(&window_, tr("Open a job"), folder, filter());
  return !path.isEmpty() && openPath(path);
}

bool Files::openPath(const QString& path) {
  bench_.cancel();
  if (!mayLeave())
    return false;
  Result<Job> job = services_.loadJob(path.toStdString());
  if (!job) {
    tell(tr("%1 was not opened.").arg(QFileInfo(path).fileName()), job.problem());
    return false;
  }
  bench_.session().open(std::move(*job));
  take(path);
  offerCopy();
  return true;
}

// The program ended without saving, last time: what was kept of that work can be taken up, as one step to undo.
void Files::offerCopy() {
  if (!holdsUnsavedWork(path_))
    return;
  Result<Job> kept = services_.loadJob(copyPath(path_).toStdString());
  if (!kept || *kept == bench_.session().base())
    return removeCopy();
  const QString when = QLocale().toString(QFileInfo(copyPath(path_)).lastModified(), QLocale::ShortFormat);
  QMessageBox box(QMessageBox::Question, tr("Sillwright"),
                  tr("%1 was not saved last time. Work on it was kept at %2. Leaving it throws it away.")
                      .arg(shortName(), when),
                  QMessageBox::NoButton, &window_);
  QPushButton* take = box.addButton(tr("Take it up"), QMessageBox::AcceptRole);
  box.addButton(tr("Leave it"), QMessageBox::RejectRole);
  box.setDefaultButton(take);
  box.exec();
  if (box.clickedButton() != take)
    return removeCopy();
  bench_.session().apply(std::move(*kept), tr("Take up unsaved work").toStdString());
  copied_ = bench_.session().history().now().serial; // the copy stays until this is saved
}

// ---- save -------------------------------------------------------------------------------------------------------

bool Files::write(const QString& path) {
  bench_.cancel(); // what is in hand is not part of the job
  if (const auto problem = services_.saveJob(bench_.session().base(), path.toStdString())) {
    tell(tr("%1 was not saved.").arg(QFileInfo(path).fileName()), *problem);
    return false;
  }
  dropCopy();
  bench_.session().markSaved();
  take(path);
  return true;
}

bool Files::save() { return path_.isEmpty() ? saveAs() : write(path_); }

bool Files::saveAs() {
  QString path = path_.isEmpty() ? QDir::currentPath() + QStringLiteral("/job.") + suffix : path_;
  path = QFileDialog::getSaveFileName(&window_, tr("Save the job as"), path, filter());
  if (path.isEmpty())
    return false;
  if (QFileInfo(path).suffix().isEmpty())
    path += QLatin1Char('.') + suffix;
  return write(path);
}

// A copy of unsaved work beside its file, at most once a minute and only when something changed.
void Files::keepCopy() {
  const std::size_t serial = bench_.session().history().now().serial;
  if (path_.isEmpty() || !unsaved() || serial == copied_)
    return;
  if (!services_.saveJob(bench_.session().base(), copyPath(path_).toStdString()))
    copied_ = serial;
  QFile::remove(copyPath(path_) + QStringLiteral(".previous")); // of a copy nobody needs the version before
}

void Files::dropCopy() {
  if (copied_ != 0)
    removeCopy();
}

void Files::removeCopy() {
  QFile::remove(copyPath(path_));
  copied_ = 0;
}

} // namespace sillwright
