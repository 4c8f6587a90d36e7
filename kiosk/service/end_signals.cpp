#include "kiosk/service/end_signals.hpp"

#include <fcntl.h>
#include <signal.h>
#include <unistd.h>

#include <array>
#include <cerrno>

namespace rackside::kiosk {
namespace {

constexpr std::array ending{SIGTERM, SIGINT, SIGHUP};
constexpr char end_program = 'e';
constexpr char stop_listening = 's';

// A handler may do next to nothing; it writes one byte into a pipe and the thread does the rest.
volatile int pipe_end = -1;

void write_byte(int to, char byte) {
  const int kept = errno;
  [[maybe_unused]] const auto written = write(to, &byte, 1);
  errno = kept;
}

void on_signal(int) { write_byte(pipe_end, end_program); }

void handle_all(void (*handler)(int)) {
  struct sigaction action {};
  action.sa_handler = handler;
  action.sa_flags = SA_RESTART;
  for (const int signal : ending) sigaction(signal, &action, nullptr);
}

}  // namespace

EndSignals::EndSignals(std::function<void()> end) {
  int ends[2];
  if (pipe2(ends, O_CLOEXEC) != 0) return;
  hears_ = Descriptor(ends[0]);
  calls_ = Descriptor(ends[1]);
  pipe_end = calls_.get();
  thread_ = std::thread([this, end = std::move(end)] { listen(end); });
  handle_all(on_signal);
}

EndSignals::~EndSignals() {
  if (!thread_.joinable()) return;
  handle_all(SIG_DFL);
  write_byte(calls_.get(), stop_listening);
  thread_.join();
}

void EndSignals::listen(const std::function<void()>& end) const {
  for (char byte = 0; byte != stop_listening;) {
    const auto count = read(hears_.get(), &byte, 1);
    if (count < 0 && errno == EINTR) continue;
    if (count != 1) return;
    if (byte == end_program) end();
  }
}

}  // namespace rackside::kiosk
