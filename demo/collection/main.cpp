// rackside-demo: writes the demo's invented collection as the two interchange files.

#include <fmt/format.h>

#include <fstream>

#include "core/action/action.hpp"
#include "core/clock/system_clock.hpp"
#include "core/options/options.hpp"
#include "demo/collection/collection.hpp"

namespace rackside::demo {
namespace {

int print_card(std::string_view word) {
  for (const Action action : all_actions)
    if (action_word(action) == word) {
      fmt::print("{}\n", action_code(action).text());
      return 0;
    }
  fmt::print(stderr, "rackside-demo: there is no card \"{}\"\n", word);
  return 1;
}

}  // namespace
}  // namespace rackside::demo

int main(int count, char** words) {
  using namespace rackside;
  CommandLine app{"Writes an invented collection as animals.csv and events.csv.", "rackside-demo"};
  std::string folder;
  int tubs = 132;
  unsigned seed = 2026;
  std::string card;
  app.option("folder", folder, "where to write");
  app.option("--card", card, "only print the code of the action card with this word");
  app.option("--tubs", tubs, "how many tubs").shows_default();
  app.option("--seed", seed, "another number, another collection").shows_default();
  if (const auto end = app.read(count, words)) return *end;
  if (!card.empty()) return demo::print_card(card);
  if (folder.empty()) {
    fmt::print(stderr, "rackside-demo: name a folder to write to\n");
    return CommandLine::wrong_words;
  }
  demo::Dice dice(seed);
  SystemClock clock;
  const Day today = clock.now().day();
  const auto animals = demo::invent_collection(tubs, today, dice);
  std::ofstream animals_file(folder + "/animals.csv");
  demo::write_animals(animals_file, animals);
  std::ofstream events_file(folder + "/events.csv");
  demo::write_events(events_file, animals);
  demo::write_climate(events_file, today, dice);
  if (!animals_file || !events_file) {
    fmt::print(stderr, "rackside-demo: nothing could be written to {}\n", folder);
    return 1;
  }
  fmt::print("{} tubs in {}/animals.csv and {}/events.csv\n", animals.size(), folder, folder);
  return 0;
}
