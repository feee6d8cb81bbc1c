// Copy-on-write: a value that copies as cheaply as a pointer. Comparing looks at the pointer first.
#pragma once

#include <memory>
#include <utility>

namespace sillwright {

template <class T> class Shared {
public:
  Shared() : held_(std::make_shared<const T>()) {}
  Shared(T value) : held_(std::make_shared<const T>(std::move(value))) {}

  const T& operator*() const { return *held_; }
  const T* operator->() const { return held_.get(); }
  // True when both are the very same stored value; false says nothing about equality.
  bool same(const Shared& other) const { return held_ == other.held_; }
  const std::shared_ptr<const T>& pointer() const { return held_; }

  // Replaces the value by a changed copy. The old value stays with everybody else who holds it.
  template <class Change> void edit(Change&& change) {
    T copy = *held_;
    std::forward<Change>(change)(copy);
    held_ = std::make_shared<const T>(std::move(copy));
  }

  bool operator==(const Shared& other) const { return held_ == other.held_ || *held_ == *other.held_; }

private:
  std::shared_ptr<const T> held_;
};

} // namespace sillwright
