#include "kiosk/shell/camera_eye.hpp"

namespace rackside::kiosk {
namespace {

struct AsIntent {
  Intent operator()(const CodeShown& news) const {
    return CodeRead{std::string(news.code.text()), ReadBy::Camera, news.our_codes};
  }
  Intent operator()(const StrangerShown& news) const { return LabelRefused{news.why.sentence}; }
  Intent operator()(const SourceLost& news) const { return ReaderSays{news.why.sentence}; }
  Intent operator()(const SourceBack&) const { return ReaderSays{}; }
  Intent operator()(const PictureRefused& news) const { return ReaderSays{news.why.sentence}; }
  Intent operator()(const GuidanceChanged& news) const {
    return ReaderSays{news.guidance ? std::string(guidance_words(*news.guidance)) : std::string{}};
  }
};

}  // namespace

Intent intent_of(const CameraNews& news) { return std::visit(AsIntent{}, news); }

CameraEye::CameraEye(std::unique_ptr<FrameSource> source, Aim aim, IntentQueue& results)
    : results_(results), worker_(std::move(source), aim, [this] { tell(); }) {}

// On the worker's own thread, which is past its construction only when it calls.
void CameraEye::tell() {
  for (const CameraNews& news : worker_.take_news()) results_.post(intent_of(news));
}

}  // namespace rackside::kiosk
