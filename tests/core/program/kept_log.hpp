#pragma once
// A small invented log in a folder of its own, and the program run over it as a keeper would.

#include <sys/wait.h>

#include <cstdlib>
#include <string>

#include "tests/fakes/temporary_folder.hpp"
#include "tests/frame.hpp"

namespace rackside::tests {

/// Three animals up to 19 March 2024: ec-1 is hungry, ec-2 has just eaten, ec-3 lies on its back.
struct KeptLog {
  TemporaryFolder folder;

  explicit KeptLog(const std::string& later = {}) {
    write("animals.csv",
          "animal,species,stage,acquired,rack,shelf,position\n"
          "ec-1,Encyocratella olivacea,juvenile,2024-01-01,A,2,1\n"
          "ec-2,Encyocratella olivacea,juvenile,2024-01-01,A,1,2\n"
          "ec-3,Encyocratella olivacea,juvenile,2024-01-01,A,1,1\n");
    write("events.csv",
          "when,animal,event,outcome,prey,count,sign\n"
          "2024-03-01,ec-1,offered,took,,1,\n"
          "2024-03-18,ec-2,offered,took,,1,\n"
          "2024-03-19T20:00+00:00,ec-3,looked,,,,on its back\n" +
              later);
    REQUIRE(run("import --animals " + path("animals.csv") + " --events " + path("events.csv")) ==
            0);
  }
  void write(const std::string& name, const std::string& text) const {
    write_file(folder / name, text);
  }
  [[nodiscard]] std::string path(const std::string& name) const { return (folder / name).string(); }
  [[nodiscard]] int run(const std::string& words) const {
    const std::string command = RACKSIDE_BIN_DIR "/rackside-log --log " + path("log.db") + " " +
                                words + " >" + path("out") + " 2>" + path("err");
    return WEXITSTATUS(std::system(command.c_str()));
  }
  [[nodiscard]] std::string said() const { return read_file(folder / "out"); }
  [[nodiscard]] std::string complaint() const { return read_file(folder / "err"); }
};

}  // namespace rackside::tests
