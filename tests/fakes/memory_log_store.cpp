#include "tests/fakes/memory_log_store.hpp"

#include <algorithm>
#include <limits>
#include <utility>

namespace rackside::tests {

std::optional<Error> MemoryLogStore::take_failure() { return std::exchange(next_failure_, {}); }

const Event* MemoryLogStore::find(const EventId& id) const {
  const auto found = by_id_.find(id);
  return found == by_id_.end() ? nullptr : &written_[found->second];
}

std::int64_t MemoryLogStore::next_number() const {
  const auto after = by_number_.lower_bound({kiosk_, std::numeric_limits<std::int64_t>::max()});
  if (after == by_number_.begin()) return 1;
  const auto& [kiosk, number] = std::prev(after)->first;
  return kiosk == kiosk_ ? number + 1 : 1;
}

void MemoryLogStore::write(Event event) {
  by_id_.emplace(event.id, written_.size());
  by_number_.emplace(std::pair{event.kiosk, event.number}, event.id);
  written_.push_back(std::move(event));
}

Result<std::vector<Event>> MemoryLogStore::append(const std::vector<Draft>& drafts, Instant now) {
  if (auto error = take_failure()) return tl::unexpected(*std::move(error));
  std::vector<Event> events;
  for (const Draft& draft : drafts) {
    if (find(draft.id) == nullptr) {
      Event event{draft};
      event.kiosk = kiosk_;
      event.number = next_number();
      event.written = now;
      write(std::move(event));
    }
    events.push_back(*find(draft.id));
  }
  return events;
}

Result<bool> MemoryLogStore::is_new(const Event& event) const {
  if (const Event* known = find(event.id)) {
    if (*known == event) return false;
    return failure(ErrorKind::BadInput, "An id stands for two different events.");
  }
  if (by_number_.contains({event.kiosk, event.number}))
    return failure(ErrorKind::BadInput, "A kiosk's number stands for two different events.");
  return true;
}

Result<MergeOutcome> MemoryLogStore::merge(const std::vector<Event>& events) {
  if (auto error = take_failure()) return tl::unexpected(*std::move(error));
  MemoryLogStore merged = *this;
  MergeOutcome outcome;
  for (const Event& event : events) {
    const auto fresh = merged.is_new(event);
    if (!fresh) return tl::unexpected(fresh.error());
    if (*fresh) merged.write(event);
    ++(*fresh ? outcome.added : outcome.present);
  }
  *this = std::move(merged);
  return outcome;
}

template <class Wanted>
std::vector<Event> MemoryLogStore::those(const Wanted& wanted) const {
  std::vector<Event> events;
  std::ranges::copy_if(written_, std::back_inserter(events), wanted);
  std::ranges::sort(events, happened_before);
  return events;
}

Result<void> MemoryLogStore::read_all(const Visit& visit) {
  auto events = those([](const Event&) { return true; });
  std::ranges::stable_sort(events, {}, &Event::animal);  // none sorts before any
  for (Event& event : events) visit(std::move(event));
  return {};
}

Result<std::vector<Event>> MemoryLogStore::read_animal(const AnimalId& animal) {
  return those([&](const Event& event) { return event.animal == animal; });
}

Result<std::vector<Event>> MemoryLogStore::read_enclosure(const Code& enclosure) {
  return those([&](const Event& event) { return event.enclosure == enclosure; });
}

Result<std::vector<Event>> MemoryLogStore::read_kinds(const std::vector<std::string_view>& kinds) {
  return those([&](const Event& event) {
    return std::ranges::find(kinds, kind_name(event.details)) != kinds.end();
  });
}

Result<std::vector<Event>> MemoryLogStore::read_written_after(std::int64_t& position,
                                                              std::size_t most) {
  const auto from = std::min(static_cast<std::size_t>(position), written_.size());
  const auto count = std::min(most, written_.size() - from);
  const auto first = written_.begin() + static_cast<std::ptrdiff_t>(from);
  position = static_cast<std::int64_t>(from + count);
  return std::vector<Event>(first, first + static_cast<std::ptrdiff_t>(count));
}

}  // namespace rackside::tests
