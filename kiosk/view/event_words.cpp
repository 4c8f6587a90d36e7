#include "kiosk/view/event_words.hpp"

#include <fmt/format.h>

#include "core/event/words.hpp"
#include "core/words/measures.hpp"
#include "core/words/sentences.hpp"

namespace rackside::kiosk {
namespace {

std::string prey_words(const Offered& offered, Units units) {
  std::string text;
  const int count = offered.count.value_or(1);
  if (offered.count && count > 1) text += fmt::format(" {}", count);
  if (!offered.prey.empty()) text += ' ' + (count > 1 ? plural(offered.prey) : offered.prey);
  if (offered.size) text += ", " + length_words(*offered.size, units);
  return text;
}

struct Words {
  const Event& event;
  const Collection& collection;
  Units units;

  std::string operator()(const AnimalAdded& e) const {
    return e.source.empty() ? "came here" : "came here from " + e.source;
  }
  std::string operator()(const Rehoused& e) const { return "moved into " + e.to.grouped(); }
  std::string operator()(const Left&) const { return "left the collection"; }
  std::string operator()(const Offered& e) const {
    return std::string(word_of(e.outcome)) + prey_words(e, units);
  }
  std::string operator()(const Looked& e) const {
    return e.signs.empty() ? "looked: nothing unusual" : "seen: " + format_signs(e.signs);
  }
  std::string operator()(const Moulted&) const { return "moulted"; }
  std::string operator()(const rackside::Measured& e) const {
    return fmt::format("{} {}", word_of(e.what), length_words(e.length, units));
  }
  std::string operator()(const rackside::Sexed& e) const {
    if (e.stage == Stage::MatureMale) return "mature male";
    return fmt::format("sexed: {}", word_of(e.sex));
  }
  std::string operator()(const TemperatureRead& e) const {
    return exact_temperature_words(e.temperature, units);
  }
  std::string operator()(const HumidityRead& e) const {
    return fmt::format("humidity {:.0f} %", e.humidity.value);
  }
  std::string operator()(const rackside::Paired& e) const {
    const AnimalState* other = collection.animal(e.with);
    return other == nullptr ? "paired" : "paired with " + other->key;
  }
  std::string operator()(const Pulled&) const { return "egg sac pulled"; }
  std::string operator()(const Counted& e) const { return fmt::format("counted {}", e.count); }
  std::string operator()(const RuleSet& e) const {
    return fmt::format("rule {} set to {}", e.rule, e.value);
  }
  std::string operator()(const Flagged& e) const {
    return e.picture.empty() ? "flagged" : "flagged, with a picture";
  }
  std::string operator()(const Retracted&) const { return "an entry was taken back"; }

  // The kind's own name says it.
  template <class Kind>
  std::string operator()(const Kind& e) const {
    return std::string(kind_name(Details{e}));
  }
};

}  // namespace

std::string event_words(const Event& event, const Collection& collection, Units units) {
  std::string text = std::visit(Words{event, collection, units}, event.details);
  if (!event.note.empty())
    text += std::holds_alternative<Noted>(event.details) ||
                    std::holds_alternative<Flagged>(event.details)
                ? ": " + event.note
                : " (" + event.note + ")";
  return text;
}

}  // namespace rackside::kiosk
