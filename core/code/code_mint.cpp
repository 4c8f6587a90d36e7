#include "core/code/code_mint.hpp"

namespace rackside {
namespace {

constexpr unsigned base = static_cast<unsigned>(code_alphabet.size());
constexpr unsigned block_size = base * base * base;
constexpr unsigned blocks_per_kiosk = 256;

std::string three_characters(unsigned value) {
  std::string text(3, '0');
  for (std::size_t i = 3; i-- > 0; value /= base) text[i] = code_alphabet[value % base];
  return text;
}

// FNV-1a over the id and the number of the block: spreads ids that differ in few bits.
unsigned block_prefix(const KioskId& kiosk, unsigned block) {
  std::uint32_t hash = 2166136261u;
  const auto mix = [&](std::uint8_t byte) { hash = (hash ^ byte) * 16777619u; };
  for (const std::uint8_t byte : kiosk.value.bytes) mix(byte);
  mix(static_cast<std::uint8_t>(block));
  return hash % block_size;
}

}  // namespace

CodeMint::CodeMint(CodeKind kind, KioskId kiosk, Taken taken)
    : kind_(kind), kiosk_(kiosk), taken_(std::move(taken)) {}

Result<Code> CodeMint::next() {
  for (; block_ < blocks_per_kiosk; ++block_, running_ = 0) {
    const std::string prefix = three_characters(block_prefix(kiosk_, block_));
    while (running_ < block_size) {
      const auto code = make_code(kind_, prefix + three_characters(running_++));
      if (code && !taken_(*code)) return *code;
    }
  }
  return failure(ErrorKind::Full, "This kiosk has used up all its codes.");
}

}  // namespace rackside
