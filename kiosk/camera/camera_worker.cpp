#include "kiosk/camera/camera_worker.hpp"

#include <utility>

namespace rackside {
namespace {

// `interrupt` ends the waiting when the worker stops, so this may be long.
constexpr std::chrono::milliseconds patience{10'000};

// Enough for every way to have its turn, also on a computer that has time for one way a frame.
constexpr int most_repeats = 6;

template <class News>
std::vector<CameraNews> one(News news) {
  std::vector<CameraNews> list;
  list.emplace_back(std::move(news));
  return list;
}

}  // namespace

CameraWorker::CameraWorker(std::unique_ptr<FrameSource> source, Aim aim, OnNews on_news,
                           CameraPace pace)
    : source_(std::move(source)), on_news_(std::move(on_news)), pace_(pace), aim_(aim) {
  view_.source = source_->name();
  thread_ = std::thread([this] { run(); });
}

CameraWorker::~CameraWorker() {
  {
    const std::lock_guard lock(mutex_);
    stop_ = true;
  }
  stopping_.notify_all();
  source_->interrupt();
  thread_.join();
}

std::vector<CameraNews> CameraWorker::take_news() {
  const std::lock_guard lock(mutex_);
  return std::exchange(news_, {});
}

CameraView CameraWorker::view() const {
  const std::lock_guard lock(mutex_);
  return view_;
}

void CameraWorker::aim_at(Aim aim) {
  const std::lock_guard lock(mutex_);
  aim_ = aim;
}

void CameraWorker::watch(Watched watched) {
  const std::lock_guard lock(mutex_);
  watched_ = watched;
}

void CameraWorker::run() {
  for (;;) {
    {
      const std::lock_guard lock(mutex_);
      if (stop_) return;
    }
    one_frame();
  }
}

void CameraWorker::one_frame() {
  auto frame = source_->next(patience);
  const auto start = Clock::now();
  if (!frame) {
    source_failed(frame.error());
    const bool away = frame.error().kind == ErrorKind::Broken;
    return sleep_until(start + (away ? pace_.retry : std::chrono::milliseconds{0}));
  }
  if (!*frame) return sleep_until(start + pace_.interval);
  if (std::exchange(lost_, false)) publish(view(), one(SourceBack{source_->name()}));
  look_at(std::make_shared<const GreyImage>(std::move(**frame)));
  sleep_until(start + pace_.interval);
}

void CameraWorker::look_at(const std::shared_ptr<const GreyImage>& frame) {
  CameraView view{.source = source_->name(), .picture = frame};
  Aim aim;
  {
    const std::lock_guard lock(mutex_);
    aim = aim_;
  }
  // A still picture is read on only while there are ways left that were not tried on it.
  const bool news = change_.differs(*frame) || aim != last_aim_;
  const bool unfinished = last_reading_.sightings.empty() && !last_reading_.finished;
  if (news) repeats_left_ = most_repeats;
  if (news || (unfinished && repeats_left_-- > 0)) {
    const auto limit = Clock::now() + pace_.budget;
    last_reading_ = reader_.read(*frame, aim, [limit] { return Clock::now() < limit; });
    last_aim_ = aim;
  }
  view.box = aim_box(aim, frame->width, frame->height);
  for (const Sighting& sighting : last_reading_.sightings) view.read.push_back(sighting.corners);
  view.unread = last_reading_.unread;
  view.guidance = last_reading_.guidance;
  view.code = last_reading_.code();
  view.our_codes = last_reading_.our_codes();
  {
    const std::lock_guard lock(mutex_);
    view_ = std::move(view);
  }
  announce(last_reading_);
}

void CameraWorker::announce(const Reading& reading) {
  std::vector<CameraNews> news;
  const auto now = std::chrono::duration_cast<ViewTime>(Clock::now().time_since_epoch());
  if (const auto shown = view_watch_.shown(reading.sightings, now)) {
    if (*shown)
      news.emplace_back(CodeShown{**shown, reading.our_codes()});
    else
      news.emplace_back(StrangerShown{shown->error()});
  }
  if (std::exchange(last_guidance_, reading.guidance) != reading.guidance)
    news.emplace_back(GuidanceChanged{reading.guidance});
  publish(view(), std::move(news));
}

void CameraWorker::source_failed(const Error& why) {
  CameraView now = view();
  if (why.kind != ErrorKind::Broken) return publish(std::move(now), one(PictureRefused{why}));
  now.trouble = why;
  std::vector<CameraNews> news;
  if (!std::exchange(lost_, true)) news.emplace_back(SourceLost{why});
  publish(std::move(now), std::move(news));
}

void CameraWorker::publish(CameraView view, std::vector<CameraNews> news) {
  bool wake = false;
  {
    const std::lock_guard lock(mutex_);
    view_ = std::move(view);
    wake = !news.empty() || watched_ == Watched::EveryFrame;
    news_.insert(news_.end(), std::make_move_iterator(news.begin()),
                 std::make_move_iterator(news.end()));
  }
  if (wake) on_news_(*this);
}

void CameraWorker::sleep_until(Clock::time_point time) {
  std::unique_lock lock(mutex_);
  stopping_.wait_until(lock, time, [this] { return stop_; });
}

}  // namespace rackside
