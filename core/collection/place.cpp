#include "core/collection/place.hpp"

#include <algorithm>
#include <cctype>

namespace rackside {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

std::string_view take_number(std::string_view& text) {
  std::size_t end = 0;
  while (end < text.size() && is_digit(text[end])) ++end;
  std::string_view number = text.substr(0, end);
  text.remove_prefix(end);
  number.remove_prefix(std::min(number.find_first_not_of('0'), number.size()));
  return number;
}

int compare_numbers(std::string_view a, std::string_view b) {
  if (a.size() != b.size()) return a.size() < b.size() ? -1 : 1;
  return a.compare(b);
}

int natural_compare(std::string_view a, std::string_view b) {
  const auto lower = [](char c) { return std::tolower(static_cast<unsigned char>(c)); };
  while (!a.empty() && !b.empty()) {
    if (is_digit(a[0]) && is_digit(b[0])) {
      const int order = compare_numbers(take_number(a), take_number(b));
      if (order != 0) return order;
      continue;
    }
    const int order = lower(a[0]) - lower(b[0]);
    if (order != 0) return order;
    a.remove_prefix(1);
    b.remove_prefix(1);
  }
  return static_cast<int>(!a.empty()) - static_cast<int>(!b.empty());
}

int compare_known_first(std::string_view a, std::string_view b) {
  if (a.empty() != b.empty()) return a.empty() ? 1 : -1;
  return natural_compare(a, b);
}

}  // namespace

bool natural_before(std::string_view a, std::string_view b) { return natural_compare(a, b) < 0; }

bool walks_before(const Place& a, const Place& b) {
  if (const int order = compare_known_first(a.rack, b.rack); order != 0) return order < 0;
  if (const int order = compare_known_first(a.shelf, b.shelf); order != 0) return order < 0;
  return compare_known_first(a.position, b.position) < 0;
}

std::string format_place(const Place& place) {
  std::string text;
  const auto part = [&](std::string_view word, const std::string& value) {
    if (value.empty()) return;
    if (!text.empty()) text += ", ";
    text += word;
    text += ' ';
    text += value;
  };
  part("rack", place.rack);
  part("shelf", place.shelf);
  part("position", place.position);
  return text;
}

}  // namespace rackside
