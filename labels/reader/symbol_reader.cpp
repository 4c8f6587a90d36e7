#include "labels/reader/symbol_reader.hpp"

#include <algorithm>

#include "labels/reader/library_pass.hpp"
#include "labels/reader/symbol_solver.hpp"

namespace rackside {
namespace {

constexpr int most_symbols = 255;     // what the library counts up to
constexpr double usual_focal = 0.87;  // of the width: 60 degrees of view

bool known(const std::vector<Sighting>& sightings, const Solved& solved) {
  return std::ranges::any_of(sightings, [&](const Sighting& sighting) {
    return sighting.code && *sighting.code == solved.code;
  });
}

void nearest_first(std::vector<Sighting>& sightings, const Point& middle) {
  std::ranges::stable_sort(sightings, {}, [&](const Sighting& sighting) {
    return distance_squared(sighting.centre(), middle);
  });
}

Point middle_of_image(const GreyImage& image) { return {image.width / 2.0, image.height / 2.0}; }

}  // namespace

std::vector<Sighting> read_symbols_plainly(const GreyImage& image) {
  auto sightings = library_pass(image, most_symbols);
  nearest_first(sightings, middle_of_image(image));
  return sightings;
}

std::vector<Sighting> read_symbols(const GreyImage& image) {
  auto sightings = library_pass(image, most_symbols);
  const Point middle = middle_of_image(image);
  if (sightings.empty() && image.width > 1 && image.height > 1) {
    SymbolSolver solver(as_plane(image), usual_focal * image.width, middle);
    for (const Look look : all_looks)
      for (const Solved& solved : solver.look(look, [] { return true; }))
        if (!known(sightings, solved)) sightings.push_back({solved.code, solved.corners});
  }
  nearest_first(sightings, middle);
  return sightings;
}

}  // namespace rackside
