#pragma once
// Everything that can happen to the kiosk: what people do and what is brought to it. The only way
// into `update`.

#include <variant>

#include "kiosk/model/deed.hpp"
#include "kiosk/model/news.hpp"

namespace rackside::kiosk {

template <class First, class Second>
struct Joined;
template <class... First, class... Second>
struct Joined<std::variant<First...>, std::variant<Second...>> {
  using Type = std::variant<First..., Second...>;
};

/// One of them. Copying and destroying stand in one place: seventy kinds of intents in every file
/// that makes one were half of the time that the kiosk took to compile.
struct Intent : Joined<Deed, News>::Type {
  using Kinds = Joined<Deed, News>::Type;
  using Kinds::Kinds;
  Intent(const Intent& other);
  Intent(Intent&& other) noexcept;
  Intent& operator=(const Intent& other);
  Intent& operator=(Intent&& other) noexcept;
  ~Intent();
  bool operator==(const Intent& other) const;
};

[[nodiscard]] inline bool by_a_person(const Intent& intent) {
  return intent.index() < std::variant_size_v<Deed>;
}

/// What arrives with every intent, because `update` knows neither a clock nor chance.
struct Stamp {
  Moment now;
  EventId fresh;       // for the event that this intent may lead to
  EventId next_fresh;  // for a second one that goes with it; later than `fresh`

  bool operator==(const Stamp&) const = default;
};

}  // namespace rackside::kiosk
