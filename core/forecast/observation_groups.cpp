#include "core/forecast/observation_groups.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/forecast/steps.hpp"

namespace rackside {
namespace {

constexpr std::size_t most_in_a_row = 6;  // of meals taken or looks without a sign

Day day_of(const Observation& o) { return Day{std::chrono::days{std::lround(std::floor(o.day))}}; }

bool is_offer(const Observation& o) { return o.kind == Observation::Kind::Offer; }
bool took(const Observation& o) { return o.outcome == Outcome::Took; }

// What it was last offered and did the same with each time, the last first.
std::vector<const Observation*> last_row_of_offers(std::span<const Observation> all) {
  std::vector<const Observation*> row;
  for (auto it = all.rbegin(); it != all.rend(); ++it) {
    if (!is_offer(*it)) continue;
    if (!row.empty() && took(*it) != took(*row.back())) break;
    if (took(*it) && row.size() == most_in_a_row) break;
    row.push_back(&*it);
  }
  return row;
}

std::vector<EventId> ids_of(const std::vector<const Observation*>& row) {
  std::vector<EventId> ids;
  for (const Observation* o : row) ids.push_back(o->event);
  return ids;
}

std::string usual_refusals(const Habits& habits) {
  const double taken = habits.offer[static_cast<std::size_t>(Appetite::Feeding)][0];
  const double one_in = 1 / std::max(1e-3, 1 - taken);
  if (one_in < 1.5) return "it often refuses";
  return fmt::format("it usually refuses 1 in {:.0f}", one_in);
}

ObservationGroup meals(const std::vector<const Observation*>& row, const Habits& habits) {
  const std::vector<Day> days{day_of(*row.front()), day_of(*row.back())};  // the last, the first
  std::string text;
  if (took(*row.front()))
    text = row.size() == 1 ? "took its last meal, on {0}"
                           : fmt::format("took its last {} meals, the latest on {{0}}", row.size());
  else if (row.size() == 1)
    text = fmt::format("did not take its last meal, on {{0}}; {}", usual_refusals(habits));
  else
    text = fmt::format("did not take its last {} meals, since {{1}}; {}", row.size(),
                       usual_refusals(habits));
  return {std::move(text), ids_of(row), days};
}

// The row of meals before the last one, where that one ended a fast.
std::optional<ObservationGroup> refusals_before(std::span<const Observation> all,
                                                const std::vector<const Observation*>& last_row) {
  const auto length = static_cast<std::size_t>(last_row.back() - all.data());
  const auto row = last_row_of_offers(all.first(length));
  if (row.size() < 2 || took(*row.front())) return std::nullopt;
  return ObservationGroup{
      fmt::format("before that, refused {} meals from {{0}} to {{1}}", row.size()),
      ids_of(row),
      {day_of(*row.back()), day_of(*row.front())}};
}

std::optional<ObservationGroup> looks_with(std::span<const Observation> all, Sign sign,
                                           SignSet mute) {
  std::vector<const Observation*> row;
  for (const Observation& o : all)
    if (!is_offer(o) && o.signs.has(sign) && counts_in(sign, o.signs, mute)) row.push_back(&o);
  if (row.empty()) return std::nullopt;
  return ObservationGroup{row.size() == 1
                              ? fmt::format("{} seen on {{0}}", sign_word(sign))
                              : fmt::format("{} seen {} times since {{0}}, the latest on {{1}}",
                                            sign_word(sign), row.size()),
                          ids_of(row),
                          {day_of(*row.front()), day_of(*row.back())}};
}

bool says_something(SignSet look, SignSet mute) {
  return std::ranges::any_of(look.signs(), [&](Sign s) { return counts_in(s, look, mute); });
}

std::optional<ObservationGroup> last_looks_without(std::span<const Observation> all, SignSet mute) {
  std::vector<const Observation*> row;
  for (auto it = all.rbegin(); it != all.rend() && row.size() < most_in_a_row; ++it) {
    if (is_offer(*it)) continue;
    if (says_something(it->signs, mute)) break;
    row.push_back(&*it);
  }
  if (row.empty()) return std::nullopt;
  return ObservationGroup{
      row.size() == 1
          ? "no sign of a moult seen on {0}"
          : fmt::format("no sign of a moult seen in the last {} looks, since {{0}}", row.size()),
      ids_of(row),
      {day_of(*row.back())}};
}

}  // namespace

std::vector<ObservationGroup> group_observations(std::span<const Observation> all,
                                                 const Habits& habits, SignSet mute) {
  std::vector<ObservationGroup> groups;
  const auto add = [&groups](std::optional<ObservationGroup> group) {
    if (group) groups.push_back(std::move(*group));
  };
  if (const auto row = last_row_of_offers(all); !row.empty()) {
    add(meals(row, habits));
    if (took(*row.front())) add(refusals_before(all, row));
  }
  for (const Sign sign : all_signs) add(looks_with(all, sign, mute));
  add(last_looks_without(all, mute));
  return groups;
}

}  // namespace rackside
