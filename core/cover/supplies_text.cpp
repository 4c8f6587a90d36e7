#include <fmt/format.h>

#include <iterator>
#include <nlohmann/json.hpp>

#include "core/cover/supplies.hpp"
#include "core/words/dates.hpp"
#include "core/words/sentences.hpp"

namespace rackside {
namespace {

using Json = nlohmann::ordered_json;

Json to_json(const PreySupply& prey) {
  Json json{{"kind", prey.kind}};
  if (prey.size) json["size_mm"] = prey.size->value;
  json["planned"] = prey.planned;
  json["expected_refused"] = prey.expected_refused;
  json["get"] = prey.get;
  return json;
}

}  // namespace

std::string supplies_as_text(const Supplies& supplies) {
  const DateStyle dates = supplies.wording.dates;
  std::string text =
      fmt::format("Supplies from {} to {}, for {}\n\n", long_day_words(supplies.from, dates),
                  long_day_words(supplies.to, dates), count_of(supplies.tubs, "tub"));
  const auto out = std::back_inserter(text);
  for (const PreySupply& prey : supplies.prey)
    fmt::format_to(out, "  {}\n", format_supply(prey, supplies.wording.units));
  if (supplies.prey.empty()) text += "  No meal falls on these days.\n";
  text +=
      "  Feeder insects die in their box: get what you usually lose on top.\n\n"
      "                    tubs   meals   to mist and fill\n";
  for (const DayLoad& day : supplies.days)
    fmt::format_to(out, "  {:<16} {:>5} {:>7} {:>9}\n", weekday_words(day.day, dates), day.visits,
                   day.meals, day.water);
  if (supplies.without_water > 0)
    fmt::format_to(out, "\n  Water was never written down for {}: look at their dishes.\n",
                   count_of(supplies.without_water, "tub"));
  return text;
}

std::string supplies_as_json(const Supplies& supplies) {
  Json prey = Json::array();
  for (const PreySupply& one : supplies.prey) prey.push_back(to_json(one));
  Json days = Json::array();
  for (const DayLoad& day : supplies.days)
    days.push_back({{"day", format_day(day.day)},
                    {"visits", day.visits},
                    {"meals", day.meals},
                    {"water", day.water}});
  const Json json{{"from", format_day(supplies.from)},
                  {"to", format_day(supplies.to)},
                  {"tubs", supplies.tubs},
                  {"prey", std::move(prey)},
                  {"days", std::move(days)},
                  {"without_water_on_record", supplies.without_water}};
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace rackside
