#include <array>

#include "core/event/details.hpp"

namespace rackside {
namespace {

struct NameOf {
  std::string_view operator()(const EnclosureAdded&) const { return "enclosure added"; }
  std::string_view operator()(const EnclosureMoved&) const { return "enclosure moved"; }
  std::string_view operator()(const LabelPrinted&) const { return "label printed"; }
  std::string_view operator()(const LabelConfirmed&) const { return "label confirmed"; }
  std::string_view operator()(const AnimalAdded&) const { return "animal added"; }
  std::string_view operator()(const Rehoused&) const { return "rehoused"; }
  std::string_view operator()(const Died&) const { return "died"; }
  std::string_view operator()(const Left&) const { return "left"; }
  std::string_view operator()(const Offered&) const { return "offered"; }
  std::string_view operator()(const PreyRemoved&) const { return "prey removed"; }
  std::string_view operator()(const Misted&) const { return "misted"; }
  std::string_view operator()(const WaterFilled&) const { return "water filled"; }
  std::string_view operator()(const Looked&) const { return "looked"; }
  std::string_view operator()(const Moulted&) const { return "moult"; }
  std::string_view operator()(const ShedFound&) const { return "shed found"; }
  std::string_view operator()(const ShedRemoved&) const { return "shed removed"; }
  std::string_view operator()(const Measured&) const { return "measured"; }
  std::string_view operator()(const Sexed&) const { return "sexed"; }
  std::string_view operator()(const TemperatureRead&) const { return "temperature"; }
  std::string_view operator()(const HumidityRead&) const { return "humidity"; }
  std::string_view operator()(const Noted&) const { return "note"; }
  std::string_view operator()(const Paired&) const { return "paired"; }
  std::string_view operator()(const EggSac&) const { return "egg sac"; }
  std::string_view operator()(const Pulled&) const { return "pulled"; }
  std::string_view operator()(const Counted&) const { return "counted"; }
  std::string_view operator()(const RuleSet&) const { return "rule set"; }
  std::string_view operator()(const RoundStarted&) const { return "round started"; }
  std::string_view operator()(const RoundEnded&) const { return "round ended"; }
  std::string_view operator()(const PersonAdded&) const { return "person added"; }
  std::string_view operator()(const PersonEnded&) const { return "person ended"; }
  std::string_view operator()(const PersonCame&) const { return "person came"; }
  std::string_view operator()(const CoverPlanned&) const { return "cover planned"; }
  std::string_view operator()(const CoverEnded&) const { return "cover ended"; }
  std::string_view operator()(const CoverNote&) const { return "cover note"; }
  std::string_view operator()(const ContactSet&) const { return "contact set"; }
  std::string_view operator()(const Flagged&) const { return "something wrong"; }
  std::string_view operator()(const Retracted&) const { return "retracted"; }
};

}  // namespace

std::string_view kind_name(const Details& details) { return std::visit(NameOf{}, details); }

}  // namespace rackside
