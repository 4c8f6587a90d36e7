#include "tests/generators/events.hpp"

#include <array>

namespace rackside::tests {
namespace {

constexpr int animals = 4;
constexpr int tubs = 5;

Uuid numbered(std::int64_t number) {
  Uuid id;
  for (std::size_t i = 0; i < 8; ++i)
    id.bytes[15 - i] = static_cast<std::uint8_t>(number >> (8 * i));
  return id;
}

template <class T>
T pick(std::initializer_list<T> choices) {
  return *rc::gen::elementOf(std::vector<T>(choices));
}

std::string any_word() {
  return pick<std::string>({"", "cricket", "a \"quoted\", word", "Ätzend"});
}

Place any_place() { return {any_word(), any_word(), any_word()}; }

std::optional<Day> any_day() {
  if (*rc::gen::arbitrary<bool>()) return std::nullopt;
  return Day{std::chrono::year{2030} / 1 / 1} + std::chrono::days{*rc::gen::inRange(0, 900)};
}

SignSet any_signs() {
  SignSet signs;
  for (const Sign sign : all_signs)
    if (*rc::gen::arbitrary<bool>()) signs.insert(sign);
  return signs;
}

Details any_animal() {
  return AnimalAdded{
      .key = any_word(),
      .species = any_word(),
      .common_name = any_word(),
      .sex = pick({Sex::Unknown, Sex::Female, Sex::Male}),
      .stage = pick({Stage::Unknown, Stage::Sling, Stage::Adult, Stage::MatureMale}),
      .instar = *rc::gen::maybe(rc::gen::inRange(1, 12)) ? std::optional<int>{3} : std::nullopt,
      .born = any_day(),
      .acquired = any_day(),
      .source = any_word(),
      .count = *rc::gen::inRange(1, 4)};
}

Details any_offer() {
  Offered offered{.outcome = pick({Outcome::Took, Outcome::Refused, Outcome::LeftOvernight}),
                  .prey = any_word(),
                  .count = std::nullopt,
                  .size = std::nullopt};
  if (*rc::gen::arbitrary<bool>()) offered.count = *rc::gen::inRange(1, 5);
  if (*rc::gen::arbitrary<bool>()) offered.size = Millimetres{*rc::gen::inRange(1, 40) / 2.0};
  return offered;
}

Details any_cover() {
  const Day from = any_day().value_or(Day{std::chrono::year{2031} / 1 / 3});
  return CoverPlanned{.who = any_word(),
                      .from = from,
                      .to = from + std::chrono::days{*rc::gen::inRange(-2, 20)},
                      .racks = *rc::gen::container<std::vector<std::string>>(
                          rc::gen::elementOf(std::vector<std::string>{"A", "B", "C 2"}))};
}

using Maker = Details (*)(std::int64_t order);

constexpr std::array<Maker, std::variant_size_v<Details>> makers{
    [](std::int64_t) -> Details { return EnclosureAdded{any_place()}; },
    [](std::int64_t) -> Details { return EnclosureMoved{any_place()}; },
    [](std::int64_t) -> Details { return LabelPrinted{}; },
    [](std::int64_t) -> Details { return LabelConfirmed{}; },
    [](std::int64_t) -> Details { return any_animal(); },
    [](std::int64_t) -> Details { return Rehoused{tub_number(*rc::gen::inRange(0, tubs))}; },
    [](std::int64_t) -> Details { return Died{}; },
    [](std::int64_t) -> Details { return Left{}; },
    [](std::int64_t) -> Details { return any_offer(); },
    [](std::int64_t) -> Details { return PreyRemoved{}; },
    [](std::int64_t) -> Details { return Misted{}; },
    [](std::int64_t) -> Details { return WaterFilled{}; },
    [](std::int64_t) -> Details { return Looked{any_signs()}; },
    [](std::int64_t) -> Details { return Moulted{}; },
    [](std::int64_t) -> Details { return ShedFound{}; },
    [](std::int64_t) -> Details { return ShedRemoved{}; },
    [](std::int64_t) -> Details {
      return Measured{pick({Measure::LegSpan, Measure::Carapace}), Millimetres{12.5}};
    },
    [](std::int64_t) -> Details {
      return Sexed{pick({Sex::Female, Sex::Male}), pick({Stage::Unknown, Stage::MatureMale})};
    },
    [](std::int64_t) -> Details {
      return TemperatureRead{Celsius{23.5}, any_word()};
    },
    [](std::int64_t) -> Details {
      return HumidityRead{Percent{70}, any_word()};
    },
    [](std::int64_t) -> Details { return Noted{}; },
    [](std::int64_t) -> Details { return Paired{animal_number(*rc::gen::inRange(0, animals))}; },
    [](std::int64_t) -> Details { return EggSac{}; },
    [](std::int64_t) -> Details { return Pulled{}; },
    [](std::int64_t) -> Details { return Counted{*rc::gen::inRange(0, 200)}; },
    [](std::int64_t) -> Details {
      return RuleSet{pick({RuleScope::Collection, RuleScope::Species, RuleScope::Animal}),
                     any_word(), any_word(), any_word()};
    },
    [](std::int64_t) -> Details { return RoundStarted{any_word()}; },
    [](std::int64_t order) -> Details {
      return RoundEnded{event_number(*rc::gen::inRange<std::int64_t>(0, order + 3))};
    },
    [](std::int64_t) -> Details {
      return PersonAdded{any_word(), pick({Role::Assistant, Role::Keeper}), any_day()};
    },
    [](std::int64_t) -> Details { return PersonEnded{any_word()}; },
    [](std::int64_t) -> Details {
      return PersonCame{any_word(), pick({Arrival::Badge, Arrival::Picked})};
    },
    [](std::int64_t) -> Details { return any_cover(); },
    [](std::int64_t order) -> Details {
      return CoverEnded{event_number(*rc::gen::inRange<std::int64_t>(0, order + 3))};
    },
    [](std::int64_t) -> Details { return CoverNote{any_word()}; },
    [](std::int64_t) -> Details {
      return ContactSet{pick({ContactKind::Keeper, ContactKind::Vet, ContactKind::Emergency}),
                        any_word(), any_word()};
    },
    [](std::int64_t) -> Details { return Flagged{any_word()}; },
    [](std::int64_t order) -> Details {
      return Retracted{event_number(*rc::gen::inRange<std::int64_t>(0, order + 3))};
    },
};

Event any_event(std::int64_t order) {
  Event event = make_event(order, *rc::gen::inRange(0, 200), animal_number(0), *any_details(order));
  event.by = any_word();
  event.note = any_word();
  event.animal.reset();
  if (*rc::gen::inRange(0, 10) != 0) event.animal = animal_number(*rc::gen::inRange(0, animals));
  if (*rc::gen::arbitrary<bool>()) event.enclosure = tub_number(*rc::gen::inRange(0, tubs));
  event.kiosk = kiosk_number(1 + static_cast<int>(order % 2));
  event.number = order / 2 + 1;
  return event;
}

}  // namespace

AnimalId animal_number(int number) { return AnimalId{numbered(1000 + number)}; }
KioskId kiosk_number(int number) { return KioskId{numbered(2000 + number)}; }
EventId event_number(std::int64_t order) { return EventId{numbered(order)}; }

Code tub_number(int number) {
  for (char last = '0';; ++last) {
    const std::string body = {'0',
                              '0',
                              code_alphabet[static_cast<std::size_t>(number / 28)],
                              code_alphabet[static_cast<std::size_t>(number % 28)],
                              '0',
                              last};
    if (const auto code = make_code(CodeKind::Enclosure, body)) return *code;
  }
}

When at_hour(double hours) {
  const Instant start{Day{std::chrono::year{2031} / 1 / 1}};
  const auto since = std::chrono::milliseconds{static_cast<std::int64_t>(hours * 3'600'000.0)};
  return When{Moment{start + since, std::chrono::minutes{60}}, Precision::Exact};
}

Event make_event(std::int64_t order, double hour, AnimalId animal, Details details) {
  Event event;
  event.id = event_number(order);
  event.when = at_hour(hour);
  event.animal = animal;
  event.details = std::move(details);
  event.kiosk = kiosk_number(1);
  event.number = order + 1;
  event.written = event.when.moment.utc;
  return event;
}

rc::Gen<Details> any_details(std::int64_t order) {
  return rc::gen::exec(
      [order] { return makers[*rc::gen::inRange<std::size_t>(0, makers.size())](order); });
}

rc::Gen<std::vector<Event>> any_log(int most) {
  return rc::gen::exec([most] {
    std::vector<Event> log;
    const int size = *rc::gen::inRange(0, most + 1);
    for (int order = 0; order < size; ++order) log.push_back(any_event(order));
    return log;
  });
}

}  // namespace rackside::tests
