#include "labels/picture/picture_file.hpp"

#include <png.h>

#include <fstream>
#include <iterator>
#include <memory>
#include <string>

namespace rackside {
namespace {

Result<std::string> bytes_of(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  std::error_code ignored;
  if (!in || std::filesystem::is_directory(file, ignored))
    return failure(ErrorKind::NotFound, "This picture cannot be opened.", file.string());
  return std::string(std::istreambuf_iterator<char>(in), {});
}

struct FreePng {
  void operator()(png_image* image) const { png_image_free(image); }
};

bool is_png(std::string_view bytes) { return bytes.substr(0, 4) == "\x89PNG"; }

Result<std::vector<GreyImage>> parse(std::string_view bytes) {
  if (!is_png(bytes)) return parse_pgm(bytes);
  return parse_png(bytes).map([](GreyImage image) { return std::vector{std::move(image)}; });
}

}  // namespace

Result<GreyImage> parse_png(std::string_view bytes) {
  png_image png{};
  png.version = PNG_IMAGE_VERSION;
  const std::unique_ptr<png_image, FreePng> owner(&png);
  if (!png_image_begin_read_from_memory(&png, bytes.data(), bytes.size()))
    return failure(ErrorKind::BadInput, "This is not a PNG picture.");
  if (png.height > most_pixels / png.width)
    return failure(ErrorKind::BadInput, "This picture is larger than any camera's.");
  png.format = PNG_FORMAT_GRAY;
  GreyImage image{static_cast<int>(png.width), static_cast<int>(png.height), {}};
  image.pixels.resize(PNG_IMAGE_SIZE(png));
  const png_color white{255, 255, 255};
  if (!png_image_finish_read(&png, &white, image.pixels.data(), 0, nullptr))
    return failure(ErrorKind::BadInput, "This PNG picture is damaged.");
  return image;
}

Result<std::string> as_png(const GreyImage& image) {
  png_image png{};
  png.version = PNG_IMAGE_VERSION;
  png.width = static_cast<png_uint_32>(image.width);
  png.height = static_cast<png_uint_32>(image.height);
  png.format = PNG_FORMAT_GRAY;
  const std::unique_ptr<png_image, FreePng> owner(&png);
  std::string bytes(PNG_IMAGE_PNG_SIZE_MAX(png), '\0');
  png_alloc_size_t size = bytes.size();
  if (image.empty() ||
      !png_image_write_to_memory(&png, bytes.data(), &size, 0, image.pixels.data(), 0, nullptr))
    return failure(ErrorKind::Broken, "The picture could not be made into a file.");
  bytes.resize(size);
  return bytes;
}

Result<std::vector<GreyImage>> load_pictures(const std::filesystem::path& file) {
  return bytes_of(file).and_then(parse).map_error([&](Error error) {
    error.where = file.string();
    return error;
  });
}

}  // namespace rackside
