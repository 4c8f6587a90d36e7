#include "tests/labels/render/labels_for_tests.hpp"

#include <array>
#include <random>

#include "labels/label/hazard.hpp"
#include "labels/sheet/stock_file.hpp"

namespace rackside::tests {

Code numbered_code(unsigned number) {
  for (unsigned value = number * 7919;; ++value) {
    std::string body;
    unsigned rest = value;
    for (std::size_t i = 0; i < code_body_length; ++i, rest /= 28)
      body += code_alphabet[rest % code_alphabet.size()];
    if (const auto code = make_code(CodeKind::Enclosure, body)) return *code;
  }
}

std::vector<LabelContent> sling_labels(int count, unsigned first) {
  constexpr std::array species{"Haplocosmia himalayana", "Orphnaecus philippinus",
                               "Omothymus violaceopes",  "Encyocratella olivacea",
                               "Neoholothele incei",     "Ephebopus cyanognathus"};
  std::vector<LabelContent> labels;
  for (int i = 0; i < count; ++i) {
    LabelContent label{.code = numbered_code(first + static_cast<unsigned>(i))};
    label.species = species[static_cast<std::size_t>(i) % species.size()];
    label.source = "sac 31-4";
    label.instar = 2;
    label.date = parse_day("2031-04-09").value();
    label.hazard = hazard_of(label.species);
    labels.push_back(label);
  }
  return labels;
}

std::string random_species(unsigned seed) {
  std::mt19937 random(seed);
  const auto word = [&](char first, unsigned least, unsigned most) {
    std::string text(1, static_cast<char>(first + random() % 26));
    const unsigned letters = least + random() % (most - least);
    for (unsigned i = 1; i < letters; ++i) text += static_cast<char>('a' + random() % 26);
    return text;
  };
  return word('A', 4, 18) + " " + word('a', 3, 22);
}

Stock stock(const std::string& name) { return stock_named(built_in_stock(), name).value(); }

}  // namespace rackside::tests
