#include "labels/label/hazard.hpp"

#include "core/care/cautions.hpp"

namespace rackside {

Hazard hazard_of(std::string_view species) {
  const Cautions& cautions = cautions_for(species);
  const bool hairs = cautions.heavy_urticating_hairs;
  if (cautions.medically_significant) return hairs ? Hazard::VenomAndHairs : Hazard::Venom;
  return hairs ? Hazard::Hairs : Hazard::None;
}

std::string_view hazard_words(Hazard hazard) {
  switch (hazard) {
    case Hazard::None: return "";
    case Hazard::Venom: return "strong venom";
    case Hazard::Hairs: return "irritating hairs";
    case Hazard::VenomAndHairs: return "strong venom, hairs";
  }
  return "";
}

std::string_view hazard_short_words(Hazard hazard) {
  switch (hazard) {
    case Hazard::None: return "";
    case Hazard::Venom: return "venom";
    case Hazard::Hairs: return "hairs";
    case Hazard::VenomAndHairs: return "venom, hairs";
  }
  return "";
}

}  // namespace rackside
