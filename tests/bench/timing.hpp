#pragma once
// Times of many runs, and this program's memory.

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <fstream>
#include <functional>
#include <string>
#include <vector>

namespace rackside::bench {

inline double milliseconds_of(const std::function<void()>& work) {
  const auto start = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start)
      .count();
}

struct Times {
  std::vector<double> all;
  [[nodiscard]] double share(double p) {
    std::ranges::sort(all);
    return all[static_cast<std::size_t>(p * static_cast<double>(all.size() - 1))];
  }
  void print(const char* what) {
    fmt::print("{:44} median {:8.3f} ms   95 % {:8.3f} ms   99 % {:8.3f} ms\n", what, share(0.5),
               share(0.95), share(0.99));
  }
};

inline void print_memory(const char* when) {
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);)
    if (line.starts_with("VmRSS") || line.starts_with("VmHWM")) fmt::print("{}, {}\n", when, line);
}

}  // namespace rackside::bench
