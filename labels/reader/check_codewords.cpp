#include "labels/reader/check_codewords.hpp"

namespace rackside {
namespace {

// GF(256) with the primitive polynomial x^8 + x^4 + x^3 + x^2 + 1 (ISO/IEC 18004:2015, 7.5.2).
std::uint8_t times(std::uint8_t a, std::uint8_t b) {
  unsigned product = 0, factor = a;
  for (; b != 0; b >>= 1) {
    if (b & 1) product ^= factor;
    factor = factor << 1 ^ (factor & 0x80 ? 0x11D : 0);
  }
  return static_cast<std::uint8_t>(product);
}

// (x - 1)(x - 2)(x - 4)...: coefficients from the highest power down, without the leading 1.
std::vector<std::uint8_t> generator_polynomial(int degree) {
  std::vector<std::uint8_t> polynomial{1};
  std::uint8_t root = 1;
  for (int i = 0; i < degree; ++i, root = times(root, 2)) {
    polynomial.push_back(0);
    for (std::size_t k = polynomial.size() - 1; k > 0; --k)
      polynomial[k] ^= times(polynomial[k - 1], root);
  }
  polynomial.erase(polynomial.begin());
  return polynomial;
}

}  // namespace

std::vector<std::uint8_t> with_check_codewords(std::vector<std::uint8_t> data, int count) {
  const auto generator = generator_polynomial(count);
  std::vector<std::uint8_t> remainder(generator.size(), 0);
  for (const std::uint8_t codeword : data) {
    const std::uint8_t lead = codeword ^ remainder.front();
    remainder.erase(remainder.begin());
    remainder.push_back(0);
    for (std::size_t i = 0; i < generator.size(); ++i) remainder[i] ^= times(generator[i], lead);
  }
  data.insert(data.end(), remainder.begin(), remainder.end());
  return data;
}

}  // namespace rackside
