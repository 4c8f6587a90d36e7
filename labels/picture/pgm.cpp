#include <cctype>
#include <optional>

#include "labels/picture/picture_file.hpp"

namespace rackside {
namespace {

struct Header {
  std::size_t width, height, most;
};

class PgmBytes {
 public:
  explicit PgmBytes(std::string_view bytes) : rest_(bytes) {}

  [[nodiscard]] bool at_end() {
    skip_blanks();
    return rest_.empty();
  }

  std::optional<Header> header() {
    skip_blanks();
    if (rest_.substr(0, 2) != "P5") return std::nullopt;
    rest_.remove_prefix(2);
    const auto width = number(), height = number(), most = number();
    if (!width || !height || !most || rest_.empty()) return std::nullopt;
    rest_.remove_prefix(1);  // exactly one blank stands before the samples
    return Header{*width, *height, *most};
  }

  std::optional<std::string_view> take(std::size_t count) {
    if (rest_.size() < count) return std::nullopt;
    const auto taken = rest_.substr(0, count);
    rest_.remove_prefix(count);
    return taken;
  }

 private:
  void skip_blanks() {
    while (!rest_.empty()) {
      if (rest_[0] == '#')
        rest_.remove_prefix(std::min(rest_.find('\n'), rest_.size()));
      else if (std::isspace(static_cast<unsigned char>(rest_[0])))
        rest_.remove_prefix(1);
      else
        return;
    }
  }

  std::optional<std::size_t> number() {
    skip_blanks();
    std::size_t value = 0, digits = 0;
    for (; digits < rest_.size() && digits < 9; ++digits) {
      if (!std::isdigit(static_cast<unsigned char>(rest_[digits]))) break;
      value = value * 10 + static_cast<std::size_t>(rest_[digits] - '0');
    }
    rest_.remove_prefix(digits);
    if (digits == 0) return std::nullopt;
    return value;
  }

  std::string_view rest_;
};

bool sensible(const Header& header) {
  return header.width > 0 && header.height > 0 && header.most > 0 && header.most < 65536 &&
         header.width <= most_pixels && header.height <= most_pixels / header.width;
}

GreyImage scaled(const Header& header, std::string_view samples) {
  const std::size_t wide = header.most > 255 ? 2 : 1;
  GreyImage image{static_cast<int>(header.width), static_cast<int>(header.height), {}};
  image.pixels.resize(header.width * header.height);
  for (std::size_t i = 0; i < image.pixels.size(); ++i) {
    std::size_t value = static_cast<unsigned char>(samples[i * wide]);
    if (wide == 2) value = value * 256 + static_cast<unsigned char>(samples[i * wide + 1]);
    image.pixels[i] = static_cast<std::uint8_t>(std::min(value, header.most) * 255 / header.most);
  }
  return image;
}

}  // namespace

Result<std::vector<GreyImage>> parse_pgm(std::string_view bytes) {
  PgmBytes file(bytes);
  std::vector<GreyImage> images;
  do {
    const auto header = file.header();
    if (!header || !sensible(*header))
      return failure(ErrorKind::BadInput, "This is not a PGM picture.");
    const std::size_t wide = header->most > 255 ? 2 : 1;
    const auto samples = file.take(header->width * header->height * wide);
    if (!samples) return failure(ErrorKind::BadInput, "This PGM picture is cut off.");
    images.push_back(scaled(*header, *samples));
  } while (!file.at_end());
  return images;
}

}  // namespace rackside
