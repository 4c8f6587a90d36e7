#include "core/values/uuid.hpp"

#include <fmt/format.h>

namespace rackside {
namespace {

constexpr std::uint16_t counter_limit = 0x0FFF;

int hex_value(char c) {
  if (c >= '0' && c <= '9') return c - '0';
  if (c >= 'a' && c <= 'f') return c - 'a' + 10;
  if (c >= 'A' && c <= 'F') return c - 'A' + 10;
  return -1;
}

bool is_hyphen_place(std::size_t i) { return i == 8 || i == 13 || i == 18 || i == 23; }

}  // namespace

std::string format_uuid(const Uuid& id) {
  std::string text;
  text.reserve(36);
  for (std::size_t i = 0; i < id.bytes.size(); ++i) {
    if (i == 4 || i == 6 || i == 8 || i == 10) text += '-';
    fmt::format_to(std::back_inserter(text), "{:02x}", id.bytes[i]);
  }
  return text;
}

Result<Uuid> parse_uuid(std::string_view text) {
  const auto refused = [&] {
    return failure(ErrorKind::BadInput, fmt::format("\"{}\" is not an id", text.substr(0, 40)));
  };
  if (text.size() != 36) return refused();
  Uuid id;
  std::size_t nibble = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (is_hyphen_place(i)) {
      if (text[i] != '-') return refused();
      continue;
    }
    const int value = hex_value(text[i]);
    if (value < 0) return refused();
    auto& byte = id.bytes[nibble / 2];
    byte = static_cast<std::uint8_t>(byte << 4 | value);
    ++nibble;
  }
  return id;
}

Instant instant_of(const Uuid& id) {
  std::int64_t ms = 0;
  for (std::size_t i = 0; i < 6; ++i) ms = ms << 8 | id.bytes[i];
  return Instant{std::chrono::milliseconds{ms}};
}

Uuid UuidMint::next(Instant now, std::uint64_t random) {
  const std::int64_t ms = now.time_since_epoch().count();
  if (ms > last_ms_) {
    last_ms_ = ms;
    counter_ = 0;
  } else if (counter_ < counter_limit) {
    ++counter_;
  } else {
    ++last_ms_;
    counter_ = 0;
  }
  Uuid id;
  for (std::size_t i = 0; i < 6; ++i)
    id.bytes[i] = static_cast<std::uint8_t>(last_ms_ >> (40 - 8 * i));
  id.bytes[6] = static_cast<std::uint8_t>(0x70 | counter_ >> 8);
  id.bytes[7] = static_cast<std::uint8_t>(counter_ & 0xFF);
  for (std::size_t i = 0; i < 8; ++i)
    id.bytes[8 + i] = static_cast<std::uint8_t>(random >> (56 - 8 * i));
  id.bytes[8] = static_cast<std::uint8_t>(0x80 | (id.bytes[8] & 0x3F));
  return id;
}

}  // namespace rackside
