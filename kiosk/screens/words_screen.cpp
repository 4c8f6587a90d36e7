// An answer in words.

#include <algorithm>

#include "kiosk/model/steps.hpp"
#include "kiosk/screens/keyboard_part.hpp"
#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"

namespace rackside::kiosk {
namespace {

constexpr std::size_t most_known = 3;

// The end of what is being written stays in sight.
std::string tail(const Composer& composer, std::string text, Style style, double width) {
  while (composer.width(text, style) > width && text.size() > 1) {
    std::size_t next = 1;
    while (next < text.size() && (text[next] & 0xC0) == 0x80) ++next;
    text.erase(0, next);
  }
  return text;
}

// Below what is written where there is room, one a row.
void known_answers(Composer& composer, Box box, const Model& model) {
  const double row = composer.mm(least_target_mm + gap_mm);
  const std::size_t fit = std::min(most_known, static_cast<std::size_t>(box.height / row));
  for (const std::string& text : answers_known(model, fit)) {
    Box line = box.take_top(row);
    line.height = composer.mm(least_target_mm);
    composer.key(line, text, AnswerWith{text});
  }
}

// On low panels the best one stands beside the title.
void best_answer(Composer& composer, Box& top, const Model& model) {
  const auto known = answers_known(model, 1);
  if (known.empty()) return;
  composer.key(top.take_right(top.width * 0.6), known.front(), AnswerWith{known.front()});
  top.take_right(composer.mm(gap_mm));
}

}  // namespace

void compose_words(Composer& composer, const Model& model) {
  if (!model.asking) return;
  const Asking& asking = *model.asking;
  Box box = page(composer);
  Box top = box.take_top(composer.mm(least_target_mm));
  composer.key(top.take_left(composer.mm(24)), "back", Close{});
  composer.key(top.take_right(composer.mm(28)), "done", Enter{}, Weight::First);
  top.take_left(composer.mm(4));
  top.take_right(composer.mm(gap_mm));
  const bool low = box.height < composer.mm(80);
  const auto notice = telling(model);
  if (low && notice) {
    // Between keyboard and title there is room for what is written only.
    composer.fitted(top, notice->sentence, Face::Bold, 3.8, 2.6, 3);
  } else {
    if (low) best_answer(composer, top, model);
    composer.text(top, question_words(asking.question), composer.style(Step::Species, Face::Bold));
  }
  box.take_top(composer.mm(gap_mm));
  keyboard(composer, box, asking.capital ? Letters::Capital : Letters::Small, Row::Shown);
  if (!low) notice_line(composer, box, notice);
  const Style written = composer.style(Step::Species);
  Box line = box.take_top(std::min(box.height, composer.line_height(written) + composer.mm(2)));
  composer.rule({line.x, line.bottom() - 2, line.width, 2}, Ink::Accent);
  composer.text(line, tail(composer, asking.text + "|", written, line.width), written);
  box.take_top(composer.mm(gap_mm));
  if (!low) known_answers(composer, box, model);
}

}  // namespace rackside::kiosk
