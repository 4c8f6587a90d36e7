#pragma once
// A large invented log: everyday events of two thousand animals in turn, over three years.

#include <fmt/format.h>

#include <cstdlib>
#include <random>
#include <vector>

#include "core/clock/system_clock.hpp"
#include "core/clock/system_ids.hpp"
#include "core/log/log_store.hpp"
#include "tests/bench/timing.hpp"

namespace rackside::bench {

inline constexpr int animal_count = 2000;

class Maker {
 public:
  Maker() {
    for (int i = 0; i < animal_count; ++i) animals_.push_back(ids_.next_animal());
  }
  Event event(int number) {
    Event event;
    event.id = ids_.next_event();
    event.kiosk = kiosk_;
    event.number = number;
    event.by = "Ines";
    event.when.moment.utc =
        clock_.now().utc - std::chrono::hours{24 * 1000} + std::chrono::minutes{number};
    event.written = event.when.moment.utc;
    const auto which = static_cast<std::size_t>(number) % animals_.size();
    event.animal = animals_[which];
    event.enclosure = tub(which);
    event.details = details(number, which);
    return event;
  }
  [[nodiscard]] AnimalId animal(std::size_t which) const { return animals_[which]; }

  // The tub in which the animal lives.
  static Code tub(std::size_t which) {
    for (std::size_t at = which * 3;; ++at) {
      std::string body = "000000";
      for (std::size_t i = 6, left = at; i-- > 2; left /= 28) body[i] = code_alphabet[left % 28];
      if (const auto code = make_code(CodeKind::Enclosure, body)) return *code;
    }
  }

 private:
  Details details(int number, std::size_t which) {
    if (number <= animal_count)
      return AnimalAdded{.key = fmt::format("animal-{}", which),
                         .species = "Orphnaecus philippinus"};
    switch (random_() % 40) {
      case 0: return ShedFound{};
      case 1: return Retracted{ids_.next_event()};
      case 2: return Rehoused{tub(which)};
      default: break;
    }
    if (random_() % 3 == 0) return Misted{};
    return Offered{random_() % 4 == 0 ? Outcome::Refused : Outcome::Took, "cricket", 1, {}};
  }

  SystemClock clock_;
  SystemIds ids_{clock_};
  KioskId kiosk_{ids_.next()};
  std::vector<AnimalId> animals_;
  std::mt19937 random_{7};
};

inline void fill(LogStore& log, Maker& maker, int events) {
  const double took = milliseconds_of([&] {
    for (int done = 0; done < events;) {
      std::vector<Event> batch;
      for (int i = 0; i < 20000 && done < events; ++i) batch.push_back(maker.event(++done));
      if (!log.merge(batch)) std::exit(1);
    }
  });
  fmt::print("{} events merged in {:.1f} s\n", events, took / 1000);
}

}  // namespace rackside::bench
