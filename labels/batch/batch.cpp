#include "labels/batch/batch.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

#include "core/code/code_mint.hpp"
#include "labels/batch/counting_up.hpp"

namespace rackside {
namespace {

constexpr int most_instar = 30;
constexpr int tries = 3;

Result<void> check(const BatchRequest& request) {
  const auto refused = [](std::string sentence) {
    return failure(ErrorKind::BadInput, std::move(sentence) + " Nothing was written.");
  };
  if (request.count < 1) return refused("A batch needs at least one tub.");
  if (request.count > most_in_a_batch)
    return refused(
        fmt::format("{} tubs are more than one batch holds; make it in parts of at most "
                    "{}.",
                    request.count, most_in_a_batch));
  if (request.species.empty() && request.common_name.empty())
    return refused("A batch needs a species, or a name to call it by.");
  if (request.instar && (*request.instar < 0 || *request.instar > most_instar))
    return refused(fmt::format("There is no instar {}.", *request.instar));
  if (request.tubs_on_a_shelf < 0) return refused("A shelf cannot hold fewer than no tubs.");
  return {};
}

std::string key_prefix(const BatchRequest& request) {
  if (!request.key.empty()) return request.key + "-";
  return (request.source.empty() ? std::string("batch") : request.source) + "-";
}

int last_number(const std::vector<Event>& roster, const std::string& prefix) {
  int last = 0;
  for (const Event& event : roster)
    if (const auto* added = std::get_if<AnimalAdded>(&event.details))
      last = std::max(last, number_after(prefix, added->key));
  return last;
}

std::unordered_set<Code> issued_codes(const std::vector<Event>& roster) {
  std::unordered_set<Code> codes;
  for (const Event& event : roster) {
    if (event.enclosure) codes.insert(*event.enclosure);
    if (const auto* rehoused = std::get_if<Rehoused>(&event.details)) codes.insert(rehoused->to);
  }
  return codes;
}

Result<Place> place_of(const BatchRequest& request, int index) {
  Place place = request.first;
  int along = index;
  if (request.tubs_on_a_shelf > 0) {
    along = index % request.tubs_on_a_shelf;
    const auto shelf = counted_up(place.shelf, index / request.tubs_on_a_shelf);
    if (!shelf) return tl::unexpected(shelf.error());
    place.shelf = *shelf;
  }
  if (place.position.empty() || along == 0) return place;
  const auto position = counted_up(place.position, along);
  if (!position) return tl::unexpected(position.error());
  place.position = *position;
  return place;
}

AnimalAdded animal_of(const BatchRequest& request, const std::string& prefix, int number) {
  return {.key = fmt::format("{}{:03}", prefix, number),
          .species = request.species,
          .common_name = request.common_name,
          .sex = request.sex,
          .stage = request.stage,
          .instar = request.instar,
          .acquired = request.date,
          .source = request.source};
}

// Whether a code of `ours` also belongs to a tub that another program wrote before us.
bool another_was_first(const std::vector<Event>& roster, const std::vector<Event>& ours) {
  std::unordered_map<Code, const Event*> mine;
  for (const Event& event : ours)
    if (std::holds_alternative<EnclosureAdded>(event.details)) mine[*event.enclosure] = &event;
  return std::ranges::any_of(roster, [&](const Event& event) {
    if (!event.enclosure || !std::holds_alternative<EnclosureAdded>(event.details)) return false;
    const auto found = mine.find(*event.enclosure);
    return found != mine.end() && event.id != found->second->id &&
           event.kiosk == found->second->kiosk && event.number < found->second->number;
  });
}

Result<void> take_back(LogStore& log, const std::vector<Event>& events, IdSource& ids, Moment now) {
  std::vector<Draft> drafts;
  drafts.reserve(events.size());
  for (const Event& event : events)
    drafts.push_back({ids.next_event(),
                      event.by,
                      {now, Precision::Exact},
                      event.animal,
                      event.enclosure,
                      Retracted{event.id},
                      "codes issued twice"});
  const auto written = log.append(drafts, now.utc);
  if (!written) return tl::unexpected(written.error());
  return {};
}

}  // namespace

Result<Batch> draft_batch(const BatchRequest& request, const std::vector<Event>& roster,
                          KioskId kiosk, IdSource& ids, Moment now) {
  if (auto sound = check(request); !sound) return tl::unexpected(sound.error());
  const auto issued = issued_codes(roster);
  CodeMint mint(CodeKind::Enclosure, kiosk,
                [&](const Code& code) { return issued.contains(code); });
  const std::string prefix = key_prefix(request);
  const int numbers_used = last_number(roster, prefix);
  const When when{now, Precision::Exact};
  Batch batch;
  for (int i = 0; i < request.count; ++i) {
    const auto code = mint.next();
    if (!code) return tl::unexpected(code.error());
    const auto place = place_of(request, i);
    if (!place) return tl::unexpected(place.error());
    batch.drafts.push_back(
        {ids.next_event(), request.by, when, std::nullopt, *code, EnclosureAdded{*place}, ""});
    const EventId animal_event = ids.next_event();
    batch.drafts.push_back({animal_event, request.by, when, ids.next_animal(), *code,
                            animal_of(request, prefix, numbers_used + i + 1), ""});
    batch.tubs.push_back(*code);
  }
  return batch;
}

Result<Batch> make_batch(LogStore& log, const BatchRequest& request, IdSource& ids, Clock& clock) {
  auto roster = log.read_kinds(roster_kinds());
  for (int attempt = 0; roster && attempt < tries; ++attempt) {
    const Moment now = clock.now();
    auto batch = draft_batch(request, *roster, log.kiosk(), ids, now);
    if (!batch) return batch;
    const auto written = log.append(batch->drafts, now.utc);
    if (!written) return tl::unexpected(written.error());
    roster = log.read_kinds(roster_kinds());
    if (!roster || !another_was_first(*roster, *written)) return batch;
    if (auto undone = take_back(log, *written, ids, now); !undone)
      return tl::unexpected(undone.error());
  }
  if (!roster) return tl::unexpected(roster.error());
  return failure(ErrorKind::Busy,
                 "Another program is issuing codes in this log. Nothing of the batch was kept; try "
                 "again in a moment.");
}

Result<void> mark_printed(LogStore& log, const std::vector<Code>& tubs, const std::string& by,
                          IdSource& ids, Clock& clock) {
  const Moment now = clock.now();
  std::vector<Draft> drafts;
  drafts.reserve(tubs.size());
  for (const Code& tub : tubs)
    drafts.push_back(
        {ids.next_event(), by, {now, Precision::Exact}, std::nullopt, tub, LabelPrinted{}, ""});
  const auto written = log.append(drafts, now.utc);
  if (!written) return tl::unexpected(written.error());
  return {};
}

}  // namespace rackside
