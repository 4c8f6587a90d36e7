#include "kiosk/shell/loop.hpp"

#include <algorithm>

#include "kiosk/screens/screens.hpp"

namespace rackside::kiosk {
namespace {

using std::chrono::milliseconds;

constexpr milliseconds noticed_jump{2000};  // a clock that is merely kept right drifts by less

}  // namespace

Loop::Loop(Needs needs)
    : needs_(std::move(needs)),
      stage_(needs_.window, needs_.renderer, needs_.fonts, needs_.newest_picture) {}

void Loop::run(std::string by, Settings settings) {
  start(std::move(by), std::move(settings));
  while (running_) {
    wait();
    turn();
  }
}

void Loop::start(std::string by, Settings settings) {
  SDL_StartTextInput();
  display_density_ = needs_.density();
  blanking_.touched(needs_.running());
  decide(begin(std::move(by), needs_.clock.now(), std::move(settings)));
  picture();
}

void Loop::turn() {
  follow_clock();
  for (SDL_Event event; SDL_PollEvent(&event) != 0;) handle(event);
  decide_results();
  pass_time();
  picture();
}

// Sleeps until an event comes or one of the few deadlines there are.
void Loop::wait() {
  milliseconds patience = until_next_tick();
  const auto no_later_than = [&](std::optional<Time> deadline, Time now) {
    if (deadline) patience = std::min(patience, *deadline - now);
  };
  no_later_than(wedge_.next_deadline(), KeyTime{SDL_GetTicks64()});
  no_later_than(blanking_.next_deadline(), needs_.running());
  no_later_than(stage_.next_deadline(needs_.running()), needs_.running());
  no_later_than(needs_.pulse.next_deadline(), needs_.running());
  needs_.sleep.wait(patience);
}

// The wall clock may be set back or forward at any time. What counts from the last touch must then
// neither come at once nor stay away: it is moved along.
void Loop::follow_clock() {
  const Instant wall = needs_.clock.now().utc;
  const Time running = needs_.running();
  const milliseconds jump =
      wall_seen_ ? (wall - *wall_seen_) - (running - running_seen_) : milliseconds{0};
  if (model_.last_touched && std::chrono::abs(jump) > noticed_jump)
    model_.last_touched->utc += jump;
  wall_seen_ = wall;
  running_seen_ = running;
}

void Loop::pass_time() {
  const KeyTime key_now{SDL_GetTicks64()};
  if (const auto deadline = wedge_.next_deadline(); deadline && key_now >= *deadline)
    handle_wedge(wedge_.tick(key_now));
  if (until_next_tick() <= milliseconds{0}) decide(Tick{});
  blanking_.tick(needs_.running());
  needs_.pulse.beat(needs_.running());
}

milliseconds Loop::until_next_tick() {
  const Moment now = needs_.clock.now();
  if (model_.now.day() != now.day()) return milliseconds{0};
  // At midnight "today" becomes "yesterday".
  const Instant midnight = Instant{now.day() + std::chrono::days{1}} - now.offset;
  const milliseconds until = midnight - now.utc + milliseconds{1};
  if (!model_.last_touched) return until;
  return std::min(until, model_.last_touched->utc + idle_return - now.utc);
}

void Loop::decide(const Intent& intent) { decide(update(std::move(model_), intent, stamp())); }

Stamp Loop::stamp() {
  const EventId first = needs_.ids.next_event();
  return {needs_.clock.now(), first, needs_.ids.next_event()};
}

void Loop::decide_results() {
  for (const Intent& intent : needs_.results.take()) {
    // What the camera reads wakes the screen too, and counts.
    const bool read =
        std::holds_alternative<CodeRead>(intent) || std::holds_alternative<LabelRefused>(intent);
    if (read) blanking_.touched(needs_.running());
    decide(intent);
  }
}

void Loop::decide(Next next) {
  model_ = std::move(next.first);
  blanking_.set_after(model_.settings.blank_after);
  measure_panel();
  for (const Effect& effect : next.second) needs_.run_effect(effect);
  scene_ = compose(model_, panel_, needs_.fonts);
  if (focus_ && *focus_ >= scene_.targets.size()) focus_.reset();
}

void Loop::measure_panel() {
  int width = 0;
  int height = 0;
  SDL_GetRendererOutputSize(needs_.renderer, &width, &height);
  panel_ = panel_of(width, height);
  const auto density =
      model_.settings.pixels_per_mm ? model_.settings.pixels_per_mm : display_density_;
  panel_.pixels_per_mm = density.value_or(panel_.pixels_per_mm);
}

void Loop::display_changed() {
  display_density_ = needs_.density();
  measure_panel();
  scene_ = compose(model_, panel_, needs_.fonts);
  pointer_.cancel();
  focus_.reset();
  stage_.lost();
}

// The lamp goes out behind a black picture and comes back before the next one.
void Loop::follow_light() {
  if (lit_ == !blanking_.dark()) return;
  lit_ = !lit_;
  needs_.light(lit_);
}

void Loop::picture() {
  follow_light();
  if (blanking_.dark()) return stage_.darken();
  const Touching hand{pointer_.pressed(scene_), focus_};
  stage_.show(scene_, model_.settings, hand, panel_, needs_.running());
  needs_.pulse.shown();
  tell_notice();
}

void Loop::tell_notice() {
  if (model_.notice && model_.notice != told_) needs_.tell(*model_.notice);
  told_ = model_.notice;
}

}  // namespace rackside::kiosk
