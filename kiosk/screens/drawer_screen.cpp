// The drawer: what is not needed on every walk.

#include <algorithm>
#include <array>
#include <cmath>

#include "kiosk/model/permission.hpp"
#include "kiosk/screens/parts.hpp"
#include "kiosk/screens/screens.hpp"

namespace rackside::kiosk {
namespace {

struct Slot {
  ScreenName screen;
  Mark mark;
  std::string_view word;
};

constexpr std::array slots{
    Slot{ScreenName::Map, Mark::Housed, "shelf map"},
    Slot{ScreenName::Weeks, Mark::Moult, "weeks ahead"},
    Slot{ScreenName::Air, Mark::Climate, "room air"},
    Slot{ScreenName::Find, Mark::Looked, "find"},
    Slot{ScreenName::Keypad, Mark::Written, "type a code"},
    Slot{ScreenName::NewTubs, Mark::Arrived, "new tubs"},
    Slot{ScreenName::BringIn, Mark::TakenBack, "bring in records"},
    Slot{ScreenName::Who, Mark::Person, "who is there"},
    Slot{ScreenName::People, Mark::Badge, "people"},
    Slot{ScreenName::Cover, Mark::Away, "cover"},
    Slot{ScreenName::Setup, Mark::Measured, "setup"},
};

// The columns for which the tiles come nearest to twice as wide as high.
std::size_t columns_for(const Box& box, std::size_t count, double least) {
  std::size_t best = 1;
  double nearest = 1e9;
  for (std::size_t columns = 1; columns <= count; ++columns) {
    const auto rows = static_cast<double>((count + columns - 1) / columns);
    const double width = box.width / static_cast<double>(columns);
    const double height = box.height / rows;
    if (height < least || width < least) continue;
    const double off = std::abs(std::log(width / height / 2));
    if (off < nearest) {
      nearest = off;
      best = columns;
    }
  }
  return best;
}

// What is closed to whoever is here does not stand in their way.
std::vector<Slot> open_slots(const Model& model) {
  std::vector<Slot> open;
  for (const Slot& slot : slots)
    if (permission(model, Show{slot.screen}) != Verdict::Refused) open.push_back(slot);
  return open;
}

}  // namespace

void compose_drawer(Composer& composer, const Model& model) {
  const std::vector<Slot> open = open_slots(model);
  Box box = page(composer);
  heading(composer, box, "The drawer");
  notice_line(composer, box, telling(model));
  const double gap = composer.mm(gap_mm);
  const std::size_t columns = columns_for(box, open.size(), composer.mm(least_target_mm) + gap);
  const std::size_t rows = (open.size() + columns - 1) / columns;
  const double width =
      (box.width - gap * static_cast<double>(columns - 1)) / static_cast<double>(columns);
  const double room =
      (box.height - gap * static_cast<double>(rows - 1)) / static_cast<double>(rows);
  const double height = std::min(room, composer.mm(1.6 * usual_target_mm));
  for (std::size_t i = 0; i < open.size(); ++i) {
    const Box tile{box.x + static_cast<double>(i % columns) * (width + gap),
                   box.y + static_cast<double>(i / columns) * (height + gap), width, height};
    composer.tile(tile, open[i].mark, open[i].word, Show{open[i].screen});
  }
}

}  // namespace rackside::kiosk
