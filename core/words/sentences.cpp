#include "core/words/sentences.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace rackside {
namespace {

bool ends_with_any(std::string_view word, std::initializer_list<std::string_view> endings) {
  return std::ranges::any_of(endings, [&](auto ending) { return word.ends_with(ending); });
}

}  // namespace

std::string count_of(std::int64_t number, std::string_view one) {
  return fmt::format("{} {}", number, number == 1 ? std::string(one) : plural(one));
}

std::string plural(std::string_view word) {
  if (word.empty() || word.ends_with("s")) return std::string(word);
  if (ends_with_any(word, {"ch", "sh", "x", "z"})) return fmt::format("{}es", word);
  if (word.ends_with("y") && !ends_with_any(word, {"ay", "ey", "oy", "uy"}))
    return fmt::format("{}ies", word.substr(0, word.size() - 1));
  return fmt::format("{}s", word);
}

std::string as_line(std::string_view text) {
  std::string line(text);
  if (line.empty()) return line;
  if (line.front() >= 'a' && line.front() <= 'z')
    line.front() = static_cast<char>(line.front() - 'a' + 'A');
  if (!ends_with_any(line, {".", "?", "!"})) line += '.';
  return line;
}

std::string in_ten(double probability) {
  const long tenths = std::lround(probability * 10.0);
  if (tenths >= 10) return "more than 9 of 10";
  if (tenths <= 0) return "less than 1 of 10";
  return fmt::format("{} of 10", tenths);
}

}  // namespace rackside
