#pragma once
// A kiosk with a keeper, an assistant, a PIN, and a tub with somebody else's entry.

#include "tests/fakes/table_kiosk.hpp"

namespace rackside::tests {

struct StaffedKiosk : TableKiosk {
  Code tub = house(1, "Haplocosmia himalayana");
  Code other_tub = house(2, "Omothymus violaceopes");

  StaffedKiosk() {
    works_here("Ines", Role::Keeper);
    works_here("Oskar", Role::Assistant);
    happened(tub, 3, Misted{});
    pin.pin = "7294";
    start();
  }
  void scans_badge(const std::string& name) { scans(badge_of(name)); }
  void gives_pin() {
    does(kiosk::Show{kiosk::ScreenName::People});
    types_pin("7294");
    does(kiosk::Close{});
  }
  /// Every event in the log, in the order of their ids.
  [[nodiscard]] std::vector<Event> everything() {
    std::vector<Event> events;
    if (!log.read_all([&](Event&& event) { events.push_back(std::move(event)); })) return {};
    std::ranges::sort(events, {}, &Event::id);
    return events;
  }
  /// Of the open animal; the one that was put there before the kiosk started.
  [[nodiscard]] EventId somebody_elses_entry() {
    for (const Event& event : everything())
      if (std::holds_alternative<Misted>(event.details) && event.by == "keeper") return event.id;
    return {};
  }
};

}  // namespace rackside::tests
