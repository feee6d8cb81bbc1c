#include "ui/window/editor.h"

#include <QApplication>
#include <QStyleFactory>

#include "core/edit/operations.h"
#include "ui/paint/fonts.h"

namespace sillwright {

int runEditor(int& argc, char** argv, const QString& jobPath, Services services) {
  leaveOutMonospacedNamesake(); // before anything asks for a font
  QApplication application(argc, argv);
  QApplication::setOrganizationName(QStringLiteral("sillwright"));
  QApplication::setApplicationName(QStringLiteral("sillwright"));
  QApplication::setApplicationDisplayName(QString());
  QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  Workbench bench(newJob());
  MainWindow window(bench, std::move(services));
  window.show();
  bool read = true;
  if (!jobPath.isEmpty())
    read = window.files().openPath(jobPath);
  const int code = application.exec();
  return read ? code : 2;
}

} // namespace sillwright
