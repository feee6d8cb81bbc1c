#include "ui/panels/refit_runner.h"

#include <utility>

namespace sillwright {

RefitRunner::RefitRunner(Heard heard, QObject* parent) : QObject(parent), heard_(std::move(heard)) {
  workers_.setMaxThreadCount(2); // one may still be at work on a question that nobody asks any more
}

RefitRunner::~RefitRunner() {
  workers_.clear();
  workers_.waitForDone();
}

void RefitRunner::ask(const RefitQuestion& question) {
  workers_.clear();
  workers_.start([this, question] {
    RefitAnswer answer = answerTo(question);
    QMetaObject::invokeMethod(
        this, [this, number = question.number, answer = std::move(answer)] { heard_(number, answer); },
        Qt::QueuedConnection);
  });
}

} // namespace sillwright
