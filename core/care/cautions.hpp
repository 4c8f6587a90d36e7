#pragma once
// Where a keeper can get hurt, by genus, out of cautions.toml. The table is not complete: a genus
// that is not in it is unknown here, not harmless. Nothing here diagnoses or treats anything.

#include <string>
#include <string_view>
#include <vector>

namespace rackside {

struct Cautions {
  bool known = false;  // the genus is in the table
  bool medically_significant = false;
  bool urticating_hairs = false;
  bool heavy_urticating_hairs = false;  // implies urticating_hairs
  bool fast = false;
  bool defensive = false;
  std::string source;

  bool operator==(const Cautions&) const = default;
};

/// `species` as the log has it ("Poecilotheria miranda", also "Poecilotheria sp."); its first word
/// is looked up without regard to case. Everything false where the genus is not in the table.
[[nodiscard]] const Cautions& cautions_for(std::string_view species);

/// What a person is about to do at a tub, as far as it can hurt them.
enum class Handling {
  LidClosed,  // looking only
  LidOpen,    // feeding, taking prey or a shed out with forceps, misting
  HandsIn,    // rehousing, measuring, sexing, pairing, pulling a sac, packing
};

/// The one short line to show before `handling`, empty where there is none to say: the worst first.
[[nodiscard]] std::string caution_line(const Cautions& cautions, Handling handling);

/// All that is to be said of this genus, a sentence each, for paper and for a stand-in.
[[nodiscard]] std::vector<std::string> caution_sentences(const Cautions& cautions);

/// What holds in every rack room, a sentence each: said once on a printed sheet, never on a tile.
[[nodiscard]] const std::vector<std::string>& general_cautions();

/// Beside every flag about an animal's health.
[[nodiscard]] std::string_view health_caution();

}  // namespace rackside
