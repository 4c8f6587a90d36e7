#include <nlohmann/json.hpp>

#include "core/care/cautions.hpp"
#include "core/cover/supplies.hpp"
#include "core/event/words.hpp"

namespace rackside {
namespace {

using Json = nlohmann::ordered_json;

template <class Line>
Json tub_json(const Line& line, const Collection& collection) {
  const AnimalState* animal = collection.animal(line.animal);
  return Json{{"animal", animal ? animal->key : std::string{}},
              {"enclosure", line.enclosure ? std::string(line.enclosure->text()) : std::string{}},
              {"species", animal ? animal->species : std::string{}},
              {"rack", line.place.rack},
              {"shelf", line.place.shelf},
              {"position", line.place.position}};
}

Json to_json(const CoverLine& line, const Collection& collection) {
  Json json = tub_json(line, collection);
  json["task"] = task_name(line.task);
  json["words"] = line.words;
  if (!line.also.empty()) json["also"] = line.also;
  if (line.prey) {
    json["prey"] = {{"kind", line.prey->kind}, {"count", line.prey->count}};
    if (line.prey->size) json["prey"]["size_mm"] = line.prey->size->value;
    json["prey"]["p_refused"] = line.prey->p_refused;
  }
  json["water"] = line.water;
  json["p_premoult_or_hardening"] = line.p_soft;
  if (!line.only.empty()) json["only"] = line.only;
  if (!line.otherwise.empty()) json["otherwise"] = line.otherwise;
  if (line.caution) json["caution"] = *line.caution;
  return json;
}

Json to_json(const TubRemark& remark, const Collection& collection) {
  Json json = tub_json(remark, collection);
  json["sentence"] = remark.sentence;
  return json;
}

template <class Line>
Json list_json(const std::vector<Line>& lines, const Collection& collection) {
  Json list = Json::array();
  for (const Line& line : lines) list.push_back(to_json(line, collection));
  return list;
}

Json day_json(const CoverDay& day, const Collection& collection) {
  return Json{{"day", format_day(day.day)},
              {"do", list_json(day.visits, collection)},
              {"keep_closed", list_json(day.keep_closed, collection)},
              {"nothing", list_json(day.nothing, collection)}};
}

Json contacts_json(const CoverPlan& plan) {
  Json list = Json::array();
  for (const Contact& contact : plan.contacts)
    list.push_back({{"kind", word_of(contact.kind)},
                    {"name", contact.name},
                    {"number", contact.number},
                    {"when", contact.when.empty() ? std::string(usual_reason_to_call(contact.kind))
                                                  : contact.when}});
  return list;
}

Json dangers_json(const CoverPlan& plan) {
  Json list = Json::array();
  for (const Danger& danger : plan.dangers)
    list.push_back({{"sentence", danger.sentence}, {"species", danger.species}});
  return list;
}

Json notes_json(const CoverPlan& plan) {
  Json list = Json::array();
  for (const NoteForCover& note : plan.notes)
    list.push_back({{"rack", note.rack}, {"words", note.words}});
  return list;
}

}  // namespace

std::string cover_as_json(const CoverPlan& plan, const Collection& collection) {
  Json json{{"who", plan.cover.who},
            {"from", format_day(plan.cover.from)},
            {"to", format_day(plan.cover.last_day())},
            {"racks", racks_of(plan)},
            {"made", format_day(plan.made.day())},
            {"contacts", contacts_json(plan)},
            {"notes", notes_json(plan)},
            {"tub_notes", list_json(plan.tub_notes, collection)},
            {"basics", assistant_basics()},
            {"cautions", general_cautions()},
            {"dangers", dangers_json(plan)},
            {"moults", list_json(plan.moults, collection)}};
  Json days = Json::array();
  for (const CoverDay& day : plan.days) days.push_back(day_json(day, collection));
  json["days"] = std::move(days);
  json["supplies"] =
      Json::parse(supplies_as_json(supplies_for(plan.days, collection, plan.margin)));
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace rackside
