#pragma once
// The papers that whole pages are printed on.

#include <map>
#include <string>

namespace rackside {

struct Paper {
  double width;  // millimetres
  double height;
};

[[nodiscard]] inline const std::map<std::string, Paper>& papers() {
  static const std::map<std::string, Paper> all{
      {"a4", {210, 297}}, {"a5", {148, 210}}, {"letter", {215.9, 279.4}}};
  return all;
}

}  // namespace rackside
