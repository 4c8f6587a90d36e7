// Sizes out of EDID blocks, against edid-decode, which does not share a line with us.

#include "kiosk/console/edid.hpp"

#include <fmt/format.h>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <numeric>

#include "kiosk/console/display_density.hpp"
#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

using namespace rackside::tests;
using namespace rackside::kiosk;

namespace {

using Block = std::array<std::uint8_t, 128>;

void close_sum(Block& block) {
  block[127] = 0;
  block[127] = static_cast<std::uint8_t>(-std::accumulate(block.begin(), block.end(), 0));
}

// A panel of 1280 by 800 pixels that calls itself this large.
Block panel(int width_cm, int height_cm, int width_mm, int height_mm) {
  Block block{0x00, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0xFF, 0x00, 0x4A, 0x8B, 1,
              0,    1,    0,    0,    0,    1,    34,   1,    4,    0x80};
  block[21] = static_cast<std::uint8_t>(width_cm);
  block[22] = static_cast<std::uint8_t>(height_cm);
  block[23] = 120;  // gamma 2.2
  const std::array<std::uint8_t, 18> timing{
      0xBC,
      0x1B,
      0x00,
      0xA0,
      0x50,
      0x20,
      0x17,
      0x30,
      0x30,
      0x20,
      0x36,
      0x00,
      static_cast<std::uint8_t>(width_mm),
      static_cast<std::uint8_t>(height_mm),
      static_cast<std::uint8_t>((width_mm >> 8) << 4 | height_mm >> 8),
      0,
      0,
      0x18};
  std::copy(timing.begin(), timing.end(), block.begin() + 54);
  for (const std::size_t unused : {72u, 90u, 108u}) block[unused + 3] = 0x10;
  close_sum(block);
  return block;
}

// What edid-decode reads out of the block; empty where it is not here.
std::string decoded(const Block& block) {
  const TemporaryFolder folder;
  write_file(folder / "edid", std::string(block.begin(), block.end()));
  const std::string command =
      fmt::format("command -v edid-decode >/dev/null && edid-decode {} > {}",
                  (folder / "edid").string(), (folder / "out").string());
  // It grumbles by its exit code about a block that is as short as ours.
  [[maybe_unused]] const int code = std::system(command.c_str());
  return read_file(folder / "out");
}

}  // namespace

TEST_CASE("the size in millimetres is read as another program reads it") {
  const std::string said = decoded(panel(22, 14, 217, 136));
  if (said.empty()) {
    WARN("skipped: edid-decode is not here");
    return;
  }
  INFO(said);
  CHECK(said.find("217 mm x 136 mm") != std::string::npos);
  CHECK(said.find("22 cm x 14 cm") != std::string::npos);
  CHECK(display_size(panel(22, 14, 217, 136)) == DisplaySize{217, 136});
  CHECK(decoded(panel(52, 32, 518, 324)).find("518 mm x 324 mm") != std::string::npos);
  CHECK(display_size(panel(52, 32, 518, 324)) == DisplaySize{518, 324});
}

TEST_CASE("centimetres stand in where the millimetres are missing or are a proportion") {
  CHECK(display_size(panel(22, 14, 0, 0)) == DisplaySize{220, 140});
  CHECK(display_size(panel(22, 14, 160, 90)) == DisplaySize{220, 140});
  CHECK(display_size(panel(0, 0, 217, 136)) == DisplaySize{217, 136});
}

TEST_CASE("a projector, a proportion and a damaged block tell no size") {
  CHECK_FALSE(display_size(panel(0, 0, 0, 0)));
  CHECK_FALSE(display_size(panel(79, 0, 0, 0)));
  Block damaged = panel(22, 14, 217, 136);
  damaged[66] ^= 1;
  CHECK_FALSE(display_size(damaged));
  CHECK_FALSE(display_size(std::span(damaged).first(100)));
}

TEST_CASE("a density is taken from the size only when a touch panel can be like that") {
  const auto ten_inches = plausible_density(1280, 800, {217, 136});
  REQUIRE(ten_inches);
  CHECK(*ten_inches == Approx(5.89).margin(0.02));
  // Turned upright, it is the same panel.
  CHECK(plausible_density(800, 1280, {217, 136}) == ten_inches);
  CHECK_FALSE(plausible_density(1280, 800, {0, 0}));
  CHECK_FALSE(plausible_density(1280, 800, {1600, 900}));
  CHECK_FALSE(plausible_density(1280, 800, {16, 10}));
  CHECK_FALSE(plausible_density(1280, 800, {217, 217}));
}

TEST_CASE("the size is that of the one display that is plugged in") {
  const TemporaryFolder outputs;
  const auto plug = [&](const std::string& name, const std::string& status, const Block& block) {
    std::filesystem::create_directories(outputs / name);
    write_file(outputs / (name + "/status"), status + "\n");
    write_file(outputs / (name + "/edid"), std::string(block.begin(), block.end()));
  };
  CHECK_FALSE(connected_display(outputs.path()));
  plug("card1-HDMI-A-1", "connected", panel(22, 14, 217, 136));
  plug("card1-HDMI-A-2", "disconnected", panel(52, 32, 518, 324));
  CHECK(connected_display(outputs.path()) == DisplaySize{217, 136});
  plug("card1-HDMI-A-2", "connected", panel(52, 32, 518, 324));
  CHECK_FALSE(connected_display(outputs.path()));
}
