#pragma once
// The demo's collection, living on: its animals as their records leave them, their moult cycles
// carried on by the same hidden truth that made the records, and a keeper who visits, offers and
// writes down. What the keeper does is a policy; what it would have been right to do is known here.
// The truth is not the forecast's model: nothing is tuned to itself.

#include <functional>
#include <map>
#include <set>
#include <vector>

#include "core/round/day_plan.hpp"
#include "demo/collection/collection.hpp"

namespace rackside::tests {

/// Meals in one simulated year, over all animals.
struct YearCount {
  int in_danger = 0;       // offered in the week before a moult or in the week after it
  int on_its_back = 0;     // of these: to an animal on its back
  int taken = 0;           // offered and taken outside that window
  int refused = 0;         // offered and refused outside that window
  int visits = 0;          // tubs opened
  double danger_days = 0;  // days in the window, of all animals

  YearCount& operator+=(const YearCount& other);
};

class YearWorld {
 public:
  /// The demo's collection of so many tubs, imported into an empty log.
  YearWorld(int tubs, unsigned seed);

  using Keeper = std::function<void(YearWorld&, Day)>;
  /// Lets `days` go by; every morning the cycles move on, then the keeper comes.
  YearCount live(int days, const Keeper& keeper);

  [[nodiscard]] const Collection& collection() const { return collection_; }
  /// Everything on record: of the room first, then animal by animal.
  [[nodiscard]] std::vector<Event> log() const;
  [[nodiscard]] const std::vector<Event>& log_of(const AnimalId& id) const { return logs_.at(id); }
  /// Of those that live when the record ends. Nobody dies in the year that follows.
  [[nodiscard]] const std::map<AnimalId, demo::Life>& truth() const { return lives_; }
  [[nodiscard]] Moment morning(Day day) const;

  /// What a visit can bring. Each writes its events.
  void offer(const AnimalId& id, Day day);
  void look(const AnimalId& id, Day day);  // signs, a shed, an animal on its back
  void record(const AnimalId& id, Day day, Details details);
  /// Whether the keeper, the tub open before him, sees that food would be wrong; he writes it down.
  bool sees_shed_or_moult(const AnimalId& id, Day day);

 private:
  void import(const std::vector<demo::Animal>& animals);

  demo::Dice dice_;
  std::map<AnimalId, demo::Life> lives_;
  std::vector<Event> room_;  // events about no animal
  std::map<AnimalId, std::vector<Event>> logs_;
  std::map<AnimalId, Day> last_meals_;
  Collection collection_;
  Day today_;
  std::int64_t written_ = 0;
  int minute_ = 0;
  std::set<AnimalId> opened_;
  YearCount count_;
};

}  // namespace rackside::tests
