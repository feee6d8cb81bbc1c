#include "ui/paint/fonts.h"

#include <QDir>
#include <QFileInfo>
#include <QTemporaryFile>

namespace sillwright {

void leaveOutMonospacedNamesake() {
  const QString machine = QStringLiteral("/etc/fonts/fonts.conf");
  if (qEnvironmentVariableIsSet("FONTCONFIG_FILE") || !QFileInfo::exists(machine))
    return;
  // Read at any time while the program runs, so it lives as long.
  static QTemporaryFile file(QDir::tempPath() + QStringLiteral("/sillwright-fonts-XXXXXX.conf"));
  const QByteArray text = "<?xml version=\"1.0\"?>\n<!DOCTYPE fontconfig SYSTEM \"fonts.dtd\">\n<fontconfig><include>" +
                          machine.toUtf8() +
                          "</include><selectfont><rejectfont><glob>*/B612Mono-*</glob></rejectfont></selectfont>"
                          "</fontconfig>\n";
  if (file.open() && file.write(text) == text.size() && file.flush())
    qputenv("FONTCONFIG_FILE", file.fileName().toUtf8());
}

} // namespace sillwright
