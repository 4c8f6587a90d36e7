#include "tests/labels/render/paper.hpp"

#include <cairo.h>
#include <poppler.h>

#include <cmath>
#include <memory>

namespace rackside::tests {
namespace {

constexpr double millimetres_per_point = 25.4 / 72;

struct Unref {
  void operator()(void* object) const { g_object_unref(object); }
};
using Document = std::unique_ptr<PopplerDocument, Unref>;
using Page = std::unique_ptr<PopplerPage, Unref>;

Document open(const std::string& pdf) {
  GBytes* bytes = g_bytes_new(pdf.data(), pdf.size());
  Document document(poppler_document_new_from_bytes(bytes, nullptr, nullptr));
  g_bytes_unref(bytes);
  return document;
}

}  // namespace

PaperSize paper_size(const std::string& pdf) {
  const Document document = open(pdf);
  const Page page(poppler_document_get_page(document.get(), 0));
  PaperSize size{.pages = poppler_document_get_n_pages(document.get())};
  poppler_page_get_size(page.get(), &size.width, &size.height);
  size.width *= millimetres_per_point;
  size.height *= millimetres_per_point;
  return size;
}

std::string text_on_paper(const std::string& pdf, int page_number) {
  const Document document = open(pdf);
  const Page page(poppler_document_get_page(document.get(), page_number));
  char* text = poppler_page_get_text(page.get());
  std::string copy(text);
  g_free(text);
  return copy;
}

GreyImage seen_on_paper(const std::string& pdf, int page_number, const Box& box,
                        int dots_per_inch) {
  const Document document = open(pdf);
  const Page page(poppler_document_get_page(document.get(), page_number));
  const double scale = dots_per_inch / 25.4;
  GreyImage image{static_cast<int>(std::lround(box.width * scale)),
                  static_cast<int>(std::lround(box.height * scale)),
                  {}};
  cairo_surface_t* surface =
      cairo_image_surface_create(CAIRO_FORMAT_RGB24, image.width, image.height);
  cairo_t* canvas = cairo_create(surface);
  cairo_set_source_rgb(canvas, 1, 1, 1);
  cairo_paint(canvas);
  cairo_scale(canvas, scale * millimetres_per_point, scale * millimetres_per_point);
  cairo_translate(canvas, -box.x / millimetres_per_point, -box.y / millimetres_per_point);
  poppler_page_render_for_printing(page.get(), canvas);
  cairo_destroy(canvas);
  cairo_surface_flush(surface);
  const int stride = cairo_image_surface_get_stride(surface);
  const unsigned char* data = cairo_image_surface_get_data(surface);
  for (int y = 0; y < image.height; ++y)
    for (int x = 0; x < image.width; ++x) image.pixels.push_back(data[y * stride + 4 * x + 1]);
  cairo_surface_destroy(surface);
  return image;
}

}  // namespace rackside::tests
