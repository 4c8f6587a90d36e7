// The reference that assumes no shape against published tables, then the model's lengths against
// the reference.

#include "tests/core/forecast/turnbull.hpp"

#include <cmath>
#include <fstream>
#include <random>
#include <sstream>

#include "core/forecast/level_fit.hpp"
#include "tests/frame.hpp"

using namespace rackside;
using namespace rackside::tests;

namespace {

std::vector<std::vector<std::string>> rows_of(const std::filesystem::path& file) {
  std::ifstream in(file);
  std::string line;
  std::getline(in, line);
  std::vector<std::vector<std::string>> rows;
  while (std::getline(in, line)) {
    std::erase(line, '"');
    std::vector<std::string> cells;
    std::istringstream parts(line);
    for (std::string cell; std::getline(parts, cell, ',');) cells.push_back(cell);
    rows.push_back(std::move(cells));
  }
  return rows;
}

}  // namespace

TEST_CASE("times between bounds have the published law without a shape") {
  // Data: Finkelstein & Wolfe 1985, Biometrics 41:933-945. Values: Turnbull's estimate of the arm
  // with radiotherapy alone, computed with R 4.2.2.
  const auto file = outside_data("breast_cosmesis_94.csv");
  if (!file) {
    WARN("skipped: not here");
    return;
  }
  std::vector<Bounds> times;
  for (const auto& row : rows_of(*file))
    if (row[2] == "RT")
      times.push_back({std::stod(row[0]), row[1] == "Inf" ? HUGE_VAL : std::stod(row[1])});
  const Turnbull law(times);
  const std::vector<Turnbull::Mass> published{
      {4, 5, .046347},   {6, 7, .033363},   {7, 8, .088667},   {11, 12, .070753},
      {24, 25, .092646}, {33, 34, .081786}, {38, 40, .120880}, {46, 48, .465558}};
  std::size_t found = 0;
  for (const Turnbull::Mass& mass : law.masses()) {
    if (mass.share < 1e-5) continue;
    REQUIRE(found < published.size());
    CHECK(mass.low == published[found].low);
    CHECK(mass.high == published[found].high);
    CHECK(mass.share == Approx(published[found].share).epsilon(0).margin(1e-5));
    ++found;
  }
  CHECK(found == published.size());
  CHECK(law.log_likelihood() == Approx(-58.060022).epsilon(0).margin(1e-5));
}

TEST_CASE("times known or cut off have Kaplan and Meier's published law") {
  // Freireich et al. 1963, Blood 21:699-716; Gehan 1965: remissions in weeks under 6-MP.
  const auto file = outside_data("gehan_6mp.csv");
  if (!file) {
    WARN("skipped: not here");
    return;
  }
  std::vector<Bounds> times;
  for (const auto& row : rows_of(*file)) {
    if (row[2] != "6-MP") continue;
    const double weeks = std::stod(row[0]);
    times.push_back({weeks, row[1] == "1" ? weeks : HUGE_VAL});
  }
  REQUIRE(times.size() == 21);
  const Turnbull law(times);
  const std::vector<std::pair<double, double>> published{
      {6, .857143},  {7, .806723},  {10, .752941}, {13, .690196},
      {16, .627451}, {22, .537815}, {23, .448179}};
  for (const auto& [weeks, share] : published)
    CHECK(law.survival(weeks) == Approx(share).epsilon(0).margin(1e-5));
}

TEST_CASE("lengths between rare looks have the law that assumes no shape, and the true one") {
  // Cycles of about four weeks whose first moult was seen and whose end is found at a weekly look.
  std::mt19937_64 dice(5);
  std::normal_distribution<double> normal;
  std::uniform_real_distribution<double> uniform;
  SpeciesHistories species{.species = "Inventa prima"};
  std::vector<Bounds> times;
  for (int i = 0; i < 400; ++i) {
    const double days = std::exp(std::log(28) + 0.25 * normal(dice));
    const double look = 7 * uniform(dice);
    const double low = std::max(1.0, look + 7 * std::floor((days - look) / 7));
    times.push_back({std::round(low * 2) / 2, std::round((low + 7) * 2) / 2});
    species.animals.push_back(
        {.stage = Stage::Juvenile,
         .cycles = {{.low = std::log(times.back().low), .high = std::log(times.back().high)}}});
  }
  const std::array all{species};
  const LevelModel model = fit_levels(all, documented_priors().cycle);
  const LengthMixture law = model.filter("Inventa prima", Stage::Juvenile, std::nullopt).length();
  const Turnbull reference(times);
  for (const double days : {20.25, 24.25, 28.25, 32.25, 38.25}) {
    double lasts = 0;
    for (const LengthComponent& c : law)
      lasts += c.weight * 0.5 * std::erfc((std::log(days) - c.mean) / c.deviation / std::sqrt(2));
    CHECK(lasts == Approx(reference.survival(days)).epsilon(0).margin(0.07));
  }
}
