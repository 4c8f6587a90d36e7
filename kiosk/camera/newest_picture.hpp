#pragma once
// The newest picture, on its way from the thread that looks to the one that draws.

#include <cstdint>
#include <memory>
#include <mutex>

#include "labels/reader/grey_image.hpp"

namespace rackside {

class NewestPicture {
 public:
  /// Puts `picture` in the place of the one before; its number, which is never 0.
  std::uint64_t put(std::shared_ptr<const GreyImage> picture) {
    const std::lock_guard lock(mutex_);
    picture_ = std::move(picture);
    return ++number_;
  }
  /// None before the first and after `clear`.
  [[nodiscard]] std::shared_ptr<const GreyImage> get() const {
    const std::lock_guard lock(mutex_);
    return picture_;
  }
  void clear() {
    const std::lock_guard lock(mutex_);
    picture_.reset();
  }

 private:
  mutable std::mutex mutex_;
  std::shared_ptr<const GreyImage> picture_;
  std::uint64_t number_ = 0;
};

}  // namespace rackside
