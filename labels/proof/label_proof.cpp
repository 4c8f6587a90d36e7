#include "labels/proof/label_proof.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

#include "labels/proof/scratch.hpp"
#include "labels/proof/wear.hpp"
#include "labels/reader/plane.hpp"
#include "labels/reader/symbol_reader.hpp"
#include "labels/render/paint.hpp"

namespace rackside {
namespace {

// Damage is done at this many pixels a module and looked at with half as many, which is what a
// camera has of a 0.5 mm module at 100 mm.
constexpr int fine_pixels = 10;
constexpr int shrinking = 2;

// Every edge moves by this share of a module in the trial, by half of it in the quality estimate.
constexpr double print_gain = 0.2;
constexpr int faded_levels = 60;
constexpr double scratch_modules = 0.5;
constexpr double curve_radius = 25.0;  // millimetres: a round tub of 50 mm

// The symbol's own corner, without quiet zone, and its measures, in the pixels of a picture.
struct SymbolPlace {
  double x;
  double y;
  double module;
  double side;

  [[nodiscard]] Point centre() const { return {x + side / 2, y + side / 2}; }
};

// Cells start between two dots; the label's picture starts at the dot before.
Box box_on_dots(const LabelSheet& sheet, const PlannedLabel& label) {
  const double dot = sheet.resolution.dot();
  Box box = box_of(sheet, label);
  box.x -= std::floor(box.x / dot) * dot;
  box.y -= std::floor(box.y / dot) * dot;
  return box;
}

SymbolPlace place_in_dots(const LabelSheet& sheet, const PlannedLabel& label) {
  const Box box = box_on_dots(sheet, label);
  const PlacedSymbol& symbol = label.picture.symbol;
  const double margin = quiet_zone * symbol.size.module;
  const double dot = sheet.resolution.dot();
  return {on_dot(box.x + symbol.x + margin, sheet.resolution) / dot,
          on_dot(box.y + symbol.y + margin, sheet.resolution) / dot,
          static_cast<double>(symbol.size.dots),
          static_cast<double>(symbol.size.dots * label.symbol.side)};
}

SymbolPlace scaled(const SymbolPlace& place, double factor) {
  return {place.x * factor, place.y * factor, place.module * factor, place.side * factor};
}

// What a camera that is aimed at the symbol sees of the label: the symbol with its quiet zone and
// as much again around it.
struct Surroundings {
  GreyImage image;
  SymbolPlace place;
};

Surroundings around_symbol(const GreyImage& printed, const SymbolPlace& place) {
  const double reach = 2 * quiet_zone * place.module;
  const int left = std::max(0, static_cast<int>(place.x - reach));
  const int top = std::max(0, static_cast<int>(place.y - reach));
  const int right = std::min(printed.width, static_cast<int>(place.x + place.side + reach));
  const int bottom = std::min(printed.height, static_cast<int>(place.y + place.side + reach));
  return {cut_out(printed, left, top, right - left, bottom - top),
          {place.x - left, place.y - top, place.module, place.side}};
}

bool holds_code(const std::vector<Sighting>& sightings, const Code& code) {
  return std::ranges::any_of(
      sightings, [&](const Sighting& sighting) { return sighting.code && *sighting.code == code; });
}

bool plainly_reads_as(const GreyImage& image, const Code& code) {
  return holds_code(read_symbols_plainly(image), code);
}

using Damage = std::function<GreyImage(const GreyImage&)>;

// A camera looks many times and a hand is never still: three frames that differ by half a pixel,
// for a plain reader. Only what defeats that one is given to the kiosk's, which takes longer.
bool reads_in_three_frames(const GreyImage& fine, const Code& code, const Damage& damage) {
  for (const auto& [x, y] : {std::pair{0, 0}, std::pair{1, 0}, std::pair{1, 1}})
    if (plainly_reads_as(damage(shrunk(fine, shrinking, x, y)), code)) return true;
  return holds_code(read_symbols(damage(shrunk(fine, shrinking))), code);
}

GreyImage scratched_across(const GreyImage& image, const SymbolPlace& place,
                           const ScratchLine& line) {
  const double across = std::cos(line.angle);
  const double down = std::sin(line.angle);
  const double beside = line.beside * place.module;
  const Point middle{place.centre().x - down * beside, place.centre().y + across * beside};
  return scratched(image, {middle.x - across * place.side, middle.y - down * place.side},
                   {middle.x + across * place.side, middle.y + down * place.side},
                   scratch_modules * place.module);
}

int gain_pixels(double share) { return static_cast<int>(std::lround(share * fine_pixels)); }

QualityEstimate estimate_worn(const GreyImage& fine, const PlannedLabel& label,
                              const SymbolPlace& place, const ScratchLine& scratch) {
  const GreyImage worn =
      scratched_across(with_print_gain(fine, gain_pixels(print_gain / 2)), place, scratch);
  return estimate_quality(reflectances_of(worn, label.symbol.side, place.x, place.y, place.module),
                          label.symbol);
}

}  // namespace

std::string_view trial_word(Trial trial) {
  switch (trial) {
    case Trial::AsPrinted: return "as printed";
    case Trial::PrintGain: return "ink spread";
    case Trial::Faded: return "faded";
    case Trial::Scratched: return "scratched";
    case Trial::Curved: return "curved";
  }
  return "";
}

bool LabelProof::holds() const { return std::ranges::all_of(read, std::identity{}); }

std::string LabelProof::failed_trials() const {
  std::string list;
  for (const Trial trial : all_trials) {
    if (read[static_cast<std::size_t>(trial)]) continue;
    if (!list.empty()) list += ", ";
    list += trial_word(trial);
  }
  return list;
}

GreyImage printed_picture(const LabelSheet& sheet, const PlannedLabel& label,
                          const PangoText& text) {
  const Box box = box_on_dots(sheet, label);
  return ink_picture(box.x + box.width, box.y + box.height, sheet.resolution, [&](cairo_t* canvas) {
    paint_label(canvas, label.picture, label.symbol, box, sheet.resolution, text);
  });
}

LabelProof prove(const PlannedLabel& label, const GreyImage& printed, const LabelSheet& sheet) {
  const Code& code = label.content.code;
  const auto [near, place_near] = around_symbol(printed, place_in_dots(sheet, label));
  const double to_fine = fine_pixels / place_near.module;
  const auto fine_size = [&](int pixels) {
    return static_cast<int>(std::lround(pixels * to_fine));
  };
  const GreyImage fine = resampled(near, fine_size(near.width), fine_size(near.height));
  const SymbolPlace fine_place = scaled(place_near, to_fine);
  const SymbolPlace place = scaled(fine_place, 1.0 / shrinking);
  const ScratchLine scratch = scratch_of(code, label.symbol.side);
  const double radius = curve_radius / label.picture.symbol.size.module * place.module;

  LabelProof proof{.code = code};
  const auto trial = [&](Trial which, const GreyImage& from, const Damage& damage) {
    proof.read[static_cast<std::size_t>(which)] = reads_in_three_frames(from, code, damage);
  };
  proof.read[static_cast<std::size_t>(Trial::AsPrinted)] = plainly_reads_as(printed, code);
  trial(Trial::PrintGain, with_print_gain(fine, gain_pixels(print_gain)), std::identity{});
  trial(Trial::Faded, fine, [](const GreyImage& seen) { return paled(seen, faded_levels); });
  trial(Trial::Scratched, fine,
        [&](const GreyImage& seen) { return scratched_across(seen, place, scratch); });
  trial(Trial::Curved, fine,
        [&](const GreyImage& seen) { return around_cylinder(seen, place.centre().x, radius); });
  proof.quality = estimate_worn(fine, label, fine_place, scratch);
  return proof;
}

}  // namespace rackside
