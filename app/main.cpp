#include <QFileInfo>
#include <QHashSeed>
#include <iostream>
#include <string>
#include <vector>

#include "app/commands.h"
#include "app/services.h"
#include "ui/paint/fonts.h"
#include "ui/window/editor.h"

namespace {

bool hasDisplay() {
  return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
         qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

// A line on standard error means a wrong call: the toolkit's remarks about its surroundings do not belong there.
void keepQuiet(QtMsgType type, const QMessageLogContext&, const QString& message) {
  if (type == QtFatalMsg)
    std::cerr << message.toStdString() << '\n';
}

} // namespace

int main(int argc, char** argv) {
  using namespace sillwright;
  QHashSeed::setDeterministicGlobalSeed(); // the same job gives the same bytes on paper
  const std::vector<std::string> arguments(argv + 1, argv + argc);
  if (!arguments.empty() && isCommand(arguments[0])) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler(keepQuiet);
    return runCommand(arguments[0], std::span(arguments).subspan(1), argc, argv);
  }
  if (!arguments.empty() && (arguments[0] == "--help" || arguments[0] == "-h")) {
    std::cout << generalHelp();
    return nothingToFix;
  }
  if (!arguments.empty() && arguments[0] == "--version") {
    std::cout << "sillwright " << SILLWRIGHT_VERSION << '\n';
    return nothingToFix;
  }
  if (arguments.size() > 1 || (!arguments.empty() && arguments[0].size() > 1 && arguments[0][0] == '-')) {
    std::cerr << arguments[0] << ": there is no such command or option; see sillwright --help\n";
    return wrongCall;
  }
  if (!arguments.empty() && !QFileInfo::exists(QString::fromStdString(arguments[0]))) {
    std::cerr << arguments[0] << ": there is no such file or command; see sillwright --help\n";
    return wrongCall;
  }
  if (!hasDisplay()) {
    std::cerr << "the editor: there is no display; sillwright --help lists the commands that need none\n";
    return wrongCall;
  }
  leaveOutMonospacedNamesake();
  return runEditor(argc, argv, arguments.empty() ? QString() : QString::fromStdString(arguments[0]), fileServices());
}
