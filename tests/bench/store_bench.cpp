// What the log costs on two thousand animals and a million events, beside a bare SQLite commit in
// the same run on the same disk.
//
//   store_bench [EVENTS]      (a million without a number; uses a folder under TMPDIR)

#include "core/collection/collection.hpp"
#include "core/store/sqlite_log.hpp"
#include "tests/bench/bare_commit.hpp"
#include "tests/bench/invented_log.hpp"
#include "tests/fakes/temporary_folder.hpp"

namespace {

using namespace rackside;
using namespace rackside::bench;

constexpr int measured = 2000;

void compare_commits(SqliteLog& log, Maker& maker, BareTable& bare) {
  Times ours;
  Times least;
  for (int i = 0; i < measured; ++i) {
    const Draft draft = maker.event(10'000'000 + i * 37);
    least.all.push_back(milliseconds_of([&] { bare.commit_one(); }));
    ours.all.push_back(milliseconds_of([&] {
      if (!log.append({draft}, draft.when.moment.utc)) std::exit(1);
    }));
    if (i % 200 == 199 && !log.tidy()) std::exit(1);  // as the kiosk does when nobody touches it
  }
  least.print("bare SQLite: insert and commit");
  ours.print("append and commit");
  fmt::print("{:44} median {:8.2f}      95 % {:8.2f}\n", "ratio",
             ours.share(0.5) / least.share(0.5), ours.share(0.95) / least.share(0.95));
}

void read_things(SqliteLog& log, const Maker& maker) {
  Times one;
  std::size_t events = 0;
  for (std::size_t i = 0; i < 500; ++i)
    one.all.push_back(milliseconds_of([&] {
      const auto read = log.read_animal(maker.animal(i * 37 % animal_count));
      events = read->size();
      if (!fold_animal(*read)) std::exit(1);
    }));
  one.print(fmt::format("read and fold one animal ({} events)", events).c_str());

  Times roster;
  for (int i = 0; i < 10; ++i)
    roster.all.push_back(milliseconds_of([&] {
      auto read = log.read_kinds(roster_kinds());
      events = read->size();
      if (fold_collection(*std::move(read)).animals.size() != animal_count) std::exit(1);
    }));
  roster.print(fmt::format("read and fold the roster ({} events)", events).c_str());

  std::size_t count = 0;
  const double all = milliseconds_of([&] {
    if (!log.read_all([&](Event&&) { ++count; })) std::exit(1);
  });
  fmt::print("{:44} {:.2f} s for {} events\n", "read everything", all / 1000, count);
}

}  // namespace

int main(int argc, char** argv) {
  const int events = argc > 1 ? std::stoi(argv[1]) : 1'000'000;
  const rackside::tests::TemporaryFolder folder;
  Maker maker;
  auto log = SqliteLog::open(folder / "log.db", Access::Write).value();
  fill(*log, maker, events);
  log.reset();
  fmt::print("file {:.0f} MiB\n",
             static_cast<double>(std::filesystem::file_size(folder / "log.db")) / (1 << 20));
  fmt::print("{:44} {:.2f} ms\n", "open", milliseconds_of([&] {
               log = SqliteLog::open(folder / "log.db", Access::Write).value();
             }));
  BareTable bare(folder / "bare.db");
  compare_commits(*log, maker, bare);
  read_things(*log, maker);
  print_memory("at the end");
}
