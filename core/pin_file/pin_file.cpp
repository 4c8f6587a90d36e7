#include "core/pin_file/pin_file.hpp"

#include <fmt/format.h>
#include <sodium.h>

#include <algorithm>
#include <array>
#include <fstream>
#include <optional>

#include "core/file/save_file.hpp"

namespace rackside {
namespace {

namespace fs = std::filesystem;

// Argon2id with three passes over 64 MiB: the second recommended choice of RFC 9106, section 4, for
// machines without much memory (with one lane, which is all that libsodium computes).
constexpr unsigned long long passes = 3;
constexpr std::size_t memory_bytes = std::size_t{64} << 20;

constexpr std::string_view first_line = "rackside pin 1";

struct Kept {
  std::string hash;
  int wrong = 0;
};

tl::unexpected<Error> damaged(const fs::path& path) {
  return failure(ErrorKind::Broken,
                 fmt::format("The file with the PIN cannot be read, so nobody is let in by it. "
                             "Whoever owns this machine can delete {} and set a new PIN.",
                             path.string()),
                 path.string());
}

// None when there is no file.
Result<std::optional<Kept>> read_kept(const fs::path& path) {
  std::error_code problem;
  const bool there = fs::exists(path, problem);
  if (problem) return damaged(path);
  if (!there) return std::nullopt;
  std::ifstream in(path);
  std::string head;
  std::string word;
  Kept kept;
  std::getline(in, head);
  std::getline(in, kept.hash);
  in >> word >> kept.wrong;
  if (!in || head != first_line || !kept.hash.starts_with(crypto_pwhash_STRPREFIX) ||
      word != "wrong" || kept.wrong < 0)
    return damaged(path);
  return kept;
}

Result<void> write_kept(const fs::path& path, const Kept& kept) {
  return save_file(path.string(),
                   fmt::format("{}\n{}\nwrong {}\n", first_line, kept.hash, kept.wrong),
                   Readers::OwnerOnly);
}

int wrong_tries_in(const fs::path& path) {
  const auto kept = read_kept(path);
  return kept && *kept ? (*kept)->wrong : 0;
}

bool sodium_ready() {
  static const bool ready = sodium_init() >= 0;
  return ready;
}

std::optional<std::string> hashed(std::string_view pin) {
  std::array<char, crypto_pwhash_STRBYTES> hash{};
  if (!sodium_ready() || crypto_pwhash_str_alg(hash.data(), pin.data(), pin.size(), passes,
                                               memory_bytes, crypto_pwhash_ALG_ARGON2ID13) != 0)
    return std::nullopt;
  return std::string(hash.data());
}

bool fits(const std::string& hash, std::string_view pin) {
  return sodium_ready() && hash.size() < crypto_pwhash_STRBYTES &&
         crypto_pwhash_str_verify(hash.c_str(), pin.data(), pin.size()) == 0;
}

}  // namespace

fs::path pin_path(const fs::path& log) {
  fs::path path = log;
  return path += ".pin";
}

PinFile::PinFile(fs::path path, std::function<Uptime()> uptime)
    : path_(std::move(path)),
      uptime_(std::move(uptime)),
      tries_(wrong_tries_in(path_), uptime_()) {}

Result<bool> PinFile::is_set() {
  return read_kept(path_).map([](const auto& kept) { return kept.has_value(); });
}

Result<void> PinFile::set(std::string_view pin) {
  if (const auto fine = judge_new_pin(pin); !fine) return fine;
  const auto hash = hashed(pin);
  if (!hash)
    return failure(ErrorKind::Broken,
                   "There is not enough memory free to keep a PIN safely. Nothing was changed; "
                   "try again in a moment.");
  auto written = write_kept(path_, {*hash, 0});
  if (written) tries_.right();
  return written;
}

Result<PinAnswer> PinFile::check(std::string_view pin) {
  auto kept = read_kept(path_);
  if (!kept) return tl::unexpected(kept.error());
  if (!*kept) return failure(ErrorKind::NotFound, "No PIN is set yet.");
  if (const auto left = tries_.left(uptime_()); left.count() > 0)
    return PinAnswer{PinVerdict::Wait, left};
  tries_.begin(uptime_());
  (*kept)->wrong = tries_.wrong();
  if (const auto counted = write_kept(path_, **kept); !counted)
    return tl::unexpected(counted.error());
  if (!fits((*kept)->hash, pin)) return PinAnswer{PinVerdict::Wrong, tries_.left(uptime_())};
  tries_.right();
  (*kept)->wrong = 0;
  // If this cannot be written, the next start waits once more for nothing.
  std::ignore = write_kept(path_, **kept);
  return PinAnswer{PinVerdict::Right, {}};
}

}  // namespace rackside
