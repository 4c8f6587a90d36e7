#include "labels/symbol/outline.hpp"

namespace rackside {
namespace {

enum class Heading { East, South, West, North };

struct Step {
  int x;
  int y;
};

Step step_of(Heading heading) {
  switch (heading) {
    case Heading::East: return {1, 0};
    case Heading::South: return {0, 1};
    case Heading::West: return {-1, 0};
    case Heading::North: return {0, -1};
  }
  return {};
}

Heading turned(Heading heading, int quarters) {
  return static_cast<Heading>((static_cast<int>(heading) + quarters + 4) % 4);
}

class Tracer {
 public:
  explicit Tracer(const Symbol& symbol)
      : symbol_(symbol), walked_(static_cast<std::size_t>((symbol.side + 1) * (symbol.side + 1))) {}

  std::vector<std::vector<SymbolPoint>> trace() {
    std::vector<std::vector<SymbolPoint>> paths;
    // Every closed path has an edge that heads east.
    for (int y = 0; y <= symbol_.side; ++y)
      for (int x = 0; x < symbol_.side; ++x)
        if (is_edge({x, y}, Heading::East) && !walked({x, y})) paths.push_back(path_from({x, y}));
    return paths;
  }

 private:
  [[nodiscard]] bool dark(int x, int y) const {
    return x >= 0 && y >= 0 && x < symbol_.side && y < symbol_.side && symbol_.is_dark(x, y);
  }

  // Whether dark is on the right and light on the left of the line that leaves `from`.
  [[nodiscard]] bool is_edge(SymbolPoint from, Heading heading) const {
    const auto [x, y] = from;
    switch (heading) {
      case Heading::East: return dark(x, y) && !dark(x, y - 1);
      case Heading::South: return dark(x - 1, y) && !dark(x, y);
      case Heading::West: return dark(x - 1, y - 1) && !dark(x - 1, y);
      case Heading::North: return dark(x, y - 1) && !dark(x - 1, y - 1);
    }
    return false;
  }

  [[nodiscard]] std::vector<bool>::reference walked(SymbolPoint place) {
    return walked_[static_cast<std::size_t>(place.y * (symbol_.side + 1) + place.x)];
  }

  std::vector<SymbolPoint> path_from(SymbolPoint start) {
    std::vector<SymbolPoint> corners;
    SymbolPoint at = start;
    Heading heading = Heading::East;
    do {
      if (heading == Heading::East) walked(at) = true;
      const Step step = step_of(heading);
      at = {at.x + step.x, at.y + step.y};
      const Heading next = next_heading(at, heading);
      if (next != heading) corners.push_back(at);
      heading = next;
    } while (!(at == start && heading == Heading::East));
    return corners;
  }

  // Right first: where two dark modules touch by a corner only, their paths stay apart.
  [[nodiscard]] Heading next_heading(SymbolPoint at, Heading heading) const {
    for (const int quarters : {1, 0})
      if (is_edge(at, turned(heading, quarters))) return turned(heading, quarters);
    return turned(heading, -1);
  }

  const Symbol& symbol_;
  std::vector<bool> walked_;  // the edge that heads east from this point
};

}  // namespace

std::vector<std::vector<SymbolPoint>> outlines_of(const Symbol& symbol) {
  return Tracer(symbol).trace();
}

}  // namespace rackside
