// Typing: the keypad and the search.

#include "tests/fakes/table_kiosk.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;
using kiosk::ScreenName;

namespace {
void type(TableKiosk& kiosk, std::string_view text) {
  for (const char c : text) kiosk.does(kiosk::Typed{std::string(1, c)});
}
}  // namespace

TEST_CASE("a code typed on the keypad opens its tub with the last character") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Kochiana brunnipes");
  kiosk.start();
  kiosk.does(kiosk::Show{ScreenName::Keypad});
  type(kiosk, tub.text());
  CHECK(kiosk.model().screen == ScreenName::Tub);
  CHECK(kiosk.model().keypad.empty());
}

TEST_CASE("swapped characters open nothing and stay to be corrected") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(37, "Kochiana brunnipes");
  kiosk.start();
  std::string swapped(tub.text());
  for (std::size_t i = 1; i + 1 < swapped.size(); ++i)
    if (swapped[i] != swapped[i + 1]) {
      std::swap(swapped[i], swapped[i + 1]);
      break;
    }
  kiosk.does(kiosk::Show{ScreenName::Keypad});
  type(kiosk, swapped);
  CHECK(kiosk.model().screen == ScreenName::Keypad);
  CHECK(kiosk.notice().find("check character") != std::string::npos);
  CHECK(kiosk.model().keypad == swapped);
  kiosk.does(kiosk::Erase{});
  CHECK(kiosk.model().keypad.size() == 7);
}

TEST_CASE("a half entered code is still there after a scan") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Kochiana brunnipes");
  kiosk.start();
  kiosk.does(kiosk::Show{ScreenName::Keypad});
  type(kiosk, "T00");
  kiosk.scans(tub);
  CHECK(kiosk.model().screen == ScreenName::Tub);
  kiosk.does(kiosk::Show{ScreenName::Keypad});
  CHECK(kiosk.model().keypad == "T00");
}

TEST_CASE("a real keyboard types into the keypad in any case") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Kochiana brunnipes");
  kiosk.start();
  kiosk.does(kiosk::Show{ScreenName::Keypad});
  std::string lower;
  for (const char c : tub.text()) lower += static_cast<char>(std::tolower(c));
  type(kiosk, lower);
  CHECK(kiosk.model().screen == ScreenName::Tub);
}

TEST_CASE("finding takes words in any order, from species, key, place and code") {
  TableKiosk kiosk;
  const Code tub = kiosk.house(1, "Kochiana brunnipes", {"B", "3", "4"});
  kiosk.house(2, "Kochiana brunnipes", {"A", "1", "4"});
  kiosk.start();
  const auto found = [&](std::string_view words) {
    return kiosk::found_tubs(kiosk.model().collection, words).size();
  };
  CHECK(found("kochi") == 2);
  CHECK(found("rack b kochiana") == 1);
  CHECK(found("k2") == 1);
  CHECK(found(tub.text()) == 1);
  CHECK(found("kochiana unheard") == 0);
  CHECK(found("  ") == 0);
  kiosk.does(kiosk::Show{ScreenName::Find});
  type(kiosk, "k1");
  kiosk.does(kiosk::Enter{});
  CHECK(kiosk.model().tub->code == tub);
}

TEST_CASE("finding takes states, as the day's plan has them") {
  TableKiosk kiosk;
  const Code fed = kiosk.house(1, "Kochiana brunnipes");
  const Code hungry = kiosk.house(2, "Kochiana brunnipes");
  const Code moulting = kiosk.house(3, "Kochiana brunnipes");
  const Code empty = kiosk.house(4, "Kochiana brunnipes");
  kiosk.happened(fed, 1, Offered{Outcome::Took, "cricket"});
  kiosk.happened(hungry, 30, Offered{Outcome::Took, "cricket"});
  kiosk.happened(moulting, 0.1, Looked{{Sign::OnItsBack}});
  kiosk.happened(empty, 1, Died{});
  kiosk.start();
  kiosk.does(kiosk::Show{ScreenName::Find});
  const auto found = [&](std::string_view words) {
    std::vector<Code> codes;
    for (const auto* tub : kiosk::found_tubs(kiosk.model().collection, words, kiosk.model().plan))
      codes.push_back(tub->code);
    return codes;
  };
  CHECK(found("feeding due") == std::vector{hungry});
  CHECK(found("overdue") == std::vector{hungry});
  CHECK(found("on its back") == std::vector{moulting});
  CHECK(found("leave alone") == std::vector{moulting});
  CHECK(found("empty") == std::vector{empty});
  CHECK(found("wait kochiana") == std::vector{fed});
  kiosk.does(kiosk::LookFor{"on its back"});
  kiosk.does(kiosk::Enter{});
  CHECK(kiosk.model().tub->code == moulting);
}

TEST_CASE("erasing takes whole characters") {
  TableKiosk kiosk;
  kiosk.start();
  kiosk.does(kiosk::Show{ScreenName::Find});
  kiosk.does(kiosk::Typed{"a"});
  kiosk.does(kiosk::Typed{"ß"});
  kiosk.does(kiosk::Erase{});
  CHECK(kiosk.model().find_words == "a");
}
