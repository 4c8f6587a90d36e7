#pragma once
// What a call that can fail gives back. Adapters turn library errors into these at the edge, so
// the rest of the program never sees an exception for something a user can meet.

#include <string>
#include <tl/expected.hpp>
#include <utility>

namespace rackside {

enum class ErrorKind {
  BadInput,      // what was given cannot be read as what it should be
  NotOurs,       // a code or file that belongs to somebody else
  NotFound,      // well formed, but unknown here
  NotNow,        // known, but of the wrong kind for this moment
  NotAllowed,    // the person at the kiosk may not do this
  ReadOnly,      // the place cannot be written to
  Full,          // no room left
  Busy,          // somebody else holds it
  NewerVersion,  // written by a later version of this program
  Broken,        // damaged, or a device that stopped working
};

/// An error as a person meets it: `sentence` says in plain words what happened and, where there is
/// something to do, what; `where` is the file, line or device, and may be empty.
struct Error {
  ErrorKind kind;
  std::string sentence;
  std::string where;

  bool operator==(const Error&) const = default;
};

template <class T>
using Result = tl::expected<T, Error>;

[[nodiscard]] inline tl::unexpected<Error> failure(ErrorKind kind, std::string sentence,
                                                   std::string where = {}) {
  return tl::unexpected<Error>(Error{kind, std::move(sentence), std::move(where)});
}

}  // namespace rackside
