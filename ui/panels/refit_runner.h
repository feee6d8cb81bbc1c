// Solves refits beside the window: a question is answered on a worker thread, the answer heard on the thread of this
// object. A question that waits for its turn is dropped when another is asked.
#pragma once

#include <QObject>
#include <QThreadPool>

#include <functional>

#include "core/gesture/refit_desk.h"

namespace sillwright {

class RefitRunner : public QObject {
  Q_OBJECT

public:
  using Heard = std::function<void(std::size_t number, RefitAnswer answer)>;
  explicit RefitRunner(Heard heard, QObject* parent = nullptr);
  ~RefitRunner() override; // waits for what is being solved

  void ask(const RefitQuestion& question);

private:
  Heard heard_;
  QThreadPool workers_;
};

} // namespace sillwright
