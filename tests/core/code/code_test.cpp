#include "core/code/code.hpp"

#include "core/code/check_character.hpp"
#include "tests/frame.hpp"

using namespace rackside;

namespace {

Code any_code() {
  for (;;) {
    std::string body;
    for (std::size_t i = 0; i < code_body_length; ++i)
      body += code_alphabet[*rc::gen::inRange<std::size_t>(0, code_alphabet.size())];
    const auto kind =
        *rc::gen::element(CodeKind::Enclosure, CodeKind::Person, CodeKind::Action, CodeKind::Shelf);
    if (const auto code = make_code(kind, body)) return *code;
  }
}

}  // namespace

TEST_CASE("a code reads back as itself and says what it is for") {
  rc::prop("make_code then parse_code is the identity", [] {
    const Code code = any_code();
    const auto read = parse_code(code.text());
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == code);
    RC_ASSERT(kind_character(read->kind()) == code.text()[0]);
    RC_ASSERT(check_character_holds(code.text()));
  });
}

TEST_CASE("one wrong character is always caught") {
  rc::prop("every substitution", [] {
    const Code code = any_code();
    std::string wrong(code.text());
    const auto place = *rc::gen::inRange<std::size_t>(0, code_length);
    wrong[place] = code_alphabet[*rc::gen::inRange<std::size_t>(0, code_alphabet.size())];
    RC_PRE(wrong != code.text());
    RC_ASSERT_FALSE(parse_code(wrong).has_value());
  });
}

TEST_CASE("nearly every swap of neighbours is caught") {
  // ISO/IEC 7064 promises the great part of single transpositions; 99.8 % measured over random
  // codes.
  int swaps = 0;
  int caught = 0;
  for (const char first : code_alphabet)
    for (const char second : code_alphabet)
      for (const char third : code_alphabet) {
        const auto code =
            make_code(CodeKind::Enclosure, std::string("4K") + first + second + third + '7');
        if (!code || first == second) continue;
        std::string wrong(code->text());
        std::swap(wrong[3], wrong[4]);
        ++swaps;
        caught += parse_code(wrong).has_value() ? 0 : 1;
      }
  REQUIRE(swaps > 10'000);
  CHECK(caught > 0.99 * swaps);
}

TEST_CASE("a mistyped code says that the check character does not fit") {
  const auto code = make_code(CodeKind::Enclosure, "4K7M2X");
  REQUIRE(code);
  std::string wrong(code->text());
  wrong[2] = wrong[2] == 'K' ? 'M' : 'K';
  const auto read = parse_typed_code(wrong);
  REQUIRE_FALSE(read);
  CHECK(read.error().kind == ErrorKind::BadInput);
  CHECK(read.error().sentence.find("check character") != std::string::npos);
}

TEST_CASE("foreign codes are not ours, whatever they hold") {
  for (const std::string& foreign :
       {std::string{}, std::string("https://example.org/T4K7M2XA"), std::string("4006381333931"),
        std::string(3000, '\xff'), std::string("T4K7M2X"), std::string("t4k7m2xa"),
        std::string("Z4K7M2XA"), std::string("T4K7M2X\0", 8), std::string("'; DROP")}) {
    const auto read = parse_code(foreign);
    REQUIRE_FALSE(read);
    CHECK(read.error().kind == ErrorKind::NotOurs);
    CHECK(read.error().sentence == "This label is not one of ours.");
  }
}

TEST_CASE("typing is forgiven its look-alikes, case and blanks") {
  const auto code = make_code(CodeKind::Enclosure, "4K0M2V");
  REQUIRE(code);
  std::string typed = "t4ko mzu-";
  typed += static_cast<char>(std::tolower(code->text().back()));
  const auto read = parse_typed_code(typed);
  REQUIRE(read);
  CHECK(*read == *code);
}

TEST_CASE("an unfinished entry says how much is missing") {
  const auto read = parse_typed_code("T4K");
  REQUIRE_FALSE(read);
  CHECK(read.error().sentence == "A code has 8 characters; this has 3.");
}

TEST_CASE("no code holds a character that could be misread") {
  for (const char c : std::string("BILOQSUZ"))
    CHECK(code_alphabet.find(c) == std::string_view::npos);
}
