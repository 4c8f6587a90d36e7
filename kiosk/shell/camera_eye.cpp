#include "kiosk/shell/camera_eye.hpp"

#include "kiosk/frames/camera_choice.hpp"

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

Watched watched(Watching watching) {
  return watching == Watching::EveryPicture ? Watched::EveryFrame : Watched::NewsOnly;
}

}  // namespace

Intent intent_of(const CameraNews& news) { return std::visit(AsIntent{}, news); }

CameraEye::CameraEye(IntentQueue& results, OpenSource open)
    : results_(results), open_(std::move(open)) {}

void CameraEye::look_through(std::unique_ptr<FrameSource> source, const Settings& settings) {
  // A job is copied, a source cannot be.
  auto held = std::make_shared<std::unique_ptr<FrameSource>>(std::move(source));
  changes_.add([this, held, settings] { start(std::move(*held), settings); });
}

void CameraEye::follow(const Settings& settings) {
  changes_.add([this, settings] {
    if (settings.camera != camera_)
      start(open_(settings.camera), settings);
    else if (worker_)
      worker_->aim_at(settings.aim);
  });
}

void CameraEye::watch(Watching watching) {
  changes_.add([this, watching] {
    watching_ = watching;
    if (worker_) worker_->watch(watched(watching));
    if (watching == Watching::Codes) return newest_.clear();
    // Before a source that gives no new picture just now there would be nothing to see.
    if (worker_) show(*worker_);
  });
}

void CameraEye::find_cameras() {
  changes_.add([this] { results_.post(CamerasFound{plugged_in_cameras()}); });
}

void CameraEye::start(std::unique_ptr<FrameSource> source, const Settings& settings) {
  worker_.reset();
  results_.post(ReaderSays{});  // what the one before had to say is over
  camera_ = settings.camera;
  results_.post(CameraFitted{source != nullptr});
  if (!source) return;
  worker_ = std::make_unique<CameraWorker>(std::move(source), settings.aim,
                                           [this](CameraWorker& worker) { tell(worker); });
  worker_->watch(watched(watching_));
}

// On the worker's own thread.
void CameraEye::tell(CameraWorker& worker) {
  for (const CameraNews& news : worker.take_news()) results_.post(intent_of(news));
  if (watching_ == Watching::EveryPicture) show(worker);
}

void CameraEye::show(const CameraWorker& worker) {
  const CameraView view = worker.view();
  CameraSight sight{.camera = camera_, .source = view.source};
  if (view.picture) {
    sight.picture = newest_.put(view.picture);
    sight.width = view.picture->width;
    sight.height = view.picture->height;
  }
  sight.read = view.read;
  sight.unread = view.unread;
  sight.code = view.code;
  sight.our_codes = view.our_codes;
  sight.guidance = view.guidance;
  if (view.trouble) sight.trouble = view.trouble->sentence;
  results_.post(CameraSeen{std::move(sight)});
}

}  // namespace rackside::kiosk
