#pragma once

namespace rackside::kiosk {

enum class ScreenName {
  Round,
  Carry,
  Summary,
  Tub,
  Keypad,
  Find,
  Records,
  Drawer,
  Setup,
  Map,
  Weeks,
  Air,
  Growth,
  Number,
  Words,
  NewTubs,
  Correct,
  Camera,
  Who,
  Pin,
  People,
  Person,
  Cover,
  NewCover,
  Days,
  Returned,
  Picture,
  BringIn,
};

}  // namespace rackside::kiosk
