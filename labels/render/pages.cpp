#include "labels/render/pages.hpp"

#include <cairo-pdf.h>
#include <cairo-svg.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <memory>

#include "core/file/save_file.hpp"

namespace rackside {
namespace {

constexpr double points_per_millimetre = 72.0 / 25.4;

struct DestroySurface {
  void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
};
struct DestroyCanvas {
  void operator()(cairo_t* canvas) const { cairo_destroy(canvas); }
};
using Surface = std::unique_ptr<cairo_surface_t, DestroySurface>;
using Canvas = std::unique_ptr<cairo_t, DestroyCanvas>;

cairo_status_t append(void* closure, const unsigned char* data, unsigned int length) {
  static_cast<std::string*>(closure)->append(reinterpret_cast<const char*>(data), length);
  return CAIRO_STATUS_SUCCESS;
}

Result<void> sound(cairo_status_t status) {
  if (status == CAIRO_STATUS_SUCCESS) return {};
  return failure(ErrorKind::Broken, "The page could not be drawn. Nothing was printed.",
                 cairo_status_to_string(status));
}

Result<void> paint(const Pages& pages, int page, cairo_surface_t* surface, double scale) {
  const Canvas canvas(cairo_create(surface));
  cairo_scale(canvas.get(), scale, scale);
  cairo_set_source_rgb(canvas.get(), 0, 0, 0);
  pages.paint(canvas.get(), page);
  return sound(cairo_status(canvas.get()));
}

Result<Surface> raster_of(const Pages& pages, int page, cairo_format_t format,
                          Resolution resolution) {
  const auto pixels = [&](double millimetres) {
    return std::max(1, static_cast<int>(std::lround(millimetres / resolution.dot())));
  };
  Surface surface(cairo_image_surface_create(format, pixels(pages.width), pixels(pages.height)));
  const Canvas white(cairo_create(surface.get()));
  cairo_set_source_rgb(white.get(), 1, 1, 1);
  cairo_paint(white.get());
  const auto painted = paint(pages, page, surface.get(), 1 / resolution.dot());
  if (!painted) return tl::unexpected(painted.error());
  cairo_surface_flush(surface.get());
  return surface;
}

std::string numbered(const std::string& path, int page, int count) {
  if (count == 1) return path;
  const std::filesystem::path whole(path);
  return (whole.parent_path() /
          fmt::format("{}-{}{}", whole.stem().string(), page + 1, whole.extension().string()))
      .string();
}

}  // namespace

Result<FileFormat> format_of(const std::string& path) {
  std::string ending = std::filesystem::path(path).extension().string();
  std::ranges::transform(ending, ending.begin(), [](unsigned char c) { return std::tolower(c); });
  if (ending == ".pdf") return FileFormat::Pdf;
  if (ending == ".svg") return FileFormat::Svg;
  if (ending == ".png") return FileFormat::Png;
  return failure(
      ErrorKind::BadInput,
      fmt::format("Labels can be written as .pdf, .svg or .png; \"{}\" is none of them.", path));
}

Result<std::string> pdf_of(const Pages& pages, const std::string& title) {
  std::string bytes;
  const Surface surface(cairo_pdf_surface_create_for_stream(
      &append, &bytes, pages.width * points_per_millimetre, pages.height * points_per_millimetre));
  cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_TITLE, title.c_str());
  for (int page = 0; page < pages.count; ++page) {
    const auto painted = paint(pages, page, surface.get(), points_per_millimetre);
    if (!painted) return tl::unexpected(painted.error());
    cairo_surface_show_page(surface.get());
  }
  cairo_surface_finish(surface.get());
  const auto finished = sound(cairo_surface_status(surface.get()));
  if (!finished) return tl::unexpected(finished.error());
  return bytes;
}

Result<std::string> svg_of(const Pages& pages, int page) {
  std::string bytes;
  const Surface surface(
      cairo_svg_surface_create_for_stream(&append, &bytes, pages.width, pages.height));
  cairo_svg_surface_set_document_unit(surface.get(), CAIRO_SVG_UNIT_MM);
  const auto painted = paint(pages, page, surface.get(), 1);
  if (!painted) return tl::unexpected(painted.error());
  cairo_surface_finish(surface.get());
  const auto finished = sound(cairo_surface_status(surface.get()));
  if (!finished) return tl::unexpected(finished.error());
  return bytes;
}

Result<std::string> png_of(const Pages& pages, int page, Resolution resolution) {
  const auto surface = raster_of(pages, page, CAIRO_FORMAT_RGB24, resolution);
  if (!surface) return tl::unexpected(surface.error());
  std::string bytes;
  const auto written = sound(cairo_surface_write_to_png_stream(surface->get(), &append, &bytes));
  if (!written) return tl::unexpected(written.error());
  return bytes;
}

Result<GreyImage> picture_of(const Pages& pages, int page, Resolution resolution) {
  const auto surface = raster_of(pages, page, CAIRO_FORMAT_RGB24, resolution);
  if (!surface) return tl::unexpected(surface.error());
  GreyImage image{.width = cairo_image_surface_get_width(surface->get()),
                  .height = cairo_image_surface_get_height(surface->get()),
                  .pixels = {}};
  const int stride = cairo_image_surface_get_stride(surface->get());
  const unsigned char* row = cairo_image_surface_get_data(surface->get());
  image.pixels.reserve(static_cast<std::size_t>(image.width) *
                       static_cast<std::size_t>(image.height));
  for (int y = 0; y < image.height; ++y, row += stride)
    for (int x = 0; x < image.width; ++x) image.pixels.push_back(row[4 * x + 1]);  // all is grey
  return image;
}

GreyImage ink_picture(double width, double height, Resolution resolution,
                      const std::function<void(cairo_t*)>& paint) {
  const auto pixels = [&](double millimetres) {
    return std::max(1, static_cast<int>(std::ceil(millimetres / resolution.dot() - 1e-6)));
  };
  const Surface surface(cairo_image_surface_create(CAIRO_FORMAT_A8, pixels(width), pixels(height)));
  const Canvas canvas(cairo_create(surface.get()));
  cairo_scale(canvas.get(), 1 / resolution.dot(), 1 / resolution.dot());
  paint(canvas.get());
  cairo_surface_flush(surface.get());
  GreyImage image{cairo_image_surface_get_width(surface.get()),
                  cairo_image_surface_get_height(surface.get()),
                  {}};
  const int stride = cairo_image_surface_get_stride(surface.get());
  const unsigned char* row = cairo_image_surface_get_data(surface.get());
  image.pixels.reserve(static_cast<std::size_t>(image.width) *
                       static_cast<std::size_t>(image.height));
  for (int y = 0; y < image.height; ++y, row += stride)
    for (int x = 0; x < image.width; ++x)
      image.pixels.push_back(static_cast<std::uint8_t>(255 - row[x]));
  return image;
}

Result<std::vector<std::string>> save_pages(const Pages& pages, const std::string& title,
                                            const std::string& path, Resolution resolution) {
  const auto format = format_of(path);
  if (!format) return tl::unexpected(format.error());
  std::vector<std::string> files;
  const int count = *format == FileFormat::Pdf ? 1 : pages.count;
  for (int page = 0; page < count; ++page) {
    const auto bytes = *format == FileFormat::Pdf   ? pdf_of(pages, title)
                       : *format == FileFormat::Svg ? svg_of(pages, page)
                                                    : png_of(pages, page, resolution);
    if (!bytes) return tl::unexpected(bytes.error());
    files.push_back(numbered(path, page, count));
    if (auto saved = save_file(files.back(), *bytes); !saved) return tl::unexpected(saved.error());
  }
  return files;
}

}  // namespace rackside
