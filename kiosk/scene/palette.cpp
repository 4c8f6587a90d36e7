#include "kiosk/scene/palette.hpp"

#include <algorithm>
#include <cmath>

namespace rackside::kiosk {
namespace {

//                        Paper            Slip             Text             Soft
//                        Line             Accent           OnAccent         Wash
constexpr Palette day{{{{0xF6, 0xF1, 0xE4},
                        {0xE9, 0xE1, 0xCD},
                        {0x1E, 0x1A, 0x14},
                        {0x4A, 0x42, 0x36},
                        {0xA8, 0x9C, 0x86},
                        {0x0B, 0x4F, 0x5C},
                        {0xFF, 0xFB, 0xF0},
                        {0xBF, 0xCF, 0xC9}}}};
constexpr Palette dusk{{{{0x16, 0x1B, 0x20},
                         {0x24, 0x2B, 0x32},
                         {0xEC, 0xE6, 0xD8},
                         {0xBD, 0xB7, 0xAA},
                         {0x5A, 0x63, 0x6B},
                         {0xE8, 0xB9, 0x6A},
                         {0x14, 0x12, 0x0C},
                         {0x4A, 0x42, 0x2E}}}};
constexpr Palette night{{{{0x05, 0x00, 0x00},
                          {0x19, 0x05, 0x04},
                          {0xFF, 0x84, 0x70},
                          {0xF4, 0x7A, 0x68},
                          {0x70, 0x22, 0x1A},
                          {0xFF, 0xC4, 0xB4},
                          {0x16, 0x02, 0x02},
                          {0x4C, 0x12, 0x0C}}}};

double linear(std::uint8_t channel) {
  const double value = channel / 255.0;
  return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

double luminance(Colour colour) {
  return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
}

}  // namespace

const Palette& palette(PaletteName name) {
  switch (name) {
    case PaletteName::Day: return day;
    case PaletteName::Dusk: return dusk;
    case PaletteName::Night: return night;
  }
  return day;
}

double contrast(Colour a, Colour b) {
  const double one = luminance(a);
  const double other = luminance(b);
  return (std::max(one, other) + 0.05) / (std::min(one, other) + 0.05);
}

}  // namespace rackside::kiosk
