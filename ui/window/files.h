// The job's file: new, open, save, save as, recent ones, and the questions that go with them. Nothing is ever half
// loaded: a file that cannot be read leaves the job at work as it is.
#pragma once

#include <QObject>
#include <QStringList>
#include <QTimer>

#include <memory>

#include "core/base/result.h"
#include "core/gesture/workbench.h"
#include "ui/window/services.h"

class QWidget;

namespace sillwright {

class Files : public QObject {
  Q_OBJECT

public:
  Files(Workbench& bench, QWidget& window, Services services);
  ~Files() override;

  const QString& path() const { return path_; }
  // Name of the file, or what the job is called, for titles.
  QString shortName() const;
  bool unsaved() const { return bench_.session().changedSinceSaved(); }
  QStringList recent() const;

  // Each asks first when there is something unsaved. False: nothing was done.
  bool newJob();
  bool open();
  bool openPath(const QString& path);
  bool save();
  bool saveAs();
  // True when the job may go: nothing unsaved, or saved now, or given up on purpose.
  bool mayLeave();

  // One clear sentence with what is wrong and where.
  void tell(const QString& what, const Problem& problem);

  // A copy of unsaved work beside its file; kept by itself every minute.
  void keepCopy();

Q_SIGNALS:
  void changed(); // path, or the list of recent files

private:
  void take(const QString& path);
  void markOpen(const QString& path);
  bool write(const QString& path);
  void offerCopy();
  void dropCopy();
  void removeCopy();

  Workbench& bench_;
  QWidget& window_;
  Services services_;
  QString path_;
  QTimer copyTimer_;
  std::size_t copied_ = 0;
  std::shared_ptr<void> lock_; // of the file at work
};

} // namespace sillwright
