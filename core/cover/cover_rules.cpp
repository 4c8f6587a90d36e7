#include "core/cover/cover_rules.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/cover/days.hpp"

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

Result<void> check_cover(const CoverBook& book, const CoverPlanned& planned, Day today) {
  if (planned.who.empty())
    return failure(ErrorKind::BadInput, "Say who stands in. Nothing was planned.");
  if (planned.to < planned.from)
    return failure(ErrorKind::BadInput,
                   fmt::format("It would end on {}, before it begins on {}. Nothing was planned; "
                               "the earlier day comes first.",
                               day_name(planned.to), day_name(planned.from)));
  if (planned.to < today)
    return failure(ErrorKind::BadInput,
                   fmt::format("{} is over already. Nothing was planned.", day_name(planned.to)));
  if (planned.to - planned.from >= longest_cover)
    return failure(
        ErrorKind::BadInput,
        fmt::format("More than {} days cannot be foreseen. Nothing was planned; plan the "
                    "first part now and the rest later.",
                    longest_cover.count()));
  const Cover* other = in_the_way(book, planned);
  if (other == nullptr) return {};
  return failure(ErrorKind::BadInput,
                 fmt::format("{} stands in {} already. Nothing was planned; choose other days or "
                             "racks, or end that cover first.",
                             other->who, cover_words(*other)));
}

Result<void> check_end(const Cover& cover, Day today) {
  if (cover.last_day() >= today) return {};
  return failure(ErrorKind::NotNow, fmt::format("The cover of {} ended on {} already.", cover.who,
                                                day_name(cover.last_day())));
}

std::string not_your_days(const CoverBook& book, std::string_view who, Day day) {
  const Cover* next = book.on_or_after(day, who);
  if (next != nullptr && next->holds_on(day)) return {};
  if (next != nullptr)
    return fmt::format("Your cover begins on {}. Ask the keeper before you go on.",
                       day_name(next->from));
  const Cover* last = book.last_begun(day, who);
  if (last == nullptr) return {};
  return fmt::format("Your cover ended on {}. Ask the keeper before you go on.",
                     day_name(last->last_day()));
}

std::string cover_words(const Cover& cover) {
  const Day last = std::max(cover.from, cover.last_day());
  std::string words = cover.from == last
                          ? fmt::format("on {}", day_name(last))
                          : fmt::format("from {} to {}", day_name(cover.from), day_name(last));
  if (!cover.racks.empty()) words += " for " + rack_list(cover.racks);
  return words;
}

}  // namespace rackside
