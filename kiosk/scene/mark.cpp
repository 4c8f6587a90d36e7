#include "kiosk/scene/mark.hpp"

#include <array>

#include "kiosk/scene/mark_drawings.hpp"

namespace rackside::kiosk {
namespace {

struct MarkOf {
  Mark operator()(const EnclosureAdded&) const { return Mark::Housed; }
  Mark operator()(const EnclosureMoved&) const { return Mark::Housed; }
  Mark operator()(const LabelPrinted&) const { return Mark::Written; }
  Mark operator()(const LabelConfirmed&) const { return Mark::Written; }
  Mark operator()(const AnimalAdded&) const { return Mark::Arrived; }
  Mark operator()(const Rehoused&) const { return Mark::Housed; }
  Mark operator()(const Died&) const { return Mark::Died; }
  Mark operator()(const Left&) const { return Mark::Gone; }
  Mark operator()(const Offered& e) const {
    switch (e.outcome) {
      case Outcome::Took: return Mark::Taken;
      case Outcome::Refused: return Mark::Refused;
      case Outcome::LeftOvernight: return Mark::Left;
    }
    return Mark::Taken;
  }
  Mark operator()(const PreyRemoved&) const { return Mark::PreyOut; }
  Mark operator()(const Misted&) const { return Mark::Misted; }
  Mark operator()(const WaterFilled&) const { return Mark::Water; }
  Mark operator()(const Looked& e) const {
    return e.signs.empty() ? Mark::Looked : mark_of(e.signs);
  }
  Mark operator()(const Moulted&) const { return Mark::Moult; }
  Mark operator()(const ShedFound&) const { return Mark::Shed; }
  Mark operator()(const ShedRemoved&) const { return Mark::Shed; }
  Mark operator()(const rackside::Measured&) const { return Mark::Measured; }
  Mark operator()(const rackside::Sexed&) const { return Mark::Sexed; }
  Mark operator()(const TemperatureRead&) const { return Mark::Climate; }
  Mark operator()(const HumidityRead&) const { return Mark::Climate; }
  Mark operator()(const Noted&) const { return Mark::Written; }
  Mark operator()(const rackside::Paired&) const { return Mark::Paired; }
  Mark operator()(const EggSac&) const { return Mark::Sac; }
  Mark operator()(const Pulled&) const { return Mark::Sac; }
  Mark operator()(const Counted&) const { return Mark::Written; }
  Mark operator()(const RuleSet&) const { return Mark::Written; }
  Mark operator()(const RoundStarted&) const { return Mark::Written; }
  Mark operator()(const RoundEnded&) const { return Mark::Written; }
  Mark operator()(const PersonAdded&) const { return Mark::Badge; }
  Mark operator()(const PersonEnded&) const { return Mark::Badge; }
  Mark operator()(const PersonCame&) const { return Mark::Person; }
  Mark operator()(const CoverPlanned&) const { return Mark::Away; }
  Mark operator()(const CoverEnded&) const { return Mark::Away; }
  Mark operator()(const CoverNote&) const { return Mark::Written; }
  Mark operator()(const ContactSet&) const { return Mark::Written; }
  Mark operator()(const Flagged&) const { return Mark::Sign; }
  Mark operator()(const Retracted&) const { return Mark::TakenBack; }
};

struct SignMark {
  rackside::Sign sign;
  Mark mark;
};
// What cannot wait, then what speaks most clearly of a moult.
constexpr std::array<SignMark, all_signs.size()> sign_marks{{
    {rackside::Sign::OnItsBack, Mark::OnItsBack},
    {rackside::Sign::ShrivelledAbdomen, Mark::Thin},
    {rackside::Sign::DarkAbdomen, Mark::Dark},
    {rackside::Sign::SealedIn, Mark::Sealed},
    {rackside::Sign::Stretched, Mark::Long},
    {rackside::Sign::BrighterColours, Mark::Bright},
    {rackside::Sign::ActiveAgain, Mark::Active},
    {rackside::Sign::Sluggish, Mark::Slow},
    {rackside::Sign::PlumpAbdomen, Mark::Plump},
}};

}  // namespace

const std::vector<Stroke>& strokes(Mark mark) {
  static const auto drawings = [] {
    std::array<Drawing, static_cast<std::size_t>(Mark::TakenBack) + 1> all;
    for (std::size_t i = 0; i < all.size(); ++i) all[i] = drawing_of(static_cast<Mark>(i));
    return all;
  }();
  return drawings[static_cast<std::size_t>(mark)];
}

Mark mark_of(const Details& details) { return std::visit(MarkOf{}, details); }

Mark mark_of(SignSet signs) {
  for (const SignMark& row : sign_marks)
    if (signs.has(row.sign)) return row.mark;
  return Mark::None;
}

Mark mark_of(Action action) {
  const auto details = details_of(action);
  return details ? mark_of(*details) : Mark::TakenBack;
}

}  // namespace rackside::kiosk
