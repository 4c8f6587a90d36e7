#include "core/options/options.hpp"

#include <CLI/CLI.hpp>

namespace rackside {

Option Option::required() { return Option(option_->required()); }

Option Option::value_name(const std::string& name) { return Option(option_->type_name(name)); }

Option Option::shows_default() { return Option(option_->capture_default_str()); }

Option Option::expected(int count) { return Option(option_->expected(count)); }

Option Option::excludes(const Option& other) { return Option(option_->excludes(other.option_)); }

Option Option::needs(const Option& other) { return Option(option_->needs(other.option_)); }

Option Option::within(int least, int most) {
  return Option(option_->check(CLI::Range(least, most)));
}

Option Option::within(double least, double most) {
  return Option(option_->check(CLI::Range(least, most)));
}

Option Option::one_of(const std::vector<std::string>& words) {
  return Option(option_->check(CLI::IsMember(words)));
}

Option Option::stands_for(const std::map<std::string, int>& numbers) {
  return Option(option_->transform(CLI::CheckedTransformer(numbers)));
}

Option Option::checked_by(const std::function<std::string(const std::string&)>& problem_with) {
  return Option(option_->check(
      CLI::Validator([problem_with](std::string& typed) { return problem_with(typed); }, "")));
}

Vocabulary Vocabulary::subcommand(const std::string& name, const std::string& explanation) {
  return Vocabulary(app_->add_subcommand(name, explanation));
}

Option Vocabulary::option(const std::string& name, std::string& into,
                          const std::string& explanation) {
  return Option(app_->add_option(name, into, explanation));
}

Option Vocabulary::option(const std::string& name, int& into, const std::string& explanation) {
  return Option(app_->add_option(name, into, explanation));
}

Option Vocabulary::option(const std::string& name, unsigned& into, const std::string& explanation) {
  return Option(app_->add_option(name, into, explanation));
}

Option Vocabulary::option(const std::string& name, std::optional<int>& into,
                          const std::string& explanation) {
  return Option(app_->add_option(name, into, explanation));
}

Option Vocabulary::option(const std::string& name, std::optional<double>& into,
                          const std::string& explanation) {
  return Option(app_->add_option(name, into, explanation));
}

Option Vocabulary::option(const std::string& name, std::vector<std::string>& into,
                          const std::string& explanation) {
  return Option(app_->add_option(name, into, explanation));
}

Option Vocabulary::flag(const std::string& name, bool& into, const std::string& explanation) {
  return Option(app_->add_flag(name, into, explanation));
}

void Vocabulary::require_subcommand() { app_->require_subcommand(1); }

void Vocabulary::require_any(const std::vector<Option>& options) {
  std::string names;
  for (const Option& one : options)
    names += (names.empty() ? "" : " or ") + one.option_->get_name();
  app_->parse_complete_callback([options, names] {
    for (const Option& one : options)
      for (const std::string& typed : one.option_->results())
        if (!typed.empty()) return;
    throw CLI::RequiredError(names);
  });
}

void Vocabulary::allow_one_of(const std::vector<Option>& options) {
  for (Option one : options)
    for (const Option& other : options)
      if (one.option_ != other.option_) one.excludes(other);
}

void Vocabulary::footer(const std::string& text) { app_->footer(text); }

void Vocabulary::when_chosen(const std::function<void()>& work) { app_->callback(work); }

bool Vocabulary::was_chosen() const { return app_->parsed(); }

CommandLine::CommandLine(const std::string& explanation, const std::string& program)
    : CommandLine(std::make_unique<CLI::App>(explanation, program)) {}

CommandLine::CommandLine(std::unique_ptr<CLI::App> app)
    : Vocabulary(app.get()), own_(std::move(app)) {}

CommandLine::~CommandLine() = default;

void CommandLine::tells_all_help() {
  app_->set_help_all_flag("--help-all", "Print the help of every subcommand and exit");
}

void CommandLine::falls_through() { app_->fallthrough(); }

void CommandLine::tells_problems_as(
    const std::function<std::string(const std::string& problem)>& words) {
  app_->failure_message(
      [words](const CLI::App*, const CLI::Error& problem) { return words(problem.what()); });
}

std::optional<int> CommandLine::read(int count, const char* const* words) {
  try {
    app_->parse(count, words);
  } catch (const CLI::ParseError& end) {
    return app_->exit(end) == 0 ? 0 : wrong_words;
  }
  return std::nullopt;
}

}  // namespace rackside
