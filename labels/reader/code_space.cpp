#include "labels/reader/code_space.hpp"

#include <string>
#include <string_view>

#include "labels/reader/check_codewords.hpp"
#include "labels/symbol/symbol_layout.hpp"

namespace rackside {
namespace {

constexpr std::string_view alphanumeric = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";
constexpr unsigned pair_limit = 45 * 45;

// The first eight data codewords: mode 0010, count 000001000, 44 free bits, terminator 0000, 000.
std::vector<std::uint8_t> data_codewords(FreeBits free, int count) {
  constexpr std::uint64_t header = 0b0010'000001000;
  const std::uint64_t message = header << 51 | free << 7;
  std::vector<std::uint8_t> data;
  for (int shift = 56; shift >= 0; shift -= 8)
    data.push_back(static_cast<std::uint8_t>(message >> shift));
  for (bool first = true; static_cast<int>(data.size()) < count; first = !first)
    data.push_back(first ? 0xEC : 0x11);
  return data;
}

CodewordBits word_of(FreeBits free, const SymbolLayout& layout) {
  CodewordBits bits;
  std::size_t i = 0;
  for (const std::uint8_t codeword :
       with_check_codewords(data_codewords(free, layout.data_codewords), layout.check_codewords))
    for (int bit = 7; bit >= 0; --bit) bits[i++] = codeword >> bit & 1;
  return bits;
}

CodeSpace make_space(int version) {
  const SymbolLayout& layout = symbol_layout(version);
  CodeSpace space{layout.bit_places.size(), word_of(0, layout), {}};
  for (std::size_t i = 0; i < free_bits; ++i)
    space.rows[i] = word_of(FreeBits{1} << i, layout) ^ space.fixed;
  return space;
}

}  // namespace

const CodeSpace& code_space(int version) {
  static const CodeSpace spaces[] = {make_space(1), make_space(2)};
  return spaces[version - 1];
}

std::optional<Code> code_of(FreeBits bits) {
  std::string text;
  for (int shift = free_bits - 11; shift >= 0; shift -= 11) {
    const auto pair = static_cast<unsigned>(bits >> shift & 0x7FF);
    if (pair >= pair_limit) return std::nullopt;
    for (const char c : {alphanumeric[pair / 45], alphanumeric[pair % 45]}) {
      if (code_alphabet.find(c) == std::string_view::npos) return std::nullopt;
      text += c;
    }
  }
  const auto code = parse_code(text);
  return code ? std::optional(*code) : std::nullopt;
}

}  // namespace rackside
