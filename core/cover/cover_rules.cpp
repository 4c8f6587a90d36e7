#include "core/cover/cover_rules.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/words/dates.hpp"

namespace rackside {
namespace {

bool share_a_rack(const Cover& cover, const CoverPlanned& planned) {
  if (cover.racks.empty() || planned.racks.empty()) return true;
  return std::ranges::any_of(planned.racks, [&](const auto& rack) { return cover.includes(rack); });
}

const Cover* in_the_way(const CoverBook& book, const CoverPlanned& planned) {
  for (const Cover& cover : book.covers) {
    const bool share_a_day = cover.from <= planned.to && planned.from <= cover.last_day() &&
                             cover.from <= cover.last_day();
    if (share_a_day && share_a_rack(cover, planned)) return &cover;
  }
  return nullptr;
}

std::string rack_list(const std::vector<std::string>& racks) {
  std::string list;
  for (std::size_t i = 0; i < racks.size(); ++i)
    list += fmt::format("{}rack {}",
                        i == 0                  ? ""
                        : i + 1 == racks.size() ? " and "
                                                : ", ",
                        racks[i]);
  return list;
}

}  // namespace

Result<void> check_cover(const CoverBook& book, const CoverPlanned& planned, Day today,
                         DateStyle dates) {
  if (planned.who.empty())
    return failure(ErrorKind::BadInput, "Say who stands in. Nothing was planned.");
  if (planned.to < planned.from)
    return failure(
        ErrorKind::BadInput,
        fmt::format("It would end on {}, before it begins on {}. Nothing was planned; "
                    "the earlier day comes first.",
                    long_day_words(planned.to, dates), long_day_words(planned.from, dates)));
  if (planned.to < today)
    return failure(ErrorKind::BadInput, fmt::format("{} is over already. Nothing was planned.",
                                                    long_day_words(planned.to, dates)));
  if (planned.to - planned.from >= longest_cover)
    return failure(
        ErrorKind::BadInput,
        fmt::format("More than {} days cannot be foreseen. Nothing was planned; plan the "
                    "first part now and the rest later.",
                    longest_cover.count()));
  const Cover* other = in_the_way(book, planned);
  if (other == nullptr) return {};
  return failure(ErrorKind::BadInput,
                 fmt::format("{} stands in {} already. Nothing was planned: choose other days or "
                             "racks, or end that one.",
                             other->who, cover_words(*other, dates)));
}

Result<void> check_end(const Cover& cover, Day today, DateStyle dates) {
  if (cover.last_day() >= today) return {};
  return failure(ErrorKind::NotNow, fmt::format("The cover of {} ended on {} already.", cover.who,
                                                long_day_words(cover.last_day(), dates)));
}

std::string not_your_days(const CoverBook& book, const Person& person, Day day, DateStyle dates) {
  const Cover* next = book.on_or_after(day, person.name);
  if (next != nullptr && next->holds_on(day)) return {};
  if (next != nullptr)
    return fmt::format("Your cover begins on {}. Ask the keeper before you go on.",
                       long_day_words(next->from, dates));
  const Cover* last = book.last_begun(day, person.name);
  if (last == nullptr || last->last_day() < person.added.moment.day()) return {};
  return fmt::format("Your cover ended on {}. Ask the keeper before you go on.",
                     long_day_words(last->last_day(), dates));
}

std::string cover_words(const Cover& cover, DateStyle dates) {
  const Day last = std::max(cover.from, cover.last_day());
  std::string words = cover.from == last
                          ? fmt::format("on {}", long_day_words(last, dates))
                          : fmt::format("from {} to {}", long_day_words(cover.from, dates),
                                        long_day_words(last, dates));
  if (!cover.racks.empty()) words += " for " + rack_list(cover.racks);
  return words;
}

}  // namespace rackside
