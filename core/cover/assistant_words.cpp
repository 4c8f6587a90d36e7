#include "core/cover/assistant_words.hpp"

#include <fmt/format.h>

namespace rackside {
namespace {

std::string sentence_of(Task task, const Instruction& said, Units units) {
  switch (task) {
    case Task::GiveWater: return "Fill the water now, then call the keeper: it looks shrivelled.";
    case Task::HelpWithMoult: return "Do not touch it. Call the keeper: its moult takes too long.";
    case Task::RefusesAfterMoult: return "Offer nothing. Look at it and tell the keeper how it is.";
    case Task::TakePreyFromMoult:
      return "Take the prey out with long forceps. Do not touch the animal.";
    case Task::TakeOutPrey:
      return said.urgency == Urgency::Due ? "Take out the prey that is left."
                                          : "Tomorrow morning: take out the prey that is left.";
    case Task::TakeOutShed: return "Take out the shed with forceps and keep it for the keeper.";
    case Task::LookForShed:
      return said.also.empty() ? "Look for a shed, lid closed. Offer nothing."
                               : "Look for a shed. Offer nothing.";
    case Task::LookCloser: return "Look at it closely, lid closed. Is it well? If not, say so.";
    case Task::Offer: return fmt::format("Offer {}, no more.", format_prey(*said.prey, units));
    case Task::OfferOneSmall:
      return fmt::format("Offer {} and watch. Not taken at once: take it out.",
                         format_prey(*said.prey, units));
    case Task::MistAndCheckWater: return "Mist and fill the water.";
    case Task::Withhold: return "Offer nothing. Do not open.";
    case Task::LeaveAlone: return "Leave it entirely alone.";
    case Task::MeasureFromShed:
    case Task::Reoffer:
    case Task::NotDue: return "Nothing today.";
  }
  return {};
}

}  // namespace

std::string_view duty_word(Duty duty) {
  switch (duty) {
    case Duty::Do: return "do";
    case Duty::KeepClosed: return "keep closed";
    case Duty::Nothing: return "nothing";
  }
  return {};
}

Duty duty_of(const Instruction& said) {
  if (said.task == Task::LeaveAlone || said.task == Task::Withhold) return Duty::KeepClosed;
  const bool for_keeper = said.task == Task::MeasureFromShed && assistant_extras(said).empty();
  return said.urgency == Urgency::Due && !for_keeper ? Duty::Do : Duty::Nothing;
}

std::string assistant_sentence(const Instruction& said, Units units) {
  return sentence_of(said.task, said, units);
}

std::vector<std::string> assistant_extras(const Instruction& said, Units units) {
  std::vector<std::string> extras;
  for (const Task task : said.also)
    if (task != Task::MeasureFromShed) extras.push_back(sentence_of(task, said, units));
  return extras;
}

const std::vector<std::string>& assistant_basics() {
  static const std::vector<std::string> said{
      "Scan the tub, read what the screen says, do that one thing, tap what happened. The screen "
      "knows more than this sheet: where they differ, the screen is right.",
      "Food: offer what is written and no more. Stop when it has taken it, runs away or shows no "
      "interest. What is not eaten comes out before you leave, or next morning at the latest.",
      "On its back: it is moulting. Do not touch it, do not spray it, do not open the tub. Take "
      "nothing for dead: call the keeper.",
      "A shed is the empty skin. It can look like a second spider. Where you find one, tap that "
      "you found it and offer nothing.",
      "Refusing food for days or weeks is normal before a moult. Nothing has to be done.",
      "Missed a day? Go on today. Do not feed double.",
      "Keep hands out of the tubs. Nothing is moved, measured or rehoused while the keeper is "
      "away.",
  };
  return said;
}

}  // namespace rackside
