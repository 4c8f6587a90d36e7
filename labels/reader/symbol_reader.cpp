#include "labels/reader/symbol_reader.hpp"

#include <ZXing/ReadBarcode.h>

#include <algorithm>
#include <exception>

namespace rackside {
namespace {

constexpr std::size_t most_symbols = 32;

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

Point Sighting::centre() const {
  Point sum;
  for (const Point& corner : corners) {
    sum.x += corner.x / 4;
    sum.y += corner.y / 4;
  }
  return sum;
}

std::vector<Sighting> read_symbols(const GreyImage& image) {
  if (image.empty()) return {};
  ZXing::DecodeHints hints;
  hints.setFormats(ZXing::BarcodeFormat::QRCode);
  hints.setMaxNumberOfSymbols(most_symbols);
  std::vector<Sighting> sightings;
  try {
    const ZXing::ImageView view(image.pixels.data(), image.width, image.height,
                                ZXing::ImageFormat::Lum);
    for (const ZXing::Result& result : ZXing::ReadBarcodes(view, hints))
      if (result.isValid()) sightings.push_back(as_sighting(result));
  } catch (const std::exception&) {
    // A symbol with valid error correction and a cut bit stream makes the library throw.
    return {};
  }
  const Point middle{image.width / 2.0, image.height / 2.0};
  std::ranges::sort(sightings, {}, [&](const Sighting& sighting) {
    return distance_squared(sighting.centre(), middle);
  });
  return sightings;
}

}  // namespace rackside
