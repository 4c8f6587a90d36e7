#include "labels/batch/counting_up.hpp"

#include <fmt/format.h>

#include <charconv>

namespace rackside {
namespace {

// Longer numbers are no positions, and would not fit into an int.
constexpr std::size_t most_digits = 8;

}  // namespace

Result<std::string> counted_up(std::string_view text, int steps) {
  const auto last_other = text.find_last_not_of("0123456789");
  const std::size_t start = last_other == std::string_view::npos ? 0 : last_other + 1;
  const std::string_view digits = text.substr(start);
  if (digits.empty() || digits.size() > most_digits)
    return failure(ErrorKind::BadInput,
                   fmt::format("\"{}\" does not end in a number that can be counted up.", text));
  int number = 0;
  std::from_chars(digits.data(), digits.data() + digits.size(), number);
  return fmt::format("{}{:0{}}", text.substr(0, start), number + steps, digits.size());
}

int number_after(std::string_view prefix, std::string_view text) {
  if (!text.starts_with(prefix)) return 0;
  text.remove_prefix(prefix.size());
  int number = 0;
  const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), number);
  const bool whole = problem == std::errc{} && end == text.data() + text.size();
  return whole && number > 0 ? number : 0;
}

}  // namespace rackside
