#pragma once
// How this room says no. Inside it a bad cell throws; the public functions turn that into their
// Result, so that reading a row needs no check after every cell.

#include "core/values/result.hpp"

namespace rackside::interchange {

/// Where in a file: lines count from 1 as an editor counts them, line breaks inside quotes too.
struct At {
  std::string file;
  int line = 0;
  std::string column;  // empty: the whole line

  [[nodiscard]] std::string text() const;
};

struct Refusal {
  Error error;
};

[[noreturn]] void refuse(const At& at, const std::string& reason);

}  // namespace rackside::interchange
