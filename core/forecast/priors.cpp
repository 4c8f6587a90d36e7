#include "core/forecast/priors.hpp"

#include <toml++/toml.h>

#include <cassert>

namespace rackside {

extern const std::string_view forecast_priors_text;  // the file as it was built in

namespace {

using Node = toml::node_view<const toml::node>;

// The file is part of the program: what is missing in it is a bug.
double number(const Node& table, std::string_view name) {
  const auto value = table[name].value<double>();
  assert(value && "priors.toml lacks a number");
  return value.value_or(0);
}

Prior prior(const Node& table) { return {number(table, "value"), number(table, "spread")}; }

template <std::size_t N>
std::array<double, N> numbers(const Node& list) {
  std::array<double, N> values{};
  for (std::size_t i = 0; i < N; ++i) values[i] = list[i].value<double>().value_or(0);
  return values;
}

constexpr std::array<std::string_view, stages> stage_names{"unknown", "sling", "juvenile", "adult"};

CyclePriors read_cycle(const Node& cycle, const Node& moult) {
  CyclePriors priors;
  for (std::size_t i = 0; i < stages; ++i) {
    priors.length[i] = prior(cycle["length"][stage_names[i]]);
    priors.instar_reference[i] = number(cycle["instar_reference"], stage_names[i]);
  }
  priors.start_spread = prior(cycle["start_spread"]);
  priors.known_start_spread = prior(cycle["known_start_spread"]);
  priors.per_instar = prior(cycle["per_instar"]);
  priors.drift = prior(cycle["drift"]);
  priors.adult_drift = prior(cycle["adult_drift"]);
  priors.pull = prior(cycle["pull"]);
  priors.pull_reference = number(cycle["pull"], "reference");
  priors.wander = prior(cycle["wander"]);
  priors.within = prior(cycle["within"]);
  priors.adult_within = prior(cycle["adult_within"]);
  priors.wide_share = prior(cycle["wide_share"]);
  priors.wide_factor = number(cycle["wide_share"], "factor");
  priors.wide_lean = number(cycle["wide_share"], "lean");
  priors.species_level = number(cycle["species_level"], "value");
  priors.species_drift = number(cycle["species_drift"], "value");
  priors.species_adult = number(cycle["species_adult"], "value");
  priors.at_instar = number(cycle["at_instar"], "value");
  priors.food = prior(cycle["food"]);
  priors.slow_grower = number(cycle["slow_grower"], "value");
  priors.unseen_share = prior(moult["unseen_share"]);
  priors.noticed_a_visit = number(moult["noticed_a_visit"], "value");
  return priors;
}

MealPriors read_meals(const Node& table) {
  return {.gap = number(table, "gap"),
          .with_cycle = number(table, "with_cycle"),
          .reference = number(table, "reference"),
          .cycles = number(table, "cycles"),
          .strength = number(table, "strength"),
          .longest = number(table, "longest")};
}

PremoultPriors read_premoult(const Node& table) {
  return {.length = prior(table["length"]),
          .with_cycle = prior(table["with_cycle"]),
          .reference = number(table["length"], "reference"),
          .within = number(table["within"], "value"),
          .within_strength = number(table["within"], "strength"),
          .between_species = number(table["between"], "species"),
          .between_animals = number(table["between"], "animal")};
}

HardeningPriors read_hardening(const Node& table) {
  return {.length = prior(table),
          .with_cycle = number(table, "with_cycle"),
          .within = number(table, "within"),
          .strength = number(table, "strength"),
          .reference = number(table, "reference")};
}

FastPriors read_fast(const Node& table) {
  return {number(table, "start"), number(table, "end"), number(table, "long_faster_start"),
          number(table, "long_faster_end"), number(table, "strength")};
}

OfferPriors read_offer(const Node& table) {
  return {.shares = numbers<outcomes>(table["shares"]),
          .strength = number(table, "strength"),
          .species_strength = table["species_strength"].value_or(1e6),
          .animal_strength = table["animal_strength"].value_or(1e6)};
}

SignPriors read_signs(const Node& table) {
  SignPriors priors{.strength = number(table, "strength"),
                    .species_strength = number(table, "species_strength"),
                    .last_hours_factor = number(table["moulting"], "last_hours_factor")};
  for (const Sign sign : all_signs) {
    const auto row = table[sign_word(sign)];
    priors.first[static_cast<std::size_t>(sign)] = numbers<sign_phases>(row["first"]);
    priors.again[static_cast<std::size_t>(sign)] = numbers<sign_phases>(row["again"]);
  }
  return priors;
}

WarmthPriors read_warmth(const Node& table) {
  WarmthPriors priors{.upper = number(table, "upper"),
                      .reference = number(table, "reference"),
                      .daily_swing = number(table, "daily_swing")};
  if (const toml::array* list = table["thresholds"].as_array())
    for (const auto& entry : *list) priors.thresholds.push_back(entry.value_or(0.0));
  return priors;
}

Priors read_priors() {
  const toml::table file = toml::parse(forecast_priors_text);
  const auto at = [&](std::string_view name) { return Node{file[name]}; };
  const Node offer = at("offer");
  return {.cycle = read_cycle(at("cycle"), at("moult")),
          .meals = read_meals(at("meals")["usual"]),
          .premoult = read_premoult(at("premoult")),
          .hardening = read_hardening(at("hardening")["length"]),
          .fast = read_fast(at("fast")),
          .hardening_offer = read_offer(offer["hardening"]),
          .feeding_offer = read_offer(offer["feeding"]),
          .fasting_offer = read_offer(offer["fasting"]),
          .premoult_offer = read_offer(offer["premoult"]),
          .unsettled_offer = read_offer(offer["unsettled"]),
          .sign = read_signs(at("sign")),
          .warmth = read_warmth(at("warmth")),
          .season = {number(at("season"), "odds"), number(at("season"), "grown_cycle"),
                     number(at("season"), "year_spread"), number(at("season"), "wave")}};
}

}  // namespace

const Priors& documented_priors() {
  static const Priors priors = read_priors();
  return priors;
}

}  // namespace rackside
