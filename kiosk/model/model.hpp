#pragma once
// All the kiosk knows. A plain value; screens are drawn from nothing else.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/care/instruction.hpp"
#include "core/care/rule_book.hpp"
#include "core/climate/room_climate.hpp"
#include "core/climate/warm_days.hpp"
#include "core/collection/collection.hpp"
#include "core/cover/cover_book.hpp"
#include "core/forecast/forecast.hpp"
#include "core/people/people.hpp"
#include "core/round/summary.hpp"
#include "kiosk/model/intent.hpp"
#include "labels/batch/batch.hpp"

namespace rackside::kiosk {

/// How a notice is meant: a word and a mark go with each, never colour alone.
enum class Tone { Done, Tell, Problem };

struct Notice {
  Tone tone = Tone::Tell;
  std::string sentence;
  bool operator==(const Notice&) const = default;
};

/// What the undo line offers to take back.
struct UndoOffer {
  EventId event;
  std::optional<AnimalId> animal;  // none: a reading of the room
  std::optional<Code> enclosure;
  std::string what;  // "refused"
  std::string by;    // whose entry it is
  bool operator==(const UndoOffer&) const = default;
};

/// A number that is being typed.
struct NumberPage {
  NumberQuestion question;
  std::string typed;
  std::optional<EventId> draft;  // handed to the store; what was typed stays until it is saved
  bool operator==(const NumberPage&) const = default;
};

/// Where on the map one is.
struct MapPage {
  std::optional<std::string> rack;   // none: all racks
  std::optional<std::string> shelf;  // to begin with; none: where the last tub is, or the first
  bool operator==(const MapPage&) const = default;
};

/// What is being answered in words, and how far.
struct Asking {
  Question question;
  std::string text;
  bool capital = false;  // the next letter
  bool operator==(const Asking&) const = default;
};

/// What the PIN screen is for.
enum class PinStep { Give, ChooseNew, SayAgain };

struct PinPage {
  PinStep step = PinStep::Give;
  std::string digits;    // so far; never told, never shown
  std::string chosen;    // said once, to be said again
  bool waiting = false;  // being checked or kept
  bool operator==(const PinPage&) const = default;
};

/// The walk that is under way, or has just ended.
struct RoundPage {
  RoundSoFar so_far;
  Progress progress;
  bool operator==(const RoundPage&) const = default;
};

/// Which records are shown.
enum class RecordFilter { All, Meals, Moults, Signs, Care, Other };

/// The tub that is open, and the animal in it that is shown.
struct TubPage {
  Code code;
  std::size_t shown = 0;                      // index into the tub's residents
  std::optional<AnimalId> animal;             // whose history this is; none in an empty tub
  std::optional<std::vector<Event>> history;  // absent until it is read
  std::optional<MoultDensity> density;        // absent until it is worked out
  Phase tiles_for = Phase::Feeding;  // fixed while the tub is open: tiles never jump under a finger
  std::vector<Action> for_stand_in;  // fixed with what was said as it was opened, likewise
  int tile_page = 0;
  RecordFilter filter = RecordFilter::All;
  std::optional<EventId> corrected;  // the record that is being put right
  bool operator==(const TubPage&) const = default;
};

struct Model {
  ScreenName screen = ScreenName::Round;
  std::vector<ScreenName> trail;  // the way back from `screen`, the nearest last
  Moment now;

  std::string by;  // who is at the kiosk; empty: nobody
  People people;
  std::optional<Moment> last_seen;  // somebody did something, on this screen or another
  std::optional<bool> pin_set;      // absent until it is known
  std::optional<Moment> pin_given;  // by the keeper who is at the kiosk
  std::optional<PinPage> pin;
  std::optional<Intent> wanted;           // what was held up by a question, to be gone on with
  std::optional<PersonAdded> new_person;  // waits for their PIN
  std::string person;                     // whose page is open

  Settings settings;
  std::optional<PrintersFound> printers;  // once setup has asked

  bool roster_known = false;
  bool overview_known = false;
  Collection collection;
  std::map<AnimalId, Forecast> forecasts;
  RuleBook rules;
  RoomClimate climate;
  AirDays air;
  WarmDays warmth;
  CoverBook cover;
  CoverPage cover_page;
  ReturnPage return_page;
  CoverForm new_cover;  // half filled or not

  DayPlan plan;  // as things stand; made anew when the round screen comes up
  bool plan_stale = false;
  std::optional<RoundPage> round;
  std::optional<Summary> summary;  // of the round that ended last

  std::optional<TubPage> tub;
  std::optional<Code> awaited;  // scanned, unknown here, looked for in the log just now
  std::string keypad;           // characters of a half-entered code
  std::string find_words;       // what is looked for
  std::optional<NumberPage> number;
  MapPage map;
  std::optional<Code> last_tub;  // that was open
  std::optional<Asking> asking;
  BatchRequest new_tubs;  // the form, half filled or not
  bool making_tubs = false;
  int list_page = 0;
  bool list_turned = false;  // by hand; until then the round's list follows the walk

  std::optional<CameraPage> camera;  // while its page is open
  bool camera_fitted = false;
  std::optional<Draft> flagging;  // what is wrong, while a picture may go with it
  BringInPage bring_in;

  std::optional<Notice> notice;
  std::string reader_says;
  std::optional<UndoOffer> undo;
  std::vector<EventId> saving;  // handed to the store, not yet acknowledged
  std::optional<Moment> last_touched;

  bool operator==(const Model&) const = default;
};

/// Seconds without a touch or scan after which the kiosk goes back to the round.
inline constexpr std::chrono::minutes idle_return{5};

/// What is to be told just now: the notice, or else what the reader has to say.
[[nodiscard]] std::optional<Notice> telling(const Model& model);

/// The animal on the tub screen as its whole history leaves it (or as the roster knows it, while
/// the history is being read). None when no tub is open or nobody lives in it.
[[nodiscard]] std::optional<AnimalState> shown_animal(const Model& model);

/// The record that is being put right; none when it is not among those of the open animal.
[[nodiscard]] const Event* corrected_event(const Model& model);

/// Rackside's own place for a tub in the lists: walking order, then code.
[[nodiscard]] std::vector<const EnclosureState*> walking_order(const Collection& collection);

/// The tubs whose code, species, common name, key, place or state have a word that begins with
/// each of `words`, in walking order. No words: none. States are those of `plan`: the condition
/// ("premoult", "hardening", "on its back"), "due", "overdue", "wait", "leave alone", "urgent"; and
/// "empty".
[[nodiscard]] std::vector<const EnclosureState*> found_tubs(const Collection& collection,
                                                            std::string_view words,
                                                            const DayPlan& plan = {});

/// Every rack on which a tub stands, in walking order; "" is the place of those without one.
[[nodiscard]] std::vector<std::string> racks_in(const Collection& collection);

/// What is to be done at the open tub, for the animal that is shown. None where nobody lives.
[[nodiscard]] std::optional<Instruction> instruction_here(const Model& model);

/// The prey that an offer to the open tub's animal is recorded with: what the plan says, or what
/// would be usual where it only waits for its day. None where nothing is to be offered.
[[nodiscard]] std::optional<PreyPlan> prey_offered(const Model& model);

}  // namespace rackside::kiosk
