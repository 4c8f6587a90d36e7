#pragma once
// A USB camera (UVC) through Video4Linux.

#include <cstdint>
#include <memory>
#include <vector>

#include "kiosk/frames/doorbell.hpp"
#include "kiosk/frames/frame_source.hpp"
#include "kiosk/frames/luma.hpp"
#include "kiosk/frames/v4l_calls.hpp"

namespace rackside {

struct CameraWish {
  std::string path;  // a stable one: /dev/v4l/by-id/... follows the camera through replugging
  int width = 1280;
  int height = 720;
  int frames_per_second = 10;
};

/// Survives unplugging: `next` says Broken while the camera is away and finds it again by its
/// path. Older frames that wait in the driver are thrown away, torn ones too.
class CameraSource final : public FrameSource {
 public:
  explicit CameraSource(CameraWish wish, V4lCalls calls = libv4l_calls());
  ~CameraSource() override;

  [[nodiscard]] Result<std::optional<GreyImage>> next(std::chrono::milliseconds patience) override;
  void interrupt() override { bell_.ring(); }
  [[nodiscard]] std::string name() const override { return "camera " + name_; }

 private:
  struct Mapping {
    void* start;
    std::size_t length;
  };
  enum class Drained { Nothing, Frame, FormatChanged, Gone };

  [[nodiscard]] Result<void> start();
  [[nodiscard]] bool open_device();
  [[nodiscard]] bool agree_on_format();
  [[nodiscard]] bool map_buffers();
  [[nodiscard]] std::optional<FrameFormat> current_format() const;
  [[nodiscard]] Drained drain(GreyImage& latest);
  [[nodiscard]] bool call(unsigned long request, void* argument) const;
  [[nodiscard]] tl::unexpected<Error> gone();
  void stop();

  CameraWish wish_;
  V4lCalls calls_;
  Doorbell bell_;
  std::string name_;
  int fd_ = -1;
  FrameFormat format_;
  std::vector<Mapping> mappings_;
  std::size_t usual_bytes_ = 0;
  int lost_in_a_row_ = 0;
};

}  // namespace rackside
