#pragma once
// What the tub screen says. Words only, no places: golden tests compare it.

#include <optional>
#include <string>
#include <vector>

#include "kiosk/model/model.hpp"
#include "kiosk/scene/mark.hpp"
#include "kiosk/view/strip_view.hpp"

namespace rackside::kiosk {

struct RecordLine {
  EventId event;
  Mark mark = Mark::None;
  std::string when;   // "today 21:30"
  std::string words;  // "refused 2 cricket, 8 mm"
  std::string by;
  bool taken_back = false;
  bool can_take_back = false;
  bool operator==(const RecordLine&) const = default;
};

struct Tile {
  Action action = Action::Took;
  Mark mark = Mark::None;
  std::string word;
  bool first = false;
  std::vector<std::string> below;  // "2 crickets", "8 mm": what an offer is recorded with
  bool operator==(const Tile&) const = default;
};

struct TubView {
  bool plain = false;   // for somebody who is not a keeper: one thing to do, no more than it takes
  std::string place;    // "rack A, shelf 2, position 14"
  std::string code;     // "T4K7 9MWX"
  std::string species;  // in italics
  std::string who;      // "female, juvenile, 6th instar · key"
  std::string state;    // the state sentence
  bool urgent = false;
  std::string task;  // what to do now
  std::vector<std::string> also;
  std::optional<std::string> caution;
  std::vector<std::string> why;
  std::optional<StripView> strip;
  std::vector<Tile> tiles;          // in order; empty when nobody lives here
  std::vector<RecordLine> records;  // the latest first, at most five
  std::optional<Notice> notice;
  std::optional<std::string> undo;  // what the undo line would take back
  std::string neighbours;           // "1 of 2 here"; empty where it lives alone
  bool saving = false;

  bool operator==(const TubView&) const = default;
};

/// The open tub. The model must have one.
[[nodiscard]] TubView view_tub(const Model& model);

/// Every record of the open animal, the latest first, retractions told beside what they took back.
[[nodiscard]] std::vector<RecordLine> view_records(const Model& model,
                                                   RecordFilter filter = RecordFilter::All);
/// One of the open animal's.
[[nodiscard]] RecordLine view_record(const Model& model, const Event& event);

}  // namespace rackside::kiosk
