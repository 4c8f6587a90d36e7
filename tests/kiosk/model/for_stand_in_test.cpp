// Whom somebody who stands in can call, and the keeper's words for them, given at the kiosk.

#include "core/overview/cover_reading.hpp"
#include "kiosk/view/cover_view.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"
#include "tests/kiosk/model/staffed_kiosk.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

struct Form : StaffedKiosk {
  Form() {
    scans_badge("Ines");
    gives_pin();
    does(Show{ScreenName::NewCover});
  }
  void call(const std::string& name, const std::string& number) {
    does(Ask{AskContact{}});
    does(AnswerWith{name});
    does(AnswerWith{number});
  }
  void note(const std::string& words) {
    does(Ask{AskCoverNote{}});
    does(AnswerWith{words});
  }
  [[nodiscard]] std::string field(const std::string& word) const {
    for (const FormField& field : view_new_cover(model()))
      if (field.word == word) return field.value;
    return "no such field";
  }
  // As another program finds it in the log.
  [[nodiscard]] CoverBook logged() { return fold_cover(log.read_kinds(cover_kinds()).value()); }
};

Contact ines(const std::string& number) { return {ContactKind::Keeper, "Ines", number, {}}; }

}  // namespace

TEST_CASE("whom to call is asked by name and then by number, and is on the plan") {
  Form form;
  CHECK(form.field("whom they call") == "touch to say");
  form.does(Ask{AskContact{}});
  CHECK(form.model().asking->text == "Ines");
  form.does(Enter{});
  CHECK(form.model().asking == Asking{AskContactNumber{"Ines"}});
  for (const char c : std::string("+31 20")) form.does(Typed{std::string(1, c)});
  form.does(Enter{});
  CHECK(form.model().screen == ScreenName::NewCover);
  CHECK(form.notice() == "Saved: they can call Ines, +31 20.");
  CHECK(form.field("whom they call") == "Ines, +31 20");
  CHECK(form.everything().back().by == "Ines");
  const Day today = form.clock.now().day();
  form.sets(CoverPlanned{"Noor", today, today, {}});
  const auto read = read_cover_plan(form.log, {"Noor", {}}, form.clock.now()).value();
  CHECK(read.plan.contacts == std::vector{ines("+31 20")});
}

TEST_CASE("another name takes the place of the one before, with the words about when to call") {
  Form form;
  Draft draft;
  draft.id = event_number(900);
  draft.when = {form.clock.now(), Precision::Exact};
  draft.details = ContactSet{ContactKind::Keeper, "Ines", "1"};
  draft.note = "in the evening";
  REQUIRE(form.log.append({draft}, {}));
  form.start();
  form.scans_badge("Ines");
  form.gives_pin();
  form.does(Show{ScreenName::NewCover});
  form.call(" Tomas ", "0170 2");
  const std::vector<Contact> expected{{ContactKind::Keeper, "Tomas", "0170 2", "in the evening"}};
  CHECK(form.model().cover.contacts == expected);
  CHECK(form.logged().contacts == expected);
}

TEST_CASE("a number that is wiped out is called no longer") {
  Form form;
  form.call("Ines", "0170 1");
  form.call("Ines", "");
  CHECK(form.notice() == "Saved: Ines is no longer to be called.");
  CHECK(form.logged().contacts.empty());
  CHECK(form.field("whom they call") == "touch to say");
}

TEST_CASE("nobody, and what is no number, is asked for again and not written") {
  Form form;
  const auto before = form.everything();
  form.does(Ask{AskContact{}});
  form.does(AnswerWith{" "});
  CHECK(form.notice() == "Say first who it is. Nothing was changed.");
  form.does(AnswerWith{"Ines"});
  for (const char* number : {"", "at the bakery"}) {
    form.does(AnswerWith{number});
    CHECK(form.notice() == "Type the number that they can call. Nothing was changed.");
    CHECK(form.model().screen == ScreenName::Words);
  }
  CHECK(form.everything() == before);
}

TEST_CASE("a note is written, written anew in its place, and wiped out") {
  Form form;
  form.sets(CoverNote{"A"});
  form.start();
  form.scans_badge("Ines");
  form.gives_pin();
  form.does(Show{ScreenName::NewCover});
  CHECK(form.field("a note for them") == "touch to write");
  form.note("The lamp stays off.");
  CHECK(form.field("a note for them") == "The lamp stays off.");
  form.does(Ask{AskCoverNote{}});
  CHECK(form.model().asking->text == "The lamp stays off.");
  form.does(AnswerWith{"The lamp stays on."});
  CHECK(form.notice() == "Saved. The note stands on every sheet until it is changed.");
  CHECK(form.field("a note for them") == "The lamp stays on.");
  CHECK(form.logged().notes == form.model().cover.notes);
  CHECK(form.logged().notes.size() == 2);
  form.note("");
  CHECK(form.notice() == "Saved: there is no such note any more.");
  CHECK(form.logged().notes.size() == 1);
  CHECK(form.logged().notes == form.model().cover.notes);
}

TEST_CASE("the same again is not written twice") {
  Form form;
  form.note("The lamp stays off.");
  form.call("Ines", "0170 1");
  const auto before = form.everything();
  form.note("The lamp stays off.");
  form.call("Ines", "0170 1");
  CHECK(form.everything() == before);
}

TEST_CASE("what could not be written is there to be gone on with") {
  Form form;
  const Error full{ErrorKind::Full, "The card is full.", {}};
  form.does(Ask{AskContact{}});
  form.does(AnswerWith{"Ines"});
  form.log.fail_next_write(full);
  form.does(AnswerWith{"0170 1"});
  CHECK(form.notice() == "The card is full.");
  CHECK(form.model().screen == ScreenName::Words);
  CHECK(form.model().asking == Asking{AskContactNumber{"Ines"}, "0170 1"});
  form.does(Enter{});
  CHECK(form.logged().contacts == std::vector{ines("0170 1")});
  form.log.fail_next_write(full);
  form.note("The lamp stays off.");
  CHECK(form.model().asking == Asking{AskCoverNote{}, "The lamp stays off."});
}
