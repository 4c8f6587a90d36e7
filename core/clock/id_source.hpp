#pragma once
// The port to fresh ids.

#include "core/values/uuid.hpp"

namespace rackside {

class IdSource {
 public:
  virtual ~IdSource() = default;

  /// Never the same twice, and later ones sort after earlier ones.
  [[nodiscard]] virtual Uuid next() = 0;

  [[nodiscard]] EventId next_event() { return EventId{next()}; }
  [[nodiscard]] AnimalId next_animal() { return AnimalId{next()}; }
};

}  // namespace rackside
