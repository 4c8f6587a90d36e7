#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

constexpr int most_instar = 30;
constexpr int most_on_a_shelf = 500;

std::optional<int> whole_number(const std::string& text) {
  int number = 0;
  const char* end = text.data() + text.size();
  const auto read = std::from_chars(text.data(), end, number);
  if (read.ec != std::errc{} || read.ptr != end) return std::nullopt;
  return number;
}

template <class Value, std::size_t N>
Value after(const std::array<Value, N>& all, Value value) {
  for (std::size_t i = 0; i < N; ++i)
    if (all[i] == value) return all[(i + 1) % N];
  return all[0];
}

// A number from `least` to `most`, or a sentence.
std::optional<std::string> set_number(int& target, const std::string& text, int least, int most) {
  if (text.empty() && least == 0) {
    target = 0;
    return std::nullopt;
  }
  const auto number = whole_number(text);
  if (!number || *number < least || *number > most)
    return fmt::format("This is to be a number from {} to {}.", least, most);
  target = *number;
  return std::nullopt;
}

std::string with_capital(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
    text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

std::optional<std::string> set_instar(BatchRequest& form, const std::string& text) {
  int instar = 0;
  form.instar.reset();
  if (text.empty()) return std::nullopt;
  const auto problem = set_number(instar, text, 1, most_instar);
  if (!problem) form.instar = instar;
  return problem;
}

std::optional<std::string> set_species(BatchRequest& form, const std::string& text) {
  const bool has_letter = std::ranges::any_of(text, [](const char c) {
    return std::isalpha(static_cast<unsigned char>(c)) != 0 || (c & 0x80) != 0;
  });
  if (!text.empty() && !has_letter) return "A species is written in letters.";
  form.species = with_capital(text);
  return std::nullopt;
}

}  // namespace

std::optional<std::string> set_new_tub(BatchRequest& form, NewTubField field,
                                       const std::string& text) {
  switch (field) {
    case NewTubField::Species: return set_species(form, text);
    case NewTubField::CommonName: form.common_name = text; break;
    case NewTubField::Count: return set_number(form.count, text, 1, most_in_a_batch);
    case NewTubField::Instar: return set_instar(form, text);
    case NewTubField::Source: form.source = text; break;
    case NewTubField::Rack: form.first.rack = text; break;
    case NewTubField::Shelf: form.first.shelf = text; break;
    case NewTubField::Position: form.first.position = text; break;
    case NewTubField::PerShelf: return set_number(form.tubs_on_a_shelf, text, 0, most_on_a_shelf);
    case NewTubField::Stage:
    case NewTubField::Sex: break;
  }
  return std::nullopt;
}

void next_value(Model& model, NewTubField field) {
  static constexpr std::array stages{Stage::Sling, Stage::Juvenile, Stage::Adult, Stage::MatureMale,
                                     Stage::Unknown};
  static constexpr std::array sexes{Sex::Unknown, Sex::Female, Sex::Male};
  if (field == NewTubField::Stage) model.new_tubs.stage = after(stages, model.new_tubs.stage);
  if (field == NewTubField::Sex) model.new_tubs.sex = after(sexes, model.new_tubs.sex);
  if (model.new_tubs.stage == Stage::MatureMale) model.new_tubs.sex = Sex::Male;
}

Effects make_tubs(Model& model) {
  if (model.making_tubs) return {};
  BatchRequest request = model.new_tubs;
  if (request.species.empty() && request.common_name.empty()) {
    tell(model, Tone::Problem, "Say first which species it is.");
    return {};
  }
  request.count = std::max(1, request.count);
  request.date = model.now.day();
  request.by = model.by;
  model.making_tubs = true;
  tell(model, Tone::Tell, "Writing the new tubs into the log ...");
  return {MakeBatch{std::move(request)}};
}

Effects on_tubs_made(Model& model, const TubsMade& made) {
  model.making_tubs = false;
  if (!made.tubs) {
    tell(model, Tone::Problem, made.tubs.error().sentence);
    return {};
  }
  const auto& tubs = *made.tubs;
  tell(model, Tone::Done,
       tubs.size() == 1
           ? fmt::format("Saved: {}. Its label is being made ...", tubs.front().grouped())
           : fmt::format("Saved: {} tubs, {} to {}. Their labels are being made ...", tubs.size(),
                         tubs.front().grouped(), tubs.back().grouped()));
  // What is likely to be the same next time stays in the form.
  model.new_tubs.count = 0;
  model.new_tubs.first.position.clear();
  return {LoadRoster{}, LoadOverview{}, PrintLabels{tubs, model.settings, model.by}};
}

}  // namespace rackside::kiosk
