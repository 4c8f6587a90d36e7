#pragma once
// An invented rack room that lives: animals with a moult cycle that nobody can see, and a keeper
// who visits, offers and writes down. What the keeper does is a policy; what it would have been
// right to do is known here. The world is not the forecast's model: cycles, fasts and signs are
// made by other rules, so that nothing is tuned to itself.

#include <functional>
#include <map>
#include <random>
#include <set>
#include <vector>

#include "core/care/meals.hpp"
#include "core/round/day_plan.hpp"

namespace rackside::tests {

/// The truth about one animal.
struct Life {
  AnimalId id;
  int instar = 3;
  double pace = 1;  // length of its cycles beside the usual
  Day moult;        // the next one
  Day premoult;     // from when on it refuses before that
  Day moulted;      // the last one
  Day fast_from, fast_to;
  bool shows_patch = true;
  bool shed_lies = false;
  std::optional<Day> last_meal;
};

/// Meals in one simulated year, over all animals.
struct YearCount {
  int in_danger = 0;       // offered in the week before a moult or in the week after it
  int taken = 0;           // offered and taken outside that window
  int refused = 0;         // offered and refused outside that window
  int visits = 0;          // tubs opened
  int on_its_back = 0;     // food offered to an animal on its back
  double danger_days = 0;  // days in the window, of all animals
};

class YearWorld {
 public:
  YearWorld(int animals, unsigned seed);

  using Keeper = std::function<void(YearWorld&, Day)>;
  /// Lets `days` go by; every morning the cycles move on, then the keeper comes.
  void live(int days, const Keeper& keeper, YearCount& count);

  [[nodiscard]] const Collection& collection() const { return collection_; }
  [[nodiscard]] const std::vector<Event>& log() const { return log_; }
  [[nodiscard]] const std::vector<Event>& log_of(const AnimalId& id) const { return logs_.at(id); }
  [[nodiscard]] const std::map<AnimalId, Life>& truth() const { return lives_; }
  [[nodiscard]] Moment morning(Day day) const;

  /// What a visit can bring. Each writes its events.
  void offer(const AnimalId& id, Day day);
  void look(const AnimalId& id, Day day);  // signs, a shed, an animal on its back
  void record(const AnimalId& id, Day day, Details details);
  /// Whether the keeper, the tub open before him, sees that food would be wrong; he writes it down.
  bool sees_shed_or_moult(const AnimalId& id, Day day);

 private:
  void begin_cycle(Life& life, Day start);
  [[nodiscard]] bool in_danger(const Life& life, Day day) const;
  [[nodiscard]] bool chance(double p) { return std::bernoulli_distribution(p)(random_); }
  [[nodiscard]] double spread(double sigma) {
    return std::lognormal_distribution<>(0, sigma)(random_);
  }

  std::mt19937 random_;
  std::map<AnimalId, Life> lives_;
  std::vector<Event> log_;
  std::map<AnimalId, std::vector<Event>> logs_;
  Collection collection_;
  Day today_;
  int minute_ = 0;
  std::set<AnimalId> opened_;
  YearCount* count_ = nullptr;
};

/// Feeds every animal when its stage's interval is over, whatever the record says; waits a week
/// after a shed he has found.
void calendar_keeper(YearWorld& world, Day day);
/// The same, but stops after two refusals in a row until a shed is found or three weeks are over.
void two_refusals_keeper(YearWorld& world, Day day);

using Forecaster = std::function<std::map<AnimalId, Forecast>(const YearWorld&, Instant)>;
/// Does what the plan says by `rules`, with the forecasts of `forecaster`.
[[nodiscard]] YearWorld::Keeper plan_keeper(Forecaster forecaster, RuleBook rules = {});

}  // namespace rackside::tests
