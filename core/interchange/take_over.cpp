#include "core/interchange/take_over.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace rackside {

std::string so_far_words(const WrittenSoFar& so_far) {
  if (so_far.written == 0) return "Nothing was taken over.";
  return fmt::format("{} of {} entries are in the log; the same brought in again goes on there.",
                     so_far.written, so_far.of);
}

std::string held_up_words(const Error& problem, const WrittenSoFar& so_far) {
  const bool in_a_file = problem.kind == ErrorKind::BadInput && !problem.where.empty();
  const std::string words =
      in_a_file ? fmt::format("{}: {}", problem.where, problem.sentence) : problem.sentence;
  if (so_far.written == 0) return words;
  return fmt::format("{} The rest: {}", so_far_words(so_far), words);
}

Result<std::size_t> take_over_part(const ImportPlan& plan, std::size_t done, LogStore& log,
                                   Clock& clock) {
  const std::size_t end = std::min(plan.drafts.size(), done + import_part);
  const auto at = [&](std::size_t i) {
    return plan.drafts.begin() + static_cast<std::ptrdiff_t>(i);
  };
  return log.append({at(done), at(end)}, clock.now().utc).map([&](const auto&) { return end; });
}

Result<void> take_over(const ImportPlan& plan, LogStore& log, Clock& clock,
                       const std::function<void(std::size_t)>& between) {
  const std::size_t all = plan.drafts.size();
  for (std::size_t done = 0; done < all;) {
    const auto written = take_over_part(plan, done, log, clock);
    if (!written) {
      Error problem = written.error();
      problem.sentence = held_up_words(problem, {done, all});
      return tl::unexpected(std::move(problem));
    }
    done = *written;
    between(done);
  }
  return {};
}

}  // namespace rackside
