#include "ui/panels/job_refit_runner.h"

#include <utility>

namespace sillwright {

JobRefitRunner::JobRefitRunner(Heard heard, Told told, QObject* parent)
    : QObject(parent), heard_(std::move(heard)), told_(std::move(told)) {
  workers_.setMaxThreadCount(2); // one may still be ending a question that nobody asks any more
}

JobRefitRunner::~JobRefitRunner() {
  if (cancelled_)
    *cancelled_ = true;
  workers_.clear();
  workers_.waitForDone();
}

void JobRefitRunner::ask(const JobRefitQuestion& question) {
  workers_.clear();
  cancelled_ = question.cancelled;
  workers_.start([this, question] {
    // One message at a time is on its way: a thousand walls must not keep the window busy with telling.
    const auto done = std::make_shared<std::atomic<std::size_t>>(0);
    const auto onItsWay = std::make_shared<std::atomic<bool>>(false);
    const auto progress = [&](std::size_t count, std::size_t) {
      *done = count;
      if (!onItsWay->exchange(true))
        QMetaObject::invokeMethod(
            this,
            [this, number = question.number, done, onItsWay] {
              *onItsWay = false;
              told_(number, *done);
            },
            Qt::QueuedConnection);
    };
    std::vector<WallRefit> found = answersTo(question, progress);
    QMetaObject::invokeMethod(
        this, [this, number = question.number, found = std::move(found)] { heard_(number, found); },
        Qt::QueuedConnection);
  });
}

} // namespace sillwright
