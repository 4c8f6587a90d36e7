#pragma once
// One label of a given size: symbol and words put where they serve best.

#include "labels/label/label_content.hpp"
#include "labels/label/label_picture.hpp"
#include "labels/label/text_ruler.hpp"

namespace rackside {

/// Symbol beside the words or above them, whichever loses less. Version 2 where 13 mm fit beside
/// the code, version 1 below that. Errors: BadInput when the label is too small for any symbol.
[[nodiscard]] Result<LabelPicture> arrange(const LabelContent& content, double width, double height,
                                           Resolution resolution, const TextRuler& ruler);

}  // namespace rackside
