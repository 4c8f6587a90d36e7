#include <nlohmann/json.hpp>

#include "core/round/plan_text.hpp"

namespace rackside {
namespace {

using Json = nlohmann::ordered_json;

Json to_json(const PreyPlan& prey) {
  Json json{{"kind", prey.kind}, {"count", prey.count}};
  if (prey.size) json["size_mm"] = prey.size->value;
  json["p_refused"] = prey.p_refused;
  return json;
}

Json names_of(const std::vector<Task>& tasks) {
  Json names = Json::array();
  for (const Task task : tasks) names.push_back(task_name(task));
  return names;
}

Json to_json(const TubTask& tub, const Collection& collection) {
  const AnimalState& animal = *collection.animal(tub.animal);
  const Instruction& said = tub.instruction;
  Json json{{"animal", animal.key},
            {"enclosure", tub.enclosure ? std::string(tub.enclosure->text()) : std::string{}},
            {"species", animal.species},
            {"rack", tub.place.rack},
            {"shelf", tub.place.shelf},
            {"position", tub.place.position},
            {"state", tub.state},
            {"task", task_name(said.task)},
            {"urgent", said.urgent},
            {"health_flag", said.health_flag},
            {"sentence", said.sentence},
            {"why", said.why},
            {"also", names_of(said.also)}};
  if (said.prey) json["prey"] = to_json(*said.prey);
  if (said.next_due) json["next_due"] = format_day(*said.next_due);
  if (said.caution) json["caution"] = *said.caution;
  return json;
}

Json to_json(const std::vector<TubTask>& tubs, const Collection& collection) {
  Json list = Json::array();
  for (const TubTask& tub : tubs) list.push_back(to_json(tub, collection));
  return list;
}

Json to_json(const Preparation& ready) {
  Json prey = Json::array();
  for (const PreyNeeded& needed : ready.prey) {
    Json row{{"kind", needed.kind}};
    if (needed.size) row["size_mm"] = needed.size->value;
    row["planned"] = needed.planned;
    row["expected_refused"] = needed.expected_refused;
    row["bring"] = needed.bring;
    prey.push_back(std::move(row));
  }
  return Json{{"prey", std::move(prey)}, {"carry", ready.carry}, {"cautions", ready.cautions}};
}

}  // namespace

std::string plan_as_json(const DayPlan& plan, const Preparation& ready,
                         const Collection& collection) {
  Json notes = Json::array();
  for (const RackNote& note : plan.notes)
    notes.push_back({{"rack", note.rack}, {"sentence", note.sentence}});
  const Json json{{"day", format_day(plan.made.day())},
                  {"prepare", to_json(ready)},
                  {"notes", std::move(notes)},
                  {"due", to_json(plan.due, collection)},
                  {"wait", to_json(plan.wait, collection)},
                  {"leave_alone", to_json(plan.leave_alone, collection)}};
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace rackside
