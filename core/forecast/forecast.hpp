#pragma once
// What is believed about one animal's moult, and why.

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "core/event/event.hpp"

namespace rackside {

struct CollectionModel;
struct Evidence;

/// The phase of the moult cycle that is most probable.
enum class Phase {
  Hardening,  // has moulted lately; the new skin is still soft
  Feeding,
  Premoult,
  Moulting,  // on its back, or seen moulting today
  Finished,  // a mature male, or an animal that is no longer here: no moult is expected
};

/// "hardening", "feeding", "premoult", "moulting", "finished".
[[nodiscard]] std::string_view phase_word(Phase phase);

/// The probabilities 0.05, 0.10, ... 0.95 at which the next moult's date is told.
inline constexpr std::size_t moult_quantiles = 19;

/// One observation that moved the belief, in plain words, and by how much.
struct Reason {
  // "did not take its last 3 meals, since {0}; it usually refuses 1 in 9": {0}, {1} are `days`
  std::string text;
  double weight = 0;  // change of the log odds of premoult if this observation had not been made
                      // (positive: it speaks for premoult)
  std::vector<EventId> events;
  std::vector<Day> days;

  bool operator==(const Reason&) const = default;
};

struct Forecast {
  AnimalId animal;
  Instant as_of{};
  Phase phase = Phase::Feeding;
  double p_premoult = 0;        // 0 to 1
  double p_hardening = 0;       // 0 to 1
  double p_moulted_unseen = 0;  // since the last moult on record, or since it came here
  /// Days after `as_of`, ascending; negative where the moult has probably happened already. Empty
  /// intervals cannot be: an animal from which no moult is expected has `moult_expected` false.
  std::array<double, moult_quantiles> next_moult{};
  bool moult_expected = true;
  std::vector<Reason> why;           // the strongest first
  std::vector<std::string> ignored;  // records that contradict others: which, and why

  bool operator==(const Forecast&) const = default;
};

/// What a moult strip draws beside the observations: where the next moult may be, day by day.
struct MoultDensity {
  double first_day = 0;          // of `a_day[0]`, in days after `as_of`; negative: it may have been
  std::vector<double> a_day;     // probability of each day, in order
  double median = 0;             // days after `as_of`
  std::array<double, 2> half{};  // in which it is with 50 %
  std::array<double, 2> nine_tenths{};  // ... with 90 %
  std::vector<Day> moults;              // on record before, the oldest first

  bool operator==(const MoultDensity&) const = default;
};

/// The forecast of the animal whose evidence this is, from what `model` has learnt of the
/// collection. Evidence must not reach beyond `as_of` by more than the day it falls on.
/// Reasons take most of the time; what only counts can do without them.
enum class Reasons { Told, LeftOut };
[[nodiscard]] Forecast forecast(const CollectionModel& model, const Evidence& evidence,
                                const Moment& as_of, Reasons reasons = Reasons::Told);
/// Both for the price of one.
struct ForecastWithDensity {
  Forecast forecast;
  MoultDensity density;
};
[[nodiscard]] ForecastWithDensity forecast_with_density(const CollectionModel& model,
                                                        const Evidence& evidence,
                                                        const Moment& as_of);
[[nodiscard]] MoultDensity moult_density(const CollectionModel& model, const Evidence& evidence,
                                         const Moment& as_of);

}  // namespace rackside
