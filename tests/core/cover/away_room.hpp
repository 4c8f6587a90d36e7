#pragma once
// The invented rack room with a keeper who goes away.

#include "core/cover/cover_plan.hpp"
#include "core/cover/days.hpp"
#include "core/cover/supplies.hpp"
#include "tests/core/round/rack_room.hpp"

namespace rackside::tests {

struct AwayRoom : RackRoom {
  CoverBook book;
  Outlook outlook{.days = days_until(now(), now().day() + std::chrono::days{20}), .forecasts = {}};

  [[nodiscard]] static Day day(int from_today) {
    return now().day() + std::chrono::days{from_today};
  }
  [[nodiscard]] static Cover cover(int from, int to, std::vector<std::string> racks = {}) {
    return {event_number(900), "Noor", day(from), day(to), std::move(racks), std::nullopt};
  }
  /// On day `i` from today the animal is in premoult with p(i).
  template <class Probability>
  void believed_ahead(int number, Probability p) {
    auto& list = outlook.forecasts[animal_number(number)];
    list.clear();
    for (std::size_t i = 0; i < outlook.days.size(); ++i) {
      Forecast forecast{.animal = animal_number(number), .as_of = outlook.days[i].utc};
      forecast.p_premoult = p(static_cast<double>(i));
      for (std::size_t q = 0; q < moult_quantiles; ++q)
        forecast.next_moult[q] = 100 + static_cast<double>(q);
      list.push_back(forecast);
    }
    forecasts[animal_number(number)] = list.front();
  }
  [[nodiscard]] CoverPlan planned(const Cover& cover) const {
    const Collection now_here = collection();
    return plan_cover({now_here, rules, climate, book, outlook}, cover);
  }
};

/// The line about animal `number` on a day, from whichever list it stands in.
inline const CoverLine* line_about(const CoverDay& day, int number) {
  for (const auto* list : {&day.visits, &day.keep_closed, &day.nothing})
    for (const CoverLine& line : *list)
      if (line.animal == animal_number(number)) return &line;
  return nullptr;
}

}  // namespace rackside::tests
