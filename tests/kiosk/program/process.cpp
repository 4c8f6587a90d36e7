#include "tests/kiosk/program/process.hpp"

#include <fcntl.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdio>
#include <fstream>
#include <sstream>

extern char** environ;

namespace rackside::tests {
namespace {

std::vector<char*> pointers(std::vector<std::string>& texts) {
  std::vector<char*> list;
  for (std::string& text : texts) list.push_back(text.data());
  list.push_back(nullptr);
  return list;
}

std::vector<std::string> environment_with(const std::vector<std::string>& settings) {
  std::vector<std::string> all = settings;
  for (char** entry = environ; *entry != nullptr; ++entry) all.emplace_back(*entry);
  return all;
}

}  // namespace

Process::Process(std::vector<std::string> words, std::vector<std::string> settings,
                 const std::string& output, int kept_open) {
  posix_spawn_file_actions_t files;
  posix_spawn_file_actions_init(&files);
  const std::string to = output.empty() ? "/dev/null" : output;
  posix_spawn_file_actions_addopen(&files, 1, to.c_str(), O_WRONLY | O_CREAT | O_APPEND, 0644);
  posix_spawn_file_actions_adddup2(&files, 1, 2);
  // adddup2 onto itself clears close-on-exec: the child keeps it.
  if (kept_open >= 0) posix_spawn_file_actions_adddup2(&files, kept_open, kept_open);
  auto variables = environment_with(settings);
  if (posix_spawnp(&id_, words[0].c_str(), &files, nullptr, pointers(words).data(),
                   pointers(variables).data()) != 0)
    id_ = 0;
  posix_spawn_file_actions_destroy(&files);
}

Process& Process::operator=(Process&& other) noexcept {
  end();
  id_ = std::exchange(other.id_, 0);
  return *this;
}

void Process::kill() {
  if (id_ > 0) ::kill(id_, SIGKILL);
  wait();
}

int Process::end() {
  if (id_ > 0) ::kill(id_, SIGTERM);
  return wait();
}

int Process::wait() {
  if (id_ <= 0) return -1;
  int status = 0;
  waitpid(std::exchange(id_, 0), &status, 0);
  return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

int run(std::vector<std::string> words, std::string& said, std::vector<std::string> settings) {
  char name[] = "/tmp/rackside-said-XXXXXX";
  close(mkstemp(name));
  const int code = Process(std::move(words), std::move(settings), name).wait();
  std::ostringstream text;
  text << std::ifstream(name).rdbuf();
  said = text.str();
  std::remove(name);
  return code;
}

}  // namespace rackside::tests
