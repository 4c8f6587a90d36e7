#include "tests/core/forecast/invented_collection.hpp"

#include <algorithm>
#include <cmath>

#include "tests/generators/events.hpp"

namespace rackside::tests {
namespace {

double normal(Dice& dice) { return std::normal_distribution<double>{}(dice); }
double uniform(Dice& dice) { return std::uniform_real_distribution<double>{}(dice); }

struct Kind {
  std::string name;
  double log_factor = 0, lengthening = 0, season_peak = 0;
  bool patch = true;
};

// Names that no table of traits knows, and some that one does.
std::vector<Kind> invent_kinds(const World& world, Dice& dice) {
  const char* names[] = {"Inventa prima",          "Inventa secunda",     "Inventa tertia",
                         "Haplocosmia himalayana", "Neoholothele incei",  "Inventa quarta",
                         "Encyocratella olivacea", "Aphonopelma seemanni"};
  std::vector<Kind> kinds;
  for (const char* name : names) {
    const std::string text = name;
    kinds.push_back({text, world.between_species * normal(dice),
                     world.lengthening + world.lengthening_spread * normal(dice),
                     365.25 * uniform(dice) * 0.3 + 150,
                     text.starts_with("Inv") || text[0] == 'A'});
  }
  return kinds;
}

class Chronicle {
 public:
  Chronicle(const World& world, InventedAnimal& animal, int number, double ends, Dice& dice)
      : world_(world),
        animal_(animal),
        number_(number),
        ends_(ends),
        dice_(dice),
        order_(static_cast<std::int64_t>(number) * 100'000) {}

  void write() {
    live();
    add(animal_.arrived, AnimalAdded{.key = "animal " + std::to_string(number_),
                                     .species = animal_.nature.species,
                                     .stage = animal_.nature.stage,
                                     .acquired = day_of(animal_.arrived)});
    offers();
    looks();
  }

 private:
  static Day day_of(double day) { return Day{std::chrono::days{std::lround(std::floor(day))}}; }

  void add(double day, Details details, bool day_only = true) {
    Event event = make_event(order_++, 0, animal_number(number_), std::move(details));
    event.when = day_only ? on_day(day_of(day), std::chrono::minutes{0})
                          : When{moment_of(day), Precision::Exact};
    animal_.events.push_back(std::move(event));
  }

  void live() {
    // Far enough back that the arrival falls anywhere in a cycle.
    const double cycle = std::exp(animal_.nature.log_days);
    double day = animal_.arrived - cycle * (cycles_before + uniform(dice_));
    int moult = -cycles_before;
    while (day < ends_ + 2.5 * std::exp(animal_.nature.log_days + 1.5)) {
      animal_.cycles.push_back(next_cycle(world_, animal_.nature, moult++, day, dice_));
      day = animal_.cycles.back().ends;
    }
    animal_.recorded.assign(animal_.cycles.size(), false);
  }

  [[nodiscard]] int moult_of(const TrueCycle& cycle) const {
    return static_cast<int>(&cycle - animal_.cycles.data()) - cycles_before;
  }

  [[nodiscard]] bool pausing(double day) const {
    const double phase = std::fmod(day + 37.0 * number_, 160.0);
    return phase < 160 * world_.pauses;
  }

  void offers() {
    for (double day = animal_.arrived + 2; day < ends_;) {
      const TrueCycle& cycle = animal_.cycle_on(day);
      const bool adult = is_adult(world_, animal_.nature, moult_of(cycle));
      if (!pausing(day)) {
        const bool refused = uniform(dice_) < refusal_chance(world_, animal_.nature, cycle, day);
        const bool left = refused && uniform(dice_) < 0.15;
        add(day, Offered{.outcome = left      ? Outcome::LeftOvernight
                                    : refused ? Outcome::Refused
                                              : Outcome::Took});
      }
      day += (adult ? world_.offer_every_adult : world_.offer_every) *
             hunger_on(animal_.nature, day) * (0.7 + 0.6 * uniform(dice_));
    }
  }

  void looks() {
    SignSet staying;
    std::size_t in_cycle = 0;
    for (double day = animal_.arrived + 1; day < ends_;
         day += world_.look_every * (0.6 + 0.8 * uniform(dice_))) {
      find_sheds(day);
      const TrueCycle& cycle = animal_.cycle_on(day);
      const auto index = static_cast<std::size_t>(&cycle - animal_.cycles.data());
      if (index != in_cycle) staying = {};
      in_cycle = index;
      SignSet signs;
      for (const Sign sign : all_signs)
        if (uniform(dice_) < sign_chance(world_, animal_.nature, cycle, day, sign) ||
            staying.has(sign))
          signs.insert(sign);
      if (world_.signs_stay && cycle.in_premoult(day)) staying = signs;
      add(day, Looked{signs});
    }
  }
  void find_sheds(double now) {
    for (; next_shed_ < animal_.cycles.size() && animal_.cycles[next_shed_].ends < now;
         ++next_shed_) {
      const double moulted = animal_.cycles[next_shed_].ends;
      if (moulted < animal_.arrived || uniform(dice_) < world_.missed) continue;
      animal_.recorded[next_shed_] = true;
      if (uniform(dice_) < world_.known_dates)
        add(moulted, Moulted{});
      else
        add(now, ShedFound{});
    }
  }

  const World& world_;
  InventedAnimal& animal_;
  int number_;
  double ends_;
  Dice& dice_;
  std::int64_t order_;
  std::size_t next_shed_ = 0;
};

Nature invent_nature(const World& world, const Kind& kind, Dice& dice) {
  const double draw = uniform(dice);
  Nature nature{.species = kind.name, .season_peak = kind.season_peak, .patch = kind.patch};
  nature.stage = draw < 0.35 ? Stage::Sling : draw < 0.7 ? Stage::Juvenile : Stage::Adult;
  const double days = nature.stage == Stage::Sling      ? world.sling_days
                      : nature.stage == Stage::Juvenile ? world.juvenile_days
                                                        : world.adult_days;
  const double species = nature.stage == Stage::Adult ? kind.log_factor / 2 : kind.log_factor;
  nature.log_days_of_kind = std::log(days) + species;
  nature.lengthening = kind.lengthening;
  give_own_nature(world, nature, dice);
  return nature;
}

// How often it is fed, and from some day on another way.
void plan_meals(const InventedCollection& collection, Nature& nature, Dice& dice) {
  if (collection.world.feeding_plans == 0) return;
  for (double& hunger : nature.hunger)
    hunger = std::exp(collection.world.feeding_plans * normal(dice));
  nature.other_plan_from = std::lerp(collection.begins, collection.ends, uniform(dice));
}

}  // namespace

void give_own_nature(const World& world, Nature& nature, Dice& dice) {
  nature.log_days = nature.log_days_of_kind + world.between * normal(dice);
  if (nature.stage != Stage::Adult)
    nature.log_days += 0.1 * normal(dice);  // stages are loose words
  const double odds = std::log(world.refuses_feeding / (1 - world.refuses_feeding)) +
                      world.appetite_spread * normal(dice);
  nature.refuses_feeding = 1 / (1 + std::exp(-odds));
}

const TrueCycle& InventedAnimal::cycle_on(double day) const {
  for (const TrueCycle& cycle : cycles)
    if (day < cycle.ends) return cycle;
  return cycles.back();
}

double InventedAnimal::moult_since_record(double day) const {
  double last = arrived;
  for (const Event& event : events)
    if (std::holds_alternative<Moulted>(event.details) ||
        std::holds_alternative<ShedFound>(event.details))
      if (wall_day(event.when.moment) <= day + 0.5)
        last = std::max(last, wall_day(event.when.moment));
  std::size_t recorded_last = 0;
  bool any = false;
  for (std::size_t i = 0; i < cycles.size(); ++i)
    if (recorded[i] && cycles[i].ends <= last + 0.51) recorded_last = i, any = true;
  for (std::size_t i = any ? recorded_last + 1 : 0; i < cycles.size(); ++i)
    if (cycles[i].ends > arrived) return cycles[i].ends;
  return cycles.back().ends;
}

InventedCollection invent(const World& world, int animals, double days, std::uint64_t seed) {
  Dice dice(seed);
  InventedCollection collection{.world = world, .begins = 22'000, .ends = 22'000 + days};
  const std::vector<Kind> kinds = invent_kinds(world, dice);
  collection.animals.resize(static_cast<std::size_t>(animals));
  for (int number = 0; number < animals; ++number) {
    InventedAnimal& animal = collection.animals[static_cast<std::size_t>(number)];
    const double draw = uniform(dice);
    const Kind& kind =
        kinds[static_cast<std::size_t>(draw * draw * static_cast<double>(kinds.size()))];
    animal.nature = invent_nature(world, kind, dice);
    plan_meals(collection, animal.nature, dice);
    animal.arrived = collection.begins + std::floor(days * 0.6 * uniform(dice) * uniform(dice));
    Chronicle(world, animal, number, collection.ends, dice).write();
  }
  if (world.readings)
    for (double day = collection.begins; day < collection.ends; day += 2) {
      Event event = make_event(90'000'000 + std::lround(day), 0, {},
                               TemperatureRead{{celsius_on(world, day) + normal(dice)}, ""});
      event.animal.reset();
      event.when = on_day(Day{std::chrono::days{std::lround(day)}}, std::chrono::minutes{0});
      collection.room.push_back(event);
    }
  return collection;
}

Moment moment_of(double day) {
  return Moment{Instant{std::chrono::milliseconds{std::llround(day * 86'400'000.0)}},
                std::chrono::minutes{0}};
}

}  // namespace rackside::tests
