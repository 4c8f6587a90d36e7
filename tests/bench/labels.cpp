// How long labels take, beside the time that the `qrencode` program takes for as many bare symbols.
// Prints a table; asserts nothing.

#include <fmt/format.h>
#include <sys/resource.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <thread>
#include <vector>

#include "core/code/code_mint.hpp"
#include "labels/printer/child_process.hpp"
#include "labels/proof/label_proof.hpp"
#include "labels/sheet/stock_file.hpp"

using namespace rackside;

namespace {

constexpr int many = 1000;
constexpr int one_sac = 180;
constexpr int repeats = 3;

struct Time {
  double wall;  // milliseconds
  double work;  // of all cores together: what it costs, whoever else is at work on this machine
};

double worked() {
  double sum = 0;
  for (const int who : {RUSAGE_SELF, RUSAGE_CHILDREN}) {
    rusage used{};
    getrusage(who, &used);
    sum += 1e3 * static_cast<double>(used.ru_utime.tv_sec + used.ru_stime.tv_sec) +
           1e-3 * static_cast<double>(used.ru_utime.tv_usec + used.ru_stime.tv_usec);
  }
  return sum;
}

Time once(const std::function<void()>& task) {
  const double before = worked();
  const auto start = std::chrono::steady_clock::now();
  task();
  const std::chrono::duration<double, std::milli> wall = std::chrono::steady_clock::now() - start;
  return {wall.count(), worked() - before};
}

// The least of several: what the machine can do when nobody else asks for it.
Time best(const std::function<void()>& task) {
  Time least = once(task);
  for (int i = 1; i < repeats; ++i) {
    const Time time = once(task);
    least = {std::min(least.wall, time.wall), std::min(least.work, time.work)};
  }
  return least;
}

std::vector<LabelContent> slings(int count) {
  CodeMint mint(CodeKind::Enclosure, KioskId{}, [](const Code&) { return false; });
  std::vector<LabelContent> labels;
  for (int i = 0; i < count; ++i) {
    LabelContent label{.code = mint.next().value()};
    label.species = i % 2 == 0 ? "Encyocratella olivacea" : "Omothymus violaceopes";
    label.source = fmt::format("sac {}", 1 + i / 100);
    label.date = parse_day("2031-04-09").value();
    label.instar = 2;
    labels.push_back(label);
  }
  return labels;
}

enum class Proof { Without, With };

// Everything from the words to the bytes of the PDF, fonts included.
std::size_t print(const std::vector<LabelContent>& labels, const SheetSettings& settings,
                  Proof proof) {
  const PangoText text;
  const auto sheet = plan_sheet(labels, settings, text).value();
  if (proof == Proof::With && prove_sheet(sheet).size() != labels.size()) return 0;
  return pdf_of(pages_of(sheet, text), "bench").value().size();
}

void call_qrencode(const std::vector<LabelContent>& labels) {
  for (const LabelContent& label : labels) {
    const auto outcome =
        run_program({"qrencode", "-l", "H", "-v", "2", "-o", "-", std::string(label.code.text())},
                    "", std::chrono::seconds(10));
    if (!outcome) {
      fmt::print("  qrencode is not here; no reference\n");
      return;
    }
  }
}

}  // namespace

// labels_bench [DPI ...]
int main(int count, char** words) {
  std::vector<int> resolutions;
  for (int i = 1; i < count; ++i) resolutions.push_back(std::atoi(words[i]));
  if (resolutions.empty()) resolutions = {203, 300, 600};
  std::setvbuf(stdout, nullptr, _IOLBF, 0);
  const auto settings = [](const char* name, int dpi) {
    return SheetSettings{stock_named(built_in_stock(), name).value(), {dpi}, {}, 0};
  };
  const auto labels = slings(many);
  const auto sac = slings(one_sac);
  fmt::print("{} cores; best of {} runs\n{:<52}{:>12}{:>12}{:>14}\n",
             std::thread::hardware_concurrency(), repeats, "", "wall ms", "work ms", "of qrencode");
  const auto tell = [](const std::string& what, const Time& time, const Time& reference) {
    fmt::print("{:<52}{:12.1f}{:12.1f}{:14.2f}\n", what, time.wall, time.work,
               time.wall / reference.wall);
  };
  const Time reference = once([&] { call_qrencode(labels); });
  tell("1,000 calls of qrencode, one bare symbol each", reference, reference);
  const auto row = [&](const std::string& what, const std::vector<LabelContent>& run,
                       const SheetSettings& where, Proof proof) {
    tell(what, best([&] { print(run, where, proof); }), reference);
  };
  for (const int dpi : resolutions) {
    row(fmt::format("1,000 labels to PDF, {} dpi", dpi), labels, settings("a4-5x13", dpi),
        Proof::Without);
    row(fmt::format("1,000 labels to PDF with proof, {} dpi", dpi), labels,
        settings("a4-5x13", dpi), Proof::With);
  }
  row("180 labels to PDF, 38 x 21 mm", sac, settings("a4-5x13", 300), Proof::Without);
  row("180 labels to PDF, 25 x 10 mm, one page", sac, settings("a4-7x27", 300), Proof::Without);
  return 0;
}
