#include "tests/generators/symbols.hpp"

#include <qrencode.h>

#include <memory>
#include <stdexcept>

namespace rackside::tests {
namespace {

struct FreeSymbol {
  void operator()(QRcode* symbol) const { QRcode_free(symbol); }
};

}  // namespace

Modules symbol_of(const std::string& text, int version) {
  const std::unique_ptr<QRcode, FreeSymbol> symbol(
      QRcode_encodeString(text.c_str(), version, QR_ECLEVEL_H, QR_MODE_8, 1));
  if (!symbol) throw std::runtime_error("libqrencode made no symbol of " + text);
  Modules modules{symbol->width, {}};
  for (int i = 0; i < symbol->width * symbol->width; ++i)
    modules.dark.push_back(symbol->data[i] & 1);
  return modules;
}

Code random_code(Random& random) {
  constexpr CodeKind kinds[] = {CodeKind::Enclosure, CodeKind::Person, CodeKind::Action,
                                CodeKind::Shelf};
  for (;;) {
    std::string body;
    for (std::size_t i = 0; i < code_body_length; ++i)
      body += code_alphabet[random() % code_alphabet.size()];
    if (const auto code = make_code(kinds[random() % 4], body)) return *code;
  }
}

Modules mirrored(const Modules& modules) {
  Modules result{modules.side, {}};
  for (int row = 0; row < modules.side; ++row)
    for (int column = 0; column < modules.side; ++column)
      result.dark.push_back(modules.at(modules.side - 1 - column, row));
  return result;
}

Modules inverted(const Modules& modules) {
  Modules result = modules;
  for (auto& dark : result.dark) dark = dark ? 0 : 1;
  return result;
}

}  // namespace rackside::tests
