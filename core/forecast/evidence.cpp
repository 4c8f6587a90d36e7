#include "core/forecast/evidence.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/collection/animal.hpp"

namespace rackside {
namespace {

constexpr double settling_days = 10;   // common practice, no source: leave it alone a week or more
constexpr double cold_below = 19;      // degrees C; from memory
constexpr double same_moult_days = 5;  // no animal moults twice in so few days
constexpr double late_shed_days = 14;  // a shed found this soon after a moult seen is its own

// Reads one animal's standing events in their order.
class Gatherer {
 public:
  Gatherer(const Surroundings& surroundings, Evidence& evidence)
      : surroundings_(surroundings), evidence_(evidence) {}

  void add(const AnimalAdded& added, const Event& event, double first_day) {
    evidence_.animal = *event.animal;
    evidence_.key = added.key;
    evidence_.species = added.species;
    evidence_.sex = added.sex;
    evidence_.stage = added.stage;
    evidence_.instar = added.instar;
    evidence_.count = added.count;
    acquired_ = added.acquired.has_value();
    born_ = added.born ? std::optional{day_number(*added.born)} : std::nullopt;
    evidence_.arrived = added.acquired ? day_number(*added.acquired) - 0.5 : first_day;
    if (added.stage == Stage::MatureMale) evidence_.matured = evidence_.arrived;
    enclosure_ = event.enclosure;
    last_unsettled_ = evidence_.arrived;
  }

  void read(const Event& event) {
    const double day = wall_day(event.when.moment);
    if (contradicts(event, day)) return;
    now_ = day;
    event_ = &event;
    std::visit([this](const auto& details) { take(details); }, event.details);
  }

  void finish() {
    settle_visits();
    std::vector<WeekOfWarmth> own = readings_.weeks();
    if (own.empty())
      if (const auto* around = surroundings_.around(enclosure_)) own = *around;
    evidence_.warmth = std::move(own);
    mark_cold();
  }

 private:
  static double day_number(Day day) {
    return static_cast<double>(day.time_since_epoch().count()) + 0.5;
  }

  void ignore(const Event& event, std::string_view why) {
    evidence_.ignored.push_back(fmt::format("{} on {}: {}", kind_name(event.details),
                                            format_day(event.when.moment.day()), why));
  }

  bool contradicts(const Event& event, double day) {
    if (std::holds_alternative<AnimalAdded>(event.details)) return true;  // read already
    const bool tells = !std::holds_alternative<Noted>(event.details);
    if (evidence_.ended && day >= *evidence_.ended && tells) {
      ignore(event, "the animal had died or left before");
      return true;
    }
    if (acquired_ && day < evidence_.arrived - 0.5) {
      ignore(event, "the animal had not come here yet");
      return true;
    }
    if (born_ && day < *born_ - 1) {
      ignore(event, "it is before the day the animal was born");
      return true;
    }
    return false;
  }

  void observe(Observation observation) {
    observation.day = now_;
    observation.event = event_->id;
    observation.unsettled = now_ - last_unsettled_ < settling_days;
    evidence_.observations.push_back(observation);
  }

  void take(const Offered& offer) {
    observe({.kind = Observation::Kind::Offer, .outcome = offer.outcome});
    offers_.push_back({now_, offer.outcome == Outcome::Took});
  }
  // Prey that was left and had to be taken out again was refused after all.
  void take(const PreyRemoved&) {
    for (auto it = evidence_.observations.rbegin(); it != evidence_.observations.rend(); ++it) {
      if (it->kind != Observation::Kind::Offer || now_ - it->day > 5) continue;
      if (it->outcome == Outcome::LeftOvernight) it->outcome = Outcome::Refused;
      return;
    }
  }
  void take(const Looked& look) {
    looks_.push_back(now_);
    if (!evidence_.observations.empty()) {
      Observation& last = evidence_.observations.back();
      const double visit =
          std::chrono::duration<double, std::chrono::days::period>(one_visit).count();
      if (last.kind == Observation::Kind::Look && now_ - last.day <= visit) {
        last.signs = last.signs.with(look.signs);
        return;
      }
    }
    observe({.kind = Observation::Kind::Look, .signs = look.signs});
  }
  void take(const Moulted&) {
    const double half = event_->when.precision == Precision::DayOnly ? 0.5 : 0.25;
    moult({now_ - half, now_ + half, event_->id}, same_moult_days);
  }
  void take(const ShedFound&) {
    moult({now_, now_, event_->id}, last_was_seen_ ? late_shed_days : same_moult_days);
  }
  void moult(MoultSpan span, double too_soon) {
    const bool seen = span.width() > 0;
    if (!evidence_.moults.empty() && now_ - evidence_.moults.back().latest < too_soon) {
      ignore(*event_, fmt::format("a moult is on record {:.0f} days before; this is taken for the "
                                  "same one",
                                  std::max(0.0, now_ - evidence_.moults.back().latest)));
      return;
    }
    evidence_.moults.push_back(span);
    last_was_seen_ = seen;
  }
  void take(const Rehoused& rehoused) {
    enclosure_ = rehoused.to;
    last_unsettled_ = now_;
    looks_.push_back(now_);
  }
  void take(const Measured&) { looks_.push_back(now_); }
  void take(const Paired&) { looks_.push_back(now_); }
  void take(const Sexed& sexed) {
    looks_.push_back(now_);
    if (sexed.sex != Sex::Unknown) evidence_.sex = sexed.sex;
    if (sexed.stage == Stage::MatureMale && !evidence_.matured) evidence_.matured = now_;
  }
  void take(const TemperatureRead& read) {
    if (is_room_temperature(read.temperature))
      readings_.add(now_, read.temperature.value);
    else
      ignore(*event_, fmt::format("{:.0f} C is no temperature of a room", read.temperature.value));
  }
  void take(const Counted& counted) { evidence_.count = counted.count; }
  void take(const Died&) { evidence_.ended = now_; }
  void take(const Left&) { evidence_.ended = now_; }
  template <class Other>
  void take(const Other&) {}  // says nothing about the moult

  // A keeper who writes down looks would have noticed a shed then. Where looks are rare, offers
  // are the visits. A meal taken shows in any case that the skin was hard at the time.
  void settle_visits() {
    evidence_.visits = looks_;
    const bool offers_are_visits = looks_.size() * 4 < offers_.size();
    for (const Offer& offer : offers_)
      if (offers_are_visits || offer.took) evidence_.visits.push_back(offer.day);
    for (Observation& o : evidence_.observations)
      o.visit =
          o.kind == Observation::Kind::Look || offers_are_visits || o.outcome == Outcome::Took;
    std::ranges::sort(evidence_.visits);
    double before = evidence_.arrived;
    for (MoultSpan& moult : evidence_.moults) {
      if (moult.width() <= 0) moult.earliest = earliest_of(moult.latest, before);
      before = moult.latest;
    }
  }
  [[nodiscard]] double earliest_of(double found, double before) const {
    // The look at which it was found is often written beside it, on the same day.
    const auto after = std::ranges::lower_bound(evidence_.visits, found - 0.75);
    const double visit = after == evidence_.visits.begin() ? before : *(after - 1);
    return std::min(std::max(visit, before), found - 0.25);
  }

  void mark_cold() {
    if (evidence_.warmth.empty()) return;
    for (Observation& observation : evidence_.observations) {
      const auto next = std::ranges::upper_bound(
          evidence_.warmth, static_cast<float>(observation.day), {}, &WeekOfWarmth::day);
      if (next == evidence_.warmth.begin()) continue;
      const WeekOfWarmth& week = *(next - 1);
      if (observation.day - week.day < 21 && week.celsius < cold_below)
        observation.unsettled = true;
    }
  }

  struct Offer {
    double day;
    bool took;
  };

  const Surroundings& surroundings_;
  Evidence& evidence_;
  const Event* event_ = nullptr;
  double now_ = 0;
  double last_unsettled_ = 0;
  bool acquired_ = false;
  bool last_was_seen_ = false;
  std::optional<double> born_;
  std::optional<Code> enclosure_;
  std::vector<double> looks_;
  std::vector<Offer> offers_;
  WeeklyMeans readings_;
};

}  // namespace

double wall_day(const Moment& moment) {
  return std::chrono::duration<double, std::chrono::days::period>(moment.local().time_since_epoch())
      .count();
}

std::optional<Evidence> gather_evidence(std::vector<Event> events, Instant as_of,
                                        const Surroundings& surroundings) {
  std::erase_if(events, [&](const Event& event) { return event.when.moment.utc > as_of; });
  const std::vector<Event> told = standing(std::move(events));
  const auto adds = [](const Event& event) {
    return event.animal && std::holds_alternative<AnimalAdded>(event.details);
  };
  // The last word on who it is, as core/collection has it.
  const auto added = std::find_if(told.rbegin(), told.rend(), adds);
  if (added == told.rend()) return std::nullopt;
  Evidence evidence;
  Gatherer gatherer(surroundings, evidence);
  gatherer.add(std::get<AnimalAdded>(added->details), *added, wall_day(told.front().when.moment));
  for (const Event& event : told) gatherer.read(event);
  gatherer.finish();
  return evidence;
}

std::optional<Evidence> as_it_stood(const Evidence& evidence, double day) {
  if (evidence.arrived > day) return std::nullopt;
  Evidence then = evidence;
  const auto after = [day](double when) { return when > day; };
  std::erase_if(then.observations, [&](const auto& o) { return after(o.day); });
  std::erase_if(then.moults, [&](const auto& m) { return after(m.latest - 0.5); });
  std::erase_if(then.visits, after);
  std::erase_if(then.warmth, [&](const auto& w) { return after(w.day); });
  if (then.matured && after(*then.matured)) then.matured.reset();
  if (then.ended && after(*then.ended)) then.ended.reset();
  return then;
}

}  // namespace rackside
