#include "kiosk/shell/loop.hpp"

#include <algorithm>

#include "kiosk/screens/screens.hpp"

namespace rackside::kiosk {
namespace {

using std::chrono::milliseconds;

KeyTime key_time(std::uint32_t timestamp) { return KeyTime{timestamp}; }

std::vector<std::string> characters_of(std::string_view text) {
  std::vector<std::string> list;
  for (const char c : text) {
    if ((c & 0xC0) != 0x80 || list.empty()) list.emplace_back();
    list.back() += c;
  }
  return list;
}

}  // namespace

std::uint32_t wake_event() {
  static const std::uint32_t type = SDL_RegisterEvents(1);
  return type;
}

void wake_loop() {
  SDL_Event event{};
  event.type = wake_event();
  SDL_PushEvent(&event);
}

Loop::Loop(Needs needs)
    : needs_(std::move(needs)), canvas_(needs_.renderer, needs_.fonts, needs_.newest_picture) {}

void Loop::run(std::string by, Settings settings) {
  SDL_StartTextInput();
  decide(begin(std::move(by), needs_.clock.now(), std::move(settings)));
  picture();
  while (running_) {
    wait();
    for (SDL_Event event; SDL_PollEvent(&event) != 0;) handle(event);
    if (const auto deadline = wedge_.next_deadline())
      if (key_time(SDL_GetTicks()) >= *deadline)
        handle_wedge(wedge_.tick(key_time(SDL_GetTicks())));
    decide_results();
    if (const auto until = until_next_tick(); until && *until <= milliseconds{0}) decide(Tick{});
    picture();
  }
}

// Sleeps until an event comes or one of the few deadlines there are.
void Loop::wait() {
  std::optional<milliseconds> patience = until_next_tick();
  if (const auto deadline = wedge_.next_deadline()) {
    const milliseconds left = *deadline - key_time(SDL_GetTicks());
    patience = patience ? std::min(*patience, left) : left;
  }
  if (!patience) {
    SDL_WaitEvent(nullptr);
  } else {
    const auto bounded = std::clamp(patience->count(), std::int64_t{0}, std::int64_t{3'600'000});
    SDL_WaitEventTimeout(nullptr, static_cast<int>(bounded));
  }
}

std::optional<milliseconds> Loop::until_next_tick() {
  const Moment now = needs_.clock.now();
  // At midnight "today" becomes "yesterday".
  const Instant midnight = Instant{now.day() + std::chrono::days{1}} - now.offset;
  milliseconds until = midnight - now.utc + milliseconds{1};
  if (model_.last_touched)
    until = std::min(until, model_.last_touched->utc + idle_return - now.utc);
  if (model_.now.day() != now.day()) until = milliseconds{0};
  return until;
}

void Loop::handle(const SDL_Event& event) {
  const auto spot = [](int x, int y) {
    return Spot{static_cast<double>(x), static_cast<double>(y)};
  };
  switch (event.type) {
    case SDL_QUIT: decide(Leave{}); break;
    case SDL_WINDOWEVENT:
      if (event.window.event == SDL_WINDOWEVENT_SIZE_CHANGED) measure_panel();
      if (event.window.event == SDL_WINDOWEVENT_EXPOSED) draw_again_ = true;
      break;
    case SDL_RENDER_TARGETS_RESET:
    case SDL_RENDER_DEVICE_RESET:
      canvas_.forget();
      draw_again_ = true;
      break;
    case SDL_MOUSEBUTTONDOWN:
      focus_.reset();
      pointer_.press(spot(event.button.x, event.button.y), scene_);
      break;
    case SDL_MOUSEMOTION: pointer_.move(spot(event.motion.x, event.motion.y)); break;
    case SDL_MOUSEBUTTONUP:
      if (const auto intent = pointer_.release(spot(event.button.x, event.button.y), scene_))
        decide(*intent);
      break;
    case SDL_FINGERDOWN:
    case SDL_FINGERMOTION:
    case SDL_FINGERUP: finger(event.tfinger); break;
    case SDL_TEXTINPUT:
      handle_wedge(wedge_.key(event.text.text, key_time(event.text.timestamp)));
      break;
    case SDL_KEYDOWN: handle_key(event.key.keysym.sym, key_time(event.key.timestamp)); break;
    default: break;
  }
}

void Loop::finger(const SDL_TouchFingerEvent& finger) {
  const Spot spot{finger.x * panel_.width, finger.y * panel_.height};
  focus_.reset();
  if (finger.type == SDL_FINGERDOWN) pointer_.press(spot, scene_);
  if (finger.type == SDL_FINGERMOTION) pointer_.move(spot);
  if (finger.type == SDL_FINGERUP)
    if (const auto intent = pointer_.release(spot, scene_)) decide(*intent);
}

void Loop::handle_key(SDL_Keycode key, KeyTime at) {
  switch (key) {
    case SDLK_RETURN:
    case SDLK_KP_ENTER: handle_wedge(wedge_.end_key(EndKey::Enter, at)); break;
    case SDLK_TAB: handle_wedge(wedge_.end_key(EndKey::Tab, at)); break;
    case SDLK_LEFT: move_focus(Direction::Left); break;
    case SDLK_RIGHT: move_focus(Direction::Right); break;
    case SDLK_UP: move_focus(Direction::Up); break;
    case SDLK_DOWN: move_focus(Direction::Down); break;
    case SDLK_BACKSPACE: decide(Erase{}); break;
    case SDLK_PAGEUP: decide(Turn{model_.list_page - 1}); break;
    case SDLK_PAGEDOWN: decide(Turn{model_.list_page + 1}); break;
    case SDLK_ESCAPE: decide(Close{}); break;
    default: break;
  }
}

void Loop::handle_wedge(const std::vector<WedgeOutput>& outputs) {
  struct Take {
    Loop& loop;
    void operator()(const Scanned& scanned) const {
      loop.focus_.reset();
      loop.decide(CodeRead{scanned.text, ReadBy::Wedge});
    }
    void operator()(const rackside::Typed& typed) const {
      for (const std::string& character : characters_of(typed.text))
        loop.decide(kiosk::Typed{character});
    }
    void operator()(const TypedEnd& end) const {
      if (end.key == EndKey::Enter) loop.press_enter();
      if (end.key == EndKey::Tab) loop.move_focus(Direction::Right);
    }
  };
  for (const WedgeOutput& output : outputs) std::visit(Take{*this}, output);
}

void Loop::move_focus(Direction direction) { focus_ = next_focus(scene_, focus_, direction); }

void Loop::press_enter() {
  if (focus_ && *focus_ < scene_.targets.size())
    decide(Intent{scene_.targets[*focus_].intent});
  else
    decide(Enter{});
}

void Loop::measure_panel() {
  int width = 0;
  int height = 0;
  SDL_GetRendererOutputSize(needs_.renderer, &width, &height);
  Panel panel = panel_of(width, height);
  panel.pixels_per_mm = model_.settings.pixels_per_mm.value_or(panel.pixels_per_mm);
  if (panel == panel_) return;
  panel_ = panel;
  draw_again_ = true;
}

void Loop::decide(const Intent& intent) { decide(update(std::move(model_), intent, stamp())); }

Stamp Loop::stamp() {
  const EventId first = needs_.ids.next_event();
  return {needs_.clock.now(), first, needs_.ids.next_event()};
}

void Loop::decide_results() {
  for (const Intent& intent : needs_.results.take()) decide(intent);
}

void Loop::decide(Next next) {
  model_ = std::move(next.first);
  measure_panel();
  for (const Effect& effect : next.second) needs_.run_effect(effect);
  scene_ = compose(model_, panel_, needs_.fonts);
  if (focus_ && *focus_ >= scene_.targets.size()) focus_.reset();
}

Touching Loop::touching() const { return {pointer_.pressed(scene_), focus_}; }

void Loop::picture() {
  if (draw_again_) scene_ = compose(model_, panel_, needs_.fonts);
  const Touching now = touching();
  const PaletteName colours = model_.settings.palette;
  const bool same = scene_ == drawn_ && now == drawn_touching_ && colours == drawn_palette_;
  if (!draw_again_ && same) return;
  canvas_.draw(scene_, palette(colours), now);
  SDL_RenderPresent(needs_.renderer);
  drawn_ = scene_;
  drawn_touching_ = now;
  drawn_palette_ = colours;
  draw_again_ = false;
  if (model_.notice && model_.notice != told_) needs_.tell(*model_.notice);
  told_ = model_.notice;
}

}  // namespace rackside::kiosk
