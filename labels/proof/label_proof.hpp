#pragma once
// Reading a label back before it is printed: as it leaves the printer, and after the damage of a
// normal life.

#include <array>
#include <string_view>
#include <vector>

#include "labels/proof/quality.hpp"
#include "labels/render/label_sheet.hpp"

namespace rackside {

enum class Trial { AsPrinted, PrintGain, Faded, Scratched, Curved };

inline constexpr std::array all_trials{Trial::AsPrinted, Trial::PrintGain, Trial::Faded,
                                       Trial::Scratched, Trial::Curved};

/// "as printed", "ink spread", ...
[[nodiscard]] std::string_view trial_word(Trial trial);

struct LabelProof {
  Code code;
  std::array<bool, all_trials.size()> read{};  // by trial
  QualityEstimate quality;

  /// Whether the label can be printed: it was read in every trial.
  [[nodiscard]] bool holds() const;
  /// "ink spread, scratched": the trials in which it was not read.
  [[nodiscard]] std::string failed_trials() const;
};

/// The label at the printer's resolution, one pixel a dot, at its place among the printer's dots.
[[nodiscard]] GreyImage printed_picture(const LabelSheet& sheet, const PlannedLabel& label,
                                        const PangoText& text);

/// All trials of one label, of which `printed` is the picture. As printed, ZXing-C++ alone must
/// read it; when damaged, the kiosk's reader may help.
[[nodiscard]] LabelProof prove(const PlannedLabel& label, const GreyImage& printed,
                               const LabelSheet& sheet);

/// All labels of a sheet, on as many threads as the machine has cores.
[[nodiscard]] std::vector<LabelProof> prove_sheet(const LabelSheet& sheet);

}  // namespace rackside
