#pragma once
// What to do at one tub now, and why. Pure: the same animal, forecast, rules, readings and moment
// give the same instruction.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/care/rules.hpp"
#include "core/climate/room_climate.hpp"
#include "core/collection/animal.hpp"
#include "core/forecast/forecast.hpp"
#include "core/words/measures.hpp"

namespace rackside {

enum class Task {
  // Cannot wait.
  GiveWater,          // shrivelled abdomen
  HelpWithMoult,      // on its back for longer than a moult takes: look closer, ask somebody
  RefusesAfterMoult,  // weeks after a moult and no meal: look closer
  TakePreyFromMoult,  // on its back with prey in the tub
  // At the tub.
  TakeOutPrey,
  TakeOutShed,
  MeasureFromShed,  // measure it or sex it from the shed
  LookForShed,
  LookCloser,  // possible health problem, or a fast that raises a question
  Offer,
  OfferOneSmall,  // and watch
  MistAndCheckWater,
  // Not now.
  Reoffer,     // refused; again on `next_due`
  NotDue,      // has eaten; next meal on `next_due`
  Withhold,    // in premoult or hardening: offer nothing
  LeaveAlone,  // do not open the tub
};

/// "Take out the left prey": what stands for a task where there is no room for its sentence.
[[nodiscard]] std::string_view task_words(Task task);

/// "take out prey": the task's stable name for other programs.
[[nodiscard]] std::string_view task_name(Task task);

/// In which part of the day's plan it stands.
enum class Urgency { Due, Wait, LeaveAlone };

/// "due", "wait", "leave alone".
[[nodiscard]] std::string_view urgency_word(Urgency urgency);

struct PreyPlan {
  std::string kind;  // "cricket"
  int count = 1;
  std::optional<Millimetres> size;
  double p_refused = 0;  // how likely it is not to be taken

  bool operator==(const PreyPlan&) const = default;
};

/// "2 crickets of about 8 mm".
[[nodiscard]] std::string format_prey(const PreyPlan& prey, Units units = {});

struct Instruction {
  Task task = Task::NotDue;
  Urgency urgency = Urgency::Wait;
  bool urgent = false;                 // look at it before anything else today
  bool overdue = false;                // was due before today already
  bool health_flag = false;            // belongs in the summary: needs another look
  std::string sentence;                // "Offer 2 crickets of about 8 mm."
  std::vector<std::string> why;        // at most three short lines, the strongest first
  std::vector<Task> also;              // done in the same visit; never against `task`
  std::optional<PreyPlan> prey;        // with Offer and OfferOneSmall only
  std::optional<Day> next_due;         // when to come back, where that is known
  std::optional<std::string> caution;  // one short line, before hands or forceps go in

  bool operator==(const Instruction&) const = default;
};

/// `forecast` may be null where none has been computed yet: then only the record speaks. `air` may
/// be null where nothing was ever read. The animal must be living.
[[nodiscard]] Instruction instruct(const AnimalState& animal, const Forecast* forecast,
                                   const CareRules& rules, const RackClimate* air, Moment now);

/// How long a male has been mature. A rule of thumb stands beside it, and it is said to be one.
struct MaleClock {
  double months = 0;
  bool at_least = false;  // his maturing moult was before he came here
  std::string sentence;
};
/// None for anyone but a mature male.
[[nodiscard]] std::optional<MaleClock> male_clock(const AnimalState& animal, const CareRules& rules,
                                                  Day today);

/// How it is, in one sentence of at most about 40 characters: "In premoult, 8 of 10 likely",
/// "Hardening: moulted 3 days ago", "Feeding; last meal 6 days ago", "Mature male, 7 months".
[[nodiscard]] std::string state_sentence(const AnimalState& animal, const Forecast* forecast,
                                         const CareRules& rules, Moment now);

}  // namespace rackside
