#include <zbar.h>

#include "tests/peers/peers.hpp"

namespace rackside::tests {

std::set<std::string> read_by_zbar(const GreyImage& image) {
  zbar::ImageScanner scanner;
  scanner.set_config(zbar::ZBAR_NONE, zbar::ZBAR_CFG_ENABLE, 0);
  scanner.set_config(zbar::ZBAR_QRCODE, zbar::ZBAR_CFG_ENABLE, 1);
  zbar::Image picture(static_cast<unsigned>(image.width), static_cast<unsigned>(image.height),
                      "Y800", image.pixels.data(), image.pixels.size());
  scanner.scan(picture);
  std::set<std::string> texts;
  for (auto symbol = picture.symbol_begin(); symbol != picture.symbol_end(); ++symbol)
    texts.insert(symbol->get_data());
  return texts;
}

}  // namespace rackside::tests
