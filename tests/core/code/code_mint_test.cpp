#include "core/code/code_mint.hpp"

#include <set>

#include "tests/frame.hpp"

using namespace rackside;

namespace {
KioskId kiosk(std::uint8_t number) {
  KioskId id;
  id.value.bytes[15] = number;
  return id;
}
}  // namespace

TEST_CASE("ten thousand codes of one kiosk differ") {
  CodeMint mint(CodeKind::Enclosure, kiosk(1), [](const Code&) { return false; });
  std::set<Code> codes;
  for (int i = 0; i < 10'000; ++i) codes.insert(mint.next().value());
  CHECK(codes.size() == 10'000);
}

TEST_CASE("two kiosks do not issue the same codes") {
  std::set<Code> codes;
  for (std::uint8_t number = 1; number <= 4; ++number) {
    CodeMint mint(CodeKind::Enclosure, kiosk(number), [](const Code&) { return false; });
    for (int i = 0; i < 2'000; ++i) codes.insert(mint.next().value());
  }
  CHECK(codes.size() == 8'000);
}

TEST_CASE("codes that the log knows are passed over, also when a whole block is taken") {
  std::set<Code> taken;
  const auto is_taken = [&](const Code& code) { return taken.contains(code); };
  CodeMint first(CodeKind::Enclosure, kiosk(9), is_taken);
  for (int i = 0; i < 17'000; ++i) taken.insert(first.next().value());
  CodeMint again(CodeKind::Enclosure, kiosk(9), is_taken);
  CHECK_FALSE(taken.contains(again.next().value()));
}
