#include "core/sensor_file/sensor_file.hpp"

#include <fstream>
#include <iterator>

namespace rackside {
namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t largest = 16'777'216;

Instant to_instant(fs::file_time_type time) {
  return std::chrono::floor<std::chrono::milliseconds>(fs::file_time_type::clock::to_sys(time));
}

}  // namespace

Result<SensorText> read_sensor_file(const fs::path& path, std::chrono::minutes offset) {
  std::error_code problem;
  const auto size = fs::file_size(path, problem);
  if (problem)
    return failure(ErrorKind::NotFound, "The sensor's file is not there.", path.string());
  if (size > largest)
    return failure(ErrorKind::Full,
                   "The sensor's file has grown too large. Let it begin a new one.", path.string());
  const auto time = fs::last_write_time(path, problem);
  std::ifstream in(path, std::ios::binary);
  const std::string text{std::istreambuf_iterator<char>(in), {}};
  if (problem || in.bad() || !in.is_open())
    return failure(ErrorKind::Broken, "The sensor's file cannot be read.", path.string());
  auto read = read_sensor_text(text, When{Moment{to_instant(time), offset}, Precision::Exact});
  if (!read) return failure(read.error().kind, read.error().sentence, path.string());
  return read;
}

}  // namespace rackside
