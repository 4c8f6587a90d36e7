#pragma once
// The tables of a log's file, and the agreement between versions of this program about them.
//
// `schema_version` grows with every change of the tables or of what their columns may hold (a new
// kind of event, too). `minimum_reader_version` is the oldest schema version whose program can
// still make sense of the file, and is written into it: an older program refuses what it would
// misread, and reads but does not write what is merely newer.

#include <string>

#include "core/store/access.hpp"
#include "core/store/database.hpp"
#include "core/values/uuid.hpp"

namespace rackside::store {

inline constexpr int schema_version = 1;
inline constexpr int minimum_reader_version = 1;
inline constexpr int application_id = 0x5261636B;  // "Rack" at byte 68 of the file

/// Makes the tables in an empty file, and `kiosk` the one it belongs to. Does nothing in a file
/// that has them: two programs may start on a new file at once. Throws StoreFailure.
void create_schema(const Database& database, const KioskId& kiosk);

/// Throws StoreFailure: NotOurs for another program's file, NewerVersion.
void check_schema(const Database& database, Access access);

/// Makes the index for `roster_kinds` anew where that list has changed since the file was made.
void refresh_roster_index(const Database& database);

/// "kind IN ('animal added', ...)", word for word as in the index, or SQLite would not use it.
[[nodiscard]] std::string roster_condition();

}  // namespace rackside::store
