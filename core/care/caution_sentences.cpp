#include "core/care/cautions.hpp"

namespace rackside {
namespace {

std::string hands_in_line(const Cautions& c) {
  if (c.medically_significant)
    return "Do not handle: venom of medical importance. Bitten: get medical help.";
  if (c.heavy_urticating_hairs)
    return "Many urticating hairs: gloves and eye protection, never rub.";
  if (c.urticating_hairs) return "Urticating hairs: gloves, and keep them away from your eyes.";
  if (c.fast || c.defensive) return "Move it with a catch cup, not with your hands.";
  return {};
}

std::string lid_open_line(const Cautions& c) {
  if (c.medically_significant && c.fast)
    return "Fast, with venom of medical importance: long forceps, hands outside.";
  if (c.medically_significant) return "Venom of medical importance: long forceps, hands outside.";
  if (c.heavy_urticating_hairs) return "Casts many hairs: eye protection, face away from the tub.";
  if (c.fast) return "Fast: know where it sits before you open the lid.";
  if (c.defensive) return "Defensive: long forceps.";
  return {};
}

}  // namespace

std::string caution_line(const Cautions& cautions, Handling handling) {
  switch (handling) {
    case Handling::LidClosed: return {};
    case Handling::LidOpen: return lid_open_line(cautions);
    case Handling::HandsIn: return hands_in_line(cautions);
  }
  return {};
}

std::vector<std::string> caution_sentences(const Cautions& c) {
  if (!c.known)
    return {"This genus is not in our table. That does not make it harmless: keep your distance."};
  std::vector<std::string> said;
  if (c.medically_significant)
    said.push_back(
        "Bites are of medical importance. Do not handle it; after a bite get medical help at "
        "once and say which species it was.");
  if (c.urticating_hairs)
    said.push_back(
        "It has urticating hairs. Wear gloves and eye protection, do not breathe over the open "
        "tub, never rub skin or eyes, wash with running water; for hairs in an eye see a doctor.");
  if (c.fast || c.defensive)
    said.push_back(
        "It can leave the tub or strike within a blink. Use forceps of 30 cm or more and have a "
        "catch cup ready before the lid comes off.");
  return said;
}

const std::vector<std::string>& general_cautions() {
  static const std::vector<std::string> said{
      "Bites and hairs can cause an allergic reaction. Trouble breathing, swelling of the face or "
      "faintness is an emergency: call for medical help.",
      "The list of dangerous genera is not complete. A species without a mark "
      "is not harmless.",
      "Take uneaten prey out: crickets and locusts bite a soft animal, and dead prey brings mould "
      "and mites.",
      "Dust from feeder insects, substrate and mould can cause allergies. Air the room and wash "
      "your hands.",
      "Keeping, selling and moving animals can need permits. Local law and "
      "CITES come first.",
      "Signs of illness are a reason to ask a vet or an experienced keeper. Nothing here is a "
      "diagnosis.",
  };
  return said;
}

std::string_view health_caution() {
  return "This is not a diagnosis. Ask a vet or an experienced keeper.";
}

}  // namespace rackside
