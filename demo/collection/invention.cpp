#include "demo/collection/invention.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace rackside::demo {
namespace {

using std::chrono::days;

// A life, told day by day: the animal follows its cycle, the keeper visits and writes down.
class Life {
 public:
  Life(Animal& animal, Day today, std::mt19937_64& random)
      : animal_(animal), today_(today), random_(random), instar_(animal.instar) {
    female_ = chance(0.55);
    begin_cycle(animal.acquired - days{between(0, 30)});
    next_visit_ = animal.acquired;
  }

  void tell() {
    for (Day day = animal_.acquired; day <= today_ && !ended_; day += days{1}) {
      if (day >= moult_) moulted(day);
      if (day >= next_visit_ && !ended_) visit(day);
    }
  }

 private:
  [[nodiscard]] bool chance(double p) { return std::bernoulli_distribution(p)(random_); }
  [[nodiscard]] int between(int low, int high) {
    return std::uniform_int_distribution(low, high)(random_);
  }
  [[nodiscard]] double spread(double sigma) {
    return std::lognormal_distribution<>(0, sigma)(random_);
  }
  [[nodiscard]] bool adult() const { return instar_ >= animal_.species->adult_instar; }
  [[nodiscard]] bool mature_male() const { return adult() && !female_; }

  void begin_cycle(Day start) {
    start_ = start;
    const double usual = adult() ? 340 : 38 * std::pow(1.3, instar_ - 2);
    const double length = mature_male() ? 100'000 : animal_.species->pace * usual * spread(0.14);
    moult_ = start + days{std::lround(length)};
    premoult_ = moult_ - days{std::lround(std::min(75.0, length * 0.28 * spread(0.25)))};
    if (chance(animal_.species->fasts_a_year * length / 365)) {
      fast_from_ = start + days{std::lround(length * 0.3)};
      fast_to_ = fast_from_ + days{between(20, 60)};
    }
  }

  void moulted(Day day) {
    ++instar_;
    shed_lies_ = true;
    begin_cycle(day);
    male_since_ = mature_male() && !male_since_ ? std::optional(day) : male_since_;
  }

  Row& write(Day day, std::string event) {
    animal_.rows.push_back(Row{.day = day, .event = std::move(event)});
    return animal_.rows.back();
  }

  [[nodiscard]] bool fasting(Day day) const {
    return day >= premoult_ || (day >= fast_from_ && day < fast_to_);
  }

  void visit(Day day) {
    const int every = adult() ? between(9, 14) : instar_ <= 4 ? between(3, 6) : between(6, 9);
    next_visit_ = day + days{every};
    if (male_since_ && day - *male_since_ > days{between(380, 560)}) {
      write(day, "died").note = "mature male, of age";
      ended_ = true;
      return;
    }
    water(day);
    if (shed_lies_ && chance(0.93)) {
      found_shed(day);
      return;
    }
    look(day);
    offer(day);
  }

  void found_shed(Day day) {
    write(day, "shed found");
    shed_lies_ = false;
    quiet_until_ = day + days{adult() ? 14 : 8};
    if (chance(0.7)) write(day, "shed removed");
    if (chance(0.5)) measure(day);
    if (instar_ >= 6 && !sexed_ && chance(0.6)) {
      sexed_ = true;
      auto& row = write(day, "sexed");
      row.value = mature_male() ? "mature male" : female_ ? "female" : "male";
      row.note = "from the shed";
    }
  }

  void measure(Day day) {
    const double grown = std::pow(1.28, instar_ - animal_.species->adult_instar);
    auto& row = write(day, "measured");
    row.value = fmt::format("{:.0f}", animal_.species->adult_span_mm * grown);
    row.unit = "mm";
    row.note = "leg span";
  }

  void look(Day day) {
    const double left = static_cast<double>((moult_ - day).count());
    std::string signs;
    const auto see = [&](const char* sign, double p) {
      if (!chance(p)) return;
      signs += (signs.empty() ? "" : ";") + std::string(sign);
    };
    const bool premoult = day >= premoult_;
    if (premoult && animal_.species->shows_patch && left < 25) see("dark abdomen", 0.75);
    if (premoult && animal_.species->seals_in) see("sealed in", 0.45);
    if (premoult) see("plump abdomen", 0.3);
    see("sluggish", premoult ? 0.25 : 0.01);
    if (shed_lies_) see("brighter colours", 0.5);
    if (!signs.empty() || chance(0.15)) write(day, "looked").sign = signs;
  }

  void offer(Day day) {
    const bool knows = day < quiet_until_ || (day >= premoult_ && refusals_ >= 2 && chance(0.7));
    if (knows) return;
    auto& row = write(day, "offered");
    row.prey = instar_ <= 3 ? "fruit fly" : adult() && chance(0.4) ? "roach" : "cricket";
    row.count = instar_ <= 3 ? "3" : "1";
    row.size_mm = fmt::format("{}", std::clamp(2 * instar_ - 2, 2, 25));
    const bool soft = (day - start_).count() < 6;
    const bool takes = chance(soft ? 0.05 : fasting(day) ? 0.12 : 0.92);
    row.outcome = takes ? "took" : chance(0.2) ? "left overnight" : "refused";
    refusals_ = takes ? 0 : refusals_ + 1;
    if (row.outcome == "left overnight") write(day + days{1}, "prey removed");
  }

  void water(Day day) {
    if (chance(0.85)) write(day, animal_.instar <= 4 || chance(0.3) ? "misted" : "water filled");
  }

  Animal& animal_;
  Day today_;
  std::mt19937_64& random_;
  int instar_;
  bool female_ = true;
  bool sexed_ = false;
  bool shed_lies_ = false;
  bool ended_ = false;
  int refusals_ = 0;
  Day start_, premoult_, moult_, next_visit_, quiet_until_, fast_from_, fast_to_;
  std::optional<Day> male_since_;
};

}  // namespace

Animal invent(const Species& species, std::string key, Day acquired, Day today, int instar,
              std::mt19937_64& random) {
  Animal animal;
  animal.key = std::move(key);
  animal.species = &species;
  animal.acquired = acquired;
  animal.instar = instar;
  animal.stage = instar <= 4 ? "sling" : instar >= species.adult_instar ? "adult" : "juvenile";
  Life(animal, today, random).tell();
  std::erase_if(animal.rows, [&](const Row& row) { return row.day > today; });
  std::ranges::stable_sort(animal.rows, {}, &Row::day);
  return animal;
}

}  // namespace rackside::demo
