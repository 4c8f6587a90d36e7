#include "core/forecast/event_reader.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/collection/animal.hpp"
#include "core/forecast/visits.hpp"

namespace rackside {
namespace {

constexpr double settling_days = 10;   // common practice, no source: leave it alone a week or more
constexpr double same_moult_days = 5;  // no animal moults twice in so few days
constexpr double late_shed_days = 14;  // a shed found this soon after a moult seen is its own

// Takes them one by one; what can only be told from all of them comes at the end.
class Reader {
 public:
  Reader(const Surroundings& surroundings, Evidence& evidence)
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
    settle_visits(evidence_, looks_, offers_);
    std::vector<WeekOfWarmth> own = readings_.weeks();
    if (own.empty())
      if (const auto* around = surroundings_.around(enclosure_)) own = *around;
    evidence_.warmth = std::move(own);
    mark_cold(evidence_);
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
  std::vector<VisitWithFood> offers_;
  WeeklyMeans readings_;
};

}  // namespace

Evidence read_events(const Event& added, const std::vector<Event>& told,
                     const Surroundings& surroundings) {
  Evidence evidence;
  Reader reader(surroundings, evidence);
  reader.add(std::get<AnimalAdded>(added.details), added, wall_day(told.front().when.moment));
  for (const Event& event : told) reader.read(event);
  reader.finish();
  return evidence;
}

}  // namespace rackside
