#include "core/event/signs.hpp"

#include "tests/frame.hpp"

using namespace rackside;

TEST_CASE("signs are written with a semicolon between them, in their fixed order") {
  CHECK(format_signs({Sign::SealedIn, Sign::DarkAbdomen}) == "dark abdomen; sealed in");
  CHECK(format_signs({}).empty());
}

TEST_CASE("signs read back, with or without blanks") {
  const auto signs = parse_signs("sealed in;dark abdomen ; ");
  REQUIRE(signs);
  CHECK(*signs == SignSet{Sign::DarkAbdomen, Sign::SealedIn});
}

TEST_CASE("a word that is no sign is named") {
  const auto signs = parse_signs("dark abdomen; singing");
  REQUIRE_FALSE(signs);
  CHECK(signs.error().sentence.find("\"singing\" is not a sign") == 0);
}

TEST_CASE("every set of signs survives being written and read") {
  rc::prop("all sets", [](std::uint8_t bits) {
    SignSet signs;
    for (const Sign sign : all_signs)
      if (bits >> static_cast<unsigned>(sign) & 1) signs.insert(sign);
    const auto read = parse_signs(format_signs(signs));
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == signs);
  });
}
