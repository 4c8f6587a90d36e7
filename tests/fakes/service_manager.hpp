#pragma once
// A service manager's ear: the socket to which a service tells how it is.

#include <chrono>
#include <string>
#include <vector>

#include "kiosk/frames/doorbell.hpp"

namespace rackside::tests {

class ServiceManager {
 public:
  /// Listens at `address`: a path, or a name in the abstract namespace when it begins with '@'.
  explicit ServiceManager(const std::string& address);

  /// The next thing that was told, waited for up to `patience`; empty when nothing was.
  [[nodiscard]] std::string next(std::chrono::milliseconds patience);

 private:
  Descriptor ear_;
};

}  // namespace rackside::tests
