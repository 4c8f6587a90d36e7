#include "kiosk/model/model.hpp"

#include <algorithm>
#include <cctype>

#include "core/collection/place.hpp"

namespace rackside::kiosk {
namespace {

std::string lower(std::string_view text) {
  std::string result;
  for (const char c : text)
    result += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return result;
}

std::vector<std::string> split_words(std::string_view text) {
  std::vector<std::string> words;
  std::string word;
  for (const char c : lower(text) + ' ') {
    if (c != ' ') {
      word += c;
    } else if (!word.empty()) {
      words.push_back(std::move(word));
      word.clear();
    }
  }
  return words;
}

// Everything about a tub that somebody might look for, in lower case, a blank before every word.
std::string findable(const Collection& collection, const EnclosureState& enclosure) {
  std::string text = ' ' + std::string(enclosure.code.text()) + ' ' + format_place(enclosure.place);
  for (const AnimalId& id : enclosure.residents) {
    const AnimalState& animal = *collection.animal(id);
    text += ' ' + animal.species + ' ' + animal.common_name + ' ' + animal.key;
  }
  std::ranges::replace(text, ',', ' ');
  return lower(text) + ' ';
}

// A word is found where one begins with it. A single letter that is not the one being typed just
// now means itself: "rack b shelf 2".
std::vector<std::string> patterns(std::string_view typed) {
  auto words = split_words(typed);
  for (std::size_t i = 0; i < words.size(); ++i) {
    const bool itself = words[i].size() == 1 && i + 1 < words.size();
    words[i] = ' ' + words[i] + (itself ? " " : "");
  }
  return words;
}

}  // namespace

std::optional<Notice> telling(const Model& model) {
  if (model.notice || model.reader_says.empty()) return model.notice;
  return Notice{Tone::Tell, model.reader_says};
}

std::optional<AnimalState> shown_animal(const Model& model) {
  if (!model.tub || !model.tub->animal) return std::nullopt;
  const AnimalState* animal = model.collection.animal(*model.tub->animal);
  if (animal == nullptr) return std::nullopt;
  return *animal;
}

std::vector<const EnclosureState*> walking_order(const Collection& collection) {
  std::vector<const EnclosureState*> tubs;
  for (const auto& [code, enclosure] : collection.enclosures)
    if (code.kind() == CodeKind::Enclosure) tubs.push_back(&enclosure);
  std::ranges::stable_sort(tubs, [](const auto* a, const auto* b) {
    return walks_before(a->place, b->place);
  });
  return tubs;
}

std::vector<const EnclosureState*> found_tubs(const Collection& collection,
                                              std::string_view words) {
  const auto wanted = patterns(words);
  if (wanted.empty()) return {};
  auto tubs = walking_order(collection);
  std::erase_if(tubs, [&](const EnclosureState* tub) {
    const std::string text = findable(collection, *tub);
    return !std::ranges::all_of(wanted, [&](const std::string& word) {
      return text.find(word) != std::string::npos;
    });
  });
  return tubs;
}

}  // namespace rackside::kiosk
