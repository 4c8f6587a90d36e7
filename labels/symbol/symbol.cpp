#include "labels/symbol/symbol.hpp"

#include <fmt/format.h>
#include <qrencode.h>

#include <algorithm>
#include <memory>

namespace rackside {
namespace {

int number_of(SymbolVersion version) { return version == SymbolVersion::V1 ? 1 : 2; }

QRecLevel library_level(ErrorCorrection level) {
  switch (level) {
    case ErrorCorrection::L: return QR_ECLEVEL_L;
    case ErrorCorrection::M: return QR_ECLEVEL_M;
    case ErrorCorrection::Q: return QR_ECLEVEL_Q;
    case ErrorCorrection::H: return QR_ECLEVEL_H;
  }
  return QR_ECLEVEL_H;
}

}  // namespace

int side_of(SymbolVersion version) { return 17 + 4 * number_of(version); }
int full_side_of(SymbolVersion version) { return side_of(version) + 2 * quiet_zone; }

std::string_view version_name(SymbolVersion version) {
  return version == SymbolVersion::V1 ? "V1-H" : "V2-H";
}

Result<Symbol> encode_symbol(std::string_view text, SymbolVersion version, ErrorCorrection level) {
  // The library takes `version` as the least one and goes up by itself.
  const std::unique_ptr<QRcode, decltype(&QRcode_free)> made(
      QRcode_encodeString(std::string(text).c_str(), number_of(version), library_level(level),
                          QR_MODE_8, 1),
      &QRcode_free);
  if (!made || made->width != side_of(version))
    return failure(ErrorKind::BadInput,
                   fmt::format("{} characters do not fit into this symbol.", text.size()));
  Symbol symbol{.side = made->width, .dark = {}};
  symbol.dark.resize(static_cast<std::size_t>(symbol.side * symbol.side));
  std::transform(made->data, made->data + symbol.dark.size(), symbol.dark.begin(),
                 [](unsigned char module) { return static_cast<std::uint8_t>(module & 1); });
  return symbol;
}

Symbol make_symbol(const Code& code, SymbolVersion version) {
  // Eight characters of the alphanumeric mode always fit: V1-H holds ten.
  return encode_symbol(code.text(), version, ErrorCorrection::H).value();
}

}  // namespace rackside
