#pragma once
// A PIN in memory, not hashed, with the waits of the real one.

#include <optional>
#include <string>

#include "core/people/pin.hpp"

namespace rackside::tests {

class FakePinKeeper : public PinKeeper {
 public:
  std::optional<std::string> pin;
  Uptime uptime{0};
  std::optional<Error> broken;  // what every call answers

  [[nodiscard]] Result<bool> is_set() override {
    if (broken) return tl::unexpected(*broken);
    return pin.has_value();
  }
  [[nodiscard]] Result<void> set(std::string_view digits) override {
    if (broken) return tl::unexpected(*broken);
    if (const auto fine = judge_new_pin(digits); !fine) return fine;
    pin = digits;
    tries_.right();
    return {};
  }
  [[nodiscard]] Result<PinAnswer> check(std::string_view digits) override {
    if (broken) return tl::unexpected(*broken);
    if (!pin) return failure(ErrorKind::NotFound, "No PIN is set yet.");
    if (const auto left = tries_.left(uptime); left.count() > 0)
      return PinAnswer{PinVerdict::Wait, left};
    tries_.begin(uptime);
    if (digits != *pin) return PinAnswer{PinVerdict::Wrong, tries_.left(uptime)};
    tries_.right();
    return PinAnswer{PinVerdict::Right, {}};
  }

 private:
  PinTries tries_{0};
};

}  // namespace rackside::tests
