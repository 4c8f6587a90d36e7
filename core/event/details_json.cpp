#include "core/event/details_json.hpp"

#include <fmt/format.h>

#include <functional>
#include <nlohmann/json.hpp>
#include <unordered_map>

#include "core/event/words.hpp"

namespace rackside {
namespace {

using Json = nlohmann::json;

// Thrown inside this file only, where a member holds something it should not.
struct Refused {
  std::string sentence;
};

// Writing ------------------------------------------------------------------------------------

void put(Json& json, const char* name, const std::string& text) {
  if (!text.empty()) json[name] = text;
}

template <class Number>
void put(Json& json, const char* name, const std::optional<Number>& number) {
  if (number) json[name] = *number;
}

void put(Json& json, const char* name, const std::optional<Day>& day) {
  if (day) json[name] = format_day(*day);
}

void put(Json& json, const Place& place) {
  put(json, "rack", place.rack);
  put(json, "shelf", place.shelf);
  put(json, "position", place.position);
}

struct Write {
  Json& json;

  void operator()(const EnclosureAdded& e) const { put(json, e.place); }
  void operator()(const EnclosureMoved& e) const { put(json, e.place); }
  void operator()(const AnimalAdded& e) const {
    put(json, "key", e.key);
    put(json, "species", e.species);
    put(json, "common_name", e.common_name);
    if (e.sex != Sex::Unknown) json["sex"] = word_of(e.sex);
    if (e.stage != Stage::Unknown) json["stage"] = word_of(e.stage);
    put(json, "instar", e.instar);
    put(json, "born", e.born);
    put(json, "acquired", e.acquired);
    put(json, "source", e.source);
    if (e.count != 1) json["count"] = e.count;
  }
  void operator()(const Rehoused& e) const { json["to"] = e.to.text(); }
  void operator()(const Offered& e) const {
    json["outcome"] = word_of(e.outcome);
    put(json, "prey", e.prey);
    put(json, "count", e.count);
    if (e.size) json["size_mm"] = e.size->value;
  }
  void operator()(const Looked& e) const { put(json, "signs", format_signs(e.signs)); }
  void operator()(const Measured& e) const {
    json["what"] = word_of(e.what);
    json["mm"] = e.length.value;
  }
  void operator()(const Sexed& e) const {
    json["sex"] = word_of(e.sex);
    if (e.stage != Stage::Unknown) json["stage"] = word_of(e.stage);
  }
  void operator()(const TemperatureRead& e) const {
    json["celsius"] = e.temperature.value;
    put(json, "rack", e.rack);
  }
  void operator()(const HumidityRead& e) const {
    json["percent"] = e.humidity.value;
    put(json, "rack", e.rack);
  }
  void operator()(const Paired& e) const { json["with"] = format_uuid(e.with.value); }
  void operator()(const Counted& e) const { json["count"] = e.count; }
  void operator()(const RuleSet& e) const {
    json["scope"] = word_of(e.scope);
    put(json, "species", e.species);
    put(json, "rule", e.rule);
    put(json, "value", e.value);
  }
  void operator()(const RoundStarted& e) const { put(json, "rack", e.rack); }
  void operator()(const RoundEnded& e) const { json["round"] = format_uuid(e.round.value); }
  void operator()(const PersonAdded& e) const {
    put(json, "name", e.name);
    json["role"] = word_of(e.role);
    put(json, "until", e.until);
  }
  void operator()(const PersonEnded& e) const { put(json, "name", e.name); }
  void operator()(const PersonCame& e) const {
    put(json, "name", e.name);
    json["how"] = word_of(e.how);
  }
  void operator()(const CoverPlanned& e) const {
    put(json, "who", e.who);
    json["from"] = format_day(e.from);
    json["to"] = format_day(e.to);
    if (!e.racks.empty()) json["racks"] = e.racks;
  }
  void operator()(const CoverEnded& e) const { json["cover"] = format_uuid(e.cover.value); }
  void operator()(const CoverNote& e) const { put(json, "rack", e.rack); }
  void operator()(const ContactSet& e) const {
    json["kind"] = word_of(e.kind);
    put(json, "name", e.name);
    put(json, "number", e.number);
  }
  void operator()(const Flagged& e) const { put(json, "picture", e.picture); }
  void operator()(const Retracted& e) const { json["target"] = format_uuid(e.target.value); }

  // Kinds that say everything by being there.
  void operator()(const LabelPrinted&) const {}
  void operator()(const LabelConfirmed&) const {}
  void operator()(const Died&) const {}
  void operator()(const Left&) const {}
  void operator()(const PreyRemoved&) const {}
  void operator()(const Misted&) const {}
  void operator()(const WaterFilled&) const {}
  void operator()(const Moulted&) const {}
  void operator()(const ShedFound&) const {}
  void operator()(const ShedRemoved&) const {}
  void operator()(const Noted&) const {}
  void operator()(const EggSac&) const {}
  void operator()(const Pulled&) const {}
};

// Reading ------------------------------------------------------------------------------------

template <class T>
T unwrap(Result<T> result) {
  if (!result) throw Refused{result.error().sentence};
  return *std::move(result);
}

std::string text_at(const Json& json, const char* name) { return json.value(name, std::string{}); }

template <class Number>
std::optional<Number> number_at(const Json& json, const char* name) {
  const auto found = json.find(name);
  if (found == json.end()) return std::nullopt;
  return found->get<Number>();
}

std::optional<Day> day_at(const Json& json, const char* name) {
  const std::string text = text_at(json, name);
  if (text.empty()) return std::nullopt;
  return unwrap(parse_day(text));
}

template <class Enum>
Enum word_at(const Json& json, const char* name, std::optional<Enum> (*from_word)(std::string_view),
             Enum absent) {
  const auto found = json.find(name);
  if (found == json.end()) return absent;
  const auto value = from_word(found->get_ref<const std::string&>());
  if (!value) throw Refused{fmt::format("{} cannot be \"{}\"", name, found->get<std::string>())};
  return *value;
}

Sex sex_at(const Json& json) { return word_at(json, "sex", sex_from_word, Sex::Unknown); }
Stage stage_at(const Json& json) { return word_at(json, "stage", stage_from_word, Stage::Unknown); }

Place place_at(const Json& json) {
  return {text_at(json, "rack"), text_at(json, "shelf"), text_at(json, "position")};
}

Uuid uuid_at(const Json& json, const char* name) {
  return unwrap(parse_uuid(json.at(name).get_ref<const std::string&>()));
}

Details read_animal(const Json& json) {
  return AnimalAdded{.key = text_at(json, "key"),
                     .species = text_at(json, "species"),
                     .common_name = text_at(json, "common_name"),
                     .sex = sex_at(json),
                     .stage = stage_at(json),
                     .instar = number_at<int>(json, "instar"),
                     .born = day_at(json, "born"),
                     .acquired = day_at(json, "acquired"),
                     .source = text_at(json, "source"),
                     .count = json.value("count", 1)};
}

Details read_offer(const Json& json) {
  Offered offered{.outcome = word_at(json, "outcome", outcome_from_word, Outcome::Took),
                  .prey = text_at(json, "prey"),
                  .count = number_at<int>(json, "count"),
                  .size = {}};
  if (const auto mm = number_at<double>(json, "size_mm")) offered.size = Millimetres{*mm};
  return offered;
}

Details read_rule(const Json& json) {
  return RuleSet{
      .scope = word_at(json, "scope", rule_scope_from_word, RuleScope::Collection),
      .species = text_at(json, "species"),
      .rule = text_at(json, "rule"),
      .value = text_at(json, "value"),
  };
}

// Who may do less is the safer guess where a role is missing.
Details read_person(const Json& json) {
  return PersonAdded{.name = text_at(json, "name"),
                     .role = word_at(json, "role", role_from_word, Role::Assistant),
                     .until = day_at(json, "until")};
}

Details read_cover(const Json& json) {
  return CoverPlanned{
      .who = text_at(json, "who"),
      .from = unwrap(parse_day(json.at("from").get_ref<const std::string&>())),
      .to = unwrap(parse_day(json.at("to").get_ref<const std::string&>())),
      .racks = json.value("racks", std::vector<std::string>{}),
  };
}

Details read_contact(const Json& json) {
  return ContactSet{word_at(json, "kind", contact_kind_from_word, ContactKind::Keeper),
                    text_at(json, "name"), text_at(json, "number")};
}

template <class Kind>
Details read_nothing(const Json&) {
  return Kind{};
}

using ReadFunction = Details (*)(const Json&);

const std::unordered_map<std::string_view, ReadFunction>& readers() {
  static const std::unordered_map<std::string_view, ReadFunction> table{
      {"enclosure added", [](const Json& j) -> Details { return EnclosureAdded{place_at(j)}; }},
      {"enclosure moved", [](const Json& j) -> Details { return EnclosureMoved{place_at(j)}; }},
      {"label printed", read_nothing<LabelPrinted>},
      {"label confirmed", read_nothing<LabelConfirmed>},
      {"animal added", read_animal},
      {"rehoused",
       [](const Json& j) -> Details {
         return Rehoused{unwrap(parse_code(j.at("to").get_ref<const std::string&>()))};
       }},
      {"died", read_nothing<Died>},
      {"left", read_nothing<Left>},
      {"offered", read_offer},
      {"prey removed", read_nothing<PreyRemoved>},
      {"misted", read_nothing<Misted>},
      {"water filled", read_nothing<WaterFilled>},
      {"looked",
       [](const Json& j) -> Details { return Looked{unwrap(parse_signs(text_at(j, "signs")))}; }},
      {"moult", read_nothing<Moulted>},
      {"shed found", read_nothing<ShedFound>},
      {"shed removed", read_nothing<ShedRemoved>},
      {"measured",
       [](const Json& j) -> Details {
         return Measured{word_at(j, "what", measure_from_word, Measure::LegSpan),
                         Millimetres{j.at("mm").get<double>()}};
       }},
      {"sexed",
       [](const Json& j) -> Details {
         return Sexed{sex_at(j), stage_at(j)};
       }},
      {"temperature",
       [](const Json& j) -> Details {
         return TemperatureRead{Celsius{j.at("celsius").get<double>()}, text_at(j, "rack")};
       }},
      {"humidity",
       [](const Json& j) -> Details {
         return HumidityRead{Percent{j.at("percent").get<double>()}, text_at(j, "rack")};
       }},
      {"note", read_nothing<Noted>},
      {"paired", [](const Json& j) -> Details { return Paired{AnimalId{uuid_at(j, "with")}}; }},
      {"egg sac", read_nothing<EggSac>},
      {"pulled", read_nothing<Pulled>},
      {"counted", [](const Json& j) -> Details { return Counted{j.at("count").get<int>()}; }},
      {"rule set", read_rule},
      {"round started", [](const Json& j) -> Details { return RoundStarted{text_at(j, "rack")}; }},
      {"round ended",
       [](const Json& j) -> Details { return RoundEnded{EventId{uuid_at(j, "round")}}; }},
      {"person added", read_person},
      {"person ended", [](const Json& j) -> Details { return PersonEnded{text_at(j, "name")}; }},
      {"person came",
       [](const Json& j) -> Details {
         return PersonCame{text_at(j, "name"),
                           word_at(j, "how", arrival_from_word, Arrival::Picked)};
       }},
      {"cover planned", read_cover},
      {"cover ended",
       [](const Json& j) -> Details { return CoverEnded{EventId{uuid_at(j, "cover")}}; }},
      {"cover note", [](const Json& j) -> Details { return CoverNote{text_at(j, "rack")}; }},
      {"contact set", read_contact},
      {"something wrong", [](const Json& j) -> Details { return Flagged{text_at(j, "picture")}; }},
      {"retracted",
       [](const Json& j) -> Details { return Retracted{EventId{uuid_at(j, "target")}}; }},
  };
  return table;
}

}  // namespace

std::string details_to_json(const Details& details) {
  Json json = Json::object();
  std::visit(Write{json}, details);
  // Text that is not UTF-8 is kept with the replacement character rather than refused: a record is
  // worth more than its spelling.
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

Result<Details> details_from_json(std::string_view kind, std::string_view json) {
  const auto reader = readers().find(kind);
  if (reader == readers().end())
    return failure(ErrorKind::NewerVersion,
                   fmt::format("This program does not know the event \"{}\".", kind));
  // Most events of a long log say everything by their kind.
  static const Json nothing = Json::object();
  try {
    return reader->second(json == "{}" ? nothing : Json::parse(json));
  } catch (const Refused& refused) {
    return failure(ErrorKind::BadInput, refused.sentence, std::string(kind));
  } catch (const Json::exception& exception) {
    return failure(ErrorKind::BadInput, "The details of an event are damaged.", exception.what());
  }
}

}  // namespace rackside
