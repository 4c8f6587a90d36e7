#pragma once
// The port to where events are kept. The adapter over SQLite is in core/store; the one that tests
// use is in tests/fakes.

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "core/event/event.hpp"
#include "core/values/result.hpp"

namespace rackside {

struct MergeOutcome {
  std::int64_t added = 0;    // events that were new here
  std::int64_t present = 0;  // events that were here already

  bool operator==(const MergeOutcome&) const = default;
};

class LogStore {
 public:
  virtual ~LogStore() = default;

  /// Writes all of `drafts` in one transaction, or none of them. When it returns, they are on the
  /// disk. `now` becomes their time of writing. A draft whose id is in the log already was written
  /// by an earlier try and is returned as it stands there.
  /// Errors: ReadOnly, Full, Busy (another process writes; nothing was written), Broken.
  [[nodiscard]] virtual Result<std::vector<Event>> append(const std::vector<Draft>& drafts,
                                                          Instant now) = 0;

  /// Takes over events that another kiosk made, with its ids and numbers: set union.
  /// Errors: as append; BadInput when an id stands for two different events.
  [[nodiscard]] virtual Result<MergeOutcome> merge(const std::vector<Event>& events) = 0;

  using Visit = std::function<void(Event&&)>;

  /// Every event, retracted ones and retractions included, animal by animal (events without an
  /// animal first), and for each animal in the order of happened_before.
  [[nodiscard]] virtual Result<void> read_all(const Visit& visit) = 0;
  /// Every event about this animal, in the order of happened_before.
  [[nodiscard]] virtual Result<std::vector<Event>> read_animal(const AnimalId& animal) = 0;
  /// Every event that names this enclosure (whoever lived there), in the order of happened_before.
  [[nodiscard]] virtual Result<std::vector<Event>> read_enclosure(const Code& enclosure) = 0;
  /// Every event whose kind is one of `kinds`, in the order of happened_before.
  [[nodiscard]] virtual Result<std::vector<Event>> read_kinds(
      const std::vector<std::string_view>& kinds) = 0;
  /// Events in the order in which they were written here, from after `position`; at most `most`.
  /// The position of the last one read is stored in `position`. Lets a second reader follow along.
  [[nodiscard]] virtual Result<std::vector<Event>> read_written_after(std::int64_t& position,
                                                                      std::size_t most) = 0;

  /// Work that can wait until nobody is touching anything: what it does then, no tap has to pay
  /// for.
  [[nodiscard]] virtual Result<void> tidy() { return {}; }

  /// The kiosk this log belongs to.
  [[nodiscard]] virtual KioskId kiosk() const = 0;
};

}  // namespace rackside
