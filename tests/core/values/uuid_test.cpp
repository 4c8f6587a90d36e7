#include "core/values/uuid.hpp"

#include <set>

#include "tests/frame.hpp"

using namespace rackside;

TEST_CASE("the version 7 example of RFC 9562 appendix A.6 carries its timestamp") {
  // RFC 9562, A.6: 017F22E2-79B0-7CC3-98C4-DC0C0C07398F was made on 2022-02-22T14:22:22-05:00.
  const auto id = parse_uuid("017F22E2-79B0-7CC3-98C4-DC0C0C07398F");
  REQUIRE(id);
  CHECK(instant_of(*id) == parse_when("2022-02-22T14:22:22-05:00", {})->moment.utc);
  CHECK(format_uuid(*id) == "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
}

TEST_CASE("a made id has version 7, variant 10, and its time in front") {
  // RFC 9562 section 5.7: version in the high half of byte 6, variant in the two top bits of
  // byte 8.
  UuidMint mint;
  const Instant now = parse_when("2022-02-22T14:22:22-05:00", {})->moment.utc;
  const Uuid id = mint.next(now, ~0ull);
  CHECK(id.bytes[6] >> 4 == 7);
  CHECK(id.bytes[8] >> 6 == 2);
  CHECK(instant_of(id) == now);
}

TEST_CASE("ids sort in the order they were made, also when the clock goes back") {
  rc::prop("strictly increasing", [](const std::vector<std::uint16_t>& clock) {
    UuidMint mint;
    Uuid last;
    for (const auto ms : clock) {
      const Uuid id = mint.next(Instant{std::chrono::milliseconds{ms % 7}}, ms);
      RC_ASSERT(last < id);
      last = id;
    }
  });
  // More than the counter holds within one millisecond.
  UuidMint mint;
  std::set<Uuid> seen;
  Uuid last;
  for (int i = 0; i < 10'000; ++i) {
    const Uuid id = mint.next(Instant{std::chrono::milliseconds{5}}, 0);
    REQUIRE(last < id);
    last = id;
  }
}

TEST_CASE("texts that are no ids are refused") {
  for (const char* text :
       {"", "017f22e2", "017f22e2-79b0-7cc3-98c4-dc0c0c07398",
        "017f22e2-79b0-7cc3-98c4-dc0c0c07398g", "017f22e2x79b0-7cc3-98c4-dc0c0c07398f"}) {
    INFO(text);
    CHECK_FALSE(parse_uuid(text));
  }
}
