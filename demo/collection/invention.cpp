#include "demo/collection/invention.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace rackside::demo {
namespace {

using std::chrono::days;

// The keeper visits, offers and writes down, day by day.
class Diary {
 public:
  Diary(Animal& animal, Dice& dice)
      : animal_(animal), life_(animal.life), dice_(dice), next_visit_(animal.acquired) {}

  void tell(Day today) {
    for (Day day = animal_.acquired; day <= today && !animal_.ended; day += days{1}) {
      life_.live_on(day, dice_);
      if (day >= next_visit_) visit(day);
    }
  }

 private:
  Row& write(Day day, std::string event) {
    animal_.rows.push_back(Row{.day = day, .event = std::move(event)});
    return animal_.rows.back();
  }

  void visit(Day day) {
    next_visit_ = day + days{life_.adult()         ? dice_.between(9, 14)
                             : life_.instar() <= 4 ? dice_.between(3, 6)
                                                   : dice_.between(6, 9)};
    if (life_.male_since() && day - *life_.male_since() > days{dice_.between(380, 560)}) {
      write(day, "died").note = "mature male, of age";
      animal_.ended = true;
      return;
    }
    water(day);
    if (life_.shed_lies() && dice_.chance(0.93)) {
      found_shed(day);
      return;
    }
    look(day);
    offer(day);
  }

  void found_shed(Day day) {
    write(day, "shed found");
    life_.shed_is_found();
    quiet_until_ = day + days{life_.adult() ? 14 : 8};
    if (dice_.chance(0.7)) write(day, "shed removed");
    if (dice_.chance(0.5)) measure(day);
    if (life_.instar() >= 6 && !sexed_ && dice_.chance(0.6)) {
      sexed_ = true;
      auto& row = write(day, "sexed");
      row.value = life_.mature_male() ? "mature male" : life_.female() ? "female" : "male";
      row.note = "from the shed";
    }
  }

  void measure(Day day) {
    auto& row = write(day, "measured");
    row.value = fmt::format("{:.0f}", life_.leg_span());
    row.unit = "mm";
    row.note = "leg span";
  }

  void look(Day day) {
    const SignSet signs = life_.shows(day, dice_);
    if (!signs.empty() || dice_.chance(0.15)) write(day, "looked").sign = format_signs(signs);
  }

  void offer(Day day) {
    const bool knows =
        day < quiet_until_ || (day >= life_.premoult() && refusals_ >= 2 && dice_.chance(0.7));
    if (knows) return;
    const int instar = life_.instar();
    auto& row = write(day, "offered");
    row.prey = instar <= 3 ? "fruit fly" : life_.adult() && dice_.chance(0.4) ? "roach" : "cricket";
    row.count = instar <= 3 ? "3" : "1";
    row.size_mm = fmt::format("{}", std::clamp(2 * instar - 2, 2, 25));
    const bool takes = life_.takes(day, dice_);
    row.outcome = takes ? "took" : dice_.chance(0.2) ? "left overnight" : "refused";
    refusals_ = takes ? 0 : refusals_ + 1;
    if (row.outcome == "left overnight") write(day + days{1}, "prey removed");
  }

  void water(Day day) {
    if (dice_.chance(0.85))
      write(day, animal_.instar <= 4 || dice_.chance(0.3) ? "misted" : "water filled");
  }

  Animal& animal_;
  Life& life_;
  Dice& dice_;
  Day next_visit_, quiet_until_;
  int refusals_ = 0;
  bool sexed_ = false;
};

}  // namespace

Animal invent(const Species& species, std::string key, Day acquired, Day today, int instar,
              Dice& dice) {
  Animal animal{.key = std::move(key),
                .species = &species,
                .life = Life(species, instar, acquired, dice),
                .stage = instar <= 4                      ? "sling"
                         : instar >= species.adult_instar ? "adult"
                                                          : "juvenile",
                .instar = instar,
                .acquired = acquired};
  Diary(animal, dice).tell(today);
  std::erase_if(animal.rows, [&](const Row& row) { return row.day > today; });
  std::ranges::stable_sort(animal.rows, {}, &Row::day);
  return animal;
}

}  // namespace rackside::demo
