#include "core/collection/animal.hpp"

namespace rackside {
namespace {

struct Apply {
  AnimalState& animal;
  const Event& event;

  void operator()(const AnimalAdded& e) const {
    animal.id = *event.animal;
    animal.key = e.key;
    animal.species = e.species;
    animal.common_name = e.common_name;
    animal.source = e.source;
    animal.sex = e.sex;
    animal.stage = e.stage;
    animal.instar = e.instar;
    animal.born = e.born;
    animal.acquired = e.acquired;
    animal.count = e.count;
    animal.added = event.when;
    house(event.enclosure);
  }
  void operator()(const Rehoused& e) const { house(e.to); }
  void operator()(const Died&) const { end(Life::Died); }
  void operator()(const Left&) const { end(Life::Left); }

  void operator()(const Offered& e) const {
    animal.last_offer = LastOffer{e.outcome, event.when};
    ++animal.offers;
    if (e.outcome == Outcome::Took) {
      animal.last_meal = event.when;
      animal.meal = Meal{e.prey, e.count, e.size};
      animal.refusals_since_meal = 0;
      animal.prey_in_tub.reset();
    } else {
      ++animal.refusals_since_meal;
      ++animal.refusals;
      if (e.outcome == Outcome::LeftOvernight) animal.prey_in_tub = event.when;
    }
  }
  void operator()(const PreyRemoved&) const { animal.prey_in_tub.reset(); }
  void operator()(const Misted&) const { animal.last_misted = event.when; }
  void operator()(const WaterFilled&) const { animal.last_watered = event.when; }

  void operator()(const Looked& e) const {
    // Signs are tapped one by one: looks of one visit are one look.
    const bool same_visit =
        animal.last_looked && event.when.moment.utc - animal.last_looked->moment.utc <= one_visit;
    animal.last_looked = event.when;
    animal.signs = same_visit ? animal.signs.with(e.signs) : e.signs;
    if (!animal.signs.has(Sign::OnItsBack))
      animal.on_its_back_since.reset();
    else if (!animal.on_its_back_since)
      animal.on_its_back_since = event.when;
  }
  void operator()(const Moulted&) const { moulted(true); }
  void operator()(const ShedFound&) const { moulted(false); }
  void operator()(const ShedRemoved&) const {
    animal.shed_in_tub.reset();
    animal.shed_removed = event.when;
  }
  void operator()(const EggSac&) const { animal.guards_sac_since = event.when; }
  void operator()(const Pulled&) const { animal.guards_sac_since.reset(); }
  void operator()(const Measured& e) const {
    auto& slot = e.what == Measure::LegSpan ? animal.leg_span : animal.carapace;
    slot = LastMeasure{e.length, event.when};
  }
  void operator()(const Sexed& e) const {
    animal.sex = e.sex;
    animal.last_sexed = event.when;
    if (e.stage != Stage::Unknown) animal.stage = e.stage;
  }
  void operator()(const Counted& e) const { animal.count = e.count; }

  // Nothing of these is part of an animal's present state.
  void operator()(const EnclosureAdded&) const {}
  void operator()(const EnclosureMoved&) const {}
  void operator()(const LabelPrinted&) const {}
  void operator()(const LabelConfirmed&) const {}
  void operator()(const TemperatureRead&) const {}
  void operator()(const HumidityRead&) const {}
  void operator()(const Noted&) const {}
  void operator()(const Paired&) const {}
  void operator()(const RuleSet&) const {}
  void operator()(const RoundStarted&) const {}
  void operator()(const RoundEnded&) const {}
  void operator()(const PersonAdded&) const {}
  void operator()(const PersonEnded&) const {}
  void operator()(const PersonCame&) const {}
  void operator()(const CoverPlanned&) const {}
  void operator()(const CoverEnded&) const {}
  void operator()(const CoverNote&) const {}
  void operator()(const ContactSet&) const {}
  void operator()(const Flagged&) const {}
  void operator()(const Retracted&) const {}

 private:
  void house(const std::optional<Code>& enclosure) const {
    animal.enclosure = enclosure;
    animal.housed = event.when;
  }
  void end(Life how) const {
    animal.life = how;
    animal.ended = event.when;
  }
  void moulted(bool date_known) const {
    animal.last_moult = LastMoult{event.when, date_known};
    animal.signs = {};
    animal.on_its_back_since.reset();
    animal.shed_in_tub = event.when;
    ++animal.moults;
    if (animal.instar) ++*animal.instar;
  }
};

}  // namespace

void apply(AnimalState& animal, const Event& event) {
  if (event.animal) std::visit(Apply{animal, event}, event.details);
}

std::optional<AnimalState> fold_animal(std::vector<Event> events) {
  AnimalState animal;
  bool added = false;
  for (const Event& event : standing(std::move(events))) {
    added = added || (event.animal && std::holds_alternative<AnimalAdded>(event.details));
    apply(animal, event);
  }
  if (!added) return std::nullopt;
  return animal;
}

std::string display_name(const AnimalState& animal) {
  if (!animal.species.empty()) return animal.species;
  if (!animal.common_name.empty()) return animal.common_name;
  return "unknown species";
}

}  // namespace rackside
