#include <algorithm>
#include <cctype>
#include <set>
#include <utility>

#include "kiosk/model/lower_case.hpp"
#include "kiosk/model/steps.hpp"
#include "kiosk/model/trimmed.hpp"

namespace rackside::kiosk {
namespace {

bool begins_with_capital(NewTubField field) {
  return field == NewTubField::Species || field == NewTubField::Rack;
}

// Everything the collection already says in this place.
std::set<std::string> said_before(const Collection& collection, NewTubField field) {
  std::set<std::string> said;
  for (const auto& [id, animal] : collection.animals) {
    if (field == NewTubField::Species) said.insert(animal.species);
    if (field == NewTubField::CommonName) said.insert(animal.common_name);
    if (field == NewTubField::Source) said.insert(animal.source);
  }
  for (const auto& [code, tub] : collection.enclosures) {
    if (field == NewTubField::Rack) said.insert(tub.place.rack);
    if (field == NewTubField::Shelf) said.insert(tub.place.shelf);
  }
  said.erase("");
  return said;
}

struct Start {
  const Model& model;
  Asking operator()(const AskNewTub& about) const {
    const std::string value = new_tub_value(model.new_tubs, about.field);
    return {about, value, value.empty() && begins_with_capital(about.field)};
  }
  Asking operator()(const AskPerson& about) const { return {about, {}, true}; }
  Asking operator()(const AskWrong& about) const { return {about, {}, true}; }
  Asking operator()(const AskPrey& about) const { return {about, {}, false}; }
  Asking operator()(const AskStandIn& about) const { return {about, {}, true}; }
  Asking operator()(const AskContact& about) const {
    const Contact* known = keeper_to_call(model.cover);
    const std::string name = known == nullptr ? model.by : known->name;
    return {about, name, name.empty()};
  }
  Asking operator()(const AskContactNumber& about) const {
    const Contact* known = keeper_to_call(model.cover);
    return {about, known == nullptr ? "" : known->number, false};
  }
  Asking operator()(const AskCoverNote& about) const {
    const NoteForCover* known = note_for_all(model.cover);
    return {about, known == nullptr ? "" : known->words, known == nullptr};
  }
};

struct Words {
  std::string operator()(const AskNewTub& about) const { return new_tub_words(about.field); }
  std::string operator()(const AskPerson& about) const {
    return about.role == Role::Keeper ? "the keeper's name" : "the assistant's name";
  }
  std::string operator()(const AskWrong&) const { return "what is wrong?"; }
  std::string operator()(const AskPrey&) const { return "instead of it"; }
  std::string operator()(const AskStandIn&) const { return "stand-in"; }
  std::string operator()(const AskContact&) const { return "whom they call"; }
  std::string operator()(const AskContactNumber&) const { return "the number"; }
  std::string operator()(const AskCoverNote&) const { return "a note for them"; }
};

struct Known {
  const Model& model;
  std::set<std::string> operator()(const AskNewTub& about) const {
    return said_before(model.collection, about.field);
  }
  std::set<std::string> operator()(const AskPerson&) const { return {}; }
  std::set<std::string> operator()(const AskWrong&) const { return {}; }
  std::set<std::string> operator()(const AskPrey&) const { return prey_known(model); }
  std::set<std::string> operator()(const AskStandIn&) const { return stand_ins_known(model); }
  std::set<std::string> operator()(const AskContact&) const { return keepers_known(model); }
  std::set<std::string> operator()(const AskContactNumber&) const { return {}; }
  std::set<std::string> operator()(const AskCoverNote&) const { return {}; }
};

struct Take {
  Model& model;
  std::optional<std::string> operator()(const AskNewTub& about) const {
    return set_new_tub(model.new_tubs, about.field, model.asking->text);
  }
  std::optional<std::string> operator()(const AskPerson& about) const {
    return name_person(model, about.role, model.asking->text);
  }
  std::optional<std::string> operator()(const AskWrong& about) const {
    return why_no_flag(model, about, model.asking->text);
  }
  std::optional<std::string> operator()(const AskPrey& about) const {
    return offer_instead(model, about, model.asking->text);
  }
  std::optional<std::string> operator()(const AskStandIn&) const {
    return name_stand_in(model, model.asking->text);
  }
  std::optional<std::string> operator()(const AskContact&) const {
    return why_no_contact(model.asking->text);
  }
  std::optional<std::string> operator()(const AskContactNumber&) const {
    return why_no_number(model, model.asking->text);
  }
  std::optional<std::string> operator()(const AskCoverNote&) const { return std::nullopt; }
};

// What follows from an answer that was taken.
struct Follow {
  Model& model;
  const Stamp& stamp;
  const std::string& text;
  Effects operator()(const AskNewTub&) const { return {}; }
  Effects operator()(const AskPerson&) const { return add_person(model, stamp); }
  Effects operator()(const AskWrong& about) const { return flag(model, about, text, stamp); }
  Effects operator()(const AskPrey&) const { return {}; }
  Effects operator()(const AskStandIn&) const { return {}; }
  Effects operator()(const AskContact&) const {
    ask(model, AskContactNumber{trimmed(text)});
    return {};
  }
  Effects operator()(const AskContactNumber& about) const {
    return set_contact(model, about.name, text, stamp);
  }
  Effects operator()(const AskCoverNote&) const { return write_note(model, text, stamp); }
};

}  // namespace

void ask(Model& model, const Question& question) {
  // The same question again finds what was half answered.
  if (!model.asking || model.asking->question != question)
    model.asking = std::visit(Start{model}, question);
  go_to(model, ScreenName::Words);
}

void keep_words(Model& model, const Draft& draft) {
  if (std::holds_alternative<Flagged>(draft.details))
    model.asking = Asking{AskWrong{draft.enclosure}, draft.note};
  else if (std::holds_alternative<CoverNote>(draft.details))
    model.asking = Asking{AskCoverNote{}, draft.note};
  else if (const auto* contact = std::get_if<ContactSet>(&draft.details))
    model.asking = Asking{AskContactNumber{contact->name}, contact->number};
  // The form asks for the name before the number, which would be lost.
  if (model.asking && model.screen == ScreenName::NewCover) go_to(model, ScreenName::Words);
}

std::string question_words(const Question& question) { return std::visit(Words{}, question); }

std::vector<std::string> answers_known(const Model& model, std::size_t most) {
  std::vector<std::string> list;
  if (!model.asking) return list;
  const std::string begun = lower(model.asking->text);
  for (const std::string& known : std::visit(Known{model}, model.asking->question))
    if (list.size() < most && lower(known).starts_with(begun) && known != model.asking->text)
      list.push_back(known);
  return list;
}

Effects answer(Model& model, const Stamp& stamp) {
  if (!model.asking) return {};
  if (const auto problem = std::visit(Take{model}, model.asking->question)) {
    tell(model, Tone::Problem, *problem);
    return {};
  }
  const Asking answered = *std::exchange(model.asking, std::nullopt);
  go_back(model);
  return std::visit(Follow{model, stamp, answered.text}, answered.question);
}

}  // namespace rackside::kiosk
