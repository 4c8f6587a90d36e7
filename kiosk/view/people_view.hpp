#pragma once
// What the screens about people say.

#include <string>
#include <vector>

#include "kiosk/model/model.hpp"

namespace rackside::kiosk {

struct PersonLine {
  std::string name;
  std::string detail;  // "keeper", "assistant, until 9 May", "assistant, ended on 3 May"
  bool welcome = true;
  bool operator==(const PersonLine&) const = default;
};

/// Those with access first, keepers before assistants.
[[nodiscard]] std::vector<PersonLine> view_people(const Model& model);
/// Those who may say that they are here.
[[nodiscard]] std::vector<PersonLine> view_welcome(const Model& model);
/// The person whose page is open.
[[nodiscard]] PersonLine view_person(const Model& model);

struct PinView {
  std::string title;
  std::string detail;  // what it is for, in a sentence or two
  std::size_t digits = 0;
  bool waiting = false;
  bool operator==(const PinView&) const = default;
};
[[nodiscard]] PinView view_pin(const Model& model);

}  // namespace rackside::kiosk
