#pragma once
// A clock that stands still until it is told to go on, and ids that count.

#include "core/clock/clock.hpp"
#include "core/clock/id_source.hpp"

namespace rackside::tests {

class FixedClock : public Clock {
 public:
  explicit FixedClock(Moment moment) : moment_(moment) {}
  Moment now() override { return moment_; }
  std::chrono::minutes offset_at(Instant) override { return moment_.offset; }
  void advance(std::chrono::milliseconds by) { moment_.utc += by; }

 private:
  Moment moment_;
};

class CountingIds : public IdSource {
 public:
  /// The first id is that of `first`.
  explicit CountingIds(std::uint64_t first = 1) : next_(first) {}
  Uuid next() override {
    Uuid id;
    for (std::size_t i = 0; i < 8; ++i)
      id.bytes[15 - i] = static_cast<std::uint8_t>(next_ >> (8 * i));
    ++next_;
    return id;
  }

 private:
  std::uint64_t next_;
};

}  // namespace rackside::tests
