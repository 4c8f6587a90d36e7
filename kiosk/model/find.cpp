// What is looked for, and where it is found.

#include <algorithm>
#include <cctype>
#include <map>

#include "core/collection/place.hpp"
#include "kiosk/model/lower_case.hpp"
#include "kiosk/model/model.hpp"

namespace rackside::kiosk {
namespace {

std::vector<std::string> split_words(std::string_view text) {
  std::vector<std::string> words;
  std::string word;
  for (const char c : lower(text) + ' ') {
    if (c != ' ') {
      word += c;
    } else if (!word.empty()) {
      words.push_back(std::move(word));
      word.clear();
    }
  }
  return words;
}

using Tasks = std::map<AnimalId, const TubTask*>;

Tasks tasks_in(const DayPlan& plan) {
  Tasks tasks;
  for (const auto* list : {&plan.due, &plan.wait, &plan.leave_alone})
    for (const TubTask& tub : *list) tasks.emplace(tub.animal, &tub);
  return tasks;
}

std::string state_of(const TubTask& tub) {
  const Instruction& said = tub.instruction;
  std::string text = ' ' + std::string(condition_word(tub.condition)) + ' ' +
                     std::string(urgency_word(said.urgency));
  if (tub.condition == Condition::Moulting) text += " on its back";
  if (said.overdue) text += " overdue";
  if (said.urgent) text += " urgent";
  return text;
}

// Everything about a tub that somebody might look for, in lower case, a blank before every word.
std::string findable(const Collection& collection, const EnclosureState& enclosure,
                     const Tasks& tasks) {
  std::string text = ' ' + std::string(enclosure.code.text()) + ' ' + format_place(enclosure.place);
  for (const AnimalId& id : enclosure.residents) {
    const AnimalState& animal = *collection.animal(id);
    text += ' ' + animal.species + ' ' + animal.common_name + ' ' + animal.key;
    const auto task = tasks.find(id);
    if (task != tasks.end()) text += state_of(*task->second);
  }
  if (enclosure.residents.empty()) text += " empty";
  std::ranges::replace(text, ',', ' ');
  return lower(text) + ' ';
}

// A word is found where one begins with it. A single letter that is not the one being typed just
// now means itself: "rack b shelf 2".
std::vector<std::string> patterns(std::string_view typed) {
  auto words = split_words(typed);
  for (std::size_t i = 0; i < words.size(); ++i) {
    const bool itself = words[i].size() == 1 && i + 1 < words.size();
    words[i] = ' ' + words[i] + (itself ? " " : "");
  }
  return words;
}

}  // namespace

std::vector<const EnclosureState*> found_tubs(const Collection& collection, std::string_view words,
                                              const DayPlan& plan) {
  const auto wanted = patterns(words);
  if (wanted.empty()) return {};
  const Tasks tasks = tasks_in(plan);
  auto tubs = walking_order(collection);
  std::erase_if(tubs, [&](const EnclosureState* tub) {
    const std::string text = findable(collection, *tub, tasks);
    return !std::ranges::all_of(
        wanted, [&](const std::string& word) { return text.find(word) != std::string::npos; });
  });
  return tubs;
}

}  // namespace rackside::kiosk
