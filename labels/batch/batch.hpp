#pragma once
// A new batch of slings: codes, tubs and animals, drafted and written in one go.

#include <string>
#include <vector>

#include "core/clock/clock.hpp"
#include "core/clock/id_source.hpp"
#include "core/collection/collection.hpp"
#include "core/log/log_store.hpp"

namespace rackside {

/// More in one go than any egg sac holds.
inline constexpr int most_in_a_batch = 5000;

struct BatchRequest {
  std::string species;
  std::string common_name;
  std::string source;  // the sac, or who they came from
  Stage stage = Stage::Sling;
  Sex sex = Sex::Unknown;
  std::optional<int> instar;
  Day date{};  // pulled, or acquired
  int count = 0;
  Place first;              // where the first tub stands; the others count up from its position
  int tubs_on_a_shelf = 0;  // after so many the shelf counts up; 0: all on the first one
  std::string key;          // animals are called "KEY-001" and on; empty: as the source
  std::string by;

  bool operator==(const BatchRequest&) const = default;
};

struct Batch {
  std::vector<Draft> drafts;  // a tub and its animal in turn
  std::vector<Code> tubs;

  bool operator==(const Batch&) const = default;
};

/// Pure. `roster` is every event of the log's roster kinds, retracted ones too: a code that was
/// once issued is not issued again, for its label may still exist. Errors: BadInput with what is
/// missing or too much; Full when the kiosk has no codes left.
[[nodiscard]] Result<Batch> draft_batch(const BatchRequest& request,
                                        const std::vector<Event>& roster, KioskId kiosk,
                                        IdSource& ids, Moment now);

/// Drafts the batch and writes it: all of it is in the log when this returns, or nothing is. When
/// another program issued one of the codes at the same moment, the batch is taken back and made
/// anew with other codes. Errors: as draft_batch and LogStore::append.
[[nodiscard]] Result<Batch> make_batch(LogStore& log, const BatchRequest& request, IdSource& ids,
                                       Clock& clock);

/// Writes that labels for these tubs were printed. Errors: as LogStore::append.
[[nodiscard]] Result<void> mark_printed(LogStore& log, const std::vector<Code>& tubs,
                                        const std::string& by, IdSource& ids, Clock& clock);

}  // namespace rackside
