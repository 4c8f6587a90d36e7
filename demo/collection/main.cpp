// rackside-demo: writes the demo's invented collection as the two interchange files.

#include <fmt/format.h>
#include <fmt/ostream.h>

#include <CLI/CLI.hpp>
#include <fstream>

#include "core/action/action.hpp"
#include "core/clock/system_clock.hpp"
#include "demo/collection/invention.hpp"

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

int print_card(std::string_view word) {
  for (const Action action : all_actions)
    if (action_word(action) == word) {
      fmt::print("{}\n", action_code(action).text());
      return 0;
    }
  fmt::print(stderr, "rackside-demo: there is no card \"{}\"\n", word);
  return 1;
}

std::vector<Animal> invent_all(int tubs, Day today, std::mt19937_64& random) {
  std::vector<Animal> animals;
  const auto& species = demo_species();
  std::vector<int> numbers(species.size(), 0);
  for (int i = 0; i < tubs; ++i) {
    const std::size_t kind = static_cast<std::size_t>(i / 3) % species.size();
    const int age = std::uniform_int_distribution(90, 3 * 365)(random);
    const int instar = std::uniform_int_distribution(2, species[kind].adult_instar)(random);
    Animal animal = invent(species[kind], key_of(species[kind], ++numbers[kind]),
                           today - std::chrono::days{age}, today, instar, random);
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
  fmt::print(out, "animal,enclosure,species,sex,stage,instar,acquired,source,rack,shelf,position\n");
  for (const Animal& a : animals)
    fmt::print(out, "{},,{},{},{},{},{},{},{},{},{}\n", a.key, a.species->name, a.sex, a.stage,
               a.instar, format_day(a.acquired), a.source, a.rack, a.shelf, a.position);
}

void write_events(std::ostream& out, const std::vector<Animal>& animals) {
  fmt::print(out, "when,animal,event,outcome,prey,count,size_mm,sign,value,unit,by,note\n");
  for (const Animal& a : animals)
    for (const Row& r : a.rows)
      fmt::print(out, "{},{},{},{},{},{},{},{},{},{},{},\"{}\"\n", format_day(r.day), a.key, r.event,
                 r.outcome, r.prey, r.count, r.size_mm, r.sign, r.value, r.unit,
                 r.day.time_since_epoch().count() % 9 == 0 ? assistant : keeper, r.note);
}

// One reading a week in each rack: warmer high up and in summer.
void write_climate(std::ostream& out, Day today, std::mt19937_64& random) {
  for (int week = 156; week >= 0; --week)
    for (char rack = 'A'; rack <= 'C'; ++rack) {
      const Day day = today - std::chrono::days{7 * week};
      const double season = std::sin((static_cast<double>(day.time_since_epoch().count()) - 100) * 0.0172);
      const double degrees = 24.5 + 1.5 * season + std::normal_distribution<>(0, 0.6)(random);
      const double air = 66 - 5 * season + std::normal_distribution<>(0, 4)(random);
      fmt::print(out, "{},,temperature,,,,,,{:.1f},C,{},{}\n", format_day(day), degrees, keeper, rack);
      fmt::print(out, "{},,humidity,,,,,,{:.0f},%,{},{}\n", format_day(day), air, keeper, rack);
    }
}

}  // namespace
}  // namespace rackside::demo

int main(int count, char** words) {
  using namespace rackside;
  CLI::App app{"Writes an invented collection as animals.csv and events.csv.", "rackside-demo"};
  std::string folder;
  int tubs = 132;
  unsigned seed = 2026;
  std::string card;
  app.add_option("folder", folder, "where to write");
  app.add_option("--card", card, "only print the code of the action card with this word");
  app.add_option("--tubs", tubs, "how many tubs")->capture_default_str();
  app.add_option("--seed", seed, "another number, another collection")->capture_default_str();
  CLI11_PARSE(app, count, words);
  if (!card.empty()) return demo::print_card(card);
  if (folder.empty()) {
    fmt::print(stderr, "rackside-demo: name a folder to write to\n");
    return 2;
  }
  std::mt19937_64 random(seed);
  SystemClock clock;
  const Day today = clock.now().day();
  const auto animals = demo::invent_all(tubs, today, random);
  std::ofstream animals_file(folder + "/animals.csv");
  demo::write_animals(animals_file, animals);
  std::ofstream events_file(folder + "/events.csv");
  demo::write_events(events_file, animals);
  demo::write_climate(events_file, today, random);
  if (!animals_file || !events_file) {
    fmt::print(stderr, "rackside-demo: nothing could be written to {}\n", folder);
    return 1;
  }
  fmt::print("{} tubs in {}/animals.csv and {}/events.csv\n", animals.size(), folder, folder);
  return 0;
}
