#include "kiosk/shell/loop.hpp"

namespace rackside::kiosk {
namespace {

// SDL stamps events with 32 bits, which begin again after 49 days; a kiosk runs for longer.
KeyTime key_time(std::uint32_t stamp) {
  const std::uint64_t now = SDL_GetTicks64();
  const std::uint32_t ago = static_cast<std::uint32_t>(now) - stamp;
  return KeyTime{static_cast<std::int64_t>(now) - static_cast<std::int32_t>(ago)};
}

Spot spot_of(int x, int y) { return {static_cast<double>(x), static_cast<double>(y)}; }

std::vector<std::string> characters_of(std::string_view text) {
  std::vector<std::string> list;
  for (const char c : text) {
    if ((c & 0xC0) != 0x80 || list.empty()) list.emplace_back();
    list.back() += c;
  }
  return list;
}

bool closes(const SDL_Keysym& key) {
  return (key.sym == SDLK_q && (key.mod & KMOD_CTRL) != 0) ||
         (key.sym == SDLK_F4 && (key.mod & KMOD_ALT) != 0);
}

}  // namespace

void Loop::handle(const SDL_Event& event) {
  switch (event.type) {
    // From the service manager or a terminal, not from the window: always obeyed.
    case SDL_QUIT: stop(); break;
    case SDL_WINDOWEVENT: handle_window(event.window); break;
    case SDL_DISPLAYEVENT: display_changed(); break;
    case SDL_RENDER_TARGETS_RESET:
    case SDL_RENDER_DEVICE_RESET: stage_.lost_textures(); break;
    case SDL_MOUSEBUTTONDOWN: press(spot_of(event.button.x, event.button.y)); break;
    case SDL_MOUSEMOTION:
      blanking_.touched(needs_.running());
      pointer_.move(spot_of(event.motion.x, event.motion.y));
      break;
    case SDL_MOUSEBUTTONUP: release(spot_of(event.button.x, event.button.y)); break;
    case SDL_FINGERDOWN:
    case SDL_FINGERMOTION:
    case SDL_FINGERUP: finger(event.tfinger); break;
    case SDL_TEXTINPUT:
      handle_wedge(wedge_.key(event.text.text, key_time(event.text.timestamp)));
      break;
    case SDL_KEYDOWN: handle_key(event.key.keysym, key_time(event.key.timestamp)); break;
    default: break;
  }
}

void Loop::want_to_close() {
  decide(needs_.closing == Closing::Asks ? Intent{Leave{}} : Intent{Stop{}});
}

void Loop::handle_window(const SDL_WindowEvent& window) {
  switch (window.event) {
    case SDL_WINDOWEVENT_CLOSE: want_to_close(); break;
    case SDL_WINDOWEVENT_SIZE_CHANGED:
    case SDL_WINDOWEVENT_DISPLAY_CHANGED: display_changed(); break;
    case SDL_WINDOWEVENT_SHOWN:
    case SDL_WINDOWEVENT_RESTORED:
    case SDL_WINDOWEVENT_EXPOSED: stage_.lost(); break;
    default: break;
  }
}

void Loop::press(Spot spot) {
  focus_.reset();
  if (!blanking_.touched(needs_.running())) pointer_.press(spot, scene_);
}

void Loop::release(Spot spot) {
  if (const auto intent = pointer_.release(spot, scene_)) decide(*intent);
}

void Loop::finger(const SDL_TouchFingerEvent& finger) {
  const Spot spot{finger.x * panel_.width, finger.y * panel_.height};
  if (finger.type == SDL_FINGERDOWN) press(spot);
  if (finger.type == SDL_FINGERMOTION) pointer_.move(spot);
  if (finger.type == SDL_FINGERUP) release(spot);
}

void Loop::handle_key(const SDL_Keysym& key, KeyTime at) {
  key_only_wakes_ = blanking_.touched(needs_.running());
  if (closes(key)) {
    want_to_close();
    return;
  }
  switch (key.sym) {
    case SDLK_RETURN:
    case SDLK_KP_ENTER: handle_wedge(wedge_.end_key(EndKey::Enter, at)); break;
    case SDLK_TAB: handle_wedge(wedge_.end_key(EndKey::Tab, at)); break;
    default:
      if (!key_only_wakes_) walk_with(key.sym);
  }
}

void Loop::walk_with(SDL_Keycode key) {
  switch (key) {
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
      if (loop.key_only_wakes_) return;
      for (const std::string& character : characters_of(typed.text))
        loop.decide(kiosk::Typed{character});
    }
    void operator()(const TypedEnd& end) const {
      if (loop.key_only_wakes_) return;
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

}  // namespace rackside::kiosk
