#include "labels/label/shortened.hpp"

#include "tests/frame.hpp"

using namespace rackside;

TEST_CASE("a binomial is abbreviated the way the trade does, other names are left alone") {
  CHECK(abbreviated_species("Haplocosmia himalayana") == "H. himalayana");
  CHECK(abbreviated_species("Orphnaecus sp. Quezon Blue") == "O. sp. Quezon Blue");
  for (const std::string other : {"", "Philippine Orange", "Neoholothele", "haplocosmia himalayana",
                                  "H. himalayana", "Neoholothele ", "N incei", "CHILOBRACHYS X"})
    CHECK(abbreviated_species(other) == other);
}

TEST_CASE("a text that is cut says so, one that is whole does not") {
  CHECK(cut_after("himalayana", 4) == "hima\xE2\x80\xA6");
  CHECK(cut_after("himalayana", 10) == "himalayana");
  CHECK(cut_after("himalayana", 99) == "himalayana");
  CHECK(cut_after("Nhandu tripepii", 7) == "Nhandu\xE2\x80\xA6");
}

TEST_CASE("combining marks stay with their letter") {
  const std::string combined = "a\xCC\x88o\xCC\x88u\xCC\x88";  // a, o, u with U+0308
  CHECK(letter_count(combined) == 3);
  CHECK(cut_after(combined, 1) == "a\xCC\x88\xE2\x80\xA6");
  CHECK(cut_after(combined, 2) == "a\xCC\x88o\xCC\x88\xE2\x80\xA6");
  const std::string hebrew = "\xD7\xA9\xD7\x81\xD7\x9C";  // shin with its dot, lamed
  CHECK(letter_count(hebrew) == 2);
  CHECK(cut_after(hebrew, 1) == "\xD7\xA9\xD7\x81\xE2\x80\xA6");
}

TEST_CASE("line breaks, control characters and broken UTF-8 become harmless") {
  CHECK(one_line("  Nhandu\ntripepii\t ") == "Nhandu tripepii");
  CHECK(one_line("a\xE2\x80\xAE"
                 "b") == "a b");  // right-to-left override
  CHECK(one_line("sac \xFF 7") == "sac \xEF\xBF\xBD 7");
  CHECK(one_line("\xC0\xAF") == "\xEF\xBF\xBD\xEF\xBF\xBD");          // overlong, RFC 3629
  CHECK(one_line("\xED\xA0\x80").find('\xED') == std::string::npos);  // a surrogate
  CHECK(one_line(std::string("\xE2\x82", 2)) == "\xEF\xBF\xBD\xEF\xBF\xBD");
}

TEST_CASE("any bytes can be tidied and cut") {
  rc::prop("no text breaks it", [] {
    const auto text = one_line(*rc::gen::arbitrary<std::string>());
    const auto letters = *rc::gen::inRange<std::size_t>(0, 20);
    RC_ASSERT(one_line(text) == text);
    const auto cut = cut_after(text, letters);
    RC_ASSERT(letter_count(cut) <= letters + 1);
    RC_ASSERT((cut == text) == (letter_count(text) <= letters || cut == text));
  });
}
