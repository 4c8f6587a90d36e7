#include "core/code/code_of_name.hpp"

#include <cstdint>
#include <string>

namespace rackside {
namespace {

// FNV-1a, 64 bits. Printed codes depend on it: it must never change.
std::uint64_t hash_of(std::string_view text) {
  std::uint64_t hash = 14695981039346656037u;
  for (const char c : text) hash = (hash ^ static_cast<std::uint8_t>(c)) * 1099511628211u;
  return hash;
}

std::string body_of(std::uint64_t value) {
  std::string body;
  // The low bits of the hash are its weakest.
  for (value >>= 16; body.size() < code_body_length; value /= code_alphabet.size())
    body += code_alphabet[value % code_alphabet.size()];
  return body;
}

}  // namespace

Code code_of_name(CodeKind kind, std::string_view name) {
  // About one body in four has no check character in the alphabet; the next hash is tried then.
  for (std::uint64_t hash = hash_of(name);; hash = hash_of(std::to_string(hash)))
    if (const auto code = make_code(kind, body_of(hash))) return *code;
}

Code code_of_shelf(std::string_view rack, std::string_view shelf) {
  return code_of_name(CodeKind::Shelf, std::string(rack) + '\n' + std::string(shelf));
}

}  // namespace rackside
