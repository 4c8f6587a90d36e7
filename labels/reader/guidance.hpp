#pragma once
// What would help a symbol that is there to be read.

#include <string_view>

namespace rackside {

enum class Guidance { ComeCloser, MoreLight, TiltIt, FaceIt, HoldStill };

/// Three words at most: "come closer", "more light", "tilt it", "face the camera", "hold it still".
[[nodiscard]] std::string_view guidance_words(Guidance guidance);

}  // namespace rackside
