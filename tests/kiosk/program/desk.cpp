#include "tests/kiosk/program/desk.hpp"

#include <catch2/catch.hpp>

#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <fstream>
#include <thread>

#include "tests/frame.hpp"

namespace rackside::tests {
namespace {

using namespace std::chrono_literals;

bool have(const char* program) {
  std::string said;
  return run({"sh", "-c", std::string("command -v ") + program}, said) == 0;
}

// Xvfb picks a free number and writes it into the pipe.
std::string number_from(int pipe) {
  std::string number;
  for (char c = 0; read(pipe, &c, 1) == 1 && c != '\n';) number += c;
  return number;
}

}  // namespace

std::optional<Desk> Desk::open() {
  if (!have("Xvfb") || !have("xdotool")) return std::nullopt;
  Desk desk;
  std::string name = (std::filesystem::temp_directory_path() / "rackside-desk-XXXXXX").string();
  desk.folder_ = mkdtemp(name.data());
  int ends[2];
  if (pipe(ends) != 0) return std::nullopt;
  desk.screen_ = Process({"Xvfb", "-displayfd", std::to_string(ends[1]), "-screen", "0",
                          "1280x800x24", "-nolisten", "tcp"},
                         {}, {}, ends[1]);
  close(ends[1]);
  desk.display_ = "DISPLAY=:" + number_from(ends[0]);
  close(ends[0]);
  return desk;
}

Desk::~Desk() {
  kiosk_.end();
  screen_.end();
  if (!folder_.empty()) std::filesystem::remove_all(folder_);
}

void Desk::start_kiosk(std::vector<std::string> more) {
  std::vector<std::string> words{std::string(RACKSIDE_BIN_DIR) + "/rackside",
                                 "--log",
                                 log(),
                                 "--window",
                                 "1280x800",
                                 "--tell-to",
                                 (folder_ / "told").string()};
  words.insert(words.end(), more.begin(), more.end());
  kiosk_ = Process(words, {display_, "SDL_VIDEODRIVER=x11"}, (folder_ / "said").string());
  std::string ignored;
  // --sync waits for the window to be there.
  (void)run({"xdotool", "search", "--sync", "--onlyvisible", "--name", "Rackside"}, ignored,
            {display_});
  wait_until_it_listens();
}

// A window that is there need not have the keyboard yet, on a machine that is busy.
void Desk::wait_until_it_listens() {
  const std::size_t before = told().size();
  for (int i = 0; i < 40 && told().size() == before; ++i) {
    scan("nothing of ours");
    for (int j = 0; j < 20 && told().size() == before; ++j) std::this_thread::sleep_for(50ms);
  }
}

void Desk::xdotool(std::vector<std::string> words) const {
  words.insert(words.begin(), "xdotool");
  std::string ignored;
  (void)run(std::move(words), ignored, {display_});
}

void Desk::scan(const std::string& text) {
  xdotool({"type", "--args", "1", "--delay", "1", text, "key", "Return"});
}

void Desk::type(const std::string& text) { xdotool({"type", "--delay", "120", text}); }
void Desk::key(const std::string& name) { xdotool({"key", name}); }

void Desk::click(double x, double y) {
  xdotool({"mousemove", std::to_string(static_cast<int>(x)), std::to_string(static_cast<int>(y)),
           "click", "1"});
}

std::vector<std::string> Desk::told() const {
  std::vector<std::string> lines;
  std::ifstream file(folder_ / "told");
  for (std::string line; std::getline(file, line);) lines.push_back(line);
  return lines;
}

bool Desk::tells(const std::string& sentence, int times, std::chrono::seconds patience) const {
  for (int i = 0; i < 20 * patience.count(); ++i) {
    const auto lines = told();
    if (std::ranges::count(lines, sentence) >= times) return true;
    std::this_thread::sleep_for(50ms);
  }
  for (const std::string& line : told()) UNSCOPED_INFO("told: " << line);
  return false;
}

void Desk::picture(const std::string& name) const {
  std::string ignored;
  (void)run({"import", "-window", "root", name}, ignored, {display_});
}

}  // namespace rackside::tests
