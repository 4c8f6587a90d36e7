// What the form for new tubs says.

#include "kiosk/model/steps.hpp"

namespace rackside::kiosk {
namespace {

std::string stage_words(Stage stage) {
  switch (stage) {
    case Stage::Unknown: return "not known";
    case Stage::Sling: return "sling";
    case Stage::Juvenile: return "juvenile";
    case Stage::Adult: return "adult";
    case Stage::MatureMale: return "mature male";
  }
  return {};
}

std::string sex_words(Sex sex) {
  switch (sex) {
    case Sex::Unknown: return "not known";
    case Sex::Female: return "female";
    case Sex::Male: return "male";
  }
  return {};
}

std::string number_or_nothing(int number) { return number > 0 ? std::to_string(number) : ""; }

}  // namespace

std::string new_tub_words(NewTubField field) {
  switch (field) {
    case NewTubField::Species: return "species";
    case NewTubField::CommonName: return "name in the trade";
    case NewTubField::Count: return "how many tubs";
    case NewTubField::Stage: return "stage";
    case NewTubField::Sex: return "sex";
    case NewTubField::Instar: return "instar";
    case NewTubField::Source: return "from whom, or which sac";
    case NewTubField::Rack: return "rack";
    case NewTubField::Shelf: return "shelf";
    case NewTubField::Position: return "first position";
    case NewTubField::PerShelf: return "tubs on a shelf";
  }
  return {};
}

std::string new_tub_value(const BatchRequest& form, NewTubField field) {
  switch (field) {
    case NewTubField::Species: return form.species;
    case NewTubField::CommonName: return form.common_name;
    case NewTubField::Count: return number_or_nothing(form.count);
    case NewTubField::Stage: return stage_words(form.stage);
    case NewTubField::Sex: return sex_words(form.sex);
    case NewTubField::Instar: return form.instar ? std::to_string(*form.instar) : "";
    case NewTubField::Source: return form.source;
    case NewTubField::Rack: return form.first.rack;
    case NewTubField::Shelf: return form.first.shelf;
    case NewTubField::Position: return form.first.position;
    case NewTubField::PerShelf: return number_or_nothing(form.tubs_on_a_shelf);
  }
  return {};
}

}  // namespace rackside::kiosk
