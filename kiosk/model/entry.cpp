#include <fmt/format.h>

#include <cctype>

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

constexpr std::size_t most_find_bytes = 60;
constexpr std::size_t most_answer_bytes = 400;

void erase_character(std::string& text) {
  while (!text.empty() && (text.back() & 0xC0) == 0x80) text.pop_back();
  if (!text.empty()) text.pop_back();
}

void type_answer(Asking& asking, std::string character) {
  if (asking.text.size() + character.size() > most_answer_bytes) return;
  if (asking.capital && character.size() == 1)
    character[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(character[0])));
  asking.capital = false;
  asking.text += character;
}

Effects enter_keypad(Model& model) {
  const auto code = parse_typed_code(model.keypad);
  if (!code) {
    tell(model, Tone::Problem, code.error().sentence);
    return {};
  }
  if (code->kind() != CodeKind::Enclosure) {
    tell(model, Tone::Problem,
         fmt::format("{} is a {}, not a tub.", code->grouped(), kind_word(code->kind())));
    return {};
  }
  Effects effects = open_tub(model, *code);
  if (model.screen == ScreenName::Tub) model.keypad.clear();
  return effects;
}

Effects enter_find(Model& model) {
  const auto found = found_tubs(model.collection, model.find_words, model.plan);
  if (found.size() == 1) return open_tub(model, found.front()->code);
  return {};
}

}  // namespace

Effects on_typed(Model& model, const std::string& character, const Stamp&) {
  model.notice.reset();
  if (model.screen == ScreenName::Keypad) {
    const char c = character.size() == 1 ? character[0] : ' ';
    if (std::isalnum(static_cast<unsigned char>(c)) != 0 && model.keypad.size() < code_length)
      model.keypad += static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    // The last character is as good as Enter: a code is never longer.
    if (model.keypad.size() == code_length) return enter_keypad(model);
  } else if (model.screen == ScreenName::Pin) {
    type_pin(model, character);
  } else if (model.screen == ScreenName::Number && model.number && character.size() == 1) {
    type_number(model, character[0]);
  } else if (model.screen == ScreenName::Words && model.asking) {
    type_answer(*model.asking, character);
  } else if (model.screen == ScreenName::Find) {
    if (model.find_words.size() + character.size() <= most_find_bytes)
      model.find_words += character;
    model.list_page = 0;
  }
  return {};
}

void on_erase(Model& model) {
  model.notice.reset();
  if (model.screen == ScreenName::Keypad) erase_character(model.keypad);
  if (model.screen == ScreenName::Number && model.number) erase_character(model.number->typed);
  if (model.screen == ScreenName::Find) erase_character(model.find_words);
  if (model.screen == ScreenName::Pin && model.pin) erase_character(model.pin->digits);
  if (model.screen == ScreenName::Words && model.asking) erase_character(model.asking->text);
}

Effects on_enter(Model& model, const Stamp& stamp) {
  if (model.screen == ScreenName::Keypad) return enter_keypad(model);
  if (model.screen == ScreenName::Number) return enter_number(model, stamp);
  if (model.screen == ScreenName::Find) return enter_find(model);
  if (model.screen == ScreenName::Pin) return enter_pin(model);
  if (model.screen == ScreenName::Words) return answer(model, stamp);
  return {};
}

}  // namespace rackside::kiosk
