#pragma once
// What the page knows on which records are brought in from CSV files.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/code/code.hpp"
#include "core/interchange/take_over.hpp"
#include "core/values/result.hpp"

namespace rackside::kiosk {

/// A CSV file that may hold records.
struct RecordFile {
  std::string path;
  std::string name;    // "animals.csv"
  std::string folder;  // where it lies, in a word or two
  bool operator==(const RecordFile&) const = default;
};

/// What is in it that the log has not.
struct RecordCounts {
  std::int64_t animals = 0;
  std::int64_t tubs = 0;
  std::int64_t events = 0;
  std::int64_t known = 0;  // rows that the log has already
  [[nodiscard]] bool nothing_new() const { return animals + tubs + events == 0; }
  bool operator==(const RecordCounts&) const = default;
};

/// "12 animals, 11 tubs", without what there is none of.
[[nodiscard]] std::string new_here_words(const RecordCounts& counts);

struct BringInPage {
  std::optional<std::vector<RecordFile>> files;  // none until they were looked for
  std::optional<RecordFile> chosen;              // the one that is looked at
  std::optional<RecordCounts> counts;            // once every row of it was looked at
  std::optional<WrittenSoFar> so_far;            // while it is being written
  std::vector<Code> unlabelled;                  // tubs that came with it, to have labels
  bool operator==(const BringInPage&) const = default;
};

}  // namespace rackside::kiosk
