// What the day's plan costs for 2,000 tubs, given forecasts. The reference is a copy of the whole
// collection in the same run: what it costs merely to touch everything once.

#include <fmt/format.h>

#include <chrono>
#include <random>

#include "core/round/preparation.hpp"

using namespace rackside;

namespace {

using Clock = std::chrono::steady_clock;
constexpr int rounds = 15;

Uuid uuid_of(std::uint64_t number) {
  Uuid id;
  for (std::size_t i = 0; i < 8; ++i)
    id.bytes[15 - i] = static_cast<std::uint8_t>(number >> (8 * i));
  return id;
}

Code tub_code(int number) {
  std::string body = "000000";
  for (int place = 4; place >= 1; --place, number /= 28)
    body[static_cast<std::size_t>(place)] = code_alphabet[static_cast<std::size_t>(number % 28)];
  for (const char last : code_alphabet) {
    body[5] = last;
    if (const auto code = make_code(CodeKind::Enclosure, body)) return *code;
  }
  std::abort();
}

struct RackRoom {
  Collection collection;
  std::map<AnimalId, Forecast> forecasts;
  RuleBook rules;
  RoomClimate climate;
  Moment now{Instant{Day{std::chrono::year{2031} / 6 / 1}} + std::chrono::hours{10}, {}};
};

When days_before(Moment now, int days) {
  now.utc -= std::chrono::days{days};
  return When{now, Precision::Exact};
}

RackRoom furnish(int tubs) {
  RackRoom room;
  std::mt19937 random(5);
  const auto upto = [&](int most) { return std::uniform_int_distribution(0, most)(random); };
  const std::vector<std::string> species{"Haplocosmia himalayana", "Orphnaecus philippinus",
                                         "Omothymus violaceopes", "Encyocratella olivacea"};
  for (int i = 0; i < tubs; ++i) {
    AnimalState animal;
    animal.id = AnimalId{uuid_of(static_cast<std::uint64_t>(i) + 1)};
    animal.key = fmt::format("a-{}", i);
    animal.species = species[static_cast<std::size_t>(upto(3))];
    animal.stage = static_cast<Stage>(upto(4));
    animal.enclosure = tub_code(i);
    animal.added = days_before(room.now, 1500);
    animal.housed = animal.added;
    animal.offers = 200;
    animal.refusals = upto(60);
    animal.refusals_since_meal = upto(3);
    animal.last_meal = days_before(room.now, upto(20));
    animal.last_offer = LastOffer{static_cast<Outcome>(upto(2)), days_before(room.now, upto(10))};
    animal.last_looked = days_before(room.now, upto(12));
    animal.last_moult = LastMoult{days_before(room.now, upto(300)), true};
    animal.last_misted = days_before(room.now, upto(10));
    EnclosureState tub{.code = *animal.enclosure};
    tub.place = {fmt::format("{}", i / 200), fmt::format("{}", i / 20 % 10),
                 fmt::format("{}", i % 20)};
    tub.residents = {animal.id};
    room.collection.enclosures.emplace(tub.code, tub);
    Forecast forecast{.animal = animal.id, .as_of = room.now.utc};
    forecast.p_premoult = upto(100) / 100.0;
    for (int reason = 0; reason < 4; ++reason)
      forecast.why.push_back({"refused 3 of the last 3 meals; it usually refuses 1 in 9", 1.5, {}});
    room.forecasts.emplace(animal.id, forecast);
    if (i % 10 == 0) room.rules.animals[animal.id]["retry_after"] = "6";
    room.collection.animals.emplace(animal.id, std::move(animal));
  }
  return room;
}

template <class Work>
double best_milliseconds(Work work) {
  double best = 1e9;
  for (int i = 0; i < rounds; ++i) {
    const auto start = Clock::now();
    work();
    best = std::min(best, std::chrono::duration<double, std::milli>(Clock::now() - start).count());
  }
  return best;
}

}  // namespace

int main() {
  fmt::print("{:>6} {:>10} {:>10} {:>10} {:>8}\n", "tubs", "plan ms", "carry ms", "copy ms",
             "ratio");
  for (const int tubs : {500, 1000, 2000, 4000}) {
    const RackRoom room = furnish(tubs);
    std::size_t planned = 0;
    DayPlan plan;
    const double plan_ms = best_milliseconds([&] {
      plan = plan_day(room.collection, room.forecasts, room.rules, room.climate, room.now);
      planned += plan.due.size();
    });
    const double carry_ms = best_milliseconds(
        [&] { planned += prepare(plan, room.collection, default_rules().margin).prey.size(); });
    const double copy_ms = best_milliseconds([&] {
      const Collection copy = room.collection;
      planned += copy.animals.size();
    });
    fmt::print("{:>6} {:>10.2f} {:>10.2f} {:>10.2f} {:>8.1f}\n", tubs, plan_ms, carry_ms, copy_ms,
               plan_ms / copy_ms);
    if (planned == 0) return 1;
  }
}
