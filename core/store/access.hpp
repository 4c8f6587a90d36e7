#pragma once

namespace rackside {

/// What a program opens the log for.
enum class Access {
  Read,   // never changes the file; there must be one
  Write,  // makes the file where there is none
};

}  // namespace rackside
