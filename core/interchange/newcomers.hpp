#pragma once
// The animals of animals.csv that are new, and the tubs that come with them.

#include <map>
#include <vector>

#include "core/clock/id_source.hpp"
#include "core/code/code_mint.hpp"
#include "core/interchange/animal_keys.hpp"
#include "core/interchange/animal_row.hpp"
#include "core/interchange/import.hpp"

namespace rackside::interchange {

struct Newcomer {
  AnimalId id;
  AnimalRow row;
};

class Newcomers {
 public:
  /// `roster` are the events of the log of roster_kinds; `collection` and `keys` are those of the
  /// log, and `keys` learns the new animals'. All must outlive this.
  Newcomers(const std::vector<Event>& roster, const Collection& collection, AnimalKeys& keys,
            KioskId kiosk, IdSource& ids);

  /// Throws Refusal.
  void read(const SourceFile& file, const Today& today);
  /// A tub that is neither in the log nor new becomes new, at a place nobody knows.
  void make_known(const Code& tub);

  [[nodiscard]] const std::vector<Newcomer>& animals() const { return animals_; }
  [[nodiscard]] const std::map<Code, Place>& tubs() const { return tubs_; }
  /// Rows whose animal is in the log already.
  [[nodiscard]] std::int64_t known() const { return known_; }

 private:
  void read_row(const Row& row, const Today& today);
  void check_same(const Row& row, const AnimalRow& animal, const AnimalId& id) const;
  void house(const Row& row, AnimalRow& animal);

  std::map<AnimalId, Event> added_;  // the log's AnimalAdded
  const Collection& collection_;
  AnimalKeys& keys_;
  IdSource& ids_;
  CodeMint codes_;
  std::vector<Newcomer> animals_;
  std::map<Code, Place> tubs_;
  std::map<std::string, int> seen_;  // keys of the file, for those that come twice
  std::int64_t known_ = 0;
};

}  // namespace rackside::interchange
