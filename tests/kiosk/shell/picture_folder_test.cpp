// Pictures beside the log.

#include "kiosk/shell/picture_folder.hpp"

#include "core/store/pictures.hpp"
#include "labels/picture/picture_file.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"
#include "tests/generators/events.hpp"

using namespace rackside;
using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

GreyImage some_picture() {
  GreyImage image{37, 21, {}};
  for (int i = 0; i < 37 * 21; ++i) image.pixels.push_back(static_cast<std::uint8_t>(i * 7));
  return image;
}

}  // namespace

TEST_CASE("a picture is kept beside the log under the name of its event, as it was") {
  const TemporaryFolder folder;
  const auto pictures = pictures_beside(folder / "log.db");
  CHECK(pictures == folder / "log.db.pictures");
  const EventId event = event_number(7);
  const auto name = keep_picture(pictures, event, some_picture());
  REQUIRE(name);
  CHECK(*name == format_uuid(event.value) + ".png");
  CHECK(load_pictures(pictures / *name).value() == std::vector{some_picture()});
}

TEST_CASE("where the folder cannot be, no picture is kept, none half, and it is said") {
  const TemporaryFolder folder;
  const auto pictures = pictures_beside(folder / "log.db");
  write_file(pictures, "something else has this name");
  const auto name = keep_picture(pictures, event_number(7), some_picture());
  REQUIRE_FALSE(name);
  CHECK(name.error().sentence == "Without a picture: its folder cannot be written to.");
  CHECK(read_file(pictures) == "something else has this name");
}

TEST_CASE("no picture at all is not kept") {
  const TemporaryFolder folder;
  CHECK_FALSE(keep_picture(folder / "p", event_number(7), GreyImage{}));
}
