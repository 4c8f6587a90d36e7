#include <algorithm>
#include <fstream>
#include <map>
#include <sstream>

#include "tests/core/forecast/real_records.hpp"
#include "tests/frame.hpp"

namespace rackside::tests {
namespace {

std::vector<std::vector<std::string>> rows_of(const std::filesystem::path& file) {
  std::ifstream in(file);
  std::vector<std::vector<std::string>> rows;
  std::string line;
  std::getline(in, line);  // the header
  while (std::getline(in, line)) {
    std::vector<std::string> cells;
    std::istringstream parts(line);
    for (std::string cell; std::getline(parts, cell, ',');) cells.push_back(cell);
    rows.push_back(std::move(cells));
  }
  return rows;
}

double day_of(const std::string& date) {  // "22/05/2023"
  int d = 0, m = 0, y = 0;
  char slash = 0;
  std::istringstream(date) >> d >> slash >> m >> slash >> y;
  const Day day = std::chrono::year{y} / m / d;
  return static_cast<double>(day.time_since_epoch().count()) + 0.5;
}

EventId next_id() {
  static std::int64_t number = 0;
  EventId id;
  ++number;
  for (std::size_t i = 0; i < 8; ++i)
    id.value.bytes[15 - i] = static_cast<std::uint8_t>(number >> (8 * i));
  return id;
}

}  // namespace

std::vector<Evidence> cricket_records(const std::filesystem::path& file) {
  std::map<std::pair<std::string, std::string>, std::map<double, int>> looks;
  for (const auto& row : rows_of(file))
    if (std::stoi(row[1]) <= 30) looks[{row[1], row[2]}][day_of(row[0])] = std::stoi(row[3]);
  std::vector<Evidence> animals;
  for (const auto& [who, seen] : looks) {
    Evidence animal{.key = who.first + " C, cricket " + who.second,
                    .species = "cricket at " + who.first + " C"};
    animal.animal = AnimalId{next_id().value};
    animal.arrived = seen.begin()->first;
    animal.instar = seen.begin()->second;
    std::pair<double, int> before = *seen.begin();
    for (const auto& [day, instar] : seen) {
      animal.visits.push_back(day);
      if (instar > before.second) animal.moults.push_back({before.first, day, next_id()});
      before = {day, std::max(instar, before.second)};
    }
    if (!animal.moults.empty()) animal.ended = animal.moults.back().latest;
    animals.push_back(std::move(animal));
  }
  return animals;
}

std::vector<Evidence> crab_records(const std::filesystem::path& file) {
  std::map<std::pair<std::string, std::string>, Evidence> crabs;
  WeeklyMeans water;
  for (const auto& row : rows_of(file)) {
    const double from = std::stod(row[3]);
    const double to = std::stod(row[4]);
    Evidence& crab = crabs[{row[0], row[1]}];
    if (crab.moults.empty()) {
      crab = Evidence{.key = row[0] + " " + row[1], .species = "crab, " + row[0]};
      crab.animal = AnimalId{next_id().value};
      crab.instar = row[2][0] - '0' - 1;
      crab.arrived = from - 1;
      crab.moults.push_back({from - 0.5, from + 0.5, next_id()});
    }
    crab.moults.push_back({to - 0.5, to + 0.5, next_id()});
    if (row[6].empty()) continue;  // one crab's first days
    const double celsius = std::stod(row[6]) / std::stod(row[5]);
    for (double day = from; day < to; day += 1) water.add(day, celsius);
  }
  std::vector<Evidence> animals;
  for (auto& [who, crab] : crabs) {
    crab.warmth = water.weeks();
    crab.ended = crab.moults.back().latest;
    animals.push_back(std::move(crab));
  }
  return animals;
}

}  // namespace rackside::tests
