// One record, to put it right.

#include <algorithm>
#include <array>

#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"
#include "kiosk/view/record_filter.hpp"
#include "kiosk/view/tiles.hpp"
#include "kiosk/view/tub_view.hpp"

namespace rackside::kiosk {
namespace {

void tiles(Composer& composer, Box box, const Event& event) {
  auto actions = likely_instead(kind_of_record(event.details));
  std::erase_if(actions, [&](Action action) { return details_of(action) == event.details; });
  if (actions.empty()) return;
  const double gap = composer.mm(gap_mm);
  const std::size_t columns = composer.panel().portrait() ? 2 : actions.size();
  const std::size_t rows = (actions.size() + columns - 1) / columns;
  const double width =
      (box.width - gap * static_cast<double>(columns - 1)) / static_cast<double>(columns);
  const double height = std::clamp(box.height / static_cast<double>(rows) - gap,
                                   composer.mm(least_target_mm), composer.mm(24));
  for (std::size_t i = 0; i < actions.size(); ++i) {
    const Box tile{box.x + static_cast<double>(i % columns) * (width + gap),
                   box.y + static_cast<double>(i / columns) * (height + gap), width, height};
    composer.tile(tile, mark_of(actions[i]), action_word(actions[i]), CorrectTo{actions[i]});
  }
}

}  // namespace

void compose_correct(Composer& composer, const Model& model) {
  const Event* event = corrected_event(model);
  Box box = page(composer);
  heading(composer, box, "Put it right", "both entries stay in the records");
  if (event == nullptr) return;
  const RecordLine line = view_record(model, *event);
  key_row(composer, box,
          {{"a day earlier", CorrectDay{-1}},
           {"a day later", CorrectDay{1}},
           {"take it back", TakeBack{event->id}}});
  notice_line(composer, box, telling(model));
  record_line(composer, box.take_top(composer.mm(9)), line);
  const Style words = composer.style(Step::Record);
  composer.text(box.take_top(composer.line_height(words) + composer.mm(2)),
                line.taken_back ? "It was taken back." : "It was in truth:", words, Ink::Soft);
  if (!line.taken_back) tiles(composer, box, *event);
}

}  // namespace rackside::kiosk
