#pragma once
// What `rackside-log cover` can be asked, as it was typed.

#include <string>
#include <vector>

#include "core/cover/cover_book.hpp"
#include "core/program/command.hpp"

namespace rackside::program {

struct CoverWords {
  std::string by;  // who enters it
  std::string who, from, to;
  std::vector<std::string> racks;
  std::string tub, rack, note;           // a note
  std::string kind, name, number, when;  // a contact
  bool json = false;
};

/// Writes one event and says `sentence`. Errors: as LogStore::append.
[[nodiscard]] Result<int> plan_new_cover(const CoverWords& words, Desk& desk);
[[nodiscard]] Result<int> end_cover(const CoverWords& words, Desk& desk);
[[nodiscard]] Result<int> add_cover_note(const CoverWords& words, Desk& desk);
[[nodiscard]] Result<int> take_back_note(const CoverWords& words, Desk& desk);
[[nodiscard]] Result<int> set_contact(const CoverWords& words, Desk& desk);

/// The cover of `who` that holds on `day` or comes next, of anybody where `who` is empty. Errors:
/// NotFound.
[[nodiscard]] Result<Cover> cover_asked_for(const CoverBook& book, const std::string& who, Day day);

}  // namespace rackside::program
