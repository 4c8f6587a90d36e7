#pragma once
// What the page says on which records are brought in.

#include <optional>
#include <string>
#include <vector>

#include "kiosk/model/model.hpp"

namespace rackside::kiosk {

struct FileLine {
  std::string name;
  std::string folder;
  Intent intent;
  bool operator==(const FileLine&) const = default;
};

struct BringInView {
  std::string words;  // what is found in the chosen file, or what to do
  std::vector<FileLine> files;
  std::optional<std::string> key;  // what the first key says; none: there is nothing to do
  std::optional<Intent> intent;    // and does
  bool operator==(const BringInView&) const = default;
};

[[nodiscard]] BringInView view_bring_in(const Model& model);

}  // namespace rackside::kiosk
