#include "demo/collection/collection.hpp"

#include <fmt/format.h>
#include <fmt/ostream.h>

#include <cmath>
#include <ostream>

namespace rackside::demo {
namespace {

constexpr const char* keeper = "Ines Kaltenberg";
constexpr const char* assistant = "Tomasz";
constexpr int shelves_a_rack = 4;
constexpr int places_a_shelf = 12;

std::string key_of(const Species& species, int number) {
  std::string key;
  key += static_cast<char>(species.name[0] - 'A' + 'a');
  key += species.name[species.name.find(' ') + 1];
  return fmt::format("{}-{:02}", key, number);
}

}  // namespace

std::vector<Animal> invent_collection(int tubs, Day today, Dice& dice) {
  std::vector<Animal> animals;
  const auto& species = demo_species();
  std::vector<int> numbers(species.size(), 0);
  for (int i = 0; i < tubs; ++i) {
    const std::size_t kind = static_cast<std::size_t>(i / 3) % species.size();
    const int age = dice.between(90, 3 * 365);
    const int instar = dice.between(2, species[kind].adult_instar);
    Animal animal = invent(species[kind], key_of(species[kind], ++numbers[kind]),
                           today - std::chrono::days{age}, today, instar, dice);
    animal.source = i % 3 == 0 ? "own sac" : i % 3 == 1 ? "exchange" : "reptile fair";
    const int place = i % places_a_shelf;
    const int shelf = i / places_a_shelf % shelves_a_rack;
    animal.rack = std::string(1, static_cast<char>('A' + i / (places_a_shelf * shelves_a_rack)));
    animal.shelf = fmt::format("{}", shelf + 1);
    animal.position = fmt::format("{}", place + 1);
    animals.push_back(std::move(animal));
  }
  return animals;
}

void write_animals(std::ostream& out, const std::vector<Animal>& animals) {
  fmt::print(out,
             "animal,enclosure,species,sex,stage,instar,acquired,source,rack,shelf,position\n");
  for (const Animal& a : animals)
    fmt::print(out, "{},,{},{},{},{},{},{},{},{},{}\n", a.key, a.species->name, "unknown", a.stage,
               a.instar, format_day(a.acquired), a.source, a.rack, a.shelf, a.position);
}

void write_events(std::ostream& out, const std::vector<Animal>& animals) {
  fmt::print(out, "when,animal,event,outcome,prey,count,size_mm,sign,value,unit,by,note\n");
  for (const Animal& a : animals)
    for (const Row& r : a.rows)
      fmt::print(out, "{},{},{},{},{},{},{},{},{},{},{},\"{}\"\n", format_day(r.day), a.key,
                 r.event, r.outcome, r.prey, r.count, r.size_mm, r.sign, r.value, r.unit,
                 r.day.time_since_epoch().count() % 9 == 0 ? assistant : keeper, r.note);
}

// Warmer in summer.
void write_climate(std::ostream& out, Day today, Dice& dice) {
  for (int week = 156; week >= 0; --week)
    for (char rack = 'A'; rack <= 'C'; ++rack) {
      const Day day = today - std::chrono::days{7 * week};
      const double season =
          std::sin((static_cast<double>(day.time_since_epoch().count()) - 100) * 0.0172);
      const double degrees = 24.5 + 1.5 * season + dice.normal(0.6);
      const double air = 66 - 5 * season + dice.normal(4);
      fmt::print(out, "{},,temperature,,,,,,{:.1f},C,{},{}\n", format_day(day), degrees, keeper,
                 rack);
      fmt::print(out, "{},,humidity,,,,,,{:.0f},%,{},{}\n", format_day(day), air, keeper, rack);
    }
}

}  // namespace rackside::demo
