#pragma once
// Symbols that no encoder would make, drawn codeword by codeword, and pictures without optics.

#include <cstdint>
#include <vector>

#include "labels/reader/grey_image.hpp"
#include "tests/generators/symbols.hpp"

namespace rackside::tests {

/// Version 1-H around nine data codewords, with check codewords and mask 0.
[[nodiscard]] Modules symbol_around(const std::vector<std::uint8_t>& data_codewords);

/// Valid error correction around a bit stream that is cut: 300 characters are announced.
[[nodiscard]] Modules cut_bit_stream();

/// White paper with symbols upright on it.
class Sheet {
 public:
  Sheet(int width, int height);
  void put(const Modules& modules, int left, int top, int module_px);
  [[nodiscard]] const GreyImage& image() const { return image_; }

 private:
  GreyImage image_;
};

/// `modules` with its quiet zone, filling a picture of its own.
[[nodiscard]] GreyImage drawn(const Modules& modules, int module_px);

}  // namespace rackside::tests
