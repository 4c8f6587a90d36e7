#include "kiosk/wedge/wedge_reader.hpp"

#include <utility>

namespace rackside {
namespace {

std::string in_upper_case(std::string text) {
  for (char& c : text)
    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  return text;
}

}  // namespace

std::vector<WedgeOutput> WedgeReader::key(std::string_view text, KeyTime at) {
  Outputs outputs = tick(at);
  append(text, at);
  if (is_person()) hand_back(outputs);
  return outputs;
}

std::vector<WedgeOutput> WedgeReader::end_key(EndKey key, KeyTime at) {
  Outputs outputs = tick(at);
  if (is_burst()) {
    scanned(outputs);
    burst_end_ = at;
    return outputs;
  }
  hand_back(outputs);
  // Scanners that send two ending keys, or one late, must not press a button with it.
  const bool echo = burst_end_ && at - *burst_end_ <= limits_.echo;
  if (!echo) outputs.push_back(TypedEnd{key});
  return outputs;
}

std::vector<WedgeOutput> WedgeReader::tick(KeyTime now) {
  Outputs outputs;
  const auto deadline = next_deadline();
  if (deadline && now >= *deadline) close_run(outputs);
  return outputs;
}

std::optional<KeyTime> WedgeReader::next_deadline() const {
  if (keys_ == 0) return std::nullopt;
  return last_ + limits_.gap + KeyTime{1};
}

bool WedgeReader::is_burst() const {
  return keys_ >= limits_.least_keys &&
         last_ - first_ <= limits_.pace * static_cast<int>(keys_ - 1);
}

bool WedgeReader::is_person() const { return keys_ >= limits_.least_keys && !is_burst(); }

void WedgeReader::append(std::string_view text, KeyTime at) {
  if (keys_ == 0) {
    first_ = at;
    head_bytes_ = text.size();
  }
  if (keys_ == 1) second_ = at;
  last_ = at;
  ++keys_;
  if (text_.size() + text.size() <= limits_.most_characters) text_ += text;
}

void WedgeReader::close_run(Outputs& outputs) {
  if (!is_burst()) return hand_back(outputs);
  burst_end_ = last_;
  split_off_head(outputs);
  if (keys_ == limits_.whole_keys) return scanned(outputs);
  clear();
}

void WedgeReader::hand_back(Outputs& outputs) {
  if (keys_ > 0) outputs.push_back(Typed{std::move(text_)});
  clear();
}

void WedgeReader::scanned(Outputs& outputs) {
  split_off_head(outputs);
  outputs.push_back(Scanned{in_upper_case(std::move(text_))});
  clear();
}

// A person's key just before a burst shows by the pause behind it and by one key too many.
void WedgeReader::split_off_head(Outputs& outputs) {
  if (keys_ != limits_.whole_keys + 1 || second_ - first_ <= limits_.pace) return;
  outputs.push_back(Typed{text_.substr(0, head_bytes_)});
  text_.erase(0, head_bytes_);
  --keys_;
}

void WedgeReader::clear() {
  text_.clear();
  keys_ = 0;
}

}  // namespace rackside
