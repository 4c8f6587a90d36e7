#include "core/action/action.hpp"

#include <set>

#include "core/event/signs.hpp"
#include "tests/frame.hpp"

using namespace rackside;

TEST_CASE("every card reads back as its action") {
  std::set<Code> codes;
  std::set<std::string_view> words;
  for (const Action action : all_actions) {
    const Code code = action_code(action);
    CHECK(code.kind() == CodeKind::Action);
    CHECK(action_from_code(code) == action);
    CHECK(action_from_code(parse_code(code.text()).value()) == action);
    codes.insert(code);
    words.insert(action_word(action));
  }
  CHECK(codes.size() == all_actions.size());
  CHECK(words.size() == all_actions.size());
}

TEST_CASE("any two cards differ in at least five characters") {
  for (const Action a : all_actions)
    for (const Action b : all_actions) {
      if (a == b) continue;
      const Code one = action_code(a);
      const Code other = action_code(b);
      int different = 0;
      for (std::size_t i = 0; i < code_body_length; ++i)
        different += one.body()[i] != other.body()[i] ? 1 : 0;
      CHECK(different >= 5);
    }
}

TEST_CASE("cards that hang on a wall keep their codes") {
  // Written down once; a change here makes printed sheets worthless.
  const std::vector<std::string> printed{
      "AM8TCWRC", "AFV7N157", "AJ3K70T2", "AD5VW247", "AMMF440E", "AY59A6JX", "APN65R6K",
      "AD90CE5V", "AA29CX9T", "AGRA5GGD", "AECDKX08", "AHCH8VF4", "AY91E268", "AT12MJDA",
      "AN1WGAXE", "AFMY5HFY", "AXJ5NGY2", "AA52G8HN", "A793TDGF", "AWWVCRK3", "AP1V9CJR"};
  REQUIRE(printed.size() == all_actions.size());
  for (std::size_t i = 0; i < printed.size(); ++i)
    CHECK(action_code(all_actions[i]).text() == printed[i]);
}

TEST_CASE("codes of other kinds and of later programs are no action") {
  const Code card = action_code(Action::Refused);
  const auto tub = make_code(CodeKind::Enclosure, "4K7M2X");
  REQUIRE(tub);
  CHECK_FALSE(action_from_code(*tub));
  const auto later = make_code(CodeKind::Action, "RP8XG8");
  REQUIRE(later);
  CHECK_FALSE(action_from_code(*later));
  CHECK(action_from_code(card) == Action::Refused);
}

TEST_CASE("every action but undo records something, and no two record the same") {
  std::vector<Details> recorded;
  for (const Action action : all_actions) {
    const auto details = details_of(action);
    CHECK(details.has_value() == (action != Action::Undo));
    if (!details) continue;
    for (const Details& other : recorded) CHECK_FALSE(other == *details);
    recorded.push_back(*details);
  }
}

TEST_CASE("each sign has one card, under the word of the interchange files") {
  for (const Sign sign : all_signs) {
    int cards = 0;
    for (const Action action : all_actions)
      if (details_of(action) == std::optional<Details>(Looked{{sign}})) {
        ++cards;
        CHECK(action_word(action) == sign_word(sign));
      }
    CHECK(cards == 1);
  }
}
