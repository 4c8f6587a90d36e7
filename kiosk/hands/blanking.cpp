#include "kiosk/hands/blanking.hpp"

namespace rackside::kiosk {
namespace {

// Two knocks of one finger come within a quarter of a second (common practice, no source).
constexpr Blanking::Time one_waking{250};

}  // namespace

void Blanking::set_after(Time after) {
  after_ = after;
  if (after_ == Time{0}) dark_ = false;
}

bool Blanking::touched(Time now) {
  last_ = now;
  if (dark_) woken_ = now;
  dark_ = false;
  return woken_ && now - *woken_ < one_waking;
}

void Blanking::tick(Time now) {
  if (const auto deadline = next_deadline()) dark_ = now >= *deadline;
}

std::optional<Blanking::Time> Blanking::next_deadline() const {
  if (dark_ || after_ == Time{0}) return std::nullopt;
  return last_ + after_;
}

}  // namespace rackside::kiosk
