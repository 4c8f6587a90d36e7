#pragma once
// The log in memory: the same contract as the one over SQLite, against which it is tested, without
// a file. It can be told to fail, so that a test can see what happens when nothing was saved.

#include <map>
#include <optional>
#include <unordered_map>

#include "core/log/log_store.hpp"

namespace rackside::tests {

class MemoryLogStore : public LogStore {
 public:
  explicit MemoryLogStore(KioskId kiosk) : kiosk_(kiosk) {}

  /// The next append or merge writes nothing and gives back `error`.
  void fail_next_write(Error error) { next_failure_ = std::move(error); }

  Result<std::vector<Event>> append(const std::vector<Draft>& drafts, Instant now) override;
  Result<MergeOutcome> merge(const std::vector<Event>& events) override;
  Result<void> read_all(const Visit& visit) override;
  Result<std::vector<Event>> read_animal(const AnimalId& animal) override;
  Result<std::vector<Event>> read_enclosure(const Code& enclosure) override;
  Result<std::vector<Event>> read_kinds(const std::vector<std::string_view>& kinds) override;
  Result<std::vector<Event>> read_written_after(std::int64_t& position, std::size_t most) override;
  KioskId kiosk() const override { return kiosk_; }

 private:
  [[nodiscard]] std::optional<Error> take_failure();
  [[nodiscard]] const Event* find(const EventId& id) const;
  [[nodiscard]] std::int64_t next_number() const;
  [[nodiscard]] Result<bool> is_new(const Event& event) const;
  void write(Event event);

  template <class Wanted>
  [[nodiscard]] std::vector<Event> those(const Wanted& wanted) const;

  KioskId kiosk_;
  std::vector<Event> written_;  // in the order of writing
  std::unordered_map<EventId, std::size_t> by_id_;
  std::map<std::pair<KioskId, std::int64_t>, EventId> by_number_;
  std::optional<Error> next_failure_;
};

}  // namespace rackside::tests
