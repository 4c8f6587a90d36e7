#pragma once
// New codes that do not repeat: not in this log, and not on another kiosk either.

#include <functional>
#include <string>
#include <vector>

#include "core/code/code.hpp"
#include "core/values/uuid.hpp"

namespace rackside {

/// Issues codes of one kind for one kiosk. The first three characters of the body are the kiosk's
/// own block, drawn from its id, and the last three count up, so that two kiosks only meet when
/// their blocks do (1 in 21,952 for a pair), however many labels they print; and every code is
/// asked for in `taken` first, which knows all codes of the log, merged ones included. A block
/// that is used up is followed by the next one drawn from the same id.
class CodeMint {
 public:
  using Taken = std::function<bool(const Code&)>;

  CodeMint(CodeKind kind, KioskId kiosk, Taken taken);

  /// A code that was not taken and that this mint did not issue before. Errors: Full when the
  /// kiosk has used all its blocks (millions of codes).
  [[nodiscard]] Result<Code> next();

 private:
  CodeKind kind_;
  KioskId kiosk_;
  Taken taken_;
  unsigned block_ = 0;
  unsigned running_ = 0;
};

}  // namespace rackside
