// Refits all walls beside the window, on all cores: how far it is and the answer are heard on the thread of this
// object.
#pragma once

#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <functional>
#include <memory>

#include "core/gesture/job_refit_desk.h"

namespace sillwright {

class JobRefitRunner : public QObject {
  Q_OBJECT

public:
  using Heard = std::function<void(std::size_t number, std::vector<WallRefit> found)>;
  using Told = std::function<void(std::size_t number, std::size_t done)>;
  JobRefitRunner(Heard heard, Told told, QObject* parent = nullptr);
  ~JobRefitRunner() override; // waits for the walls that are begun

  void ask(const JobRefitQuestion& question);

private:
  Heard heard_;
  Told told_;
  std::shared_ptr<std::atomic<bool>> cancelled_; // of the last question
  QThreadPool workers_;
};

} // namespace sillwright
