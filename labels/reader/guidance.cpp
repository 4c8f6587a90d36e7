#include "labels/reader/guidance.hpp"

namespace rackside {

std::string_view guidance_words(Guidance guidance) {
  switch (guidance) {
    case Guidance::ComeCloser: return "come closer";
    case Guidance::MoreLight: return "more light";
    case Guidance::TiltIt: return "tilt it";
    case Guidance::FaceIt: return "face the camera";
    case Guidance::HoldStill: return "hold it still";
  }
  return "";
}

}  // namespace rackside
