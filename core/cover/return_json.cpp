#include <nlohmann/json.hpp>

#include "core/cover/return_report.hpp"

namespace rackside {
namespace {

using Json = nlohmann::ordered_json;

std::string_view fate_word(Fate fate) {
  switch (fate) {
    case Fate::Done: return "done";
    case Fate::FellAway: return "no longer needed";
    case Fate::NotDone: return "not done";
  }
  return {};
}

Json to_json(const PreyUsed& prey) {
  Json json{{"kind", prey.kind}, {"count", prey.count}};
  if (prey.size) json["size_mm"] = prey.size->value;
  return json;
}

Json to_json(const DutyRecord& duty) {
  Json json{{"task", task_name(duty.task)},
            {"due", format_day(duty.due)},
            {"fate", fate_word(duty.fate)}};
  if (duty.fate != Fate::NotDone) json["on"] = format_day(duty.settled);
  return json;
}

Json to_json(const FlagRecord& flag) {
  Json json{{"day", format_day(flag.day)}, {"words", flag.words}};
  if (!flag.picture.empty()) json["picture"] = flag.picture;
  return json;
}

Json to_json(const Day& day) { return format_day(day); }

template <class Item>
Json list_of(const std::vector<Item>& items) {
  Json list = Json::array();
  for (const Item& item : items) list.push_back(to_json(item));
  return list;
}

Json tub_json(const TubReturn& tub, const Collection& collection) {
  const AnimalState* animal = collection.animal(tub.animal);
  Json json{{"animal", animal ? animal->key : std::string{}},
            {"enclosure", tub.enclosure ? std::string(tub.enclosure->text()) : std::string{}},
            {"rack", tub.place.rack},
            {"shelf", tub.place.shelf},
            {"position", tub.place.position},
            {"duties", list_of(tub.duties)},
            {"took", tub.took},
            {"refused", tub.refused},
            {"flags", list_of(tub.flags)},
            {"fed_against", list_of(tub.fed_against)},
            {"before", tub.then},
            {"now", tub.now}};
  if (tub.moulted) json["moulted"] = format_day(*tub.moulted);
  if (tub.died) json["died"] = format_day(*tub.died);
  return json;
}

}  // namespace

std::string return_as_json(const ReturnReport& report, const Collection& collection) {
  Json tubs = Json::array();
  for (const TubReturn& tub : report.tubs) tubs.push_back(tub_json(tub, collection));
  const Json json{{"who", report.cover.who},
                  {"from", format_day(report.cover.from)},
                  {"to", format_day(report.last)},
                  {"done", report.count(Fate::Done)},
                  {"late", report.late()},
                  {"not_done", report.count(Fate::NotDone)},
                  {"no_longer_needed", report.count(Fate::FellAway)},
                  {"silent_days", list_of(report.silent_days)},
                  {"prey", list_of(report.prey)},
                  {"tubs", std::move(tubs)}};
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace rackside
