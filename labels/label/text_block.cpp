#include "labels/label/text_block.hpp"

#include <algorithm>

#include "labels/label/typesetting.hpp"

namespace rackside {
namespace {

constexpr double rounding = 1e-6;

class Fitter {
 public:
  Fitter(const TextRoom& room, const TextRuler& ruler)
      : room_(room), setter_(room.width, room.height, ruler) {}

  /// The best way to set all of `words`, or none when they do not fit together.
  [[nodiscard]] std::optional<SetText> fit(const std::vector<Wording>& words) const {
    // Whole names in good size first; then abbreviated ones in any size; then whole ones in any; at
    // last the code gives up room.
    auto whole = largest_that_fits(words, 0.3, {.species_on_two_lines = true});
    if (whole && whole->species_whole) return whole;
    if (auto shorter = largest_that_fits(words, 0, {})) return shorter;
    if (auto small = largest_that_fits(words, 0, {.species_on_two_lines = true})) return small;
    return largest_that_fits(words, 0, {.small_code = true});
  }

 private:
  [[nodiscard]] std::optional<SetText> largest_that_fits(const std::vector<Wording>& words,
                                                         double least_scale,
                                                         TypeChoice choice) const {
    for (int tenths = 10; tenths >= 10 * least_scale - rounding; --tenths) {
      choice.scale = tenths / 10.0;
      SetText text = setter_.set(words, choice);
      if (text.height() <= room_.height + rounding) return text;
    }
    return std::nullopt;
  }

  const TextRoom& room_;
  Typesetter setter_;
};

TextBlock placed(const SetText& text, const TextRoom& room) {
  TextBlock block;
  double top = room.y + (room.height - text.height()) / 2;
  for (const SetLine& line : text.lines) {
    double x = room.x;
    if (line.part == Part::Warning) {
      block.warning = PlacedWarning{line.size, x, top + (line_ems - 1) / 2 * line.size};
      x += warning_ems * line.size;
    }
    block.has_code = block.has_code || line.part == Part::Code;
    block.texts.push_back(
        {face_of(line.part), line.size, x, top + baseline_ems * line.size, line.text});
    top += line.size * line_ems;
  }
  block.left_out = text.left_out;
  return block;
}

}  // namespace

TextBlock fit_text(const LabelContent& content, const TextRoom& room, const TextRuler& ruler) {
  const Fitter fitter(room, ruler);
  std::vector<Wording> words = wordings(content);
  std::vector<std::string> dropped;
  for (; !words.empty(); words.pop_back()) {
    if (const auto text = fitter.fit(words)) {
      TextBlock block = placed(*text, room);
      block.left_out.insert(block.left_out.end(), dropped.rbegin(), dropped.rend());
      return block;
    }
    dropped.emplace_back(name_of(words.back().part));
  }
  return {.left_out = {dropped.rbegin(), dropped.rend()}};
}

}  // namespace rackside
