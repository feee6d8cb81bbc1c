// Starters: on the wall in view where it is blank, else on new walls.
#include "ui/window/main_window.h"
#include "ui/window/starter_form.h"

namespace sillwright {

void MainWindow::openStarter(std::string_view key) {
  for (const Starter& starter : starters()) {
    if (starter.key != key)
      continue;
    bench_.cancel();
    const auto wall = bench_.wall();
    const bool blank = wall && isBlank(*wall->layout.wall) && starter.lengths.size() > kOutlineLengths;
    auto started = askStarter(bench_.session().base(), starter, blank ? bench_.session().wall() : Id{}, theme_, this);
    if (!started)
      return;
    bench_.session().apply(std::move(started->job), starter.title);
    bench_.session().show(started->wall);
    elevation_->zoomToFit();
    elevation_->setFocus();
    return;
  }
}

} // namespace sillwright
