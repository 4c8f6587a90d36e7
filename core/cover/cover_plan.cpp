#include "core/cover/cover_plan.hpp"

#include <algorithm>

#include "core/care/cautions.hpp"
#include "core/collection/place.hpp"

namespace rackside {
namespace {

Place place_of(const Collection& collection, const AnimalState& animal) {
  const EnclosureState* tub = animal.enclosure ? collection.enclosure(*animal.enclosure) : nullptr;
  return tub ? tub->place : Place{};
}

// Walking order with a last word, so that there is one order only.
template <class Line>
bool stands_before(const Line& a, const Line& b) {
  if (walks_before(a.place, b.place)) return true;
  if (walks_before(b.place, a.place)) return false;
  if (a.enclosure != b.enclosure) return a.enclosure < b.enclosure;
  return a.animal < b.animal;
}

TubRemark remark(const Collection& collection, const AnimalState& animal, std::string sentence) {
  return {animal.id, animal.enclosure, place_of(collection, animal), display_name(animal),
          std::move(sentence)};
}

std::vector<CoverLine>& list_for(CoverDay& day, Duty duty) {
  switch (duty) {
    case Duty::Do: return day.visits;
    case Duty::KeepClosed: return day.keep_closed;
    case Duty::Nothing: return day.nothing;
  }
  return day.nothing;
}

bool gives_water(const Instruction& said) {
  return said.task == Task::MistAndCheckWater || said.task == Task::GiveWater ||
         std::ranges::find(said.also, Task::MistAndCheckWater) != said.also.end();
}

CoverLine line_of(const Collection& collection, const AnimalState& animal, const ForeseenDay& day,
                  const Forecast* forecast, Units units) {
  const Instruction& said = day.said;
  const Duty duty = duty_of(said);
  return CoverLine{.animal = animal.id,
                   .enclosure = animal.enclosure,
                   .place = place_of(collection, animal),
                   .name = display_name(animal),
                   .duty = duty,
                   .task = said.task,
                   .words = assistant_sentence(said, units),
                   .also = assistant_extras(said, units),
                   .prey = said.prey,
                   .water = duty == Duty::Do && gives_water(said),
                   .only = day.only,
                   .taps = assistant_actions(said),
                   .otherwise = day.otherwise,
                   .caution = duty == Duty::Do ? said.caution : std::nullopt,
                   .p_soft = forecast ? forecast->p_premoult + forecast->p_hardening : 0};
}

template <class Visit>
void each_living(const KnownNow& known, const Cover* cover, Visit visit) {
  for (const auto& [id, animal] : known.collection.animals) {
    if (animal.life != Life::Living) continue;
    const Place place = place_of(known.collection, animal);
    if (cover == nullptr || cover->includes(place.rack)) visit(animal, place);
  }
}

void add_days(std::vector<CoverDay>& days, const KnownNow& known, const AnimalState& animal,
              const Place& place) {
  const RackClimate air = known.climate.at(place.rack);
  const auto foreseen = foresee(animal, known.outlook, known.rules.rules_for(animal), &air);
  for (CoverDay& day : days) {
    const auto index = static_cast<std::size_t>((day.day - foreseen.front().day).count());
    CoverLine line =
        line_of(known.collection, animal, foreseen[index], known.outlook.forecast(animal.id, index),
                known.rules.collection.wording.units);
    list_for(day, line.duty).push_back(std::move(line));
  }
}

void add_moult(CoverPlan& plan, const KnownNow& known, const AnimalState& animal) {
  const Forecast* forecast = known.outlook.forecast(animal.id, 0);
  if (forecast == nullptr || plan.days.empty()) return;
  const CareRules rules = known.rules.rules_for(animal);
  const auto window = moult_window(*forecast, plan.made.day(), plan.days.front().day,
                                   plan.days.back().day, rules.tell_moult_above);
  if (window)
    plan.moults.push_back(
        remark(known.collection, animal, window_sentence(*window, rules.wording.dates)));
}

void add_remarks(CoverPlan& plan, const KnownNow& known) {
  each_living(known, &plan.cover, [&](const AnimalState& animal, const Place&) {
    plan.tubs.push_back(remark(known.collection, animal, {}));
    add_moult(plan, known, animal);
    for (const NoteForCover& note : known.book.notes)
      if (note.tub && note.tub == animal.enclosure)
        plan.tub_notes.push_back(remark(known.collection, animal, note.words));
  });
  for (const NoteForCover& note : known.book.notes)
    if (!note.tub && (note.rack.empty() || plan.cover.includes(note.rack)))
      plan.notes.push_back(note);
}

// Once each, with the species it is for, the first met on a walk first.
void add_dangers(CoverPlan& plan, const Collection& collection) {
  for (const TubRemark& tub : plan.tubs)
    for (const std::string& sentence :
         caution_sentences(cautions_for(collection.animal(tub.animal)->species))) {
      auto danger = std::ranges::find(plan.dangers, sentence, &Danger::sentence);
      if (danger == plan.dangers.end())
        danger = plan.dangers.insert(plan.dangers.end(), Danger{sentence, {}});
      if (std::ranges::find(danger->species, tub.name) == danger->species.end())
        danger->species.push_back(tub.name);
    }
}

}  // namespace

std::vector<CoverDay> foresee_days(const KnownNow& known, Day from, const Cover* cover) {
  std::vector<CoverDay> days;
  for (const Moment& moment : known.outlook.days)
    if (moment.day() >= from) days.push_back({.day = moment.day()});
  each_living(known, cover, [&](const AnimalState& animal, const Place& place) {
    add_days(days, known, animal, place);
  });
  for (CoverDay& day : days)
    for (auto* list : {&day.visits, &day.keep_closed, &day.nothing})
      std::ranges::sort(*list, stands_before<CoverLine>);
  return days;
}

CoverPlan plan_cover(const KnownNow& known, const Cover& cover) {
  CoverPlan plan{.cover = cover, .made = known.outlook.days.front()};
  plan.contacts = known.book.contacts;
  plan.wording = known.rules.collection.wording;
  plan.margin = known.rules.collection.margin;
  plan.days = foresee_days(known, cover.from, &cover);
  std::erase_if(plan.days, [&](const CoverDay& day) { return day.day > cover.last_day(); });
  add_remarks(plan, known);
  for (auto* list : {&plan.tubs, &plan.moults, &plan.tub_notes})
    std::ranges::stable_sort(*list, stands_before<TubRemark>);
  add_dangers(plan, known.collection);
  return plan;
}

std::vector<std::string> racks_of(const CoverPlan& plan) {
  std::vector<std::string> racks;
  for (const auto& part : by_rack(plan.tubs)) racks.push_back(part.rack);
  return racks;
}

}  // namespace rackside
