#include <ZXing/ReadBarcode.h>

#include <exception>

#include "tests/peers/peers.hpp"

namespace rackside::tests {

std::string read_by_zxing(const GreyImage& image) {
  try {
    const auto result = ZXing::ReadBarcode(
        {image.pixels.data(), image.width, image.height, ZXing::ImageFormat::Lum},
        ZXing::DecodeHints().setFormats(ZXing::BarcodeFormat::QRCode));
    return result.isValid() ? result.text() : "";
  } catch (const std::exception&) {
    return "";
  }
}

}  // namespace rackside::tests
