#include "core/overview/return_reading.hpp"

#include <algorithm>
#include <set>
#include <utility>

#include "core/cover/days.hpp"

namespace rackside {
namespace {

// Of the whole time, as measured with 2,000 tubs.
constexpr double present_takes = 0.3;
constexpr double following_begins = 0.6;

// Animal by animal, in the order of LogStore::read_all.
class Reader {
 public:
  Reader(const Overview& overview, const Forecaster& then, const Cover& cover,
         const std::vector<Moment>& days, const Moment& now, const HowFar& how_far)
      : overview_(overview),
        then_(then),
        cover_(cover),
        days_(days),
        now_(now),
        how_far_(how_far) {}

  void take(Event&& event) {
    if (!event.animal) return;
    if (!animal_.empty() && animal_.front().animal != event.animal) tell_animal();
    animal_.push_back(std::move(event));
  }

  ReturnReport finish() {
    tell_animal();
    return report_return(cover_, std::move(tubs_), days_, {recorded_.begin(), recorded_.end()});
  }

 private:
  // A screen that is told more often has more to draw than to tell.
  void tell_how_far() {
    constexpr std::size_t every = 50;
    const auto animals = static_cast<double>(overview_.collection.animals.size());
    if (how_far_ && ++seen_ % every == 0)
      how_far_(following_begins +
               (1 - following_begins) * std::min(1.0, static_cast<double>(seen_) / animals));
  }
  void tell_animal() {
    if (animal_.empty()) return;
    tell_how_far();
    TubPast past{.events = standing(std::exchange(animal_, {}))};
    const AnimalState* animal =
        past.events.empty() ? nullptr : overview_.collection.animal(*past.events.front().animal);
    if (animal == nullptr) return;
    const EnclosureState* home =
        animal->enclosure ? overview_.collection.enclosure(*animal->enclosure) : nullptr;
    const Place place = home ? home->place : Place{};
    if (!cover_.includes(place.rack)) return;
    complete(past, *animal, place);
    if (auto tub = follow_tub(past, days_, now_)) {
      tub->place = place;
      tubs_.push_back(*std::move(tub));
    }
  }

  void complete(TubPast& past, const AnimalState& animal, const Place& place) {
    past.rules = overview_.rules.rules_for(animal);
    past.air = overview_.climate.at(place.rack);
    for (const Moment& day : days_) {
      auto forecast = then_.plain(past.events, day);
      past.forecasts.push_back(forecast ? *std::move(forecast) : Forecast{});
    }
    if (const auto found = overview_.forecasts.find(animal.id); found != overview_.forecasts.end())
      past.now = found->second;
    for (const Event& event : past.events) recorded_.insert(event.when.moment.day());
  }

  const Overview& overview_;
  const Forecaster& then_;
  const Cover& cover_;
  const std::vector<Moment>& days_;
  const Moment& now_;
  const HowFar& how_far_;
  std::size_t seen_ = 0;
  std::vector<Event> animal_;
  std::vector<TubReturn> tubs_;
  std::set<Day> recorded_;
};

// Before anybody came: what is recorded on the day itself is not known yet.
std::vector<Moment> mornings_of(const Cover& cover, const Moment& now) {
  const Moment first{Instant{cover.from} - now.offset, now.offset};
  return days_until(first, std::min(cover.last_day(), now.day()));
}

}  // namespace

Result<ReturnReading> read_return(LogStore& log, const WhichCover& which, const Moment& now,
                                  const Wording& wording, const HowFar& how_far) {
  Forecaster present;
  auto whole = read_overview(log, present, now, Until::Everything);
  if (!whole) return tl::unexpected(whole.error());
  if (how_far) how_far(present_takes);
  whole->rules.collection.wording = wording;
  const Cover* cover =
      which.id ? whole->cover.cover(*which.id) : whole->cover.last_begun(now.day(), which.who);
  if (cover == nullptr || cover->from > now.day())
    return failure(ErrorKind::NotFound, which.who.empty()
                                            ? "No cover has begun yet."
                                            : "No cover of that person has begun yet.");
  const std::vector<Moment> days = mornings_of(*cover, now);
  Forecaster then;  // has learnt what was known when the keeper left
  const auto before = read_overview(log, then, days.front(), Until::AsOf);
  if (!before) return tl::unexpected(before.error());
  if (how_far) how_far(following_begins);
  Reader reader(*whole, then, *cover, days, now, how_far);
  const auto read = log.read_all([&](Event&& event) { reader.take(std::move(event)); });
  if (!read) return tl::unexpected(read.error());
  ReturnReport report = reader.finish();
  report.wording = wording;
  return ReturnReading{*std::move(whole), std::move(report)};
}

}  // namespace rackside
