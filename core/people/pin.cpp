#include "core/people/pin.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace rackside {
namespace {

using std::chrono::seconds;

constexpr int free_tries = 3;
constexpr seconds first_wait{30};
constexpr seconds longest_wait{3600};

// Steps of one from digit to digit; 9 and 0 are neighbours on the way round.
bool runs_by(std::string_view digits, int step) {
  return std::ranges::adjacent_find(digits, [&](char a, char b) {
           return (a - '0' + step + 10) % 10 != b - '0';
         }) == digits.end();
}

bool repeats(std::string_view digits) {
  for (std::size_t piece = 1; piece <= digits.size() / 2; ++piece)
    if (digits.size() % piece == 0 &&
        digits.substr(piece) == digits.substr(0, digits.size() - piece))
      return true;
  return false;
}

bool is_year(std::string_view digits) {
  return digits.size() == 4 && (digits.starts_with("19") || digits.starts_with("20"));
}

bool too_simple(std::string_view digits) {
  return repeats(digits) || runs_by(digits, 1) || runs_by(digits, -1) || is_year(digits) ||
         digits == "2580" || digits == "0852";
}

}  // namespace

Result<void> judge_new_pin(std::string_view digits) {
  const bool all_digits = std::ranges::all_of(digits, [](char c) { return c >= '0' && c <= '9'; });
  if (!all_digits || digits.size() < shortest_pin || digits.size() > longest_pin)
    return failure(ErrorKind::BadInput,
                   fmt::format("A PIN has {} to {} digits.", shortest_pin, longest_pin));
  if (too_simple(digits))
    return failure(ErrorKind::BadInput,
                   "That one is among the first that anybody would try. Take another.");
  return {};
}

seconds wait_after(int wrong_tries) {
  if (wrong_tries < free_tries) return seconds{0};
  seconds wait = first_wait;
  for (int i = free_tries; i < wrong_tries && wait < longest_wait; ++i) wait *= 2;
  return std::min(wait, longest_wait);
}

seconds PinTries::left(Uptime now) const {
  const Uptime left = wait_after(wrong_) - (now - since_);
  return std::max(seconds{0}, std::chrono::ceil<seconds>(left));
}

}  // namespace rackside
