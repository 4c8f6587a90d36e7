#pragma once
// The screens: one table, one function each, from the model to a scene.

#include <array>
#include <string_view>

#include "kiosk/model/model.hpp"
#include "kiosk/scene/composer.hpp"

namespace rackside::kiosk {

void compose_round(Composer& composer, const Model& model);
void compose_bring_in(Composer& composer, const Model& model);
void compose_carry(Composer& composer, const Model& model);
void compose_summary(Composer& composer, const Model& model);
void compose_tub(Composer& composer, const Model& model);
void compose_records(Composer& composer, const Model& model);
void compose_keypad(Composer& composer, const Model& model);
void compose_find(Composer& composer, const Model& model);
void compose_drawer(Composer& composer, const Model& model);
void compose_setup(Composer& composer, const Model& model);
void compose_map(Composer& composer, const Model& model);
void compose_weeks(Composer& composer, const Model& model);
void compose_air(Composer& composer, const Model& model);
void compose_growth(Composer& composer, const Model& model);
void compose_number(Composer& composer, const Model& model);
void compose_camera(Composer& composer, const Model& model);
void compose_words(Composer& composer, const Model& model);
void compose_new_tubs(Composer& composer, const Model& model);
void compose_correct(Composer& composer, const Model& model);
void compose_who(Composer& composer, const Model& model);
void compose_pin(Composer& composer, const Model& model);
void compose_people(Composer& composer, const Model& model);
void compose_person(Composer& composer, const Model& model);
void compose_cover(Composer& composer, const Model& model);
void compose_new_cover(Composer& composer, const Model& model);
void compose_days(Composer& composer, const Model& model);
void compose_returned(Composer& composer, const Model& model);
void compose_picture(Composer& composer, const Model& model);

struct ScreenRow {
  ScreenName screen;
  std::string_view word;  // as other screens call it
  void (*compose)(Composer&, const Model&);
};

inline constexpr std::array screens{
    ScreenRow{ScreenName::Round, "the round", compose_round},
    ScreenRow{ScreenName::BringIn, "bring in", compose_bring_in},
    ScreenRow{ScreenName::Carry, "take along", compose_carry},
    ScreenRow{ScreenName::Summary, "last round", compose_summary},
    ScreenRow{ScreenName::Tub, "tub", compose_tub},
    ScreenRow{ScreenName::Keypad, "type a code", compose_keypad},
    ScreenRow{ScreenName::Find, "find", compose_find},
    ScreenRow{ScreenName::Records, "records", compose_records},
    ScreenRow{ScreenName::Drawer, "the drawer", compose_drawer},
    ScreenRow{ScreenName::Setup, "setup", compose_setup},
    ScreenRow{ScreenName::Map, "shelf map", compose_map},
    ScreenRow{ScreenName::Weeks, "weeks ahead", compose_weeks},
    ScreenRow{ScreenName::Air, "room air", compose_air},
    ScreenRow{ScreenName::Growth, "growth", compose_growth},
    ScreenRow{ScreenName::Number, "a number", compose_number},
    ScreenRow{ScreenName::Camera, "camera", compose_camera},
    ScreenRow{ScreenName::Words, "an answer", compose_words},
    ScreenRow{ScreenName::NewTubs, "new tubs", compose_new_tubs},
    ScreenRow{ScreenName::Correct, "put it right", compose_correct},
    ScreenRow{ScreenName::Who, "who is there", compose_who},
    ScreenRow{ScreenName::Pin, "the PIN", compose_pin},
    ScreenRow{ScreenName::People, "people", compose_people},
    ScreenRow{ScreenName::Person, "person", compose_person},
    ScreenRow{ScreenName::Cover, "cover", compose_cover},
    ScreenRow{ScreenName::NewCover, "a cover", compose_new_cover},
    ScreenRow{ScreenName::Days, "a day", compose_days},
    ScreenRow{ScreenName::Returned, "report", compose_returned},
    ScreenRow{ScreenName::Picture, "a picture", compose_picture},
};

/// The picture of the model on this panel.
[[nodiscard]] Scene compose(const Model& model, const Panel& panel, const TextMetrics& metrics);

}  // namespace rackside::kiosk
