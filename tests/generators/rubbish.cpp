#include "tests/generators/rubbish.hpp"

#include <algorithm>

#include "tests/generators/clutter.hpp"
#include "tests/generators/frames.hpp"
#include "tests/generators/optics.hpp"

namespace rackside::tests {
namespace {

int below(Random& random, int limit) {
  return static_cast<int>(random() % static_cast<std::uint64_t>(limit));
}
double uniform(Random& random, double low, double high) {
  return std::uniform_real_distribution(low, high)(random);
}

GreyImage noise(Random& random, int side) {
  Light light(side, side, 128);
  for (float& value : light.value) value = static_cast<float>(below(random, 256));
  blur(light, uniform(random, 0, 4));
  return expose(light, 2, random);
}

// Random squares of a module's size: what a symbol's middle looks like.
Modules random_modules(Random& random, int count) {
  Modules modules{count, {}};
  for (int i = 0; i < count * count; ++i) modules.dark.push_back(random() & 1);
  return modules;
}

void set(Modules& modules, int column, int row, bool dark) {
  if (column >= 0 && row >= 0 && column < modules.side && row < modules.side)
    modules.dark[static_cast<std::size_t>(row * modules.side + column)] = dark;
}

void put_finder(Modules& modules, int left, int top) {
  for (int y = -1; y <= 7; ++y)
    for (int x = -1; x <= 7; ++x) {
      const int ring = std::max(std::abs(x - 3), std::abs(y - 3));
      set(modules, left + x, top + y, ring != 2 && ring != 4);
    }
}

// Finder patterns around bits by chance: a symbol to the eye, and none at all.
Modules finders_around_chance(Random& random) {
  Modules modules = random_modules(random, 21);
  put_finder(modules, 0, 0);
  put_finder(modules, 14, 0);
  put_finder(modules, 0, 14);
  for (int i = 8; i < 13; ++i) {
    set(modules, i, 6, i % 2 == 0);
    set(modules, 6, i, i % 2 == 0);
  }
  return modules;
}

Modules bars(Random& random) {
  Modules modules{40, {}};
  std::vector<bool> line;
  while (line.size() < 40)
    line.insert(line.end(), static_cast<std::size_t>(1 + below(random, 4)), line.size() % 2);
  for (int i = 0; i < 40 * 40; ++i) modules.dark.push_back(line[static_cast<std::size_t>(i % 40)]);
  return modules;
}

// A solid L and two dashed sides around bits by chance; or rings around a middle.
Modules matrix(Random& random) {
  Modules modules = random_modules(random, 20);
  if (random() & 1) {
    for (int i = 0; i < 20; ++i) {
      set(modules, 0, i, true);
      set(modules, i, 19, true);
      set(modules, i, 0, i % 2 == 0);
      set(modules, 19, i, i % 2 == 1);
    }
  } else {
    for (int y = 4; y < 15; ++y)
      for (int x = 4; x < 15; ++x)
        set(modules, x, y, std::max(std::abs(x - 9), std::abs(y - 9)) % 2 == 0);
  }
  return modules;
}

std::string any_text(Random& random, std::size_t length, std::string_view characters) {
  std::string text;
  while (text.size() < length) text += characters[random() % characters.size()];
  return text;
}

constexpr std::string_view alphanumeric = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

Modules foreign(Random& random) {
  for (;;) {
    const auto length = static_cast<std::size_t>(3 + below(random, 18));
    const std::string text = any_text(random, length, alphanumeric);
    if (!parse_code(text)) return symbol_of(text, 1);  // chance spells a code now and then
  }
}

// The shape of a code, one character wrong: only the check character tells.
Modules nearly_ours(Random& random) {
  std::string text(random_code(random).text());
  char& character = text[random() % text.size()];
  const char before = character;
  while (character == before) character = code_alphabet[random() % code_alphabet.size()];
  return symbol_of(text, 1 + below(random, 2));
}

Scene close_up(Random& random, const Modules& modules, int side) {
  Scene scene{.width = side, .height = side, .off_middle = 5};
  scene.module_px = uniform(random, 2.2, std::max(2.3, 0.8 * side / (modules.side + 4)));
  scene.tilt = uniform(random, 0, 50);
  scene.blur = uniform(random, 0, 0.4) * scene.module_px;
  scene.noise = uniform(random, 1, 25);
  return scene;
}

GreyImage seen(const Modules& modules, Random& random, int side) {
  return photograph(modules, close_up(random, modules, side), random).image;
}

RubbishPicture damaged(Random& random, int side) {
  const Code code = random_code(random);
  const Modules modules = symbol_of(std::string(code.text()), 1 + below(random, 2));
  Scene scene = close_up(random, modules, side);
  scene.noise = uniform(random, 10, 90);
  scene.motion = uniform(random, 0, 3) * scene.module_px;
  scene.glare = uniform(random, 0, 0.9);
  scene.gain = uniform(random, 0, 0.5);
  return {photograph(modules, scene, random).image, code};
}

}  // namespace

RubbishPicture rubbish(Rubbish kind, Random& random, int side) {
  switch (kind) {
    case Rubbish::Noise: return {noise(random, side), {}};
    case Rubbish::Blocks: return {seen(finders_around_chance(random), random, side), {}};
    case Rubbish::Print: {
      Light light(side, side, 210);
      scatter(light, uniform(random, 0.3, 1), random);
      blur(light, uniform(random, 0, 1.5));
      return {expose(light, uniform(random, 1, 20), random), {}};
    }
    case Rubbish::Bars: return {seen(bars(random), random, side), {}};
    case Rubbish::Matrix: return {seen(matrix(random), random, side), {}};
    case Rubbish::ForeignLabel: return {seen(foreign(random), random, side), {}};
    case Rubbish::NearlyOurs: return {seen(nearly_ours(random), random, side), {}};
    case Rubbish::Damaged: return damaged(random, side);
  }
  return {};
}

}  // namespace rackside::tests
