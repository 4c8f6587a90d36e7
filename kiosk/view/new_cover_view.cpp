#include <fmt/format.h>

#include <algorithm>

#include "core/words/calendar_names.hpp"
#include "core/words/dates.hpp"
#include "kiosk/model/steps.hpp"
#include "kiosk/view/cover_view.hpp"
#include "kiosk/view/map_view.hpp"

namespace rackside::kiosk {
namespace {

constexpr int weeks_shown = 27;  // a cover of the longest kind, planned three months before

DateStyle dates_of(const Model& model) { return model.settings.wording.dates; }

std::string day_value(const Model& model, const std::optional<Day>& day) {
  return day ? weekday_words(*day, dates_of(model)) : "touch to choose";
}

std::string contact_value(const CoverBook& book) {
  const Contact* contact = keeper_to_call(book);
  return contact == nullptr ? "touch to say" : contact->name + ", " + contact->number;
}

std::string note_value(const CoverBook& book) {
  const NoteForCover* note = note_for_all(book);
  return note == nullptr ? "touch to write" : note->words;
}

Day monday_of(Day day) { return day - (std::chrono::weekday{day} - std::chrono::Monday); }

std::string who_stands_in(const Model& model, Day day) {
  for (const Cover& cover : model.cover.covers)
    if (cover.holds_on(day)) return cover.who;
  return {};
}

std::string_view month_of(Day day, DateStyle dates) {
  const auto month = static_cast<unsigned>(std::chrono::year_month_day{day}.month());
  return calendar_names(dates).brief_months[month - 1];
}

}  // namespace

std::vector<FormField> view_new_cover(const Model& model) {
  const CoverForm& form = model.new_cover;
  std::vector<FormField> fields{
      {.word = "who stands in",
       .value = form.who.empty() ? "touch to say" : form.who,
       .intent = Ask{AskStandIn{}},
       .long_words = true},
      {.word = "from", .value = day_value(model, form.from), .intent = AskDay{WhichDay::First}},
      {.word = "to, this day too",
       .value = day_value(model, form.to),
       .intent = AskDay{WhichDay::Last}},
      {.word = "whom they call", .value = contact_value(model.cover), .intent = Ask{AskContact{}}},
      {.word = "a note for them", .value = note_value(model.cover), .intent = Ask{AskCoverNote{}}}};
  for (const std::string& rack : racks_in(model.collection)) {
    if (rack.empty()) continue;
    const bool in = std::ranges::find(form.racks, rack) != form.racks.end();
    fields.push_back({rack_title(rack),
                      in                   ? "yes"
                      : form.racks.empty() ? "as all racks"
                                           : "no",
                      ToggleRack{rack}, in});
  }
  return fields;
}

std::vector<std::string> weekday_heads(const Model& model) {
  std::vector<std::string> heads;
  for (unsigned i = 0; i < days_a_week; ++i)
    heads.emplace_back(calendar_names(dates_of(model)).brief_weekdays[(i + 1) % days_a_week]);
  return heads;
}

std::vector<DayCell> view_days(const Model& model) {
  const CoverForm& form = model.new_cover;
  const bool last = form.asked == WhichDay::Last;
  const Day today = model.now.day();
  const Day earliest = last && form.from ? std::max(today, *form.from) : today;
  const Day begin = monday_of(today);
  std::vector<DayCell> cells;
  for (int i = 0; i < weeks_shown * days_a_week; ++i) {
    const Day day = begin + std::chrono::days{i};
    const auto number = static_cast<unsigned>(std::chrono::year_month_day{day}.day());
    const bool named = i % days_a_week == 0 || number == 1 || day == today;
    cells.push_back({day,
                     named ? fmt::format("{} {}", number, month_of(day, dates_of(model)))
                           : std::to_string(number),
                     who_stands_in(model, day), day >= earliest,
                     day == form.from || day == form.to});
  }
  return cells;
}

}  // namespace rackside::kiosk
