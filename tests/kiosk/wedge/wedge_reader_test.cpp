#include "kiosk/wedge/wedge_reader.hpp"

#include "core/code/code.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using std::chrono::milliseconds;

namespace {

using Outputs = std::vector<WedgeOutput>;

// A keyboard with its own clock: every call adds what came back to `heard`.
struct Keyboard {
  WedgeReader reader;
  KeyTime now{10'000};
  Outputs heard;

  void hear(Outputs outputs) { heard.insert(heard.end(), outputs.begin(), outputs.end()); }
  void type(std::string_view text, milliseconds gap) {
    for (std::size_t i = 0; i < text.size(); ++i, now += gap)
      hear(reader.key(text.substr(i, 1), now));
  }
  void end(EndKey key = EndKey::Enter) { hear(reader.end_key(key, now)); }
  // What the shell does: sleep, and tick when the deadline has come.
  void rest(milliseconds time) {
    now += time;
    const auto deadline = reader.next_deadline();
    if (deadline && *deadline <= now) hear(reader.tick(now));
  }
};

constexpr milliseconds fast{6}, person{120};

std::string typed_text(const Outputs& outputs) {
  std::string text;
  for (const auto& output : outputs)
    if (const auto* typed = std::get_if<Typed>(&output)) text += typed->text;
  return text;
}

std::vector<std::string> scans(const Outputs& outputs) {
  std::vector<std::string> list;
  for (const auto& output : outputs)
    if (const auto* scan = std::get_if<Scanned>(&output)) list.push_back(scan->text);
  return list;
}

}  // namespace

TEST_CASE("a burst with Enter is one scan and nothing else") {
  Keyboard keys;
  keys.type("T4K79MWX", fast);
  keys.end();
  CHECK(keys.heard == Outputs{Scanned{"T4K79MWX"}});
  CHECK_FALSE(keys.reader.next_deadline());
}

TEST_CASE("Tab ends a burst as Enter does, and so does a silence when the code is whole") {
  Keyboard tab, silence;
  tab.type("T4K79MWX", fast);
  tab.end(EndKey::Tab);
  CHECK(tab.heard == Outputs{Scanned{"T4K79MWX"}});
  silence.type("T4K79MWX", fast);
  silence.rest(milliseconds{80});
  CHECK(silence.heard == Outputs{Scanned{"T4K79MWX"}});
}

TEST_CASE("a person's typing comes back as it was, Enter included") {
  Keyboard keys;
  keys.type("dry corner", person);
  keys.end();
  CHECK(typed_text(keys.heard) == "dry corner");
  CHECK(keys.heard.back() == WedgeOutput{TypedEnd{EndKey::Enter}});
  CHECK(scans(keys.heard).empty());
}

TEST_CASE("a held key that repeats is a person's") {
  Keyboard keys;
  keys.type("aaaaaaaaaaaaaaaaaaaa", milliseconds{33});
  keys.rest(milliseconds{100});
  CHECK(typed_text(keys.heard) == std::string(20, 'a'));
}

TEST_CASE("half a burst is dropped, and its late Enter presses nothing") {
  Keyboard keys;
  keys.type("T4K79", fast);
  keys.rest(milliseconds{90});
  keys.end();
  CHECK(keys.heard.empty());
  keys.rest(milliseconds{500});
  keys.end();
  CHECK(keys.heard == Outputs{TypedEnd{EndKey::Enter}});
}

TEST_CASE("two bursts back to back are two scans") {
  Keyboard keys;
  keys.type("T4K79MWX", fast);
  keys.end();
  keys.now += milliseconds{5};
  keys.type("A000012K", fast);
  keys.end();
  CHECK(scans(keys.heard) == std::vector<std::string>{"T4K79MWX", "A000012K"});
}

TEST_CASE("two bursts back to back without an ending key are two scans") {
  Keyboard keys;
  keys.type("T4K79MWX", fast);
  keys.rest(milliseconds{70});
  keys.type("A000012K", fast);
  keys.rest(milliseconds{70});
  CHECK(scans(keys.heard) == std::vector<std::string>{"T4K79MWX", "A000012K"});
}

TEST_CASE("half a burst takes nothing from the whole one behind it") {
  Keyboard keys;
  keys.type("T4K79", fast);
  keys.rest(milliseconds{90});
  keys.type("A000012K", fast);
  keys.end();
  CHECK(keys.heard == Outputs{Scanned{"A000012K"}});
}

TEST_CASE("every character of our codes comes through as the layout gives it, shifted or not") {
  // A layout that carries the alphabet gives these as texts, whatever keys it takes; on some the
  // scanner has to hold shift for digits and not for letters.
  for (const bool letters_shifted : {true, false})
    for (std::size_t first = 0; first < code_alphabet.size(); ++first) {
      std::string meant, sent;
      for (std::size_t i = 0; i < 8; ++i)
        meant += code_alphabet[(first + i) % code_alphabet.size()];
      for (const char c : meant)
        sent +=
            letters_shifted ? c : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
      Keyboard keys;
      keys.type(sent, fast);
      keys.end();
      CHECK(keys.heard == Outputs{Scanned{meant}});
    }
}

TEST_CASE("a burst through a layout without our letters is one foreign scan, not typing") {
  Keyboard keys;
  for (const char* key : {"т", "4", "л", "7", "9", "ь", "ц", "ч"}) {
    keys.hear(keys.reader.key(key, keys.now));
    keys.now += fast;
  }
  keys.end();
  REQUIRE(keys.heard.size() == 1);
  CHECK(std::holds_alternative<Scanned>(keys.heard[0]));
}

TEST_CASE("a scanner that ends with carriage return and line feed presses Enter once") {
  Keyboard keys;
  keys.type("T4K79MWX", fast);
  keys.end();
  keys.end();
  CHECK(keys.heard == Outputs{Scanned{"T4K79MWX"}});
}

TEST_CASE("a key struck by a person just before a burst stays the person's") {
  Keyboard keys;
  keys.type("w", milliseconds{40});
  keys.type("T4K79MWX", fast);
  keys.end();
  CHECK(keys.heard == Outputs{Typed{"w"}, Scanned{"T4K79MWX"}});
}

TEST_CASE("typing before and after a burst is not mixed with it") {
  Keyboard keys;
  keys.type("wet", person);
  keys.type("T4K79MWX", fast);
  keys.end();
  keys.type("moss", person);
  keys.rest(milliseconds{200});
  CHECK(scans(keys.heard) == std::vector<std::string>{"T4K79MWX"});
  CHECK(typed_text(keys.heard) == "wetmoss");
}

TEST_CASE("caps lock does not change what was scanned") {
  Keyboard keys;
  keys.type("t4k79mwx", fast);
  keys.end();
  CHECK(scans(keys.heard) == std::vector<std::string>{"T4K79MWX"});
}

TEST_CASE("a stall of the machine inside a burst does not break it") {
  Keyboard keys;
  keys.type("T4K7", fast);
  keys.now += milliseconds{45};
  keys.type("9MWX", milliseconds{0});
  keys.end();
  CHECK(scans(keys.heard) == std::vector<std::string>{"T4K79MWX"});
}

TEST_CASE("three kilobytes of rubbish are swallowed as one scan of bounded length") {
  Keyboard keys;
  for (int i = 0; i < 3072; ++i) keys.type(std::string(1, static_cast<char>(i % 255 + 1)), fast);
  keys.end();
  REQUIRE(keys.heard.size() == 1);
  CHECK(scans(keys.heard).at(0).size() <= WedgeLimits{}.most_characters);
}

TEST_CASE("a letter of several bytes is one key") {
  Keyboard keys;
  keys.hear(keys.reader.key("\xF0\x9F\x95\xB7", keys.now));
  keys.rest(milliseconds{100});
  CHECK(keys.heard == Outputs{Typed{"\xF0\x9F\x95\xB7"}});
}

TEST_CASE("an Enter alone is a person's") {
  Keyboard keys;
  keys.end();
  CHECK(keys.heard == Outputs{TypedEnd{EndKey::Enter}});
}

TEST_CASE("nothing a person types at up to 15 keys a second is lost or taken for a scan") {
  rc::prop("slow keys all come back in order", [] {
    Keyboard keys;
    std::string meant;
    const int count = *rc::gen::inRange(0, 40);
    for (int i = 0; i < count; ++i) {
      const char c = *rc::gen::inRange('a', '{');
      meant += c;
      keys.type(std::string(1, c), milliseconds{0});
      keys.rest(milliseconds{*rc::gen::inRange(50, 400)});
    }
    keys.rest(milliseconds{500});
    RC_ASSERT(typed_text(keys.heard) == meant);
    RC_ASSERT(scans(keys.heard).empty());
  });
}

TEST_CASE("bursts and typing by turns never mix") {
  rc::prop("each comes back whole and in its order", [] {
    Keyboard keys;
    std::string typed;
    std::vector<std::string> scanned;
    const int turns = *rc::gen::inRange(1, 8);
    for (int turn = 0; turn < turns; ++turn) {
      if (*rc::gen::arbitrary<bool>()) {
        scanned.emplace_back(*rc::gen::arbitrary<bool>() ? "T4K79MWX" : "A000012K");
        keys.type(scanned.back(), milliseconds{*rc::gen::inRange(1, 13)});
        keys.end();
      } else {
        for (int i = *rc::gen::inRange(1, 9); i > 0; --i) {
          const char c = *rc::gen::inRange('a', '{');
          typed += c;
          keys.type(std::string(1, c), milliseconds{*rc::gen::inRange(70, 300)});
        }
      }
      keys.rest(milliseconds{*rc::gen::inRange(61, 400)});
    }
    keys.rest(milliseconds{500});
    RC_ASSERT(scans(keys.heard) == scanned);
    RC_ASSERT(typed_text(keys.heard) == typed);
  });
}

TEST_CASE("every burst within 100 ms is read whatever its rhythm") {
  rc::prop("eight keys with uneven gaps", [] {
    Keyboard keys;
    for (const char c : std::string("T4K79MWX")) {
      keys.type(std::string(1, c), milliseconds{0});
      keys.now += milliseconds{*rc::gen::inRange(0, 13)};
    }
    keys.end();
    RC_ASSERT(keys.heard == Outputs{Scanned{"T4K79MWX"}});
  });
}
