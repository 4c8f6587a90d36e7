#pragma once
// The words behind a program's name: what may be typed, and what was.
//
// Nothing here is a template and no header of the parser behind it is seen: reading and
// instantiating it was half of what every file with an option took to compile, and is done once, in
// options.cpp. Every name that is declared twice, or excludes what was never declared, is a bug and
// throws.

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace CLI {
class App;
class Option;
}  // namespace CLI

namespace rackside {

/// One option as it was declared; a handle that may be copied, good as long as its CommandLine.
/// What does not fit is told to whoever typed it, and the program ends (CommandLine::read).
class Option {
 public:
  Option required();
  /// How the help calls what follows the option: "DATE".
  Option value_name(const std::string& name);
  /// What the variable holds when this is called stands in the help as the default.
  Option shows_default();
  /// Exactly so many values.
  Option expected(int count);
  /// Not together with `other`.
  Option excludes(const Option& other);
  /// Only together with `other`.
  Option needs(const Option& other);
  /// Both ends belong to it.
  Option within(int least, int most);
  Option within(double least, double most);
  Option one_of(const std::vector<std::string>& words);
  /// Words that stand for a number; the number itself may be typed, too.
  Option stands_for(const std::map<std::string, int>& numbers);
  /// `problem_with` gets what was typed and says what is wrong with it, or nothing.
  Option checked_by(const std::function<std::string(const std::string&)>& problem_with);

 private:
  friend class Vocabulary;
  explicit Option(CLI::Option* option) : option_(option) {}
  CLI::Option* option_;
};

/// What a program or a subcommand understands; a handle like Option. The variables that options are
/// read into have to live as long as the CommandLine does.
class Vocabulary {
 public:
  Vocabulary subcommand(const std::string& name, const std::string& explanation);

  // "--log" or "-o,--out"; a name without dashes is told by its place.
  Option option(const std::string& name, std::string& into, const std::string& explanation);
  Option option(const std::string& name, int& into, const std::string& explanation);
  Option option(const std::string& name, unsigned& into, const std::string& explanation);
  Option option(const std::string& name, std::optional<int>& into, const std::string& explanation);
  Option option(const std::string& name, std::optional<double>& into,
                const std::string& explanation);
  /// One or several values.
  Option option(const std::string& name, std::vector<std::string>& into,
                const std::string& explanation);
  /// Nothing follows it.
  Option flag(const std::string& name, bool& into, const std::string& explanation);

  /// Exactly one subcommand has to be typed.
  void require_subcommand();
  /// At least one of these has to be typed, and not as an empty text.
  void require_any(const std::vector<Option>& options);
  /// No two of these may be typed together.
  void allow_one_of(const std::vector<Option>& options);
  /// Stands at the end of the help.
  void footer(const std::string& text);
  /// `work` is called when this was typed and everything that was typed can be understood.
  void when_chosen(const std::function<void()>& work);
  [[nodiscard]] bool was_chosen() const;

 protected:
  explicit Vocabulary(CLI::App* app) : app_(app) {}
  CLI::App* app_;
};

/// All of a program's words.
class CommandLine : public Vocabulary {
 public:
  CommandLine(const std::string& explanation, const std::string& program);
  CommandLine(const CommandLine&) = delete;
  CommandLine& operator=(const CommandLine&) = delete;
  ~CommandLine();

  /// --help-all tells the help of every subcommand.
  void tells_all_help();
  /// What stands before a subcommand may stand behind it.
  void falls_through();
  /// Makes what is written to stderr out of the problem, in the place of the usual two lines.
  void tells_problems_as(const std::function<std::string(const std::string& problem)>& words);

  /// Reads what was typed into the variables. An exit code when that was all: 0 when help was asked
  /// for and is on stdout, wrong_words when the problem is on stderr.
  [[nodiscard]] std::optional<int> read(int count, const char* const* words);

  static constexpr int wrong_words = 2;

 private:
  explicit CommandLine(std::unique_ptr<CLI::App> app);
  std::unique_ptr<CLI::App> own_;
};

}  // namespace rackside
