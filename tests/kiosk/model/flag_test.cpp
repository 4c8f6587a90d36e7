// What is wrong, with a picture beside it where there is a camera.

#include "tests/frame.hpp"
#include "tests/generators/events.hpp"
#include "tests/kiosk/model/staffed_kiosk.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

struct WithCamera : StaffedKiosk {
  WithCamera() {
    does(CameraFitted{true});
    scans_badge("Oskar");
    scans(tub);
  }
  void says(const std::string& words) {
    does(Ask{AskWrong{tub}});
    does(AnswerWith{words});
  }
  [[nodiscard]] std::vector<Event> flags() {
    std::vector<Event> flags;
    for (const Event& event : everything())
      if (std::holds_alternative<Flagged>(event.details)) flags.push_back(event);
    return flags;
  }
};

std::string picture_of(const Event& event) { return std::get<Flagged>(event.details).picture; }

}  // namespace

TEST_CASE("where a camera is fitted, a picture goes with what is wrong") {
  WithCamera kiosk;
  kiosk.says("It drags a leg.");
  CHECK(kiosk.model().screen == ScreenName::Picture);
  CHECK(kiosk.flags().empty());
  kiosk.does(TakePicture{});
  REQUIRE(kiosk.flags().size() == 1);
  CHECK(picture_of(kiosk.flags().front()) == "a picture.png");
  CHECK(kiosk.flags().front().note == "It drags a leg.");
  CHECK(kiosk.flags().front().by == "Oskar");
  CHECK(kiosk.model().screen == ScreenName::Tub);
  CHECK_THAT(kiosk.notice(), Catch::Matchers::StartsWith("Saved. The keeper will see it"));
}

TEST_CASE("a picture that cannot be kept leaves what was said recorded, and is told") {
  WithCamera kiosk;
  kiosk.picture = failure(ErrorKind::Full, "There is no room for a picture.");
  kiosk.says("It drags a leg.");
  kiosk.does(TakePicture{});
  REQUIRE(kiosk.flags().size() == 1);
  CHECK(picture_of(kiosk.flags().front()).empty());
  CHECK_THAT(kiosk.notice(),
             Catch::Matchers::StartsWith("Saved. There is no room for a picture. The keeper"));
}

TEST_CASE("however one leaves the question about a picture, what is wrong is recorded once") {
  const std::vector<Intent> ways{LeavePicture{}, Close{}, Show{ScreenName::Round},
                                 CodeRead{std::string(tub_number(2).text())}, Stop{}};
  for (const Intent& way : ways) {
    WithCamera kiosk;
    kiosk.says("It drags a leg.");
    kiosk.does(way);
    INFO("way " << way.index());
    REQUIRE(kiosk.flags().size() == 1);
    CHECK(picture_of(kiosk.flags().front()).empty());
    CHECK(kiosk.flags().front().animal == kiosk.animal_of(kiosk.tub));
    CHECK(kiosk.model().screen != ScreenName::Picture);
    kiosk.does(Close{});
    CHECK(kiosk.flags().size() == 1);
  }
}

TEST_CASE("nobody there any more: what was said is recorded without a picture") {
  WithCamera kiosk;
  kiosk.says("It drags a leg.");
  kiosk.clock.advance(std::chrono::minutes{6});
  kiosk.does(Tick{});
  CHECK(kiosk.model().screen == ScreenName::Round);
  CHECK(kiosk.flags().size() == 1);
}

TEST_CASE("the label of the tub that is held before the camera opens nothing meanwhile") {
  WithCamera kiosk;
  kiosk.says("It drags a leg.");
  kiosk.does(CodeRead{std::string(kiosk.other_tub.text()), ReadBy::Camera});
  CHECK(kiosk.model().screen == ScreenName::Picture);
  CHECK(kiosk.model().tub->code == kiosk.tub);
}

TEST_CASE("the live picture runs while it is asked for and no longer") {
  WithCamera kiosk;
  kiosk.effects_wait = true;
  const auto watching = [](const Next& next) {
    for (const Effect& effect : next.second)
      if (const auto* watch = std::get_if<WatchCamera>(&effect))
        return std::optional(watch->watching);
    return std::optional<Watching>{};
  };
  kiosk.does(Ask{AskWrong{kiosk.tub}});
  const Stamp stamp{kiosk.clock.now(), event_number(9000), event_number(9001)};
  const Next asked = update(kiosk.model(), AnswerWith{"It drags a leg."}, stamp);
  CHECK(watching(asked) == Watching::EveryPicture);
  CHECK(watching(update(asked.first, TakePicture{}, stamp)) == Watching::Codes);
}

TEST_CASE("without a camera what is wrong is recorded at once") {
  WithCamera kiosk;
  kiosk.does(CameraFitted{false});
  kiosk.says("It drags a leg.");
  CHECK(kiosk.flags().size() == 1);
  CHECK(kiosk.model().screen == ScreenName::Tub);
}
