#include "labels/reader/library_pass.hpp"

#include <ZXing/ReadBarcode.h>

#include <exception>

namespace rackside {
namespace {

Point as_point(const ZXing::PointI& point) {
  return {static_cast<double>(point.x), static_cast<double>(point.y)};
}

Sighting as_sighting(const ZXing::Result& result) {
  const auto& position = result.position();
  return {parse_code(result.text()),
          {as_point(position.topLeft()), as_point(position.topRight()),
           as_point(position.bottomRight()), as_point(position.bottomLeft())}};
}

}  // namespace

std::vector<Sighting> library_pass(const GreyImage& image, int most_symbols) {
  if (image.empty()) return {};
  ZXing::DecodeHints hints;
  hints.setFormats(ZXing::BarcodeFormat::QRCode);
  hints.setMaxNumberOfSymbols(static_cast<std::uint8_t>(most_symbols));
  std::vector<Sighting> sightings;
  try {
    const ZXing::ImageView view(image.pixels.data(), image.width, image.height,
                                ZXing::ImageFormat::Lum);
    for (const ZXing::Result& result : ZXing::ReadBarcodes(view, hints))
      if (result.isValid()) sightings.push_back(as_sighting(result));
  } catch (const std::exception&) {
    return {};
  }
  return sightings;
}

}  // namespace rackside
