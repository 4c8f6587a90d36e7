#include "labels/reader/soft_decoder.hpp"

#include <cmath>

#include "labels/reader/code_space.hpp"
#include "tests/frame.hpp"
#include "tests/generators/symbols.hpp"

using namespace rackside;

namespace {

// The beliefs of a perfect picture: +1 and -1.
std::vector<float> perfect(int version, FreeBits free) {
  const CodeSpace& space = code_space(version);
  CodewordBits word = space.fixed;
  for (std::size_t k = 0; k < free_bits; ++k)
    if (free >> k & 1) word ^= space.rows[k];
  std::vector<float> beliefs;
  for (std::size_t i = 0; i < space.length; ++i) beliefs.push_back(word[i] ? 1.0f : -1.0f);
  return beliefs;
}

FreeBits bits_of(const Code& code) {
  constexpr std::string_view characters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";
  FreeBits bits = 0;
  for (std::size_t i = 0; i < code_length; i += 2)
    bits =
        bits << 11 | (characters.find(code.text()[i]) * 45 + characters.find(code.text()[i + 1]));
  return bits;
}

// How many of `tries` random codes come back right, and wrong, after `disturb`.
template <class Disturb>
std::pair<int, int> survivors(int version, int tries, Disturb disturb) {
  tests::Random random(11);
  int right = 0, wrong = 0;
  for (int i = 0; i < tries; ++i) {
    const Code code = tests::random_code(random);
    auto beliefs = perfect(version, bits_of(code));
    disturb(beliefs, random);
    const auto decoded = decode_softly(version, beliefs, 2);
    if (!decoded || decoded->chance_log2 > accepted_chance_log2) continue;
    (decoded->code == code ? right : wrong) += 1;
  }
  return {right, wrong};
}

}  // namespace

TEST_CASE("an undisturbed symbol is read") {
  const auto [right, wrong] = survivors(1, 50, [](auto&, auto&) {});
  CHECK(right == 50);
  CHECK(wrong == 0);
}

TEST_CASE(
    "noise that turns a tenth of all bits is mended, more than the standard's correction can") {
  // Gaussian noise of 0.78 turns 10 % of the bits: some 14 of 26 codewords are touched, and the
  // standard's own correction mends 8.
  for (const int version : {1, 2}) {
    const auto [right, wrong] = survivors(version, 100, [](auto& beliefs, auto& random) {
      std::normal_distribution<float> noise(0, 0.78f);
      for (float& belief : beliefs) belief += noise(random);
    });
    CHECK(right >= 97);
    CHECK(wrong == 0);
  }
}

TEST_CASE("a symbol of which half is hidden is read from the other half") {
  const auto [right, wrong] = survivors(1, 100, [](auto& beliefs, auto&) {
    std::fill(beliefs.begin(), beliefs.begin() + static_cast<long>(beliefs.size() / 2), 0.0f);
  });
  CHECK(right >= 99);
  CHECK(wrong == 0);
}

TEST_CASE("bits by chance are never a code") {
  tests::Random random(12);
  std::normal_distribution<float> noise;
  for (int i = 0; i < 2000; ++i) {
    std::vector<float> beliefs(code_space(1 + i % 2).length);
    for (float& belief : beliefs) belief = noise(random);
    const auto decoded = decode_softly(1 + i % 2, beliefs, 2);
    CHECK_FALSE((decoded && decoded->chance_log2 < accepted_chance_log2));
  }
}

TEST_CASE("the bound on chance is never below the exact binomial, and close to it") {
  // With equal strengths the share against is the share of wrong bits, whose exact tail is known.
  const std::vector<float> strengths(208, 0.7f);
  for (int wrong = 0; wrong <= 50; wrong += 5) {
    double tail = 0, term = std::pow(0.5, 208);
    for (int k = 0; k <= wrong; ++k) {
      tail += term;
      term *= static_cast<double>(208 - k) / (k + 1);
    }
    const double exact = std::log2(tail) + code_count_log2;
    const double bound = chance_log2(strengths, wrong / 208.0);
    CHECK(bound >= exact - 1e-6);
    CHECK(bound < exact + 8);
  }
}

TEST_CASE("patterns whose check character does not fit are no code") {
  tests::Random random(13);
  int codes = 0;
  for (int i = 0; i < 200'000; ++i) codes += code_of(random() >> 20).has_value();
  // One pattern in 11,500: 17 expected here.
  CHECK(codes > 3);
  CHECK(codes < 45);
}
