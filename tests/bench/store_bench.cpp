// What the log costs on two thousand animals and a million events, beside a bare SQLite commit in
// the same run on the same disk.
//
//   store_bench [EVENTS]      (a million without a number; uses a folder under TMPDIR)

#include <fmt/format.h>
#include <sqlite3.h>

#include <algorithm>
#include <chrono>
#include <fstream>
#include <functional>
#include <random>
#include <vector>

#include "core/clock/system_clock.hpp"
#include "core/clock/system_ids.hpp"
#include "core/collection/collection.hpp"
#include "core/store/sqlite_log.hpp"
#include "tests/fakes/temporary_folder.hpp"

namespace {

using namespace rackside;
using namespace std::chrono;

constexpr int animal_count = 2000;
constexpr int measured = 2000;

double milliseconds_of(const std::function<void()>& work) {
  const auto start = steady_clock::now();
  work();
  return duration<double, std::milli>(steady_clock::now() - start).count();
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

// An invented collection: everyday events of animals in turn, over three years.
class Maker {
 public:
  Maker() {
    for (int i = 0; i < animal_count; ++i) animals_.push_back(ids_.next_animal());
  }
  Event event(int number) {
    Event event;
    event.id = ids_.next_event();
    event.kiosk = kiosk_;
    event.number = number;
    event.by = "Ines";
    event.when.moment.utc = clock_.now().utc - hours{24 * 1000} + minutes{number};
    event.written = event.when.moment.utc;
    const auto which = static_cast<std::size_t>(number) % animals_.size();
    event.animal = animals_[which];
    event.enclosure = tub(which);
    event.details = details(number, which);
    return event;
  }
  [[nodiscard]] AnimalId animal(std::size_t which) const { return animals_[which]; }

 private:
  static Code tub(std::size_t which) {
    for (std::size_t at = which * 3;; ++at) {
      std::string body = "000000";
      for (std::size_t i = 6, left = at; i-- > 2; left /= 28) body[i] = code_alphabet[left % 28];
      if (const auto code = make_code(CodeKind::Enclosure, body)) return *code;
    }
  }
  Details details(int number, std::size_t which) {
    if (number <= animal_count)
      return AnimalAdded{.key = fmt::format("animal-{}", which),
                         .species = "Orphnaecus philippinus"};
    switch (random_() % 40) {
      case 0: return ShedFound{};
      case 1: return Retracted{ids_.next_event()};
      case 2: return Rehoused{tub(which)};
      default: break;
    }
    if (random_() % 3 == 0) return Misted{};
    return Offered{random_() % 4 == 0 ? Outcome::Refused : Outcome::Took, "cricket", 1, {}};
  }

  SystemClock clock_;
  SystemIds ids_{clock_};
  KioskId kiosk_{ids_.next()};
  std::vector<AnimalId> animals_;
  std::mt19937 random_{7};
};

void fill(SqliteLog& log, Maker& maker, int events) {
  const double took = milliseconds_of([&] {
    for (int done = 0; done < events;) {
      std::vector<Event> batch;
      for (int i = 0; i < 20000 && done < events; ++i) batch.push_back(maker.event(++done));
      if (!log.merge(batch)) std::exit(1);
    }
  });
  fmt::print("{} events merged in {:.1f} s\n", events, took / 1000);
}

// The least that SQLite can do to keep one row: one table, no index, same settings.
class BareTable {
 public:
  explicit BareTable(const std::filesystem::path& path) {
    sqlite3_open(path.c_str(), &file_);
    run("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; CREATE TABLE row (content BLOB)");
    sqlite3_prepare_v2(file_, "INSERT INTO row VALUES (zeroblob(180))", -1, &insert_, nullptr);
  }
  ~BareTable() {
    sqlite3_finalize(insert_);
    sqlite3_close(file_);
  }
  BareTable(const BareTable&) = delete;
  BareTable& operator=(const BareTable&) = delete;
  void commit_one() {
    run("BEGIN IMMEDIATE");
    sqlite3_step(insert_);
    sqlite3_reset(insert_);
    run("COMMIT");
  }

 private:
  void run(const char* sql) {
    if (sqlite3_exec(file_, sql, nullptr, nullptr, nullptr) != SQLITE_OK) std::exit(1);
  }
  sqlite3* file_ = nullptr;
  sqlite3_stmt* insert_ = nullptr;
};

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

void print_memory(const char* when) {
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);)
    if (line.starts_with("VmRSS") || line.starts_with("VmHWM")) fmt::print("{}, {}\n", when, line);
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
