#include "core/overview/round_so_far.hpp"

#include <utility>

namespace rackside {
namespace {

// The collection as the round found it: every animal without what was written since.
class Before {
 public:
  Before(const Round& round, const Collection& now, RoundSoFar& so_far)
      : round_(round), so_far_(so_far), collection_(now) {
    forecaster_.begin({}, round.started.moment);
  }

  void take(Event&& event) {
    if (!event.animal) return;
    if (!animal_.empty() && animal_.front().animal != event.animal) tell_animal();
    animal_.push_back(std::move(event));
  }

  void tell_animal() {
    RoundLog parts = split_at(round_, std::exchange(animal_, {}));
    so_far_.since.insert(so_far_.since.end(), parts.since.begin(), parts.since.end());
    const auto animal = fold_animal(parts.before);
    if (!animal) return;
    replace(collection_, *animal);
    forecaster_.take(parts.before);
  }

  [[nodiscard]] DayPlan plan(const Overview& overview) {
    return plan_day(collection_, forecaster_.all(), overview.rules, overview.climate,
                    round_.started.moment, round_.rack);
  }

 private:
  const Round& round_;
  RoundSoFar& so_far_;
  Collection collection_;
  Forecaster forecaster_;
  std::vector<Event> animal_;
};

}  // namespace

Result<std::optional<RoundSoFar>> read_round(LogStore& log, const Overview& overview) {
  if (!overview.last_round || overview.last_round->ended) return std::nullopt;
  RoundSoFar so_far{.round = *overview.last_round, .plan = {}, .since = {}};
  Before before(so_far.round, overview.collection, so_far);
  const auto read = log.read_all([&](Event&& event) { before.take(std::move(event)); });
  if (!read) return tl::unexpected(read.error());
  before.tell_animal();
  so_far.plan = before.plan(overview);
  return so_far;
}

}  // namespace rackside
