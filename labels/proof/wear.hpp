#pragma once
// What a normal life does to a label, as pictures. Deterministic.

#include "labels/reader/grey_image.hpp"
#include "labels/reader/symbol_reader.hpp"

namespace rackside {

/// Every dark edge moved outward by `pixels`: ink that spread.
[[nodiscard]] GreyImage with_print_gain(const GreyImage& image, int pixels);

/// Contrast down to `levels` grey levels: faded thermal print in dim light.
[[nodiscard]] GreyImage paled(const GreyImage& image, int levels);

/// A light line of `width` pixels from `from` to `to`: ink scraped off.
[[nodiscard]] GreyImage scratched(GreyImage image, Point from, Point to, double width);

/// The label around an upright cylinder of `radius` pixels, seen from straight ahead of `centre_x`,
/// darker towards its sides.
[[nodiscard]] GreyImage around_cylinder(const GreyImage& image, double centre_x, double radius);

/// `width` by `height` pixels, each the nearest one of `image`: printer dots as a camera's optics
/// would find them, without inventing grey between them.
[[nodiscard]] GreyImage resampled(const GreyImage& image, int width, int height);

}  // namespace rackside
