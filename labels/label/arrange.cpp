#include "labels/label/arrange.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "labels/label/text_block.hpp"

namespace rackside {
namespace {

// White that keeps words off the label's edge, where a cutter or a roll's drift takes some.
constexpr double edge = 0.6;
// The code in letters at its least size, beside and below the symbol.
constexpr double least_text_width = 10.6;
constexpr double least_text_height = 2.6;
// A larger symbol than this reads no better from where people stand.
constexpr double largest_side = 22.0;

struct Candidate {
  LabelPicture picture;
  bool has_code = false;
};

// The room that the symbol takes: a share of the label, but 13 mm where those can be had, and never
// so much that the code in letters has none.
std::optional<SymbolSize> symbol_in(double share, double most, Resolution resolution) {
  const double wanted = std::min({std::max(share, least_side_for_v2), most, largest_side});
  return best_symbol(wanted, resolution);
}

Candidate with_text(const LabelContent& content, const PlacedSymbol& symbol, const TextRoom& room,
                    const TextRuler& ruler) {
  TextBlock block = fit_text(content, room, ruler);
  return {{symbol, std::move(block.texts), block.warning, std::move(block.left_out)},
          block.has_code};
}

std::optional<Candidate> beside(const LabelContent& content, double width, double height,
                                Resolution resolution, const TextRuler& ruler) {
  const auto size =
      symbol_in(0.4 * width, std::min(height, width - least_text_width - edge), resolution);
  if (!size) return std::nullopt;
  const double side = size->side();
  const PlacedSymbol symbol{*size, std::min((height - side) / 2, edge), (height - side) / 2};
  const double left = symbol.x + side;
  return with_text(content, symbol, {left, edge, width - left - edge, height - 2 * edge}, ruler);
}

std::optional<Candidate> above(const LabelContent& content, double width, double height,
                               Resolution resolution, const TextRuler& ruler) {
  const auto size =
      symbol_in(0.6 * height, std::min(width, height - least_text_height - edge), resolution);
  if (!size) return std::nullopt;
  const double side = size->side();
  const PlacedSymbol symbol{*size, (width - side) / 2, 0};
  return with_text(content, symbol, {edge, side, width - 2 * edge, height - side - edge}, ruler);
}

std::optional<Candidate> alone(const LabelContent& content, double width, double height,
                               Resolution resolution, const TextRuler& ruler) {
  const auto size = best_symbol(std::min({width, height, largest_side}), resolution);
  if (!size) return std::nullopt;
  const PlacedSymbol symbol{*size, (width - size->side()) / 2, (height - size->side()) / 2};
  return with_text(content, symbol, {}, ruler);
}

}  // namespace

Result<LabelPicture> arrange(const LabelContent& content, double width, double height,
                             Resolution resolution, const TextRuler& ruler) {
  // By the shape alone, so that all labels of a sheet look alike, whatever they say.
  const bool is_wide = width >= 1.4 * height;
  for (const auto arrangement : {is_wide ? beside : above, is_wide ? above : beside, alone}) {
    auto candidate = arrangement(content, width, height, resolution, ruler);
    if (candidate && (candidate->has_code || arrangement == alone))
      return std::move(candidate->picture);
  }
  return failure(ErrorKind::BadInput,
                 fmt::format("A label of {:g} x {:g} mm is too small for any symbol: it takes at "
                             "least {:.1f} mm at {} dots an inch.",
                             width, height,
                             std::ceil(least_module / resolution.dot()) * resolution.dot() *
                                 full_side_of(SymbolVersion::V1),
                             resolution.dots_per_inch));
}

}  // namespace rackside
